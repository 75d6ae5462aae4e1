// The vent diary: for each opening, hours open as a bar and moves as a number, month by month.

import { useRef } from 'preact/hooks';
import { MONTH_START_HOUR } from '../../weather/typical-year.ts';
import { MONTH_SHORT } from '../parts/calendar-words.ts';
import { MonthHead } from '../parts/MonthHead.tsx';
import { ScrollTable } from '../parts/ScrollTable.tsx';
import { useChartAnswer } from './chart-turns.ts';
import { ventDiary, ventSentence } from './vent-diary.ts';

export function VentDiary() {
  const ref = useRef<HTMLElement>(null);
  const answer = useChartAnswer(ref);
  if (!answer) return <section ref={ref} class="chart" id="vents" />;
  const rows = ventDiary(answer.year);
  return (
    <section ref={ref} class="chart" id="vents" aria-labelledby="vents-title">
      <div class="chart-head">
        <h2 id="vents-title">The vent diary</h2>
      </div>
      <p class="chart-sentence">{ventSentence(rows)}</p>
      {rows.length > 0 && (
        <ScrollTable label="Vent diary">
          <table class="diary">
            <caption class="visually-hidden">Share of hours open, and moves, by month</caption>
            <MonthHead rows="opening" />
            <tbody>
              {rows.map((row) => (
                <tr key={row.id}>
                  <th scope="row">{row.label}</th>
                  {row.movesByMonth.map((moves, month) => {
                    const hours = MONTH_START_HOUR[month + 1]! - MONTH_START_HOUR[month]!;
                    const share = row.openByMonth[month]! / hours;
                    return (
                      <td key={MONTH_SHORT[month]}>
                        <span class="diary-bar" style={{ height: `${(share * 60).toFixed(0)}%` }} />
                        <span class="diary-moves">
                          {Math.round(moves)}
                          <span class="visually-hidden">
                            {' '}
                            moves, {row.isCover ? 'drawn' : 'open'} {Math.round(share * 100)} % of the hours
                          </span>
                        </span>
                      </td>
                    );
                  })}
                  <td class="diary-year">{Math.round(row.moves)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollTable>
      )}
      <p class="chart-note" aria-hidden="true">
        Numbers: times moved. Bars: share of the month's hours standing open, or drawn.
      </p>
    </section>
  );
}
