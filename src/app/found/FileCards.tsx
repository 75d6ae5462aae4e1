// A card for each file that was brought: what it is, by which clock it goes, where each of its columns hung, and what was
// left out of it. In: the design, for its places. What is wrong with a file stands on its card, and the others stay.

import type { Design } from '../../design/design.ts';
import type { Diary } from '../../loggers/diary-file.ts';
import type { LoggerColumn, LoggerFile } from '../../loggers/logger-file.ts';
import { notUsedWords, openedBy } from '../../matching/diary-openings.ts';
import { OUTDOORS } from '../../matching/outdoor-logger.ts';
import type { TakenFile } from '../../matching/taken-file.ts';
import { dateOfMoment } from '../../weather/moments.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import type { BroughtFile } from './brought.ts';
import { describeSpan } from './days.ts';
import { files, place, readAgain, takeAway } from './found-state.ts';
import { placesIn } from './places.ts';
import { ReadingsStrip } from './ReadingsStrip.tsx';
import { SunMeterFields } from './SunMeterFields.tsx';

interface CardProps {
  readonly brought: BroughtFile;
  readonly design: Design;
  readonly typical: TypicalYear;
  readonly system: UnitSystem;
  /** another weather counts */
  readonly isOverruled: boolean;
}

const CLOCKS = [
  ['auto', 'as the file shows'],
  ['standard', 'local standard time'],
  ['summer', 'an hour ahead of it, all the time'],
  ['utc', 'UTC'],
  ['zone', 'as this computer’s, summer time and all'],
] as const;

export function FileCard({ brought, design, typical, system, isOverruled }: CardProps) {
  const { id, name, taken, as, clock, places, why, plane = null } = brought;
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const again = (choice: Parameters<typeof readAgain>[1]) => void readAgain(id, choice, design, typical);
  const kind = taken?.kind ?? 'read';
  return (
    <article class={`found-card is-${kind}`} data-file={name} data-kind={kind} aria-label={name}>
      <header>
        <h3>{name}</h3>
        <button type="button" class="is-quiet" onClick={() => takeAway(id)}>
          Take away <span class="visually-hidden">{name}</span>
        </button>
      </header>
      {taken === null && <p role="status">Reading…</p>}
      {taken?.kind === 'refused' && (
        <div class="fault-list" role="alert">
          <p>This file cannot be used:</p>
          <ul>
            {taken.faults.map((fault) => (
              <li key={fault}>{fault}.</li>
            ))}
          </ul>
          <p>Everything else that you brought stays. Take it away, or bring another.</p>
        </div>
      )}
      {taken?.kind === 'weather' && (
        <>
          <p>
            <b>Weather</b> of {describeSpan(taken.real, typical.site.utcOffsetH)}.{' '}
            {isOverruled && 'Not used: a later file of weather counts.'}
          </p>
          <ReadingsStrip
            column={{ header: 'outdoor air', kind: 'temperature', values: taken.real.dryBulbC }}
            grid={taken.real}
            system={system}
          />
        </>
      )}
      {taken?.kind === 'logger' && (
        <>
          <p>
            <b>Logger</b>, {describeSpan(taken.file, typical.site.utcOffsetH)}, a reading every{' '}
            {Math.round(taken.file.stepMin)} min.
          </p>
          {taken.file.columns.map((column, i) => (
            <ColumnLine
              key={column.header}
              name={name}
              column={column}
              file={taken.file}
              zone={places[i] ?? null}
              choose={(next) => place(id, i, next)}
              design={design}
              system={system}
            />
          ))}
        </>
      )}
      {taken?.kind === 'diary' && (
        <DiaryLines diary={taken.diary} design={design} utcOffsetH={typical.site.utcOffsetH} />
      )}
      {taken !== null && why === undefined && (
        <div class="found-card-choices">
          <label>
            <span>What it is</span>
            <select
              data-choice="as"
              value={as === 'auto' ? (taken.kind === 'refused' ? 'logger' : taken.kind) : as}
              onChange={(event) => again({ as: event.currentTarget.value as BroughtFile['as'] })}
            >
              <option value="logger">what a logger wrote</option>
              <option value="weather">weather outdoors</option>
              <option value="diary">a diary of openings, fires</option>
              <option value="heat">heat or wood by time</option>
            </select>
          </label>
          <label>
            <span>Its clock goes</span>
            <select
              data-choice="clock"
              value={typeof clock === 'string' ? clock : 'zone'}
              onChange={(event) => {
                const chosen = event.currentTarget.value;
                again({ clock: chosen === 'zone' ? { zone } : (chosen as 'auto') });
              }}
            >
              {CLOCKS.map(([value, words]) => (
                <option key={value} value={value}>
                  {value === 'zone' ? `${words} (${zone})` : words}
                </option>
              ))}
            </select>
          </label>
        </div>
      )}
      {(taken?.kind === 'weather' || plane !== null) && (
        <SunMeterFields
          file={`found ${id}`}
          columns={taken?.kind === 'weather' ? taken.meters : []}
          plane={plane}
          latitudeDeg={typical.site.latitudeDeg}
          choose={(next) => again({ plane: next })}
        />
      )}
      {taken !== null && taken.kind !== 'refused' && <NoteList notes={notesOf(taken)} />}
    </article>
  );
}

function notesOf(taken: TakenFile): readonly string[] {
  switch (taken.kind) {
    case 'weather':
      return taken.notes;
    case 'logger':
      return taken.file.notes;
    case 'diary':
      return taken.diary.notes;
    case 'refused':
      return [];
  }
}

interface DiaryProps {
  readonly diary: Diary;
  readonly design: Design;
  readonly utcOffsetH: number;
}

function DiaryLines({ diary, design, utcOffsetH }: DiaryProps) {
  const { lines } = diary;
  const from = Math.min(...lines.map(({ fromMs }) => fromMs));
  const until = Math.max(...lines.map(({ untilMs }) => untilMs));
  const fires = lines.filter(({ amount }) => amount !== undefined);
  const openings = lines.filter(({ amount }) => amount === undefined);
  const strange = [...new Set(openings.map(({ what }) => what))].filter(
    (what) => openedBy(design, what) === null,
  );
  const counts = [
    ...(openings.length > 0 ? [`${openings.length} openings`] : []),
    ...(fires.length > 0 ? [`${fires.length} lines of heat${totalOf(fires)}`] : []),
  ];
  return (
    <>
      <p>
        <b>Diary</b> of {counts.join(' and ')}, {dateOfMoment(from, utcOffsetH)} to{' '}
        {dateOfMoment(until, utcOffsetH)}.
        {openings.length > 0 &&
          ' Paint the days it covers as shut: on them all stood shut but for what it says.'}
        {fires.length > 0 &&
          ' On these days nothing else is taken to heat; a line with 0 kg at either end makes them more.'}
      </p>
      {fires.length > 0 && toldElsewhere(diary) && (
        <p class="found-caution">
          Another file tells of heat too. What both tell of one day is added up; if it is the same fire, take
          one away.
        </p>
      )}
      {strange.map((what) => (
        <p key={what} class="found-caution">
          {notUsedWords(what)}
        </p>
      ))}
    </>
  );
}

/** Whether another file on the desk tells of heat. */
function toldElsewhere(diary: Diary): boolean {
  return files.value.some(
    ({ taken }) =>
      taken?.kind === 'diary' &&
      taken.diary !== diary &&
      taken.diary.lines.some(({ amount }) => amount !== undefined),
  );
}

/** Wood and heat in all, as " (84 kg of wood)"; nothing for power alone. */
function totalOf(lines: Diary['lines']): string {
  const sums = (['kg', 'kWh'] as const).flatMap((unit) => {
    const sum = lines.reduce((all, { amount }) => all + (amount?.unit === unit ? amount.value : 0), 0);
    return sum > 0 ? [`${Math.round(sum)} ${unit === 'kg' ? 'kg of wood' : 'kWh'}`] : [];
  });
  return sums.length > 0 ? ` (${sums.join(', ')})` : '';
}

function NoteList({ notes }: { notes: readonly string[] }) {
  return (
    <ul class="found-notes">
      {notes.map((note) => (
        <li key={note}>{note}</li>
      ))}
    </ul>
  );
}

interface ColumnProps {
  readonly name: string;
  readonly column: LoggerColumn;
  readonly file: LoggerFile;
  readonly zone: string | null;
  readonly choose: (zone: string | null) => void;
  readonly design: Design;
  readonly system: UnitSystem;
}

function ColumnLine({ name, column, file, zone, choose, design, system }: ColumnProps) {
  const places = placesIn(design);
  const isPlaced = zone === OUTDOORS || places.some((one) => one.zone === zone);
  return (
    <div class="found-column">
      <label>
        <span>
          “{column.header}”, {column.kind === 'temperature' ? 'temperature' : 'humidity'}: it hung in
        </span>
        <select
          data-place={`${name}: ${column.header}`}
          value={isPlaced ? zone! : ''}
          onChange={(event) => choose(event.currentTarget.value || null)}
        >
          {places.map((one) => (
            <option key={one.zone} value={one.zone}>
              {one.words}
            </option>
          ))}
          <option value={OUTDOORS}>outdoors, in the shade</option>
          <option value="">nowhere here: leave it out</option>
        </select>
      </label>
      <ReadingsStrip column={column} grid={file} system={system} />
    </div>
  );
}
