import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parseJson, readDesign } from '../../src/cli/design-file.ts';
import { EXAMPLES } from '../../src/design/examples.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'daystone-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

function file(text: string): string {
  const path = join(folder, 'd.json');
  writeFileSync(path, text);
  return path;
}
async function faults(place: string): Promise<readonly string[]> {
  const result = await readDesign(place);
  return result.ok ? [] : result.faults;
}

describe('a design from a file', () => {
  it('reads every example back from its own JSON', async () => {
    expect(EXAMPLES).toHaveLength(4);
    for (const { design } of EXAMPLES) {
      const result = await readDesign(file(JSON.stringify(design)));
      expect(result).toEqual({ ok: true, design });
    }
  });

  it('takes an example by its id where no file has that name', async () => {
    expect(await readDesign('modest')).toMatchObject({ ok: true, design: { version: 1 } });
  });

  it('names file, field, value and what is allowed, one line a fault', async () => {
    const design = structuredClone(EXAMPLES[2]!.design) as unknown as Record<string, Record<string, unknown>>;
    design.house!.floorAreaM2 = -3;
    design.glass!.type = 'gauze';
    const lines = await faults(file(JSON.stringify(design)));
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/d\.json: house\.floorAreaM2 is -3; allowed: /);
    expect(lines[1]).toMatch(/d\.json: glass\.type is "gauze"; allowed: one of /);
  });

  it('refuses what is no JSON with the place of the fault', async () => {
    expect((await faults(file('{\n  "version": 1,\n  oops\n}')))[0]).toMatch(/line 3, column 3: "oops"/);
    expect((await faults(file('')))[0]).toContain('the end of the text');
    expect((await faults(file('[1, 2]')))[0]).toContain('allowed');
  });

  it('refuses a folder, a missing file and a file too large', async () => {
    expect((await faults(folder))[0]).toContain('a folder');
    expect((await faults(join(folder, 'gone.json')))[0]).toContain(
      'an example: leaning, closed, modest, divided, leaning-stove, closed-stove, modest-stove',
    );
    expect((await faults(file(' '.repeat(1_000_001))))[0]).toContain('at most 1000000');
  });

  it('reads past a byte-order mark', () => {
    expect(parseJson('\uFEFF{"a": 1}')).toEqual({ ok: true, value: { a: 1 } });
  });
});
