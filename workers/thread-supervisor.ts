// The threads behind the bridge: started when there is work for one more, watched while they work, buried when they die
// or fall silent, let go when idle. It knows calls, not what they are for.

import type { Remote } from 'comlink';
import type { SimulationService } from './service.ts';

/** What the bridge needs of a thread; a Worker is one. */
export interface Thread {
  readonly service: Pick<
    Remote<SimulationService>,
    'keepClimate' | 'lookAtClimate' | 'readClimate' | 'glanceAt' | 'run'
  >;
  /** rejects when the thread dies of itself */
  readonly died: Promise<never>;
  /** hears whenever a year has been run and only its answer is left to put together: which, counted from 1 */
  whenSimulated?(listener: (run: number) => void): void;
  end(): void;
}

export interface SupervisorOptions {
  readonly startThread: () => Thread;
  /** idle threads are let go after this [ms] */
  readonly idleMs: number;
  /** threads at most; 1 unless said */
  readonly threads?: number;
  /** a thread silent on a year or a file for this long counts as dead [ms]; half a minute unless said */
  readonly silentMs?: number;
}

/** A thread under supervision. */
export interface SupervisedThread {
  readonly thread: Thread;
  /** climates it has been given */
  readonly given: Set<string>;
  /** rejects when the thread is ended */
  readonly ended: Promise<never>;
  readonly end: (reason: unknown) => void;
  /** jobs it was given and has not answered */
  jobs: number;
  /** a year is run on it, so that another job would wait */
  busy: boolean;
  /** years it was asked for so far */
  runs: number;
}

/** Why a call into a thread that was let go has no answer. */
export const CANCELLED = Symbol('cancelled');
/** A year takes some 0.1 s, the largest file a few seconds; the rest is room for slow and sleeping machines. */
const SILENT_MS = 30_000;

/** Why a call into a thread that died has no answer. */
export class ThreadDeath extends Error {}

export class ThreadSupervisor {
  readonly #options: SupervisorOptions;
  readonly #onFree: () => void;
  readonly #members = new Set<SupervisedThread>();
  #idleTimer: ReturnType<typeof setTimeout> | undefined;

  /** @param onFree told when a thread could be handed its next job though its last answer is still out */
  constructor(options: SupervisorOptions, onFree: () => void) {
    this.#options = options;
    this.#onFree = onFree;
  }

  get members(): Iterable<SupervisedThread> {
    return this.#members;
  }

  /**
   * A thread without a job, started if there may be one more; failing that, one that only has an answer to put together.
   * Null when all are at work.
   */
  free(): SupervisedThread | null {
    for (const member of this.#members) if (member.jobs === 0) return member;
    if (this.#members.size < (this.#options.threads ?? 1)) return this.#start();
    for (const member of this.#members) if (!member.busy) return member;
    return null;
  }

  /** A thread is given a job. */
  begin(member: SupervisedThread): void {
    member.jobs++;
    member.busy = true;
    this.stay();
  }

  /** A job of a thread is over, with an answer or without. */
  end(member: SupervisedThread): void {
    member.jobs--;
    if (member.jobs === 0) member.busy = false;
  }

  /** A thread, at work or not. */
  any(): SupervisedThread {
    return [...this.#members][0] ?? this.#start();
  }

  /** The call's answer, or the end of its thread: by death, by silence, or because it was let go. */
  async watched<T>(member: SupervisedThread, call: Promise<T>): Promise<T> {
    const silentMs = this.#options.silentMs ?? SILENT_MS;
    const watch = setTimeout(
      () => this.#bury(member, `the simulation was silent for ${silentMs / 1000} seconds`),
      silentMs,
    );
    try {
      return await Promise.race([call, member.ended]);
    } finally {
      clearTimeout(watch);
    }
  }

  /** Not to be let go for now. */
  stay(): void {
    clearTimeout(this.#idleTimer);
  }

  /** Lets the threads go after a while, unless one is at work. */
  restLater(): void {
    clearTimeout(this.#idleTimer);
    if ([...this.#members].some(({ jobs }) => jobs > 0)) return;
    this.#idleTimer = setTimeout(() => this.release(), this.#options.idleMs);
  }

  /** Lets every thread go, at work or not. */
  release(): void {
    clearTimeout(this.#idleTimer);
    for (const { thread, end } of this.#members) {
      thread.end();
      end(CANCELLED);
    }
    this.#members.clear();
  }

  #bury(member: SupervisedThread, cause: string): void {
    member.thread.end();
    member.end(new ThreadDeath(cause));
    this.#members.delete(member);
  }

  #start(): SupervisedThread {
    let end: (reason: unknown) => void = () => {};
    const ended = new Promise<never>((_, reject) => {
      end = reject;
    });
    ended.catch(() => {});
    const thread = this.#options.startThread();
    const member: SupervisedThread = {
      thread,
      given: new Set(),
      ended,
      end,
      jobs: 0,
      busy: false,
      runs: 0,
    };
    this.#members.add(member);
    thread.whenSimulated?.((run) => {
      if (run < member.runs || !this.#members.has(member)) return;
      member.busy = false;
      this.#onFree();
    });
    thread.died.catch((cause) => {
      if (!this.#members.has(member)) return;
      this.#bury(
        member,
        `the simulation stopped (${cause instanceof Error ? cause.message : String(cause)})`,
      );
    });
    return member;
  }
}
