// What lies on the desk of a visit: the files that were brought, where each column hung, what was told of the days, and the
// match under way or done. It outlives the view, so that nothing is lost by a look at the sheet.

import { computed, effect, signal } from '@preact/signals';
import { proxy } from 'comlink';
import type { DaysHeld, MatchAnswer } from '../../../workers/match-desk.ts';
import { createMatchPool } from '../../../workers/match-pool.ts';
import { startSimulationThread } from '../../../workers/simulation-thread.ts';
import { serviceThreadOf } from '../../../workers/worker-thread.ts';
import type { Design } from '../../design/design.ts';
import type { LoggerFile } from '../../loggers/logger-file.ts';
import type { MatchResult } from '../../matching/house-record.ts';
import { OUTDOORS, withOutdoorLogger } from '../../matching/outdoor-logger.ts';
import type { PlacedColumn } from '../../matching/record-of-files.ts';
import { type SharedDays, sharedDays } from '../../matching/shared-days.ts';
import type { TakenFile } from '../../matching/taken-file.ts';
import type { Stretch } from '../../matching/told-days.ts';
import { DAY_MS } from '../../weather/moments.ts';
import type { RealHours } from '../../weather/real/weather-record.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { messageOf } from '../parts/message-of.ts';
import type { BroughtFile, ToldDay } from './brought.ts';
import { atDesk } from './desk-thread.ts';
import { keepDesk, keptDesk } from './kept-desk.ts';
import { likelyPlace, type Place, placesIn } from './places.ts';

export interface Drawn {
  readonly held: DaysHeld;
  readonly drawn: MatchResult | null;
  readonly readings: MatchResult | null;
}

export type MatchState =
  | { readonly state: 'none' }
  | { readonly state: 'running'; readonly runs: number; readonly picture: Drawn | null }
  | { readonly state: 'failed'; readonly message: string }
  | {
      readonly state: 'done';
      readonly picture: Drawn;
      readonly answer: MatchAnswer;
      /** what it was asked of, to tell when that has changed */
      readonly mark: string;
      readonly isKept: boolean;
    };

export const files = signal<readonly BroughtFile[]>([]);
/** by the moment a day starts */
export const told = signal<ReadonlyMap<number, ToldDay>>(new Map());
export const match = signal<MatchState>({ state: 'none' });
/** A file larger than this is no table of a house's days. */
const MOST_BYTES = 60_000_000;
/** Changes are kept when none has come for so long [ms]. */
const KEEPING_MS = 300;

let count = 0;

/** The one weather that counts: the last that was brought. */
export const weatherFile = computed(() => files.value.findLast(({ taken }) => taken?.kind === 'weather'));

export const loggerFiles = computed(() =>
  files.value.flatMap((brought) =>
    brought.taken?.kind === 'logger' ? [{ brought, file: brought.taken.file as LoggerFile }] : [],
  ),
);

/** What was written down of openings, of all diaries. */
const diaryLines = computed(() =>
  files.value.flatMap(({ taken }) => (taken?.kind === 'diary' ? taken.diary.lines : [])),
);

function change(id: number, by: Partial<BroughtFile>): void {
  files.value = files.value.map((file) => (file.id === id ? { ...file, ...by } : file));
}

/** Take files in: all of them into the page at once, then each read off the page's thread. */
export async function bring(list: Iterable<File>, design: Design, typical: TypicalYear): Promise<void> {
  const fresh = [...list].map((file) => ({ id: ++count, file }));
  files.value = [
    ...files.value,
    ...fresh.map(
      ({ id, file }): BroughtFile => ({
        id,
        name: file.name,
        bytes: new Uint8Array(),
        as: 'auto',
        clock: 'auto',
        taken: null,
        places: [],
      }),
    ),
  ];
  await Promise.all(
    fresh.map(async ({ id, file }) => {
      const content = await bytesOf(file);
      if (typeof content === 'string') change(id, unreadable(content));
      else change(id, { bytes: content });
    }),
  );
  for (const { id } of fresh) await readAgain(id, {}, design, typical);
}

/** A file's bytes, or why there are none. */
async function bytesOf(file: File): Promise<Uint8Array | string> {
  if (file.size === 0) return 'the file is empty; allowed: a table';
  if (file.size > MOST_BYTES) return 'the file is larger than 60 MB; allowed: the days in question';
  const content = await file.arrayBuffer().catch(() => null);
  return content === null
    ? 'the file cannot be read; was it moved, or is it a folder?'
    : new Uint8Array(content);
}

/** Nothing of the file came in; its card stays, with the reason. */
function unreadable(why: string): Pick<BroughtFile, 'why' | 'taken'> {
  return { why, taken: { kind: 'refused', faults: [why] } };
}

/** Read a file by another clock, as something else, or with a sun meter on a plane. */
export async function readAgain(
  id: number,
  choice: Partial<Pick<BroughtFile, 'as' | 'clock' | 'plane'>>,
  design: Design,
  typical: TypicalYear,
): Promise<void> {
  change(id, choice);
  const file = files.value.find((one) => one.id === id);
  if (file === undefined || file.why !== undefined) return;
  const { name, bytes, as, clock, plane = null } = file;
  let taken: TakenFile;
  try {
    taken = await atDesk<TakenFile>(
      (desk) => desk.take(bytes, { name, site: typical.site, as, clock, plane }) as Promise<TakenFile>,
    );
  } catch (reason) {
    taken = { kind: 'refused', faults: [`the file could not be read: ${messageOf(reason)}`] };
  }
  const now = files.value.find((one) => one.id === id);
  // Taken away meanwhile, or asked for otherwise.
  if (now === undefined || now.as !== as || now.clock !== clock || (now.plane ?? null) !== plane) return;
  const headers = taken.kind === 'logger' ? taken.file.columns.map(({ header }) => header) : [];
  const places =
    now.places.length === headers.length
      ? now.places
      : headers.map((header) => likelyPlace(design, name, header));
  change(id, { taken, places });
}

export function takeAway(id: number): void {
  files.value = files.value.filter((file) => file.id !== id);
}

export function place(id: number, column: number, zone: string | null): void {
  const file = files.value.find((one) => one.id === id);
  if (file) change(id, { places: file.places.map((was, i) => (i === column ? zone : was)) });
}

/** Columns with a place that this design has. */
export function placedIn(design: Design): PlacedColumn[] {
  return columnsAt(placesIn(design));
}

/** The weather of the days: the station's, with the air of what hung outdoors; null without either. */
export function weatherOf(typical: TypicalYear): RealHours | null {
  const taken = weatherFile.value?.taken;
  const station = taken?.kind === 'weather' ? taken.real : null;
  return withOutdoorLogger(station, columnsAt([{ zone: OUTDOORS, words: OUTDOORS }]), typical.site);
}

function columnsAt(places: readonly Place[]): PlacedColumn[] {
  return loggerFiles.value.flatMap(({ brought, file }) =>
    file.columns.flatMap((column, i): PlacedColumn[] => {
      const at = places.find(({ zone }) => zone === brought.places[i]);
      if (at === undefined) return [];
      const { startMs, hours, stepMin } = file;
      const name = `${at.words}, “${column.header}” of ${brought.name}`;
      return [{ zone: at.zone, name, file: { startMs, hours, stepMin }, column }];
    }),
  );
}

/** Days that the weather and the loggers in the house share; null before there are both. */
export function daysShared(design: Design, typical: TypicalYear): SharedDays | null {
  const weather = weatherOf(typical);
  const columns = placedIn(design);
  if (weather === null || columns.length === 0) return null;
  return sharedDays(
    weather,
    typical.site.utcOffsetH,
    columns.map(({ file }) => file),
  );
}

let isRestored = false;

/** Once a visit: put back what was kept before, and keep from then on what changes. */
export async function restoreDesk(design: Design, typical: TypicalYear): Promise<void> {
  if (isRestored) return;
  isRestored = true;
  const kept = await keptDesk();
  if (kept !== null && files.value.length === 0) {
    files.value = kept.files.map(
      (file): BroughtFile => ({
        ...file,
        id: ++count,
        taken: null,
        ...(file.why !== undefined && unreadable(file.why)),
      }),
    );
    told.value = new Map(kept.told);
    await Promise.all(files.value.map(({ id }) => readAgain(id, {}, design, typical)));
  }
  let waiting: ReturnType<typeof setTimeout> | undefined;
  effect(() => {
    const desk = {
      files: files.value
        .filter(({ bytes, why }) => bytes.length > 0 || why !== undefined)
        .map(({ id: _, taken: __, ...file }) => file),
      told: [...told.value],
    };
    clearTimeout(waiting);
    waiting = setTimeout(() => void keepDesk(desk), KEEPING_MS);
  });
}

/** Tell something of days; null takes back what was told. */
export function tellOf(days: readonly number[], what: ToldDay | null): void {
  const next = new Map(told.value);
  for (const day of days) {
    if (what === null) next.delete(day);
    else next.set(day, what);
  }
  told.value = next;
}

function stretches(what: ToldDay): Stretch[] {
  return [...told.value].flatMap(([fromMs, said]) =>
    said === what ? [{ fromMs, untilMs: fromMs + DAY_MS }] : [],
  );
}

/** What a match is asked of, as text: another text, another answer. */
export function markOf(design: Design): string {
  const brought = files.value.map(({ id, as, clock, plane, places }) => [id, as, clock, plane, places]);
  return JSON.stringify([design, brought, [...told.value].sort()]);
}

let stop: AbortController | null = null;

/** Hold the design against the days. */
export async function hold(design: Design, typical: TypicalYear): Promise<void> {
  const real = weatherOf(typical);
  const period = daysShared(design, typical);
  if (real === null || period === null) return;
  stop?.abort();
  const controller = new AbortController();
  stop = controller;
  const mark = markOf(design);
  let runs = 0;
  let picture: Drawn | null = null;
  let pool: ReturnType<typeof createMatchPool> | null = null;
  const show = () => {
    if (!controller.signal.aborted) match.value = { state: 'running', runs, picture };
  };
  show();
  try {
    const order = {
      design,
      real,
      typical,
      period: { startMs: period.startMs, hours: period.hours },
      columns: placedIn(design),
      told: { shut: stretches('shut'), away: stretches('away') },
      diary: diaryLines.value,
    };
    const hands = {
      onStart: (held: DaysHeld) => {
        pool = createMatchPool(
          held.record,
          () => serviceThreadOf(startSimulationThread()),
          Math.max(1, navigator.hardwareConcurrency),
          {
            signal: controller.signal,
            onRun: () => {
              runs++;
              show();
            },
          },
        );
        picture = { held, drawn: null, readings: null };
        show();
      },
      run: (jobs: Parameters<NonNullable<typeof pool>['run']>[0]) => pool!.run(jobs),
      onRound: (readings: MatchResult, drawn: MatchResult) => {
        if (picture) picture = { ...picture, readings, drawn };
        show();
      },
    };
    const answer = await atDesk((desk) => desk.match(order, proxy(hands)));
    if (controller.signal.aborted) return;
    match.value = {
      state: 'done',
      picture: { ...picture!, readings: answer.match.readings },
      answer,
      mark,
      isKept: false,
    };
  } catch (reason) {
    if (!controller.signal.aborted) match.value = { state: 'failed', message: messageOf(reason) };
  } finally {
    (pool as ReturnType<typeof createMatchPool> | null)?.close();
  }
}

/** Stop; nothing comes of it, and everything that was brought stays. */
export function stopMatch(): void {
  stop?.abort();
  match.value = { state: 'none' };
}

/** Judge the house by what is found so far. */
export function endSearch(): void {
  void atDesk((desk) => desk.endSearch());
}
