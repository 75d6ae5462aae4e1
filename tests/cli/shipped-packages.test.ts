import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { licencePage, licenceText, shippedPackages } from '../../src/cli/shipped-packages.ts';

const ROOT = join(import.meta.dirname, '../..');
const packages = shippedPackages(ROOT);

/** Licences that let others use, change and pass on, with the notice kept: no more is asked of who serves the page. */
const ALLOWED = ['MIT', 'ISC', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', 'OFL-1.1'];

test('docs/licences.md is up to date; npm run licences writes it', () => {
  expect(readFileSync(join(ROOT, 'docs/licences.md'), 'utf8')).toBe(licencePage(packages));
});

test('every package that ships has a licence of the permitted kinds, and its whole text', () => {
  expect(packages.length).toBeGreaterThan(15);
  for (const { name, licence, text } of packages) {
    expect(ALLOWED, name).toContain(licence);
    expect(text.length, name).toBeGreaterThan(400);
    expect(licenceText(packages)).toContain(text);
  }
});
