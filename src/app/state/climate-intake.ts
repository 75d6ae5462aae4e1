// From a weather file, or twelve normals, to the climate the design stands in. Known formats are read at once; a table
// of unknown origin and a file without a place wait for the person's answer first. Reading happens in the worker, and
// what it is at shows while it lasts. A refusal changes nothing and keeps what the person has answered.

import { batch, type ReadonlySignal, signal } from '@preact/signals';
import type { SimulationBridge } from '../../../workers/bridge.ts';
import type { MonthlyNormals } from '../../weather/normals.ts';
import { describeFault, type Fault, type ReadResult, type SiteHints } from '../../weather/read-result.ts';
import type { ReadStep } from '../../weather/reader.ts';
import type { TableChoices, TableInspection } from '../../weather/table/hourly-table.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { keepOwnClimate, ownKey } from '../keeping/own-climates.ts';
import type { Workspace } from './workspace.ts';

/** What is being read now. */
export interface Reading extends ReadStep {
  readonly name: string;
}

export interface WeatherQuestion {
  /** number of the file; a new one starts its form afresh */
  readonly id: number;
  readonly name: string;
  readonly bytes: Uint8Array;
  /** the guesses about a table; null for a file that lacks nothing but its place */
  readonly table: TableInspection | null;
  /** what was wrong when it was last read */
  readonly faults: readonly Fault[];
}

export interface ClimateIntake {
  readonly reading: ReadonlySignal<Reading | null>;
  readonly question: ReadonlySignal<WeatherQuestion | null>;
  /** Take in a weather file; asks first where the person must say something. */
  take(name: string, bytes: Uint8Array): Promise<void>;
  /** Look at the table in question again, with other choices. */
  lookAgain(choices: TableChoices): Promise<void>;
  /** Read the file in question with what the person has said. */
  answer(hints: SiteHints, choices: TableChoices): Promise<void>;
  /** Leave the file in question. */
  leave(): void;
  /** Make a year from normals; the faults, none when the design now stands in it. */
  takeNormals(normals: MonthlyNormals): Promise<readonly Fault[]>;
}

export interface IntakeOptions {
  readonly workspace: Workspace;
  readonly bridge: Pick<SimulationBridge, 'readClimate' | 'lookAtClimate'>;
  readonly tell: (kind: 'news' | 'trouble', text: string) => void;
}

const FAULTS_TOLD = 3;
/** how the readers name a place that is missing */
const PLACE_COLUMN = 'latitude and longitude';

export function createClimateIntake({ workspace, bridge, tell }: IntakeOptions): ClimateIntake {
  const reading = signal<Reading | null>(null);
  const question = signal<WeatherQuestion | null>(null);
  let files = 0;
  let looks = 0;

  /** Runs a call to the worker with its steps on screen; null when the worker was stopped under it. */
  async function shown<T>(name: string, call: (onStep: (step: ReadStep) => void) => Promise<T>): Promise<T> {
    reading.value = { name, words: 'Opening', share: 0 };
    try {
      return await call((step) => {
        if (reading.value?.name === name) reading.value = { name, ...step };
      });
    } finally {
      if (reading.value?.name === name) reading.value = null;
    }
  }

  function read(name: string, bytes: Uint8Array, hints: SiteHints, choices: TableChoices) {
    return shown(name, (onStep) =>
      bridge.readClimate(bytes, { ...hints, fileName: name }, choices, onStep).catch(stopped),
    );
  }

  async function standIn(year: TypicalYear, from: string): Promise<void> {
    const key = ownKey(year);
    // Taken in and drawn with in one go, a long file would hold the page up.
    await new Promise((goOn) => setTimeout(goOn, 0));
    batch(() => {
      question.value = null;
      workspace.keepClimate(key, year);
      workspace.set('climate', key, '');
    });
    tell('news', `The design now stands in ${year.site.name}, ${from}. ${year.notes.join(' ')}`.trim());
    await keepOwnClimate(key, year).catch(() =>
      tell('trouble', 'This browser would not keep the weather; it is gone after a reload.'),
    );
  }

  return {
    reading,
    question,
    async take(name, bytes) {
      const ask = (table: TableInspection | null) => {
        question.value = { id: ++files, name, bytes, table, faults: [] };
      };
      const look = await shown(name, () => bridge.lookAtClimate(bytes, {}, name)).catch(() => null);
      if (look?.table) return ask(look.table);
      const result = await read(name, bytes, {}, {});
      if (result.ok) return standIn(result.year, `from ${name}`);
      if (result.faults.some(({ column }) => column === PLACE_COLUMN)) return ask(null);
      tell('trouble', `${name}: ${faultWords(result.faults)}`);
    },
    async lookAgain(choices) {
      const asked = question.value;
      const number = ++looks;
      if (!asked) return;
      const { table } = await bridge.lookAtClimate(asked.bytes, choices, asked.name).catch(() => asked);
      if (number === looks && question.value?.id === asked.id) question.value = { ...question.value, table };
    },
    async answer(hints, choices) {
      const asked = question.value;
      if (!asked) return;
      const result = await read(asked.name, asked.bytes, hints, choices);
      if (result.ok) return standIn(result.year, `from ${asked.name}`);
      if (question.value?.id === asked.id) question.value = { ...question.value, faults: result.faults };
    },
    leave() {
      question.value = null;
    },
    async takeNormals(normals) {
      const result = await shown(normals.name, (onStep) =>
        bridge.readClimate(JSON.stringify(normals), {}, {}, onStep).catch(stopped),
      );
      if (!result.ok) return result.faults;
      await standIn(result.year, 'made from its monthly normals');
      return [];
    },
  };
}

/** Faults as one text. */
function faultWords(faults: readonly Fault[]): string {
  const told = faults.slice(0, FAULTS_TOLD).map(describeFault);
  const more = faults.length > FAULTS_TOLD ? ` (and ${faults.length - FAULTS_TOLD} more)` : '';
  return `${told.join('; ')}${more}.`;
}

/** The worker ended while it read, or failed: a program's fault, told like one of the file. */
function stopped(reason: unknown): ReadResult {
  const value = reason instanceof Error ? reason.message : 'the reading was stopped';
  return {
    ok: false,
    faults: [{ line: null, column: '', value, expected: 'a file that can be read; try again' }],
  };
}
