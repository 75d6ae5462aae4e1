import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { batchCommand } from '../../src/cli/batch.ts';
import { answerOnThreads } from '../../src/cli/batch-threads.ts';
import { answersById, BATCH_DESIGN, BATCH_LINES } from './batch-lines.ts';
import { faultsOf, runCommand } from './run-command.ts';

describe('a batch', () => {
  // That threads give the same is held where they are started, in package.test.ts.
  it('answers each line, faults among them, and goes on', async () => {
    const { written } = await runCommand(batchCommand, [], BATCH_LINES);
    const rows = answersById(written);
    expect(rows.get('a')).toMatchObject({ design: BATCH_DESIGN.name });
    expect((rows.get('a') as { site: { name: string } }).site.name).toContain('Tucson');
    expect(rows.get(2)?.error).toContain('"not json"');
    expect(rows.get('b')?.error).toContain('house.storeys is 9');
    expect(rows.get('c')?.error).toContain('atlantis; allowed: denver');
    expect(rows.get('d')?.error).toContain('weather; allowed: the keys id, design, climate');
    expect(rows.get(7)?.error).toContain('allowed: an object');
    expect(rows.get(8)).toMatchObject({ design: BATCH_DESIGN.name });
  });

  it('refuses a number of workers that is none', async () => {
    for (const asked of ['0', '1.5', 'many', '65']) {
      expect(await faultsOf(batchCommand, '--workers', asked)).toEqual([
        `--workers: ${asked}; allowed: a whole number from 1 to 64`,
      ]);
    }
  });
});

describe('threads that die', () => {
  it('lose no line: it is run again elsewhere, and given up only the second time', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'daystone-'));
    try {
      const marks = join(folder, 'marks');
      const script = join(folder, 'thread.mjs');
      // Dies on the first sight of "once", always on "never".
      writeFileSync(
        script,
        `import { appendFileSync, existsSync } from 'node:fs';
         import { parentPort } from 'node:worker_threads';
         parentPort.on('message', ({ line, number }) => {
           if (line === 'never') throw new Error('dead');
           if (line === 'once' && !existsSync(${JSON.stringify(marks)})) {
             appendFileSync(${JSON.stringify(marks)}, 'x');
             throw new Error('dead');
           }
           parentPort.postMessage({ number, answer: JSON.stringify({ id: number, line }) });
         });`,
      );
      const written: string[] = [];
      const lines = async function* () {
        yield* ['one', 'once', 'two', 'never', 'three', 'four'];
      };
      await answerOnThreads(
        lines(),
        2,
        async (text) => {
          written.push(text.trim());
        },
        pathToFileURL(script),
      );
      expect(written.sort()).toEqual(
        [
          '{"id":1,"line":"one"}',
          '{"id":2,"line":"once"}',
          '{"id":3,"line":"two"}',
          '{"id":4,"error":"the run failed twice: dead"}',
          '{"id":5,"line":"three"}',
          '{"id":6,"line":"four"}',
        ].sort(),
      );
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
