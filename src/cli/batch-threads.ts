// Worker threads for a batch: hands each line to an idle thread, replaces a thread that dies and gives its line
// to another once, and ends them all when the lines are done. Answers come in any order.

import { Worker } from 'node:worker_threads';
import { errorLine } from './batch-line.ts';
import { threadCode } from './thread-code.ts';

interface Job {
  readonly line: string;
  readonly number: number;
  readonly attempts: number;
}

/**
 * Answer all lines on threads.
 *
 * @param lines the batch, one JSON text a line
 * @param threads how many, 1…64
 * @param write takes each answer with its line feed
 * @param script module that answers messages {line, number} with {number, answer}
 */
export async function answerOnThreads(
  lines: AsyncIterable<string>,
  threads: number,
  write: (text: string) => Promise<void>,
  script: URL = new URL('./batch-thread.ts', import.meta.url),
): Promise<void> {
  const idle: Worker[] = [];
  const waiting: ((worker: Worker) => void)[] = [];
  const all = new Set<Worker>();
  const running = new Map<Worker, { job: Job; finish: () => void }>();

  const release = (worker: Worker) => {
    const next = waiting.shift();
    if (next === undefined) idle.push(worker);
    else next(worker);
  };
  const taken = (): Promise<Worker> => {
    const worker = idle.pop();
    return worker === undefined ? new Promise((resolve) => waiting.push(resolve)) : Promise.resolve(worker);
  };
  const start = () => {
    const worker = new Worker(threadCode(script), { eval: true });
    all.add(worker);
    worker.on('message', async ({ answer }: { answer: string }) => {
      const current = running.get(worker);
      running.delete(worker);
      await write(`${answer}\n`);
      current?.finish();
      release(worker);
    });
    worker.on('error', async (error) => {
      all.delete(worker);
      const lost = running.get(worker);
      running.delete(worker);
      start();
      if (lost === undefined) return;
      if (lost.job.attempts === 0) await run({ ...lost.job, attempts: 1 });
      else await write(`${errorLine(lost.job.number, `the run failed twice: ${error.message}`)}\n`);
      lost.finish();
    });
    release(worker);
  };
  const run = async (job: Job): Promise<void> => {
    const worker = await taken();
    await new Promise<void>((resolve) => {
      running.set(worker, { job, finish: resolve });
      worker.postMessage({ line: job.line, number: job.number });
    });
  };

  for (let i = 0; i < threads; i++) start();
  const pending = new Set<Promise<void>>();
  let number = 0;
  try {
    for await (const line of lines) {
      number++;
      if (line.trim() === '') continue;
      const done = run({ line, number, attempts: 0 });
      pending.add(done);
      void done.then(() => pending.delete(done));
      if (pending.size >= 2 * threads) await Promise.race(pending);
    }
    await Promise.all(pending);
  } finally {
    await Promise.all([...all].map((worker) => worker.terminate()));
  }
}
