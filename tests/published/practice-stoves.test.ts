// What people who heat with wood say, against the whole model: common practice, no source. A light stove in a light house
// swings it by more than a masonry heater swings a heavy one; a stove lit at noon in March overheats a sunny room.
import { expect, test } from 'vitest';
import { runYear } from '../../src/daystone.ts';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { type StoveSource, USUAL_STOVE } from '../../src/design/heat-source.ts';
import { bundledClimate } from '../weather/bundled-climates.ts';
import { check } from './ledger.ts';

const [LEANING, , MODEST] = EXAMPLES.map(({ design }) => design) as [Design, Design, Design];
const LIGHT: Design = {
  ...MODEST,
  mass: { ...MODEST.mass, areaM2: 0 },
  floor: { ...MODEST.floor, cover: 'carpet' },
};
const HEAVY: Design = {
  ...MODEST,
  mass: { ...MODEST.mass, areaM2: 60 },
  envelope: { ...MODEST.envelope, wallLining: 'adobe', wallLiningM: 0.2 },
};
const PRACTICE = { source: 'Wood heaters’ practice', mark: 'practice', kind: 'range', allowed: 0 } as const;
const HOURS_A_DAY = 24;
const MARCH = { from: 59 * HOURS_A_DAY, until: 90 * HOURS_A_DAY };

const stove = (design: Design, capacityKW: number, source: Partial<StoveSource> = {}): Design => ({
  ...design,
  heating: { ...design.heating, capacityKW, source: { ...USUAL_STOVE, ...source } },
});

/** Mean range of the days of December to February [K]. */
function winterSwing(airC: Float64Array): number {
  const days = Array.from({ length: 90 }, (_, i) => (i + 335) % 365);
  const ranges = days.map((day) => {
    const hours = airC.subarray(day * HOURS_A_DAY, (day + 1) * HOURS_A_DAY);
    return Math.max(...hours) - Math.min(...hours);
  });
  return ranges.reduce((sum, range) => sum + range, 0) / ranges.length;
}

test('on a grey coast a light stove swings a light house by more than a masonry heater a heavy one', () => {
  const climate = bundledClimate('quillayute');
  const swing = (design: Design) => winterSwing(runYear(design, climate).year.zones[0]!.airC);
  const light = swing(stove(LIGHT, 6));
  const heavy = swing(stove(HEAVY, 2, { stove: 'masonry' }));
  expect(light).toBeGreaterThan(1.5);
  check({
    ...PRACTICE,
    case: 'a light house with a 6 kW steel stove, a heavy one with a 2 kW masonry heater',
    quantity: 'winter swing of the light one by that of the heavy one',
    referenceMin: 1.25,
    referenceMax: 10,
    ours: light / heavy,
    unit: '',
  });
});

test('lit at noon a stove overheats a sunny room in March, more than with as much wood in the morning', () => {
  const climate = bundledClimate('denver');
  const hot = (source: Partial<StoveSource>) => {
    const { operativeC } = runYear(stove(LEANING, 6, source), climate).year.zones[0]!;
    const over = operativeC.subarray(MARCH.from, MARCH.until).map((celsius) => Math.max(0, celsius - 26));
    return over.reduce((sum, kelvin) => sum + kelvin, 0);
  };
  const [need, morning, noon] = [
    hot({}),
    hot({ lit: 'morning', litBy: 'habit' }),
    hot({ lit: 'noon', litBy: 'habit' }),
  ];
  const row = {
    ...PRACTICE,
    quantity: 'degree-hours above 26 °C in March, lit at noon by',
    unit: '',
    ours: 0,
  } as const;
  check({
    ...row,
    case: 'the leaning house in Denver, those lit when it is cold',
    referenceMin: 3,
    referenceMax: 100,
    ours: noon / need,
  });
  check({
    ...row,
    case: 'the leaning house in Denver, those lit in the morning with as much wood',
    referenceMin: 1.1,
    referenceMax: 10,
    ours: noon / morning,
  });
});
