// A pool of threads that work through lists of tasks: small slices go to whichever thread is free, results come as
// slices finish, a thread that dies is replaced and its slice given out again, stopping ends the threads at work.
// It knows nothing of houses; run-pool.ts and the command line's batch say what a task is.

import { type StopSignal, stopped } from '../src/questions/runner.ts';

/** What the pool needs of a thread. */
export interface PoolThread<Task, Result> {
  /** results in the order of the tasks; rejects when a task fails, and may never settle when the thread ends */
  perform(slice: readonly Task[]): Promise<readonly Result[]>;
  /** rejects when the thread dies of itself */
  readonly died: Promise<never>;
  end(): void;
}

export interface TaskPoolOptions<Task, Result> {
  readonly startThread: () => PoolThread<Task, Result>;
  /** how many at most, 1… */
  readonly threads: number;
  /** threads without work are let go after this [ms] */
  readonly idleMs: number;
  /** a thread silent on its slice for this long counts as dead [ms]; some deaths are told to nobody */
  readonly silentMs: number;
}

export interface PerformOptions<Result> {
  readonly signal?: StopSignal | undefined;
  /** when stopped, threads finish their slice and stay, in place of being ended: for lists that are often stopped */
  readonly gentle?: boolean | undefined;
  readonly onResult?: ((result: Result) => void) | undefined;
}

/** A task may bring a thread down this often before the pool gives it up. */
const MOST_DEATHS = 2;
/** Tasks in a slice: few, so that results stream and stopping loses little. */
const MOST_IN_SLICE = 4;
/** Slices that each thread should still get, so that none is left with a long one at the end. */
const SLICES_LEFT = 4;

interface Slot<Task, Result> {
  readonly thread: PoolThread<Task, Result>;
  work: { readonly batch: Batch<Task, Result>; readonly places: readonly number[] } | null;
}

interface Batch<Task, Result> {
  readonly tasks: readonly Task[];
  readonly results: Result[];
  /** places not given out, the next one last */
  readonly waiting: number[];
  slices: number;
  /** deaths by place; a task that has seen one goes alone */
  readonly deaths: Map<number, number>;
  left: number;
  readonly onResult: ((result: Result) => void) | undefined;
  readonly settle: (results: readonly Result[]) => void;
  readonly fail: (reason: unknown) => void;
}

class Death {
  readonly cause: unknown;
  constructor(cause: unknown) {
    this.cause = cause;
  }
}

export class TaskPool<Task, Result> {
  readonly #options: TaskPoolOptions<Task, Result>;
  readonly #slots = new Set<Slot<Task, Result>>();
  readonly #batches = new Set<Batch<Task, Result>>();
  #idleTimer: ReturnType<typeof setTimeout> | undefined;

  constructor(options: TaskPoolOptions<Task, Result>) {
    this.#options = options;
  }

  /** Threads alive and, of these, at work. */
  get state(): { readonly threads: number; readonly busy: number } {
    const busy = [...this.#slots].filter(({ work }) => work !== null).length;
    return { threads: this.#slots.size, busy };
  }

  /**
   * Work through a list.
   *
   * @returns results in the order of the tasks; rejects with an AbortError when stopped
   */
  perform(tasks: readonly Task[], options: PerformOptions<Result> = {}): Promise<readonly Result[]> {
    const { signal, gentle = false, onResult } = options;
    if (signal?.aborted) return Promise.reject(stopped());
    if (tasks.length === 0) return Promise.resolve([]);
    return new Promise((resolve, reject) => {
      const stop = () => {
        if (gentle) this.#batches.delete(batch);
        else this.#drop(batch);
        batch.fail(stopped());
      };
      const batch: Batch<Task, Result> = {
        tasks,
        results: new Array<Result>(tasks.length),
        waiting: Array.from(tasks, (_, i) => tasks.length - 1 - i),
        slices: 0,
        deaths: new Map(),
        left: tasks.length,
        onResult,
        settle: (results) => {
          signal?.removeEventListener('abort', stop);
          resolve(results);
        },
        fail: (reason) => {
          signal?.removeEventListener('abort', stop);
          reject(reason);
        },
      };
      signal?.addEventListener('abort', stop);
      this.#batches.add(batch);
      this.#pump();
    });
  }

  /** Start every thread before there is work for it; without any it is let go like the others. */
  startAll(): void {
    while (this.#slots.size < this.#options.threads) this.#startSlot();
    this.#pump();
  }

  /** End every thread; lists under way reject. */
  close(): void {
    for (const batch of [...this.#batches]) {
      this.#drop(batch);
      batch.fail(stopped());
    }
    this.#endAll();
  }

  /** Forget a list and end the threads that work on it. */
  #drop(batch: Batch<Task, Result>): void {
    this.#batches.delete(batch);
    for (const slot of [...this.#slots]) if (slot.work?.batch === batch) this.#end(slot);
    this.#pump();
  }

  #pump(): void {
    clearTimeout(this.#idleTimer);
    for (const batch of this.#batches) {
      while (batch.waiting.length > 0) {
        const slot = this.#freeSlot();
        if (slot === null) return;
        void this.#work(slot, batch, this.#takeSlice(batch));
      }
    }
    if (this.state.busy === 0) {
      this.#idleTimer = setTimeout(() => this.#endAll(), this.#options.idleMs);
    }
  }

  #freeSlot(): Slot<Task, Result> | null {
    for (const slot of this.#slots) if (slot.work === null) return slot;
    return this.#slots.size >= this.#options.threads ? null : this.#startSlot();
  }

  #startSlot(): Slot<Task, Result> {
    const slot: Slot<Task, Result> = { thread: this.#options.startThread(), work: null };
    slot.thread.died.catch(() => {
      // At work, the race in #work sees it; idle, nobody else would.
      if (slot.work === null) this.#end(slot);
    });
    this.#slots.add(slot);
    return slot;
  }

  /** One task at first, so that something is there to see at once; then more; one again towards the end. */
  #takeSlice(batch: Batch<Task, Result>): readonly number[] {
    const { waiting, deaths } = batch;
    const { threads } = this.#options;
    const share = Math.ceil(waiting.length / (threads * SLICES_LEFT));
    const size = Math.min(share, MOST_IN_SLICE, 1 + Math.floor(batch.slices / (threads * SLICES_LEFT)));
    batch.slices++;
    const places = [waiting.pop()!];
    while (places.length < size && waiting.length > 0 && !deaths.has(places[0]!)) places.push(waiting.pop()!);
    return places;
  }

  async #work(
    slot: Slot<Task, Result>,
    batch: Batch<Task, Result>,
    places: readonly number[],
  ): Promise<void> {
    slot.work = { batch, places };
    const { silentMs } = this.#options;
    let watch: ReturnType<typeof setTimeout> | undefined;
    const silent = new Promise<never>((_, reject) => {
      watch = setTimeout(
        () => reject(new Death(new Error(`a thread was silent for ${silentMs} ms`))),
        silentMs,
      );
    });
    const died = slot.thread.died.catch((cause) => {
      throw new Death(cause);
    });
    try {
      const slice = places.map((i) => batch.tasks[i]!);
      const results = await Promise.race([slot.thread.perform(slice), died, silent]);
      slot.work = null;
      if (this.#batches.has(batch)) this.#take(batch, places, results);
    } catch (reason) {
      if (reason instanceof Death) this.#bury(slot, batch, places, reason.cause);
      else {
        slot.work = null;
        this.#fail(batch, reason);
      }
    } finally {
      clearTimeout(watch);
    }
    this.#pump();
  }

  #take(batch: Batch<Task, Result>, places: readonly number[], results: readonly Result[]): void {
    for (const [i, place] of places.entries()) {
      batch.results[place] = results[i]!;
      batch.onResult?.(results[i]!);
      // Whoever takes a result may stop the list.
      if (!this.#batches.has(batch)) return;
    }
    batch.left -= places.length;
    if (batch.left > 0) return;
    this.#batches.delete(batch);
    batch.settle(batch.results);
  }

  /** A dead thread's slice goes back to the front of the list, each of its tasks on its own from now on. */
  #bury(
    slot: Slot<Task, Result>,
    batch: Batch<Task, Result>,
    places: readonly number[],
    cause: unknown,
  ): void {
    this.#end(slot);
    if (!this.#batches.has(batch)) return;
    for (const place of places) {
      const deaths = (batch.deaths.get(place) ?? 0) + 1;
      batch.deaths.set(place, deaths);
      batch.waiting.push(place);
      if (deaths > MOST_DEATHS) this.#fail(batch, cause);
    }
  }

  #fail(batch: Batch<Task, Result>, reason: unknown): void {
    if (!this.#batches.has(batch)) return;
    this.#drop(batch);
    batch.fail(reason);
  }

  #end(slot: Slot<Task, Result>): void {
    this.#slots.delete(slot);
    slot.thread.end();
  }

  #endAll(): void {
    clearTimeout(this.#idleTimer);
    for (const slot of [...this.#slots]) this.#end(slot);
  }
}
