// The climate at a glance: warmth and sun through the months, the same as numbers, what should make its user careful
// and what the reader filled or changed. Worked out in the worker.

import { useEffect, useState } from 'preact/hooks';
import type { ClimateGlance } from '../../../workers/service.ts';
import { DOUBT_WORDS } from '../../weather/doubts.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { useSession } from '../state/session-context.ts';
import { GlanceCharts } from './GlanceCharts.tsx';
import { GlanceTable } from './GlanceTable.tsx';
import { glanceWords } from './glance-words.ts';

export function ClimateGlanceView() {
  const { workspace } = useSession();
  const climate = workspace.climate.value;
  const system = workspace.units.value;
  const year = climate.state === 'ready' ? climate.year : null;
  const glance = useGlance(year);
  if (!year) return <p>{climate.state === 'failed' ? climate.message : 'Loading the climate…'}</p>;
  if (!glance) return <p role="status">Working out the months of {year.site.name}…</p>;
  const { summary, doubts } = glance;
  const words = glanceWords(summary, system);
  return (
    <section class="glance" aria-labelledby="glance-title" data-glance={year.id}>
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

/** The glance of a year; null while it is worked out. */
function useGlance(year: TypicalYear | null): ClimateGlance | null {
  const session = useSession();
  const [known, setKnown] = useState<{ year: TypicalYear; glance: ClimateGlance } | null>(null);
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
  return known?.year === year ? known.glance : null;
}
