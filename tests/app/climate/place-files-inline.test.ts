// The lists of places inside a page in one file, as DAYSTONE_PLACES=inside builds it: the very bytes of the files.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, type Rollup } from 'vite';
import { expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../../..');

test('every list of places is inside, whole', async () => {
  const built = (await build({
    configFile: false,
    root: ROOT,
    logLevel: 'error',
    build: {
      write: false,
      minify: false,
      lib: { entry: join(ROOT, 'src/app/climate/place-files-inline.ts'), formats: ['es'] },
    },
  })) as Rollup.RollupOutput[];
  const folder = mkdtempSync(join(tmpdir(), 'daystone-places-'));
  try {
    const file = join(folder, 'inside.mjs');
    writeFileSync(file, built[0]!.output[0].code);
    const { placeFile } = (await import(pathToFileURL(file).href)) as {
      placeFile: (name: string) => Promise<Uint8Array>;
    };
    for (const name of ['places.bin', 'scripts.bin', 'normals.bin']) {
      const bytes = await placeFile(name);
      expect(Buffer.compare(bytes, readFileSync(join(ROOT, 'climates/places', name))), name).toBe(0);
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
});
