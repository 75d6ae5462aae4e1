// A thread of `batch --workers N`: takes numbered lines, posts their answers. The work itself is batch-line.ts.

import { parentPort } from 'node:worker_threads';
import { answerLine } from './batch-line.ts';

parentPort?.on('message', async ({ line, number }: { line: string; number: number }) => {
  parentPort?.postMessage({ number, answer: await answerLine(line, number) });
});
