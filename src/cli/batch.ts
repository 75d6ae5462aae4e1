// `batch`: one JSON object a line on standard input, one outcome a line on standard output, so that any job
// scheduler can spread designs over machines. A wrong line gives an {"id", "error"} line and the batch goes on.

import { answerLine } from './batch-line.ts';
import { answerOnThreads } from './batch-threads.ts';
import { type Command, refused } from './command.ts';
import { WORKERS } from './run-pool.ts';
import { wholeNumberOf } from './whole-number.ts';

export const batchCommand: Command = {
  name: 'batch',
  usage: 'batch [--workers N]',
  line: 'reads {"id", "design", "climate"} a line, writes an outcome a line',
  valued: ['workers'],
  switches: [],
  positionals: [0, 0],
  run: async (args, console) => {
    const workers = wholeNumberOf(args, 'workers', { ...WORKERS, usual: 1 });
    if (typeof workers === 'string') return refused(workers);
    if (workers > 1) await answerOnThreads(console.lines(), workers, console.write);
    else {
      let number = 0;
      for await (const line of console.lines()) {
        number++;
        if (line.trim() !== '') await console.write(`${await answerLine(line, number)}\n`);
      }
    }
    return { ok: true, output: '' };
  },
};
