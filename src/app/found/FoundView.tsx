// The house as it is: a drawing held against what loggers wrote and the weather of the same days. It takes the sheet's place;
// the sheet is changed only when the house as found is kept, as one step of undo. What was brought outlives the view.

import '../style/view-head.css';
import '../style/found.css';
import { useEffect, useRef } from 'preact/hooks';
import type { Design } from '../../design/design.ts';
import { TAKE_CARE } from '../../matching/protocol.ts';
import { LEAST_DAYS } from '../../matching/shared-days.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { FilePicker } from '../parts/FilePicker.tsx';
import { useFocusedHeading } from '../parts/focused-heading.ts';
import { useSession } from '../state/session-context.ts';
import { DayStrip } from './DayStrip.tsx';
import { daysIn, describeSpan } from './days.ts';
import { FileCard } from './FileCards.tsx';
import { FoundPicture } from './FoundPicture.tsx';
import { FoundVerdict } from './FoundVerdict.tsx';
import {
  bring,
  daysShared,
  endSearch,
  files,
  hold,
  loggerFiles,
  markOf,
  match,
  placedIn,
  restoreDesk,
  stopMatch,
  tellOf,
  told,
  weatherFile,
  weatherOf,
} from './found-state.ts';

export function FoundView() {
  const { workspace } = useSession();
  const heading = useFocusedHeading();
  const climate = workspace.climate.value;
  return (
    <main class="found-view">
      <div class="view-head">
        <h1 ref={heading} tabIndex={-1}>
          The house as it is
        </h1>
        <p class="found-ways">
          <a class="button" href="#protocol">
            What to hang where: a page to print
          </a>
          <a class="button" href="#sheet">
            Back to the sheet
          </a>
        </p>
      </div>
      <p class="found-lead">
        For a house that stands. Bring what loggers wrote in it and the weather of the same days. “
        {workspace.design.value.name}” is run through those very days, and you are told what the house seems
        to be, how well that matches on days it was not shown, and what the record cannot tell. Nothing leaves
        this computer.
      </p>
      {climate.state === 'ready' ? (
        <Desk typical={climate.typical} />
      ) : (
        <p class="late" role="status">
          {climate.state === 'failed' ? climate.message : 'Fetching the climate…'}
        </p>
      )}
    </main>
  );
}

function Desk({ typical }: { typical: TypicalYear }) {
  const { workspace, list, tell } = useSession();
  const design = workspace.design.value;
  const system = workspace.units.value;
  const { utcOffsetH } = typical.site;
  const take = (brought: Iterable<File>) => void bring(brought, workspace.design.value, typical);
  useDrops(take);
  useEffect(() => void restoreDesk(workspace.design.peek(), typical), []);
  const shared = daysShared(design, typical);
  const lacks = lackOf(design, typical);
  const state = match.value;
  const keep = () => {
    if (state.state !== 'done' || state.answer.kept === null) return;
    const { kept } = state.answer;
    const version = list.keep(kept.name, kept);
    workspace.replace(kept);
    match.value = { ...state, isKept: true };
    tell(
      'news',
      `Kept as “${version.name}”. The house as found stands on the sheet; undo brings the drawing back.`,
    );
  };
  return (
    <>
      <section class="found-part" aria-labelledby="found-files">
        <h2 id="found-files">1. What was measured</h2>
        <Chooser take={take} />
        {files.value.length === 0 && (
          <ul class="found-list">
            {WHAT_TO_BRING.map(([what, how]) => (
              <li key={what}>
                <b>{what}</b> {how}
              </li>
            ))}
          </ul>
        )}
        <div class="found-cards">
          {files.value.map((brought) => (
            <FileCard
              key={brought.id}
              brought={brought}
              design={design}
              typical={typical}
              system={system}
              isOverruled={brought.taken?.kind === 'weather' && brought.id !== weatherFile.value?.id}
            />
          ))}
        </div>
        {lacks !== null && (
          <p class="found-lacks" role="status">
            {lacks}
          </p>
        )}
      </section>
      {shared !== null && shared.days >= LEAST_DAYS && (
        <>
          <section class="found-part" aria-labelledby="found-days">
            <h2 id="found-days">2. What is known of the days</h2>
            <p>
              Weather and loggers share {describeSpan(shared, utcOffsetH)}. Days with everything shut tell
              most. Where windows were opened and nobody wrote it down, habits are guessed along with the
              house, and less can be told.
            </p>
            <DayStrip days={daysIn(shared, utcOffsetH)} told={told.value} paint={tellOf} />
            <details class="found-care">
              <summary>{TAKE_CARE.title} when you keep a house shut</summary>
              <ul class="found-list">
                {TAKE_CARE.points.map((point) => (
                  <li key={point}>{point}</li>
                ))}
              </ul>
            </details>
          </section>
          <section class="found-part" aria-labelledby="found-match" aria-busy={state.state === 'running'}>
            <h2 id="found-match">3. The drawing against the days</h2>
            <p class="found-go">
              <button
                type="button"
                class="is-main"
                data-found="hold"
                disabled={state.state === 'running'}
                onClick={() => void hold(design, typical)}
              >
                Hold the drawing against these days
              </button>
              {state.state === 'running' && (
                <>
                  <button type="button" data-found="enough" onClick={endSearch}>
                    Enough: judge what is found
                  </button>
                  <button type="button" data-found="stop" onClick={stopMatch}>
                    Stop
                  </button>
                </>
              )}
            </p>
            {state.state === 'running' && <Progress runs={state.runs} />}
            {state.state === 'failed' && (
              <p class="found-fault" role="alert">
                It could not be done: {state.message}. Everything that you brought is still here.
              </p>
            )}
            {(state.state === 'running' || state.state === 'done') && state.picture && (
              <FoundPicture picture={state.picture} system={system} />
            )}
          </section>
        </>
      )}
      {state.state === 'done' && (
        <FoundVerdict
          answer={state.answer}
          system={system}
          isOld={!state.isKept && state.mark !== markOf(design)}
          isKept={state.isKept}
          keep={keep}
        />
      )}
    </>
  );
}

const WHAT_TO_BRING = [
  [
    'Loggers’ files:',
    'tables of times with temperature or humidity, of any maker, 1 to 60 minutes apart, at least five days. One for each room tells most.',
  ],
  [
    'Weather of the same days:',
    'a station’s table with the air temperature at least. With the sun, and from four weeks before the readings, much more can be told. A logger outdoors will do where there is none.',
  ],
  [
    'A diary, where something was opened or burnt:',
    'a table from, until, what, amount, as “2026-01-13 07:05, 2026-01-13 07:20, kitchen window” or “2026-01-13 17:30, 2026-01-13 22:00, stove, 8 kg”. A table of time and kW, kWh, kg of wood or logs does for heat alone.',
  ],
] as const;

/** Runs that a match usually takes: with windows told, and with habits to be guessed. */
const USUAL_RUNS = { told: 200, guessed: 750 };

function Progress({ runs }: { runs: number }) {
  const usual = runs <= USUAL_RUNS.told ? USUAL_RUNS.told : USUAL_RUNS.guessed;
  return (
    <p class="found-progress" role="status">
      <progress value={Math.min(runs, usual)} max={usual} aria-label="Runs done" /> {runs} runs of these days
      so far
    </p>
  );
}

function Chooser({ take }: { take: (files: Iterable<File>) => void }) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <div class="found-drop">
      <p>
        Drop files here: one or more loggers’ files, a table of the weather, and a diary where something was
        opened or burnt.
      </p>
      <button
        type="button"
        class={files.value.length === 0 ? 'is-main' : ''}
        onClick={() => input.current?.click()}
      >
        Choose files
      </button>
      <FilePicker
        input={input}
        label="Loggers’ files, weather and diaries"
        accept=".csv,.txt,.tsv,.dat,.gz"
        multiple
        onFiles={take}
      />
    </div>
  );
}

/** What is still wanted before anything can be held against anything, in a sentence; null for nothing. */
function lackOf(design: Design, typical: TypicalYear): string | null {
  if (files.value.length === 0) return null;
  if (files.value.some(({ taken }) => taken === null)) return null;
  const { utcOffsetH } = typical.site;
  const weather = weatherOf(typical);
  if (weather === null)
    return loggerFiles.value.length === 0
      ? 'Wanted yet: a logger’s file, and the weather of its days.'
      : 'Wanted yet: the weather of these days. If one of the files is that, or a logger hung outdoors, say so on its card.';
  const placed = placedIn(design);
  if (placed.length === 0) return 'Wanted yet: a logger’s file, with a place in this house.';
  if (!placed.some(({ column }) => column.kind === 'temperature'))
    return 'Wanted yet: a temperature of a room; humidity alone does not tell enough.';
  const shared = daysShared(design, typical);
  if (shared !== null && shared.days >= LEAST_DAYS) return null;
  const loggers = loggerFiles.value.map(
    ({ brought, file }) => `${brought.name} of ${describeSpan(file, utcOffsetH)}`,
  );
  return `Weather and loggers share ${shared?.days ?? 0} whole days; at least ${LEAST_DAYS} are needed. The weather is of ${describeSpan(weather, utcOffsetH)}, ${loggers.join(', ')}. Is a year wrong, or was a date read as another?`;
}

/** Files dropped anywhere on this view come here, and not to the sheet. */
function useDrops(take: (files: Iterable<File>) => void): void {
  const latest = useRef(take);
  latest.current = take;
  useEffect(() => {
    const over = (event: DragEvent) => {
      if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
    };
    const drop = (event: DragEvent) => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      latest.current([...event.dataTransfer.files]);
    };
    window.addEventListener('dragover', over, true);
    window.addEventListener('drop', drop, true);
    return () => {
      window.removeEventListener('dragover', over, true);
      window.removeEventListener('drop', drop, true);
    };
  }, []);
}
