import { expect, test } from 'vitest';
import { INPUT_GROUPS } from '../../../src/app/inputs/input-groups.ts';
import { INPUT_HELP, TRADE_WORDS } from '../../../src/app/inputs/input-help.ts';
import { unusualPaths } from '../../../src/app/inputs/unusual.ts';
import { FIRST_GIVEN, houseOf } from '../../../src/app/start/house-answers.ts';
import { withValueAt } from '../../../src/design/design-path.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { limitOf } from '../../../src/design/limits.ts';

test('a house of the five answers has nothing unusual, and each change is counted', () => {
  const design = houseOf({ ...FIRST_GIVEN, join: 'closed', build: 'earth' }, 'denver');
  expect(unusualPaths(design)).toEqual([]);
  expect(unusualPaths(withValueAt(design, 'air.ach50', 9))).toEqual(['air.ach50']);
  const leaning = unusualPaths(EXAMPLES.find(({ id }) => id === 'leaning')!.design);
  expect(leaning).toContain('plants.bedM2');
  expect(leaning).not.toContain('glass.tiltDeg');
});

test('what is explained, or has words of the trade, is an input, and each word a number it may have', () => {
  const paths = INPUT_GROUPS.flatMap(({ entries }) => entries.map(({ path }) => path));
  for (const path of [...Object.keys(INPUT_HELP), ...Object.keys(TRADE_WORDS)]) expect(paths).toContain(path);
  for (const [path, words] of Object.entries(TRADE_WORDS))
    for (const { value } of words) {
      expect(value).toBeGreaterThanOrEqual(limitOf(path).min);
      expect(value).toBeLessThanOrEqual(limitOf(path).max);
    }
  // R-20 is 3.52 m²K/W: 1 h·ft²·°F/Btu is 0.176110 m²K/W (NIST SP 811, appendix B).
  expect(TRADE_WORDS['envelope.wallResistance']!.find(({ words }) => words === 'R-20')!.value).toBe(3.52);
});
