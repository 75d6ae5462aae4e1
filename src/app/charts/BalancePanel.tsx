// Heat gained and lost, and water vapour released, by month and cause, for one zone at a time; of a divided house first for
// the room that is worst.

import { useRef, useState } from 'preact/hooks';
import { heatByMonth, moistureByMonth, waterTogether, withRoomsApart } from '../../outcomes/balances.ts';
import { worstIn } from '../../outcomes/judged-house.ts';
import { useWorkspace } from '../state/session-context.ts';
import { heatSentence, moistureSentence } from './balance-words.ts';
import { useChartAnswer } from './chart-turns.ts';
import { MonthBars } from './MonthBars.tsx';

const ZONE_WORDS: Readonly<Record<string, string>> = { house: 'rooms', sunspace: 'sunspace' };

export function BalancePanel({ kind }: { kind: 'heat' | 'moisture' }) {
  const workspace = useWorkspace();
  const [wanted, setWanted] = useState<string | null>(null);
  const ref = useRef<HTMLElement>(null);
  const answer = useChartAnswer(ref);
  const system = workspace.units.value;
  if (!answer) return <section ref={ref} class="chart" id={kind} />;
  const year = withRoomsApart(answer.year);
  const zones = year.zones.map(({ id }) => id);
  const first = worstIn(answer.outcome, kind === 'heat' ? 'hot' : 'damp')?.id ?? 'house';
  const zone = wanted !== null && zones.includes(wanted) ? wanted : first;
  const names = new Map(answer.outcome.rooms?.map(({ id, name }) => [id, name]));
  const nameOf = (id: string) =>
    names.get(id) ?? (id === 'house' && names.size > 0 ? 'all rooms' : (ZONE_WORDS[id] ?? id));
  const all = kind === 'heat' ? heatByMonth(year) : moistureByMonth(year);
  const rows = all.filter((row) => row.zone === zone);
  const drained = year.zones.find(({ id }) => id === zone)?.drainedKg ?? 0;
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
                <span>{nameOf(id)}</span>
              </label>
            ))}
          </div>
        )}
      </div>
      <p class="chart-sentence">
        {kind === 'heat'
          ? heatSentence(rows, system)
          : moistureSentence(rows, drained, system, names.has(zone) ? null : waterTogether(year))}
      </p>
      <MonthBars
        rows={rows}
        quantity={kind === 'heat' ? 'energy' : 'waterMass'}
        system={system}
        caption={`${title}, ${nameOf(zone)}`}
      />
    </section>
  );
}
