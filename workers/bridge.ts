// Between the page and the simulation workers (thread-supervisor.ts): owns queue, cancel and rest. The page sees async
// functions and never a Worker. Two lanes: a live job replaces the live job still waiting before it, so that a
// drag always computes the newest design next; kept jobs (a comparison, a version) each get their answer.
// A thread that has run a year and is putting its answer together is handed the next job already, so that it never waits
// for the page. A second thread starts when a job comes while the first is at work: figures then follow a drag twice as
// often. A live answer that comes after a newer one is dropped. The last few answers are remembered, since a hand on its
// way back, and undo, pass through the same designs again.
// A call into a terminated worker never settles, so every call is raced against the end of its thread. A thread that
// dies, or is silent for too long, is replaced and its job run once more; only a second death is told.

import { proxy } from 'comlink';
import type { ReadResult, SiteHints } from '../src/weather/read-result.ts';
import type { ReadStep, WeatherLook } from '../src/weather/reader.ts';
import type { TableChoices } from '../src/weather/table/hourly-table.ts';
import type { TypicalYear } from '../src/weather/typical-year.ts';
import { AnswerCache } from './answer-cache.ts';
import type { ClimateGlance, RunAnswer, RunJob } from './service.ts';
import {
  CANCELLED,
  type SupervisedThread,
  type SupervisorOptions,
  type Thread,
  ThreadDeath,
  ThreadSupervisor,
} from './thread-supervisor.ts';

/** An answer with the number its job was given; numbers rise in the order of asking. */
export interface NumberedAnswer extends RunAnswer {
  readonly number: number;
  readonly job: RunJob;
}

interface Waiting {
  readonly lane: 'live' | 'kept';
  readonly job: RunJob;
  readonly number: number;
  readonly settle: (answer: NumberedAnswer | null) => void;
  readonly fail: (reason: unknown) => void;
  /** threads that died on it */
  deaths: number;
}

/** A job may bring a thread down this often before it is given up. */
const MOST_DEATHS = 2;

export class SimulationBridge {
  readonly #supervisor: ThreadSupervisor;
  readonly #climates = new Map<string, TypicalYear>();
  #live: Waiting | null = null;
  #kept: Waiting[] = [];
  readonly #answerCache = new AnswerCache();
  #reading = 0;
  #number = 0;
  /** of the newest live job answered, and handed to a thread */
  #newest = 0;
  #handed = 0;

  constructor(options: SupervisorOptions) {
    this.#supervisor = new ThreadSupervisor(options, () => this.#pump());
  }

  /** Remember a climate; it reaches a worker with the first job that needs it, and again after a restart. */
  keepClimate(key: string, climate: TypicalYear): void {
    this.#climates.set(key, climate);
    for (const { given } of this.#supervisor.members) given.delete(key);
    this.#answerCache.clear();
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

  /** Run the newest design next. Null when a newer live job took its place or was answered first, or on cancel. */
  runLive(job: RunJob): Promise<NumberedAnswer | null> {
    this.#live?.settle(null);
    this.#live = null;
    const known = this.#answerCache.get(job);
    if (known !== undefined) {
      this.#newest = ++this.#number;
      return Promise.resolve({ ...known, number: this.#newest, job });
    }
    return new Promise((settle, fail) => {
      this.#live = { lane: 'live', job, number: ++this.#number, settle, fail, deaths: 0 };
      this.#pump();
    });
  }

  /** Run a job that nothing replaces; live jobs go before it. Null when cancelled. */
  runKept(job: RunJob): Promise<NumberedAnswer | null> {
    return new Promise((settle, fail) => {
      this.#kept.push({ lane: 'kept', job, number: ++this.#number, settle, fail, deaths: 0 });
      this.#pump();
    });
  }

  /** Drop what waits, end what runs; the next job starts a fresh thread. */
  cancel(): void {
    this.#live?.settle(null);
    this.#live = null;
    for (const waiting of this.#kept.splice(0)) waiting.settle(null);
    this.#supervisor.release();
  }

  /** A call beside the runs: the thread is not let go under it, and one that dies is replaced once. */
  async #awake<T>(call: (service: Thread['service']) => Promise<T>): Promise<T> {
    this.#reading++;
    this.#supervisor.stay();
    try {
      for (let deaths = 1; ; deaths++) {
        const member = this.#supervisor.free() ?? this.#supervisor.any();
        try {
          return await this.#supervisor.watched<T>(member, call(member.thread.service));
        } catch (reason) {
          if (!(reason instanceof ThreadDeath)) throw reason;
          if (deaths >= MOST_DEATHS) throw new Error(`The file could not be read: ${reason.message}.`);
        }
      }
    } finally {
      this.#reading--;
      this.#restLater();
    }
  }

  #pump(): void {
    while (this.#live !== null || this.#kept.length > 0) {
      const member = this.#supervisor.free();
      if (member === null) return;
      const next = this.#live ?? this.#kept.shift()!;
      if (next === this.#live) this.#live = null;
      void this.#work(member, next);
    }
  }

  async #work(member: SupervisedThread, next: Waiting): Promise<void> {
    this.#supervisor.begin(member);
    if (next.lane === 'live') this.#handed = next.number;
    try {
      const answer = await this.#perform(member, next);
      if (this.#isLate(next)) next.settle(null);
      else {
        if (next.lane === 'live') this.#newest = next.number;
        next.settle(answer);
      }
    } catch (reason) {
      if (reason === CANCELLED || this.#isLate(next)) next.settle(null);
      else if (reason instanceof ThreadDeath) this.#again(next, reason);
      else next.fail(reason);
    } finally {
      this.#supervisor.end(member);
      this.#restLater();
      this.#pump();
    }
  }

  /** A newer live job has been answered: neither this one's answer nor its trouble is news. */
  #isLate({ lane, number }: Waiting): boolean {
    return lane === 'live' && number < this.#newest;
  }

  /** A job whose thread died goes back to the head of its lane, unless a newer live job stands there or is at work. */
  #again(waiting: Waiting, death: ThreadDeath): void {
    waiting.deaths++;
    if (waiting.deaths >= MOST_DEATHS) waiting.fail(new Error(`${death.message}, twice`));
    else if (waiting.lane === 'kept') this.#kept.unshift(waiting);
    else if (this.#live === null && waiting.number === this.#handed) this.#live = waiting;
    else waiting.settle(null);
  }

  async #perform(member: SupervisedThread, { job, number }: Waiting): Promise<NumberedAnswer> {
    const climate = this.#climates.get(job.climateKey);
    if (!climate) throw new RangeError(`climate is '${job.climateKey}'; allowed: one given by keepClimate`);
    if (!member.given.has(job.climateKey)) {
      await this.#supervisor.watched(member, member.thread.service.keepClimate(job.climateKey, climate));
      member.given.add(job.climateKey);
    }
    const { design, climateKey, history, units } = job;
    member.runs++;
    const call = member.thread.service.run(design, climateKey, { history, units });
    const answer = await this.#supervisor.watched(member, call);
    // Another climate may have taken the key meanwhile.
    if (this.#climates.get(job.climateKey) === climate) this.#answerCache.keep(job, answer);
    return { ...answer, number, job };
  }

  #restLater(): void {
    if (this.#reading === 0) this.#supervisor.restLater();
  }
}
