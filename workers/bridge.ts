// Between the page and the simulation worker: owns start, queue, cancel, restart and rest. The page sees async
// functions and never a Worker. Two lanes: a live job replaces the live job still waiting before it, so that a
// drag always computes the newest design next; kept jobs (a comparison, a version) each get their answer.
// A call into a terminated worker never settles, so every call is raced against the end of its thread.

import { proxy, type Remote, wrap } from 'comlink';
import type { Design } from '../src/design/design.ts';
import type { TableChoices } from '../src/weather/hourly-table.ts';
import type { ReadResult, SiteHints } from '../src/weather/read-result.ts';
import type { ReadStep, WeatherLook } from '../src/weather/reader.ts';
import type { TypicalYear } from '../src/weather/typical-year.ts';
import type { ClimateGlance, RunAnswer, RunOptions, SimulationService } from './service.ts';

export interface RunJob extends RunOptions {
  readonly design: Design;
  readonly climateKey: string;
}

/** An answer with the number its job was given; numbers rise in the order of asking. */
export interface NumberedAnswer extends RunAnswer {
  readonly number: number;
  readonly job: RunJob;
}

/** What the bridge needs of a thread; a Worker is one. */
export interface Thread {
  readonly service: Pick<
    Remote<SimulationService>,
    'keepClimate' | 'lookAtClimate' | 'readClimate' | 'glanceAt' | 'run'
  >;
  end(): void;
}

export interface BridgeOptions {
  readonly startThread: () => Thread;
  /** an idle thread is let go after this [ms] */
  readonly idleMs: number;
}

interface Waiting {
  readonly job: RunJob;
  readonly number: number;
  readonly settle: (answer: NumberedAnswer | null) => void;
  readonly fail: (reason: unknown) => void;
}

interface Running {
  readonly thread: Thread;
  readonly given: Set<string>;
  /** rejects when the thread is ended */
  readonly ended: Promise<never>;
  readonly end: () => void;
}

const CANCELLED = Symbol('cancelled');

export class SimulationBridge {
  readonly #options: BridgeOptions;
  readonly #climates = new Map<string, TypicalYear>();
  #thread: Running | null = null;
  #live: Waiting | null = null;
  #kept: Waiting[] = [];
  #busy = false;
  #reading = 0;
  #number = 0;
  #idleTimer: ReturnType<typeof setTimeout> | undefined;

  constructor(options: BridgeOptions) {
    this.#options = options;
  }

  /** Remember a climate; it reaches the worker with the first job that needs it, and again after a restart. */
  keepClimate(key: string, climate: TypicalYear): void {
    this.#climates.set(key, climate);
    this.#thread?.given.delete(key);
  }

  /** Read a weather file off the page's thread. */
  readClimate(
    content: Uint8Array | string,
    hints?: SiteHints,
    choices?: TableChoices,
    onStep?: (step: ReadStep) => void,
  ): Promise<ReadResult> {
    const told = onStep && proxy(onStep);
    return this.#awake<ReadResult>(async (service) => service.readClimate(content, hints, choices, told));
  }

  /** What a weather file is, off the page's thread: its format, and the guesses about a table's columns. */
  lookAtClimate(
    content: Uint8Array | string,
    choices?: TableChoices,
    fileName?: string,
  ): Promise<WeatherLook> {
    return this.#awake((service) => service.lookAtClimate(content, choices, fileName));
  }

  /** Figures and doubts of a climate, off the page's thread. */
  glanceAt(climate: TypicalYear): Promise<ClimateGlance> {
    return this.#awake((service) => service.glanceAt(climate));
  }

  /** Run the newest design next. Null when a newer live job took its place or it was cancelled. */
  runLive(job: RunJob): Promise<NumberedAnswer | null> {
    return new Promise((settle, fail) => {
      this.#live?.settle(null);
      this.#live = { job, number: ++this.#number, settle, fail };
      void this.#pump();
    });
  }

  /** Run a job that nothing replaces; live jobs go before it. Null when cancelled. */
  runKept(job: RunJob): Promise<NumberedAnswer | null> {
    return new Promise((settle, fail) => {
      this.#kept.push({ job, number: ++this.#number, settle, fail });
      void this.#pump();
    });
  }

  /** Drop what waits, end what runs; the next job starts a fresh thread. */
  cancel(): void {
    this.#live?.settle(null);
    this.#live = null;
    for (const waiting of this.#kept.splice(0)) waiting.settle(null);
    this.#release();
  }

  /** A call beside the runs; the thread is not let go under it. */
  async #awake<T>(call: (service: Thread['service']) => Promise<T>): Promise<T> {
    const running = this.#started();
    this.#reading++;
    clearTimeout(this.#idleTimer);
    try {
      return await Promise.race([call(running.thread.service), running.ended]);
    } finally {
      this.#reading--;
      this.#restLater();
    }
  }

  async #pump(): Promise<void> {
    if (this.#busy) return;
    const next = this.#live ?? this.#kept.shift();
    if (!next) return;
    if (next === this.#live) this.#live = null;
    this.#busy = true;
    clearTimeout(this.#idleTimer);
    try {
      next.settle(await this.#perform(next));
    } catch (reason) {
      if (reason === CANCELLED) next.settle(null);
      else next.fail(reason);
    } finally {
      this.#busy = false;
      this.#restLater();
      void this.#pump();
    }
  }

  async #perform({ job, number }: Waiting): Promise<NumberedAnswer> {
    const running = this.#started();
    if (!running.given.has(job.climateKey)) {
      const climate = this.#climates.get(job.climateKey);
      if (!climate) throw new RangeError(`climate is '${job.climateKey}'; allowed: one given by keepClimate`);
      await Promise.race([running.thread.service.keepClimate(job.climateKey, climate), running.ended]);
      running.given.add(job.climateKey);
    }
    const { design, climateKey, history, units } = job;
    const call = running.thread.service.run(design, climateKey, { history, units });
    const answer = await Promise.race([call, running.ended]);
    return { ...answer, number, job };
  }

  #started(): Running {
    if (this.#thread) return this.#thread;
    let end: (reason: unknown) => void = () => {};
    const ended = new Promise<never>((_, reject) => {
      end = reject;
    });
    ended.catch(() => {});
    const thread = this.#options.startThread();
    this.#thread = { thread, given: new Set(), ended, end: () => end(CANCELLED) };
    return this.#thread;
  }

  /** Lets the thread go after a while, unless it runs or reads something by then. */
  #restLater(): void {
    clearTimeout(this.#idleTimer);
    if (this.#busy || this.#reading > 0) return;
    this.#idleTimer = setTimeout(() => this.#release(), this.#options.idleMs);
  }

  #release(): void {
    clearTimeout(this.#idleTimer);
    this.#thread?.thread.end();
    this.#thread?.end();
    this.#thread = null;
  }
}

/** A thread out of a Worker. */
export function threadOfWorker(worker: Worker): Thread {
  return { service: wrap<SimulationService>(worker), end: () => worker.terminate() };
}
