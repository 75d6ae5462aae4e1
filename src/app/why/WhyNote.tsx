// Why a figure is what it is: the hours behind it, the heat and water that moved in them, and the one change that would
// move it most, run and not guessed.

import { useEffect, useRef } from 'preact/hooks';
import { contextOf } from '../../findings/context.ts';
import { type Traced, type TracedZone, whyOf } from '../../findings/why.ts';
import { hours as hoursInWords } from '../../findings/wording.ts';
import type { FigureKey } from '../../questions/figures.ts';
import { bestLever } from '../../questions/levers.ts';
import type { PulledLevers } from '../../questions/what-helps.ts';
import { preparedOnce } from '../../weather/prepared/prepared-climate.ts';
import { headlineFigures } from '../figures/headline-figures.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';
import { pricesChoice } from '../state/prices-choice.ts';
import { useSession } from '../state/session-context.ts';
import { pulledLevers } from './pulled-levers.ts';
import { useRunFor } from './run-for.ts';

/** The figure of the runs that tells which change moves it, and the smallest move worth a word in its unit. */
interface Moved {
  readonly key: FigureKey;
  readonly least: number;
}

interface Asked {
  /** by the end of the headline figure's id */
  readonly end: string;
  readonly traced: Traced;
  readonly house: Moved;
  /** null where the runs keep no such figure of the sunspace */
  readonly sunspace: Moved | null;
}

const ASKED: readonly Asked[] = [
  {
    end: 'overheated',
    traced: 'overheatedHours',
    house: { key: 'tooHotHours', least: 20 },
    sunspace: { key: 'sunspaceWarmestC', least: 0.5 },
  },
  {
    end: 'coldest',
    traced: 'coldestHour',
    house: { key: 'coldestC', least: 0.2 },
    sunspace: { key: 'sunspaceColdestC', least: 0.2 },
  },
  { end: 'humid', traced: 'humidHours', house: { key: 'humidHours', least: 20 }, sunspace: null },
  { end: 'mould', traced: 'mouldIndex', house: { key: 'mouldIndex', least: 0.2 }, sunspace: null },
  { end: 'heating', traced: 'heatingKWh', house: { key: 'heatingKWh', least: 50 }, sunspace: null },
  { end: 'vents', traced: 'ventMoves', house: { key: 'ventMovesPerDay', least: 0.3 }, sunspace: null },
];

export function WhyNote() {
  const { workspace, asked } = useSession();
  const heading = useRef<HTMLHeadingElement>(null);
  const answer = workspace.answer.value;
  const climate = workspace.climate.value;
  const system = workspace.units.value;
  const id = asked.value?.figure ?? '';
  const isReady = answer !== null && climate.state === 'ready' && !workspace.stale.value;
  const help = useRunFor(
    isReady ? answer : null,
    climate.state === 'ready' ? climate.typical : null,
    pulledLevers,
  );
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.scrollIntoView({ block: 'nearest' });
  }, [id, isReady]);
  const figure = isReady
    ? headlineFigures(answer.outcome, answer.job.design, system, pricesChoice.list.value).find(
        (entry) => entry.id === id,
      )
    : undefined;
  const entry = ASKED.find(({ end }) => id.endsWith(end));
  if (!isReady || !figure || !entry) return null;
  const zone: TracedZone = figure.zone === 'sunspace' ? 'sunspace' : 'house';
  const moved = entry[zone];
  const { outcome, year, job } = answer;
  const context = contextOf({
    design: job.design,
    climate: preparedOnce(climate.year),
    year,
    outcome,
    units: system,
  });
  const { text } = whyOf(context, entry.traced, zone);
  return (
    <section class="why-note" aria-labelledby="why-title">
      <div class="chart-head">
        <h2 id="why-title" ref={heading} tabIndex={-1}>
          Why {zone === 'sunspace' ? 'the sunspace has ' : ''}
          {quantityText(figure.value, figure.quantity, system, figure.digits)}: {figure.label}
        </h2>
        <button
          type="button"
          onClick={() => {
            asked.value = null;
            document.querySelector<HTMLElement>(`[data-figure="${id}"]`)?.focus();
          }}
        >
          Close
        </button>
      </div>
      <p>{text}</p>
      <p>
        <a
          href={`#${asked.value?.picture}`}
          onClick={(event) => {
            event.preventDefault();
            document.getElementById(asked.value?.picture ?? '')?.scrollIntoView();
          }}
        >
          See it in the picture
        </a>
      </p>
      <p role="status" data-why={help === 'running' ? 'running' : 'told'}>
        {moved === null
          ? 'The changes were run for the rooms only: see the same figure of the rooms.'
          : help === 'running'
            ? 'Running the changes one by one…'
            : help === 'failed'
              ? 'The changes could not be run.'
              : changeText(help, moved, system)}
      </p>
    </section>
  );
}

function changeText({ drawn, pulled }: PulledLevers, { key, least }: Moved, system: UnitSystem): string {
  const best = bestLever(drawn, pulled, key, least);
  if (best === null) return `Of ${pulled.length} single changes that were run, none moves it much.`;
  const say = (number: number) => inWords(key, number, system);
  const { heatingKWh, tooHotHours } = best.figures;
  const side =
    key === 'tooHotHours'
      ? `Back-up heat is then ${quantityText(heatingKWh, 'energy', system)} a year.`
      : `The rooms are then too hot for ${hoursInWords(tooHotHours)}.`;
  return `Of ${pulled.length} single changes that were run, one moves it most: ${best.lever.words}. That takes it from ${say(best.from)} to ${say(best.to)}. ${side}`;
}

function inWords(key: FigureKey, value: number, system: UnitSystem): string {
  switch (key) {
    case 'tooHotHours':
    case 'humidHours':
      return hoursInWords(value);
    case 'heatingKWh':
      return quantityText(value, 'energy', system);
    case 'coldestC':
    case 'sunspaceColdestC':
    case 'sunspaceWarmestC':
      return quantityText(value, 'temperature', system);
    case 'ventMovesPerDay':
      return `${value.toFixed(1)} moves a day`;
    default:
      return value.toFixed(1);
  }
}
