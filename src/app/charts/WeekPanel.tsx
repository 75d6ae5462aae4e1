// The hottest and the coldest week, one under the other, each with the sentence that says what to notice.

import { useRef } from 'preact/hooks';
import { weekAround } from '../../outcomes/extremes.ts';
import { judgedHouse } from '../../outcomes/judged-house.ts';
import { useWorkspace } from '../state/session-context.ts';
import { useChartAnswer } from './chart-turns.ts';
import { WeekChart } from './WeekChart.tsx';
import { weekColumns, weekSentence } from './week-hours.ts';

export function WeekPanel({ kind }: { kind: 'hot' | 'cold' }) {
  const workspace = useWorkspace();
  const ref = useRef<HTMLElement>(null);
  const answer = useChartAnswer(ref);
  const climate = workspace.climate.value;
  const system = workspace.units.value;
  if (!answer || climate.state !== 'ready') return <section ref={ref} class="chart" id={`${kind}-week`} />;
  const house = judgedHouse(answer.outcome);
  const { comfort } = answer.job.design;
  const from = weekAround(kind === 'hot' ? house.hottestHour : house.coldestHour);
  return (
    <section ref={ref} class="chart" aria-labelledby={`${kind}-week-title`} id={`${kind}-week`}>
      <div class="chart-head">
        <h2 id={`${kind}-week-title`}>The {kind === 'hot' ? 'hottest' : 'coldest'} week</h2>
        <WeekKey hasSunspace={answer.outcome.zones.sunspace !== undefined} />
      </div>
      <p class="chart-sentence">
        {weekSentence(answer.year, climate.year, from, kind, system, answer.job.design)}
      </p>
      <WeekChart
        columns={weekColumns(answer.year, climate.year, from, system, answer.job.design, kind)}
        system={system}
        coldC={comfort.underheatC}
      />
    </section>
  );
}

function WeekKey({ hasSunspace }: { hasSunspace: boolean }) {
  return (
    <ul class="key" aria-hidden="true">
      <li class="key-rooms">rooms</li>
      {hasSunspace && <li class="key-sunspace">sunspace</li>}
      <li class="key-outdoors">outdoors</li>
      <li class="key-sun">sun</li>
    </ul>
  );
}
