// The recipe of docs/batch.md, run as it is written, on one host with several jobs: fewer designs, two of them spoilt
// and one outcome taken away, so that the mending is tried too.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');
const COUNT = 5;
const PARTS = ['package.json', 'node_modules', 'bin', 'src', 'climates', 'workers'];

/** Commands of the recipe, in its order. */
const BLOCKS = [...readFileSync(join(ROOT, 'docs/batch.md'), 'utf8').matchAll(/```sh\n([\s\S]*?)```/g)].map(
  (match) => match[1]!,
);

const hasParallel = spawnSync('parallel', ['--version'], { encoding: 'utf8' }).stdout?.includes(
  'GNU parallel',
);

test('the recipe holds the five commands that are tried here', () => {
  expect(BLOCKS).toHaveLength(5);
  expect(BLOCKS[1]).toContain('parallel --pipe');
  expect(BLOCKS[2]).toContain('--sshloginfile hosts.txt');
});

// The continuous check installs the package; elsewhere its absence is said in the name of the skipped test.
test.skipIf(!hasParallel)(
  hasParallel
    ? 'a thousand designs cut to five give an outcome each on several jobs at once'
    : 'SKIPPED: GNU parallel is not here; install the Debian package parallel to try the recipe',
  () => {
    const folder = mkdtempSync(join(tmpdir(), 'daystone-recipe-'));
    try {
      for (const part of PARTS) symlinkSync(join(ROOT, part), join(folder, part));
      const sh = (text: string) => {
        const run = spawnSync('bash', ['-euo', 'pipefail', '-c', text], { cwd: folder, encoding: 'utf8' });
        expect(run.status, run.stderr).toBe(0);
      };
      const lines = (file: string) => readFileSync(join(folder, file), 'utf8').split('\n').filter(Boolean);
      const idsOf = (file: string) => lines(file).map((line) => JSON.parse(line).id as string);

      sh(BLOCKS[0]!.replace('COUNT=1000', `COUNT=${COUNT}`));
      expect(lines('designs.jsonl')).toHaveLength(COUNT);
      const spoilt = lines('designs.jsonl').map((line, i) =>
        i < 2 ? line.replace('"tiltDeg":90', '"tiltDeg":900') : line,
      );
      writeFileSync(join(folder, 'designs.jsonl'), `${spoilt.join('\n')}\n`);

      sh(BLOCKS[1]!.replace('-N 25', '-N 3 -j 2'));
      expect(idsOf('outcomes.jsonl').sort()).toEqual(idsOf('designs.jsonl').sort());
      const outcomes = lines('outcomes.jsonl').map((line) => JSON.parse(line));
      expect(outcomes.filter(({ error }) => error !== undefined)).toHaveLength(2);
      expect(outcomes.filter(({ zones }) => zones?.house.overheatedHours >= 0)).toHaveLength(COUNT - 2);

      // The same over hosts; the host named ':' is this one, reached without a shell far away.
      const near = readFileSync(join(folder, 'outcomes.jsonl'), 'utf8');
      symlinkSync(ROOT, join(folder, 'daystone'));
      writeFileSync(join(folder, 'hosts.txt'), '2/:\n');
      sh(BLOCKS[2]!);
      expect(lines('outcomes.jsonl').sort()).toEqual(near.split('\n').filter(Boolean).sort());

      const lost = idsOf('outcomes.jsonl')[3]!;
      const kept = lines('outcomes.jsonl').filter((line) => JSON.parse(line).id !== lost);
      writeFileSync(join(folder, 'outcomes.jsonl'), `${kept.join('\n')}\n`);
      sh(BLOCKS[3]!);
      expect(idsOf('rest.jsonl')).toEqual([lost]);

      sh(BLOCKS[4]!);
      expect(existsSync(join(folder, 'table.tsv'))).toBe(true);
      const glass = lines('table.tsv').map((line) => Number(line.split('\t')[0]));
      expect(glass.length).toBeGreaterThanOrEqual(COUNT - 3);
      expect([...glass].sort((one, other) => one - other)).toEqual(glass);
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
);
