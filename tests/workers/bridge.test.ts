import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import type { TypicalYear } from '../../src/weather/typical-year.ts';
import { SimulationBridge } from '../../workers/bridge.ts';
import type { RunAnswer, RunJob } from '../../workers/service.ts';
import type { Thread } from '../../workers/thread-supervisor.ts';

// A thread whose runs finish when the test says so. It stands for the worker only in its timing; what a run gives
// back is the name of the design, which is all the bridge passes on.
function heldThreads() {
  const log: string[] = [];
  const finish: (() => void)[] = [];
  const kill: ((cause: Error) => void)[] = [];
  const refuse: ((cause: Error) => void)[] = [];
  /** by thread: tells that a year has been run and its answer is being put together */
  const simulated: ((run: number) => void)[] = [];
  let started = 0;
  const startThread = (): Thread => {
    const id = ++started;
    let ended = false;
    const died = new Promise<never>((_, reject) => kill.push(reject));
    died.catch(() => {});
    return {
      died,
      service: {
        keepClimate: async (key: string) => void log.push(`${id} keeps ${key}`),
        readClimate: () =>
          new Promise((resolve) => {
            log.push(`${id} reads`);
            finish.push(() => resolve({ ok: false, faults: [] }));
          }),
        run: (design: Design) =>
          new Promise<RunAnswer>((resolve, reject) => {
            refuse.push(reject);
            log.push(`${id} runs ${design.name}`);
            finish.push(() => {
              if (!ended)
                resolve({ outcome: { design: design.name }, year: {}, tookMs: 1 } as unknown as RunAnswer);
            });
          }),
      } as unknown as Thread['service'],
      whenSimulated: (listener) => void simulated.push(listener),
      end: () => {
        ended = true;
        log.push(`${id} ends`);
      },
    };
  };
  return { log, finish, kill, refuse, simulated, startThread };
}

const climate = { id: 'x' } as unknown as TypicalYear;
const job = (name: string): RunJob => ({
  design: { ...EXAMPLES[0]!.design, name },
  climateKey: 'x',
  history: false,
  units: 'metric',
});

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Lets every promise that can settle do so. */
const settle = () => vi.advanceTimersByTimeAsync(0);

function bridgeOf(
  threads: ReturnType<typeof heldThreads>,
  options: { idleMs?: number; silentMs?: number; threads?: number } = {},
) {
  const { startThread } = threads;
  const bridge = new SimulationBridge({ startThread, idleMs: 60_000, silentMs: 60_000, ...options });
  bridge.keepClimate('x', climate);
  return bridge;
}

test('while one design runs, only the newest of those waiting is run next', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const answers = ['a', 'b', 'c', 'd'].map((name) => bridge.runLive(job(name)));
  await settle();
  threads.finish[0]!();
  await settle();
  threads.finish[1]!();
  expect((await Promise.all(answers)).map((answer) => answer?.job.design.name ?? null)).toEqual([
    'a',
    null,
    null,
    'd',
  ]);
  expect(threads.log).toEqual(['1 keeps x', '1 runs a', '1 runs d']);
  bridge.cancel();
});

test('a thread that only has its answer to put together is handed the newest design', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const a = bridge.runLive(job('a'));
  await settle();
  const b = bridge.runLive(job('b'));
  const c = bridge.runLive(job('c'));
  await settle();
  expect(threads.log).not.toContain('1 runs c');
  threads.simulated[0]!(1);
  await settle();
  expect(threads.log).toContain('1 runs c');
  expect(threads.log).not.toContain('1 runs b');
  threads.finish[0]!();
  threads.finish[1]!();
  expect((await Promise.all([a, b, c])).map((answer) => answer?.job.design.name ?? null)).toEqual([
    'a',
    null,
    'c',
  ]);
});

test('word of a run year that comes after its answer hands nothing over', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  void bridge.runLive(job('a'));
  await settle();
  threads.finish[0]!();
  await settle();
  void bridge.runLive(job('b'));
  await settle();
  void bridge.runLive(job('c'));
  threads.simulated[0]!(1);
  await settle();
  expect(threads.log).toContain('1 runs b');
  expect(threads.log).not.toContain('1 runs c');
});

test('a thread that dies with two designs out: the newer one is run again', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const a = bridge.runLive(job('a'));
  await settle();
  const b = bridge.runLive(job('b'));
  threads.simulated[0]!(1);
  await settle();
  threads.kill[0]!(new Error('out of memory'));
  await settle();
  expect(threads.log.filter((line) => line.startsWith('2 runs'))).toEqual(['2 runs b']);
  threads.finish[2]!();
  expect((await b)?.job.design.name).toBe('b');
  expect(await a).toBeNull();
});

test('numbers rise in the order of asking, so that a late answer can be told', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const first = bridge.runLive(job('a'));
  await settle();
  const second = bridge.runLive(job('b'));
  threads.finish[0]!();
  await settle();
  threads.finish[1]!();
  expect((await second)!.number).toBeGreaterThan((await first)!.number);
  bridge.cancel();
});

test('kept jobs all get an answer, and live ones go before them', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const kept = [bridge.runKept(job('k1')), bridge.runKept(job('k2'))];
  await settle();
  const live = bridge.runLive(job('live'));
  for (let i = 0; i < 3; i++) {
    threads.finish[i]!();
    await settle();
  }
  expect((await Promise.all([...kept, live])).every((answer) => answer !== null)).toBe(true);
  expect(threads.log.slice(1)).toEqual(['1 runs k1', '1 runs live', '1 runs k2']);
  bridge.cancel();
});

test('cancelling ends the thread, settles what waits with null, and the next job starts afresh with its climate', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const running = bridge.runLive(job('slow'));
  await settle();
  const waiting = bridge.runKept(job('waiting'));
  bridge.cancel();
  expect(await running).toBe(null);
  expect(await waiting).toBe(null);
  const next = bridge.runLive(job('next'));
  await settle();
  threads.finish[1]!();
  expect((await next)!.job.design.name).toBe('next');
  expect(threads.log).toEqual(['1 keeps x', '1 runs slow', '1 ends', '2 keeps x', '2 runs next']);
  bridge.cancel();
});

test('a climate given anew is sent again before the next run', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const first = bridge.runLive(job('a'));
  await settle();
  threads.finish[0]!();
  await first;
  bridge.keepClimate('x', climate);
  const second = bridge.runLive(job('b'));
  await settle();
  threads.finish[1]!();
  await second;
  expect(threads.log.filter((line) => line.includes('keeps'))).toHaveLength(2);
  bridge.cancel();
});

test('an idle thread is let go', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads, { idleMs: 5 });
  const answer = bridge.runLive(job('a'));
  await settle();
  threads.finish[0]!();
  await answer;
  await vi.advanceTimersByTimeAsync(4);
  expect(threads.log.at(-1)).toBe('1 runs a');
  await vi.advanceTimersByTimeAsync(1);
  expect(threads.log.at(-1)).toBe('1 ends');
});

test('a thread that reads a file is not let go before it has read it', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads, { idleMs: 5 });
  const answer = bridge.runLive(job('a'));
  await settle();
  threads.finish[0]!();
  await answer;
  const reading = bridge.readClimate('a long file');
  await vi.advanceTimersByTimeAsync(30);
  expect(threads.log.at(-1)).toBe('1 reads');
  threads.finish[1]!();
  expect(await reading).toMatchObject({ ok: false });
  await vi.advanceTimersByTimeAsync(5);
  expect(threads.log.at(-1)).toBe('1 ends');
});

test('a climate nobody gave is refused by name', async () => {
  const bridge = bridgeOf(heldThreads());
  await expect(bridge.runLive({ ...job('a'), climateKey: 'nowhere' })).rejects.toThrow(
    "climate is 'nowhere'",
  );
  bridge.cancel();
});

test('a thread that dies at work is replaced, and its design run again with its climate', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const answers = [bridge.runLive(job('a')), bridge.runKept(job('k'))];
  await settle();
  threads.kill[0]!(new Error('out of memory'));
  await settle();
  threads.finish[1]!();
  await settle();
  threads.finish[2]!();
  expect((await Promise.all(answers)).map((answer) => answer?.job.design.name)).toEqual(['a', 'k']);
  expect(threads.log).toEqual(['1 keeps x', '1 runs a', '1 ends', '2 keeps x', '2 runs a', '2 runs k']);
  bridge.cancel();
});

test('a design that brings two threads down is given up with the cause, and the next one runs', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const heavy = bridge.runLive(job('heavy'));
  heavy.catch(() => {});
  await settle();
  threads.kill[0]!(new Error('out of memory'));
  await settle();
  threads.kill[1]!(new Error('out of memory'));
  await expect(heavy).rejects.toThrow('the simulation stopped (out of memory), twice');
  const next = bridge.runLive(job('next'));
  await settle();
  threads.finish[2]!();
  expect((await next)?.job.design.name).toBe('next');
  bridge.cancel();
});

test('after a death a newer design goes before the one that was running', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const old = bridge.runLive(job('old'));
  await settle();
  const newer = bridge.runLive(job('newer'));
  threads.kill[0]!(new Error('gone'));
  await settle();
  threads.finish[1]!();
  expect(await old).toBe(null);
  expect((await newer)?.job.design.name).toBe('newer');
  bridge.cancel();
});

test('a thread that falls silent, told to nobody, counts as dead: for a year and for a file', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads, { idleMs: 60_000, silentMs: 20 });
  const answer = bridge.runLive(job('a'));
  await vi.advanceTimersByTimeAsync(19);
  expect(threads.log.at(-1)).toBe('1 runs a');
  await vi.advanceTimersByTimeAsync(1);
  expect(threads.log.at(-1)).toBe('2 runs a');
  threads.finish[1]!();
  expect((await answer)?.job.design.name).toBe('a');
  const refused = expect(bridge.readClimate('a file that hangs')).rejects.toThrow(
    'The file could not be read: the simulation was silent for 0.02 seconds.',
  );
  // Two threads are given the time.
  await vi.advanceTimersByTimeAsync(40);
  await refused;
  bridge.cancel();
});

test('a thread that dies while it rests is not used again', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const first = bridge.runLive(job('a'));
  await settle();
  threads.finish[0]!();
  await first;
  threads.kill[0]!(new Error('gone'));
  await settle();
  const second = bridge.runLive(job('b'));
  await settle();
  threads.finish[1]!();
  expect((await second)?.job.design.name).toBe('b');
  expect(threads.log.at(-1)).toBe('2 runs b');
  bridge.cancel();
});

test('with two threads the next design starts while one runs, and an answer that comes late is dropped', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads, { threads: 2 });
  const answers = ['a', 'b', 'c', 'd'].map((name) => bridge.runLive(job(name)));
  await settle();
  expect(threads.log.filter((line) => line.includes('runs'))).toEqual(['1 runs a', '2 runs b']);
  threads.finish[1]!();
  await settle();
  expect(threads.log.at(-1)).toBe('2 runs d');
  threads.finish[0]!();
  threads.finish[2]!();
  const names = (await Promise.all(answers)).map((answer) => answer?.job.design.name ?? null);
  expect(names).toEqual([null, 'b', null, 'd']);
});

test('a second thread starts only for a job that would have to wait', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads, { threads: 2 });
  for (const [i, name] of ['a', 'b'].entries()) {
    const answer = bridge.runLive(job(name));
    await settle();
    threads.finish[i]!();
    expect((await answer)?.job.design.name).toBe(name);
  }
  expect(threads.log).toEqual(['1 keeps x', '1 runs a', '1 runs b']);
});

test('a live job whose thread dies is not run again once a newer one is answered', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads, { threads: 2 });
  const [older, newer] = ['a', 'b'].map((name) => bridge.runLive(job(name)));
  await settle();
  threads.finish[1]!();
  expect((await newer)?.job.design.name).toBe('b');
  threads.kill[0]!(new Error('out of memory'));
  expect(await older).toBe(null);
  expect(threads.log.filter((line) => line.includes('runs a'))).toHaveLength(1);
});

test('cancelling ends every thread, and kept jobs run on as many as there are', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads, { threads: 2 });
  const answers = ['a', 'b', 'c'].map((name) => bridge.runKept(job(name)));
  await settle();
  threads.finish[0]!();
  expect((await answers[0])?.job.design.name).toBe('a');
  await settle();
  expect(threads.log.at(-1)).toBe('1 runs c');
  bridge.cancel();
  expect(await Promise.all(answers.slice(1))).toEqual([null, null]);
  expect(threads.log.filter((line) => line.includes('ends'))).toEqual(['1 ends', '2 ends']);
});

test('a live design that was run a moment ago is answered at once, and an older one still running is dropped', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const first = bridge.runLive(job('a'));
  await settle();
  threads.finish[0]!();
  const answer = await first;
  const second = bridge.runLive(job('b'));
  await settle();
  const again = await bridge.runLive(job('a'));
  expect(again?.outcome).toBe(answer!.outcome);
  expect(again!.number).toBeGreaterThan(answer!.number);
  threads.finish[1]!();
  expect(await second).toBe(null);
  expect(threads.log.filter((line) => line.includes('runs'))).toEqual(['1 runs a', '1 runs b']);
});

test('what is remembered is of this climate, these units and this detail alone', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads);
  const run = async (asked: RunJob) => {
    const answer = bridge.runLive(asked);
    await settle();
    threads.finish.at(-1)!();
    return answer;
  };
  const runs = () => threads.log.filter((line) => line.includes('runs')).length;
  await run(job('a'));
  await run({ ...job('a'), units: 'us' });
  await run({ ...job('a'), history: true });
  expect(runs()).toBe(3);
  bridge.keepClimate('x', { id: 'another' } as unknown as TypicalYear);
  await run(job('a'));
  expect(runs()).toBe(4);
  const old = bridge.runLive(job('b'));
  await settle();
  bridge.keepClimate('x', climate);
  threads.finish.at(-1)!();
  await old;
  await run(job('b'));
  expect(runs()).toBe(6);
});

test('the trouble of a live job is no news once a newer one is answered', async () => {
  const threads = heldThreads();
  const bridge = bridgeOf(threads, { threads: 2 });
  const [older, newer] = ['a', 'b'].map((name) => bridge.runLive(job(name)));
  await settle();
  threads.finish[1]!();
  expect((await newer)?.job.design.name).toBe('b');
  threads.refuse[0]!(new Error('a zone is missing'));
  expect(await older).toBe(null);
});
