// The sentence follows the figures: what is said of each is what the figure's own limit says.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { wordingOf } from '../../src/findings/wording.ts';
import type { OutcomeFigures } from '../../src/outcomes/outcome.ts';
import { verdictOf } from '../../src/report/verdict.ts';

const { design } = EXAMPLES[0]!;
const words = wordingOf('metric');

interface Said {
  hot?: number;
  damp?: number;
  mould?: number;
  cold?: number;
  heat?: number;
}

/** An outcome of which only these figures are read. */
function sayOf({ hot = 0, damp = 0, mould = 0, cold = 0, heat = 0 }: Said, of: Design = design) {
  const house = {
    tooHot: { hours: hot, limitHours: 262 },
    humidHours: damp,
    mouldIndexMax: mould,
    underheatedHours: cold,
  };
  const outcome = { zones: { house }, heating: { energyKWh: heat * of.house.floorAreaM2 } };
  return verdictOf(outcome as unknown as OutcomeFigures, of, words);
}

test('a house without fault is told so in one sentence', () => {
  expect(sayOf({})).toMatch(/^Cool enough in summer, dry enough, little back-up heat \(.*kWh\)\.$/);
});

test('each trouble is named with its hours, from the limit on and not before', () => {
  expect(sayOf({ hot: 262 })).toContain('within what is allowed');
  expect(sayOf({ hot: 300 })).toMatch(/^Too hot for 300 hours, where 262 are allowed,/);
  expect(sayOf({ damp: 430 })).toContain('damp at times');
  expect(sayOf({ damp: 3000 })).toContain('damp for 3000 hours,');
  expect(sayOf({ damp: 3000, mould: 3 })).toContain('damp for 3000 hours with mould in the corners');
  expect(sayOf({ mould: 3.4 })).toContain('mouldy in the corners');
  expect(sayOf({ cold: 500 })).toContain('too cold for 500 hours');
  expect(sayOf({ heat: 30 })).toContain('some back-up heat');
  expect(sayOf({ heat: 90 })).toContain('much back-up heat');
  expect(sayOf({}, { ...design, heating: { ...design.heating, capacityKW: 0 } })).toContain(
    'with no back-up heat.',
  );
});
