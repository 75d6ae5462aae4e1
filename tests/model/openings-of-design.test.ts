// Openings against trade values: leakage area of a blower-door result, vents a third larger on high, wind on inlets.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import type { CrackOpening, FixedOpening, Opening, VentOpening } from '../../src/model/model.ts';
import { openingsOf } from '../../src/model/openings-of-design.ts';
import { NORTH } from './sites.ts';

const exampleOf = (id: string): Design => EXAMPLES.find((example) => example.id === id)!.design;
const find = <T extends Opening>(design: Design, id: string) =>
  openingsOf(design, NORTH).find((opening) => opening.id === id) as T | undefined;

test('250 m³ at 5 air changes leak through 260.4 cm²', () => {
  // ASHRAE Fundamentals, effective leakage area at 4 Pa, exponent 0.65; worked by hand, allowed 0.5 cm²
  const modest = exampleOf('modest');
  const design = {
    ...modest,
    house: { ...modest.house, floorAreaM2: 100, ceilingHeightM: 2.5 },
    air: { ...modest.air, ach50: 5 },
  };
  const cracks = find<CrackOpening>(design, 'house cracks')!;
  expect(Math.abs(cracks.leakageCm2 - 260.4)).toBeLessThan(0.5);
  // one storey, moderate shelter: ASHRAE basic model
  expect(cracks).toMatchObject({ stackCoefficient: 0.000145, windCoefficient: 0.000174 });
});

test('sunspace vents add up to the design and the high one is a third larger', () => {
  const vents = find<VentOpening>(exampleOf('closed'), 'sunspace vents')!;
  expect(vents.lowM2 + vents.highM2).toBeCloseTo(3, 12);
  expect(vents.highM2 / vents.lowM2).toBeCloseTo(4 / 3, 12);
  expect(vents).toMatchObject({ stackM: 2, control: 'attentive' });
  expect(vents.rule).toMatchObject({
    opensAboveC: 24,
    bandK: 3,
    onlyWhileOutside: 'cooler',
    opens: 'by-degrees',
    shutAboveWind: 15,
  });
});

test('wind through vents weakens with shelter and never passes the unsheltered inlet', () => {
  const coefficient = (shelter: number) => {
    const closed = exampleOf('closed');
    return find<VentOpening>({ ...closed, air: { ...closed.air, shelter } }, 'sunspace vents')!
      .windCoefficient;
  };
  // ASHRAE inlet effectiveness 0.25–0.35 for wind from the side, at 10 m over open land
  expect(coefficient(1)).toBeLessThan(0.3);
  expect(coefficient(1)).toBeGreaterThan(0.2);
  // Walker and Wilson's shelter factors: 0.70 moderate, 0.30 very heavy; from memory, medium confidence
  expect(coefficient(3) / coefficient(1)).toBeCloseTo(0.7, 12);
  expect(coefficient(5) / coefficient(1)).toBeCloseTo(0.3, 12);
});

test('the night fan moves the air changes asked for, from 21 to 7 h, while it is warm', () => {
  const modest = exampleOf('modest');
  const fan = find<FixedOpening>({ ...modest, vents: { ...modest.vents, nightPurgeAch: 5 } }, 'night purge')!;
  const running = fan.flow.workday.filter((flow) => flow > 0);
  expect(running).toHaveLength(10);
  expect((running[0]! * 3600) / (110 * 2.6)).toBeCloseTo(5, 12);
  expect([fan.flow.workday[20], fan.flow.workday[7]]).toEqual([0, 0]);
  expect(fan).toMatchObject({ fan: true, onlyAboveC: 22 });
  expect(find(modest, 'night purge')).toBeUndefined();
});

test('openings follow the join, and those of no area are left out', () => {
  const ids = (design: Design) => openingsOf(design, NORTH).map(({ id }) => id);
  expect(ids(exampleOf('modest'))).toEqual(['house cracks', 'house windows']);
  expect(ids(exampleOf('closed'))).toEqual([
    'house cracks',
    'sunspace cracks',
    'house windows',
    'sunspace vents',
    'door',
  ]);
  const closed = exampleOf('closed');
  const shut = {
    ...closed,
    vents: { ...closed.vents, houseM2: 0, sunspaceM2: 0 },
    sunspace: { ...closed.sunspace, doorM2: 0 },
  };
  expect(ids(shut)).toEqual(['house cracks', 'sunspace cracks']);
});

test('fans move the air changes asked for: out of the house, and from a closed-off sunspace while it has heat to give', () => {
  const modest = exampleOf('modest');
  const extract = find<FixedOpening>(
    { ...modest, vents: { ...modest.vents, extractAch: 0.4 } },
    'extract fan',
  )!;
  expect((extract.flow.workday[3]! * 3600) / (110 * 2.6)).toBeCloseTo(0.4, 12);
  expect(extract.other).toBeUndefined();
  const closed = exampleOf('closed');
  const withFan = { ...closed, vents: { ...closed.vents, sunspaceFanAch: 2 } };
  const fan = find<FixedOpening>(withFan, 'sunspace fan')!;
  expect((fan.flow.workday[3]! * 3600) / (110 * 2.6)).toBeCloseTo(2, 12);
  expect(fan).toMatchObject({ zone: 'sunspace', other: 'house', gives: { wantsHeatBelowC: 22 } });
  const open = exampleOf('leaning');
  expect(find({ ...open, vents: { ...open.vents, sunspaceFanAch: 2 } }, 'sunspace fan')).toBeUndefined();
});

test('airing: need or habit, how often and how long as the design says; nobody airs a house that is never aired', () => {
  const modest = exampleOf('modest');
  const airing = (ventilation: Partial<Design['ventilation']>, vents: Partial<Design['vents']> = {}) => {
    const design = {
      ...modest,
      ventilation: { ...modest.ventilation, ...ventilation },
      vents: { ...modest.vents, ...vents },
    };
    return find<VentOpening>(design, 'house windows')!.airing;
  };
  expect(airing({})).toEqual({ minutes: 10, hours: [7, 12, 18, 21], byHabit: false });
  for (const airedTimes of [1, 2, 3, 4, 5, 6]) expect(airing({ airedTimes })!.hours).toHaveLength(airedTimes);
  expect(airing({ airedMinutes: 5, aired: 'by-habit' })).toMatchObject({ minutes: 5, byHabit: true });
  expect(airing({}, { habit: 'forgetful' })!.hours).toEqual([18]);
  expect(airing({ aired: 'never' })).toBeUndefined();
});
