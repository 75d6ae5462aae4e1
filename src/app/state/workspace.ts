// The state of the page: one design with its history, the climate it stands in, the newest answer, and what only
// the view needs. Everything else is computed from these. A run starts whenever design or climate changes; answers
// carry rising numbers and a late one is dropped.

import { batch, computed, effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { NumberedAnswer, SimulationBridge } from '../../../workers/bridge.ts';
import type { Design } from '../../design/design.ts';
import { yearOfDesign } from '../../model/design-climate.ts';
import type { Outcome } from '../../outcomes/outcome.ts';
import type { Figures } from '../../questions/figures.ts';
import type { PlainHelp } from '../../questions/what-helps.ts';
import type { SampleAnswer } from '../../report/sample-answer.ts';
import { describeFault } from '../../weather/read-result.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { messageOf } from '../parts/message-of.ts';
import { changedAsAsked, stillAsked } from './asked-numbers.ts';
import type { FitNote } from './design-fit.ts';
import { createDesignHistory, type DesignHistory } from './design-history.ts';
import { createDraftKeeper, type DraftKeeper } from './draft-keeper.ts';

export type ClimateState =
  | { readonly state: 'loading'; readonly key: string }
  | {
      readonly state: 'ready';
      readonly key: string;
      /** as the design has it: made hotter where it asks for that */
      readonly year: TypicalYear;
      /** as read; what is handed to workers, which make it hotter themselves */
      readonly typical: TypicalYear;
    }
  | { readonly state: 'failed'; readonly key: string; readonly message: string };

export interface Workspace {
  readonly history: DesignHistory;
  readonly design: ReadonlySignal<Design>;
  readonly climate: ReadonlySignal<ClimateState>;
  /** the newest answer; null before the first, and before the first in another place */
  readonly answer: ReadonlySignal<NumberedAnswer | null>;
  /**
   * what the figures on screen are of: the newest answer; before the first, what was made with the page, if it is of this
   * design; null without either
   */
  readonly shown: ReadonlySignal<ShownYear | null>;
  /** what helps the sample most, made with the page; null for another design */
  readonly madeHelp: ReadonlySignal<PlainHelp | null>;
  /** a change that is looked at and not made; null for none */
  readonly preview: Signal<Preview | null>;
  /** outcome of the design before the last step, if it was run */
  readonly previous: ReadonlySignal<Outcome | null>;
  /** the answer shown belongs to an older design than the one on screen, or a number is typed and not yet taken */
  readonly stale: ReadonlySignal<boolean>;
  readonly runFault: ReadonlySignal<string | null>;
  /** numbers asked for that do not fit the design as it stands, with what is built instead */
  readonly fitNotes: ReadonlySignal<readonly FitNote[]>;
  /** what the last choice brought with it, a sentence each */
  readonly carried: ReadonlySignal<readonly string[]>;
  /** numbers that are typed and not yet taken */
  readonly drafts: DraftKeeper;
  readonly units: Signal<UnitSystem>;
  /** hour of the year put into the section, null for the plain drawing */
  readonly hour: Signal<number | null>;
  /** Change one value; the same gesture in a row is one step of undo. */
  set(path: string, value: unknown, gesture?: string): void;
  /** Replace the whole design, as one step unless it is part of a gesture; notes tell what does not fit. */
  replace(design: Design, notes?: readonly FitNote[], gesture?: string): void;
  /** Ask no longer for a number that does not fit; what is built stays. */
  settle(path: string): void;
  /** Load a climate if need be; false when it cannot be had. */
  climateReady(key: string): Promise<boolean>;
  /** The climate a design stands in, made hotter where it asks for that; null while it is not loaded. */
  yearFor(design: Design): TypicalYear | null;
  /** Take in a climate from a file, under its key. */
  keepClimate(key: string, year: TypicalYear): void;
}

/** What a change would make of the house: its design, and its figures of a whole year. */
export interface Preview {
  readonly words: string;
  readonly design: Design;
  readonly figures: Figures;
}

/** A year's outcome, with or without its hours at hand. */
export interface ShownYear {
  readonly outcome: Outcome;
  readonly design: Design;
  /** number of the run and its time [ms]; null for one made with the page */
  readonly run: { readonly number: number; readonly tookMs: number } | null;
}

const NO_NOTES: readonly FitNote[] = [];
const NOTHING_CARRIED: readonly string[] = [];

export interface WorkspaceOptions {
  readonly initial: Design;
  /** designs that undo goes back to, the latest last */
  readonly earlier?: readonly Design[];
  /** known of a design before anything is run */
  readonly made?: SampleAnswer;
  readonly bridge: Pick<SimulationBridge, 'keepClimate' | 'readClimate' | 'runLive'>;
  /** text of a climate that comes with the page, or a year kept earlier */
  readonly loadClimate: (key: string) => Promise<string | TypicalYear>;
}

/** A workspace that starts computing at once. */
export function createWorkspace({
  initial,
  earlier,
  made,
  bridge,
  loadClimate,
}: WorkspaceOptions): Workspace {
  const history = createDesignHistory(initial, earlier);
  const { design } = history;
  const years = signal<ReadonlyMap<string, TypicalYear>>(new Map());
  const failures = signal<ReadonlyMap<string, string>>(new Map());
  const answer = signal<NumberedAnswer | null>(null);
  const runFault = signal<string | null>(null);
  // They belong to a design, so that undo and redo bring them back with it.
  const notesOf = new WeakMap<Design, readonly FitNote[]>();
  const carriedOf = new WeakMap<Design, readonly string[]>();
  const fitNotes = computed(() => notesOf.get(design.value) ?? NO_NOTES);
  const carried = computed(() => carriedOf.get(design.value) ?? NOTHING_CARRIED);
  const drafts = createDraftKeeper();
  const change = (next: Design, notes: readonly FitNote[], gesture: string) => {
    if (notes.length > 0) notesOf.set(next, notes);
    history.change(next, gesture);
  };
  const outcomes = new WeakMap<Design, Outcome>();
  const climateKey = computed(() => design.value.climate);
  const hotter = computed(() => design.value.hotter);

  const climate = computed<ClimateState>(() => {
    const key = climateKey.value;
    const typical = years.value.get(key);
    if (typical) {
      const year = hotter.value ? yearOfDesign({ hotter: hotter.value }, typical) : typical;
      return { state: 'ready', key, year, typical };
    }
    const message = failures.value.get(key);
    return message === undefined ? { state: 'loading', key } : { state: 'failed', key, message };
  });

  const keepClimate = (key: string, year: TypicalYear) => {
    bridge.keepClimate(key, year);
    years.value = new Map(years.value).set(key, year);
  };

  const loading = new Map<string, Promise<boolean>>();
  const climateReady = (key: string): Promise<boolean> => {
    if (years.value.has(key)) return Promise.resolve(true);
    const running = loading.get(key) ?? load(key);
    loading.set(key, running);
    return running;
  };
  async function load(key: string): Promise<boolean> {
    try {
      const found = await loadClimate(key);
      const result =
        typeof found === 'string' ? await bridge.readClimate(found) : { ok: true as const, year: found };
      if (!result.ok) throw new Error(result.faults.map(describeFault).join('; '));
      keepClimate(key, result.year);
      return true;
    } catch (reason) {
      failures.value = new Map(failures.value).set(key, messageOf(reason));
      return false;
    } finally {
      loading.delete(key);
    }
  }
  effect(() => {
    void climateReady(climateKey.value);
  });

  const units = signal<UnitSystem>('metric');
  const hour = signal<number | null>(null);
  const preview = signal<Preview | null>(null);
  // Temperatures through the mass are large; they travel only while an hour is looked at.
  const wantsHistory = computed(() => hour.value !== null);
  effect(() => {
    const asking = design.value;
    if (climate.value.state !== 'ready') return;
    bridge
      .runLive({
        design: asking,
        climateKey: climate.value.key,
        history: wantsHistory.value,
        units: units.value,
      })
      .then(
        (got) => {
          if (got === null) return;
          outcomes.set(got.job.design, got.outcome);
          batch(() => {
            answer.value = got;
            runFault.value = null;
          });
        },
        (reason) => {
          runFault.value = messageOf(reason);
        },
      );
  });

  const current = computed(() => (answer.value?.job.climateKey === climateKey.value ? answer.value : null));
  const madeText = made && JSON.stringify(made.design);
  const isMade = computed(() => madeText !== undefined && JSON.stringify(design.value) === madeText);

  return {
    history,
    design,
    climate,
    answer: current,
    shown: computed(() => {
      if (current.value) {
        const { outcome, job, number, tookMs } = current.value;
        return { outcome, design: job.design, run: { number, tookMs } };
      }
      return made && isMade.value ? { outcome: made.outcome, design: design.value, run: null } : null;
    }),
    madeHelp: computed(() => (made && isMade.value ? made.help : null)),
    previous: computed(() => {
      void answer.value;
      const before = history.before.value;
      return before === null ? null : (outcomes.get(before) ?? null);
    }),
    stale: computed(() => drafts.waiting.value > 0 || answer.value?.job.design !== design.value),
    runFault,
    fitNotes,
    carried,
    units,
    hour,
    preview,
    drafts,
    set(path, value, gesture = path) {
      const chosen = changedAsAsked(design.value, fitNotes.value, path, value);
      if (chosen.carried.length > 0) carriedOf.set(chosen.design, chosen.carried);
      change(chosen.design, chosen.notes, gesture);
    },
    replace(next, notes = [], gesture = '') {
      drafts.takeAll();
      change(next, [...notes, ...stillAsked(design.value, next, fitNotes.value)], gesture);
    },
    settle(path) {
      const left = fitNotes.value.filter((note) => note.path !== path);
      change({ ...design.value }, left, '');
    },
    climateReady,
    yearFor(asking) {
      const typical = years.value.get(asking.climate);
      return typical ? yearOfDesign(asking, typical) : null;
    },
    keepClimate,
  };
}
