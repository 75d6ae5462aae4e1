import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { VERSION } from '../../src/outcomes/version.ts';

it('outcomes carry the version of the package', () => {
  const text = readFileSync(join(import.meta.dirname, '../../package.json'), 'utf8');
  expect(VERSION).toBe((JSON.parse(text) as { version: string }).version);
});
