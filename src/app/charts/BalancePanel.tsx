// Heat gained and lost, and water vapour released, by month and cause, for one zone at a time.

import { useRef, useState } from 'preact/hooks';
import { heatByMonth, moistureByMonth, waterTogether } from '../../outcomes/balances.ts';
import { useWorkspace } from '../state/session-context.ts';
import { heatSentence, moistureSentence } from './balance-words.ts';
import { useChartAnswer } from './chart-turns.ts';
import { MonthBars } from './MonthBars.tsx';

const ZONE_WORDS: Readonly<Record<string, string>> = { house: 'rooms', sunspace: 'sunspace' };

export function BalancePanel({ kind }: { kind: 'heat' | 'moisture' }) {
  const workspace = useWorkspace();
  const [wanted, setWanted] = useState('house');
  const ref = useRef<HTMLElement>(null);
  const answer = useChartAnswer(ref);
  const system = workspace.units.value;
  if (!answer) return <section ref={ref} class="chart" id={kind} />;
  const zones = answer.year.zones.map(({ id }) => id);
  const zone = zones.includes(wanted) ? wanted : 'house';
  const all = kind === 'heat' ? heatByMonth(answer.year) : moistureByMonth(answer.year);
  const rows = all.filter((row) => row.zone === zone);
  const drained = answer.year.zones.find(({ id }) => id === zone)?.drainedKg ?? 0;
  const title = kind === 'heat' ? 'Heat by month and cause' : 'Moisture by month and cause';
  return (
    <section ref={ref} class="chart" id={kind} aria-labelledby={`${kind}-title`}>
      <div class="chart-head">
        <h2 id={`${kind}-title`}>{title}</h2>
        {zones.length > 1 && (
          <div class="chips" role="radiogroup" aria-label={`${title}: of`}>
            {zones.map((id) => (
              <label key={id} class="chip">
                <input
                  type="radio"
                  name={`${kind}-zone`}
                  checked={id === zone}
                  onChange={() => setWanted(id)}
                />
                <span>{ZONE_WORDS[id] ?? id}</span>
              </label>
            ))}
          </div>
        )}
      </div>
      <p class="chart-sentence">
        {kind === 'heat'
          ? heatSentence(rows, system)
          : moistureSentence(rows, drained, system, waterTogether(answer.year))}
      </p>
      <MonthBars
        rows={rows}
        quantity={kind === 'heat' ? 'energy' : 'waterMass'}
        system={system}
        caption={`${title}, ${ZONE_WORDS[zone] ?? zone}`}
      />
    </section>
  );
}
