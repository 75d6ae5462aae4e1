// The climate at a glance: warmth and sun through the months, the same as numbers, what should make its user careful
// and what the reader filled or changed. Worked out in the worker.

import { useEffect, useState } from 'preact/hooks';
import type { ClimateGlance } from '../../../workers/service.ts';
import { DOUBT_WORDS } from '../../weather/prepared/doubts.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { useSession } from '../state/session-context.ts';
import { GlanceCharts } from './GlanceCharts.tsx';
import { GlanceTable } from './GlanceTable.tsx';
import { glanceWords } from './glance-words.ts';

export function ClimateGlanceView() {
  const { workspace } = useSession();
  const climate = workspace.climate.value;
  const system = workspace.units.value;
  const wanted = climate.state === 'ready' ? climate.year : null;
  const known = useGlance(wanted);
  if (climate.state === 'failed') return <p>{climate.message}</p>;
  if (!known) return <p role="status">Working out the months of the climate…</p>;
  const { year, glance } = known;
  const { summary, doubts } = glance;
  const words = glanceWords(summary, system);
  return (
    <section class="glance" aria-labelledby="glance-title" aria-busy={year !== wanted} data-glance={year.id}>
      <h3 id="glance-title">{year.site.name}</h3>
      <p class="chart-sentence">{words.warmth}</p>
      <GlanceCharts summary={summary} system={system} sun={words.sun} />
      <GlanceTable summary={summary} system={system} />
      {doubts.length > 0 ? (
        <>
          <h4>What to be careful about</h4>
          <ul class="doubt-list">
            {doubts.map(({ id, weight, text, effect }) => (
              <li key={id} class={`is-${weight}`}>
                <strong>{DOUBT_WORDS[weight]}.</strong> {text} {effect}
              </li>
            ))}
          </ul>
        </>
      ) : (
        <p>The tests of its hours (sun, clock, place, stuck values) find nothing to doubt.</p>
      )}
      {year.notes.length > 0 && (
        <>
          <h4>What was taken, filled or changed</h4>
          <ul class="ask-notes">
            {year.notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </>
      )}
      <p class="ask-source">
        {year.source}. {year.credit}.
      </p>
    </section>
  );
}

interface KnownGlance {
  readonly year: TypicalYear;
  readonly glance: ClimateGlance;
}

/**
 * The glance of a year. While a new one is worked out the one before stays, so that nothing jumps under the person's
 * hand; null before the first.
 */
function useGlance(year: TypicalYear | null): KnownGlance | null {
  const session = useSession();
  const [known, setKnown] = useState<KnownGlance | null>(null);
  useEffect(() => {
    if (!year) return;
    let current = true;
    const show = (glance: ClimateGlance) => {
      if (current) setKnown({ year, glance });
    };
    // A worker that is let go between is started again by the next question.
    session.glanceAt(year).then(show, () => session.glanceAt(year).then(show, () => {}));
    return () => {
      current = false;
    };
  }, [year]);
  return known;
}
