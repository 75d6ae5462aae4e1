import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type PoolThread, TaskPool } from '../../workers/task-pool.ts';

interface Held {
  readonly slice: readonly number[];
  readonly finish: () => void;
  readonly fail: (reason: unknown) => void;
  readonly die: () => void;
}

/** Threads whose slices wait until the test lets them go; a task's result is its square. */
function heldThreads() {
  const held: Held[] = [];
  let started = 0;
  let ended = 0;
  const startThread = (): PoolThread<number, number> => {
    started++;
    let die: (reason: unknown) => void = () => {};
    const died = new Promise<never>((_, reject) => {
      die = reject;
    });
    died.catch(() => {});
    let over = false;
    return {
      died,
      end: () => {
        if (!over) ended++;
        over = true;
      },
      perform: (slice) =>
        new Promise((resolve, reject) => {
          const place: Held = {
            slice,
            finish: () => resolve(slice.map((task) => task * task)),
            fail: reject,
            die: () => die(new Error('the thread died')),
          };
          held.push(place);
        }),
    };
  };
  const counts = () => ({ started, ended, alive: started - ended });
  return { held, startThread, counts };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Lets every promise that can settle do so. */
const settle = () => vi.advanceTimersByTimeAsync(0);

function poolOf(threads: ReturnType<typeof heldThreads>, count = 2, silentMs = 60_000) {
  const { startThread } = threads;
  return new TaskPool<number, number>({ startThread, threads: count, idleMs: 60_000, silentMs });
}

/** Let every slice go as it comes until the list settles. */
async function finishAll(threads: ReturnType<typeof heldThreads>): Promise<void> {
  for (let i = 0; i < 1000 && threads.held.length > 0; i++) {
    threads.held.shift()!.finish();
    await settle();
  }
}

const numbers = (count: number) => Array.from({ length: count }, (_, i) => i + 1);

test('results come back in the order of the tasks, and stream as slices finish', async () => {
  const threads = heldThreads();
  const pool = poolOf(threads);
  const streamed: number[] = [];
  const answer = pool.perform(numbers(40), { onResult: (result) => streamed.push(result) });
  await settle();
  expect(threads.held).toHaveLength(2);
  threads.held.splice(1, 1)[0]!.finish();
  await settle();
  expect(streamed).toEqual([4]);
  await finishAll(threads);
  expect(await answer).toEqual(numbers(40).map((task) => task * task));
  expect([...streamed].sort((one, other) => one - other)).toEqual(await answer);
  pool.close();
});

test('no more threads start than allowed, and none for an empty list', async () => {
  const threads = heldThreads();
  const pool = poolOf(threads, 3);
  expect(await pool.perform([])).toEqual([]);
  expect(threads.counts().started).toBe(0);
  const answer = pool.perform(numbers(100));
  await finishAll(threads);
  await settle();
  await finishAll(threads);
  await answer;
  expect(threads.counts().started).toBe(3);
  pool.close();
});

test('stopping ends the threads at work, and the next list starts fresh ones', async () => {
  const threads = heldThreads();
  const pool = poolOf(threads);
  const stop = new AbortController();
  const late: number[] = [];
  const answer = pool.perform(numbers(20), { signal: stop.signal, onResult: (result) => late.push(result) });
  await settle();
  const left = [...threads.held];
  stop.abort();
  await expect(answer).rejects.toMatchObject({ name: 'AbortError' });
  expect(threads.counts()).toEqual({ started: 2, ended: 2, alive: 0 });
  expect(pool.state).toEqual({ threads: 0, busy: 0 });
  for (const slice of left) slice.finish();
  await settle();
  expect(late).toEqual([]);
  expect(threads.held).toHaveLength(2);
  threads.held.length = 0;
  const again = pool.perform([3]);
  await settle();
  await finishAll(threads);
  expect(await again).toEqual([9]);
  pool.close();
});

test('stopping gently lets threads finish their slice and keeps them for the next list', async () => {
  const threads = heldThreads();
  const pool = poolOf(threads);
  const stop = new AbortController();
  const late: number[] = [];
  const answer = pool.perform(numbers(20), {
    signal: stop.signal,
    gentle: true,
    onResult: (result) => late.push(result),
  });
  const refused = expect(answer).rejects.toMatchObject({ name: 'AbortError' });
  await settle();
  stop.abort();
  await refused;
  expect(threads.counts()).toMatchObject({ started: 2, ended: 0 });
  const next = pool.perform([7]);
  await settle();
  await finishAll(threads);
  expect(await next).toEqual([49]);
  expect(late).toEqual([]);
  expect(threads.counts().started).toBe(2);
  pool.close();
});

test('a list stopped by whoever takes its results gives no more of them', async () => {
  const threads = heldThreads();
  const pool = poolOf(threads, 1);
  const stop = new AbortController();
  const taken: number[] = [];
  let isStopping = false;
  const answer = pool.perform(numbers(30), {
    signal: stop.signal,
    onResult: (result) => {
      taken.push(result);
      if (isStopping) stop.abort();
    },
  });
  await settle();
  // Slices grow; the test waits for one that holds more than one task.
  while (threads.held[0]!.slice.length < 2) {
    threads.held.shift()!.finish();
    await settle();
  }
  isStopping = true;
  const before = taken.length;
  threads.held.shift()!.finish();
  await expect(answer).rejects.toMatchObject({ name: 'AbortError' });
  expect(taken).toHaveLength(before + 1);
  pool.close();
});

test('a list stopped before it starts runs nothing', async () => {
  const threads = heldThreads();
  const pool = poolOf(threads);
  await expect(pool.perform([1], { signal: AbortSignal.abort() })).rejects.toMatchObject({
    name: 'AbortError',
  });
  expect(threads.counts().started).toBe(0);
});

test('stopping one list leaves another running', async () => {
  const threads = heldThreads();
  const pool = poolOf(threads, 2);
  const stop = new AbortController();
  const stopped = pool.perform([1], { signal: stop.signal });
  const kept = pool.perform([5, 6]);
  await settle();
  stop.abort();
  await expect(stopped).rejects.toMatchObject({ name: 'AbortError' });
  await settle();
  await finishAll(threads);
  expect(await kept).toEqual([25, 36]);
  pool.close();
});

test('a task that fails fails its list, with its own reason', async () => {
  const threads = heldThreads();
  const pool = poolOf(threads, 1);
  const answer = pool.perform([1, 2]);
  await settle();
  threads.held.shift()!.fail(new RangeError('climate is missing'));
  await expect(answer).rejects.toThrow('climate is missing');
  pool.close();
});

test('a task that brings down every thread is given up, with the cause', async () => {
  const threads = heldThreads();
  const pool = poolOf(threads, 1);
  const answer = pool.perform([1]);
  const fate = expect(answer).rejects.toThrow('the thread died');
  for (let i = 0; i < 3; i++) {
    await settle();
    threads.held.shift()!.die();
  }
  await fate;
  await settle();
  expect(threads.held).toHaveLength(0);
  expect(threads.counts()).toEqual({ started: 3, ended: 3, alive: 0 });
});

test('whichever threads die, no result is lost and none comes twice', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 1, max: 30 }),
      fc.integer({ min: 1, max: 4 }),
      fc.array(fc.boolean(), { maxLength: 60 }),
      async (count, size, fates) => {
        const threads = heldThreads();
        const pool = poolOf(threads, size);
        const streamed: number[] = [];
        const answer = pool.perform(numbers(count), { onResult: (result) => streamed.push(result) });
        answer.catch(() => {});
        const deaths = new Map<number, number>();
        for (let i = 0; streamed.length < count && i < 400; i++) {
          for (let turn = 0; turn < 4; turn++) await Promise.resolve();
          const slice = threads.held.shift();
          if (slice === undefined) continue;
          // No task may see more deaths than the pool forgives.
          const spared = slice.slice.some((task) => (deaths.get(task) ?? 0) >= 2);
          if (fates[i] === true && !spared) {
            for (const task of slice.slice) deaths.set(task, (deaths.get(task) ?? 0) + 1);
            slice.die();
          } else slice.finish();
        }
        expect(await answer).toEqual(numbers(count).map((task) => task * task));
        expect(streamed).toHaveLength(count);
        pool.close();
        expect(threads.counts().alive).toBe(0);
      },
    ),
    { numRuns: 60 },
  );
});

test('a thread that falls silent counts as dead: it is ended and its slice run elsewhere', async () => {
  const threads = heldThreads();
  const pool = poolOf(threads, 1, 200);
  const answer = pool.perform([4]);
  await settle();
  threads.held.shift();
  await vi.advanceTimersByTimeAsync(199);
  expect(threads.held).toHaveLength(0);
  await vi.advanceTimersByTimeAsync(1);
  expect(threads.held).toHaveLength(1);
  threads.held.shift()!.finish();
  expect(await answer).toEqual([16]);
  expect(threads.counts()).toEqual({ started: 2, ended: 1, alive: 1 });
  pool.close();
});

test('threads without work are let go', async () => {
  const threads = heldThreads();
  const { startThread } = threads;
  const pool = new TaskPool<number, number>({ startThread, threads: 2, idleMs: 20, silentMs: 60_000 });
  const answer = pool.perform([2]);
  await settle();
  await finishAll(threads);
  await answer;
  expect(threads.counts().alive).toBe(1);
  await vi.advanceTimersByTimeAsync(19);
  expect(threads.counts().alive).toBe(1);
  await vi.advanceTimersByTimeAsync(1);
  expect(threads.counts().alive).toBe(0);
  expect(pool.state).toEqual({ threads: 0, busy: 0 });
});

test('closing ends every thread and what is under way', async () => {
  const threads = heldThreads();
  const pool = poolOf(threads);
  const answer = pool.perform(numbers(9));
  await settle();
  pool.close();
  await expect(answer).rejects.toMatchObject({ name: 'AbortError' });
  expect(threads.counts().alive).toBe(0);
});
