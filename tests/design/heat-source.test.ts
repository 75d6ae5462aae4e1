// Sources of heat in a design: what is let in and refused, what a model makes of them, and that a design without one means
// what it meant.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { USUAL_STOVE } from '../../src/design/heat-source.ts';
import { openDesign } from '../../src/design/open-design.ts';
import { describeDesignFault, parseDesign } from '../../src/design/schema.ts';
import { ALL_EXAMPLES } from '../../src/design/stove-examples.ts';
import { fuelWords, sourceWords } from '../../src/findings/fuel-words.ts';
import { wordingOf } from '../../src/findings/wording.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { heatedAsAir } from '../../src/model/heat-source.ts';
import { fuelOf } from '../../src/outcomes/fuel.ts';

const SITE = {
  name: '',
  latitudeDeg: 40,
  longitudeDeg: -105,
  elevationM: 1600,
  utcOffsetH: -7,
  groundReflectance: null,
};
const GROUND = { meanC: 10, amplitudeK: 11, coldestDay: 15 };
const [, , MODEST, DIVIDED] = EXAMPLES.map(({ design }) => design) as [Design, Design, Design, Design];

const withSource = (design: Design, source: unknown) =>
  ({ ...design, heating: { ...design.heating, source } }) as Design;
const faultsOf = (source: unknown) => {
  const result = parseDesign(withSource(MODEST, source));
  return result.ok ? [] : result.faults.map(describeDesignFault);
};
const modelWith = (design: Design, source: unknown) => modelOf(withSource(design, source), SITE, GROUND);

test('every example with a stove is a design that passes its own check, and has a name and a note of its own', () => {
  const stoves = ALL_EXAMPLES.filter(({ id }) => id.endsWith('-stove'));
  expect(stoves).toHaveLength(3);
  for (const { design } of stoves) expect(parseDesign(design)).toEqual({ ok: true, design });
  for (const key of ['name', 'note'] as const)
    expect(new Set(ALL_EXAMPLES.map(({ design }) => design[key])).size).toBe(ALL_EXAMPLES.length);
});

test('what a source lacks, misspells or has too much of is named with what is allowed', () => {
  expect(faultsOf({ kind: 'floor', fuel: 'propane' })).toEqual([]);
  expect(faultsOf({ kind: 'floor', fuel: 'peat' })).toEqual([
    'heating.source.fuel is "peat"; allowed: one of electric, gas, propane, oil, pellets',
  ]);
  expect(faultsOf({ ...USUAL_STOVE, moisture: 0.9 })).toEqual([
    'heating.source.moisture is 0.9; allowed: a number from 0.08 to 0.5',
  ]);
  expect(faultsOf({ ...USUAL_STOVE, wood: 'ebony' })[0]).toMatch(
    /^heating.source.wood is "ebony"; allowed: one of beech/,
  );
  expect(faultsOf({ kind: 'campfire' })[0]).toBe(
    'heating.source.kind is "campfire"; allowed: heater, floor, wall or stove',
  );
  expect(faultsOf({ ...USUAL_STOVE, chimney: 1 })[0]).toMatch(/heating.source.chimney .*no such key/);
});

test('a stove stands in one room of a divided house, which has all the heat there is', () => {
  const { zones, openings } = modelWith(DIVIDED, USUAL_STOVE);
  expect(zones.filter(({ stove }) => stove).map(({ id }) => id)).toEqual(['room-1']);
  expect(zones.filter(({ thermostat }) => thermostat).map(({ id }) => id)).toEqual(['room-1']);
  expect(zones[0]!.thermostat!.heatCapacityW).toBe(1000 * DIVIDED.heating.capacityKW);
  expect(openings.filter((one) => one.kind === 'fixed' && one.feedsFire).map(({ zone }) => zone)).toEqual([
    'room-1',
  ]);
});

test('pipes lie in the middle of the slab, under tiles and over insulation, of heated rooms on the ground alone', () => {
  const { elements, zones } = modelWith(MODEST, { kind: 'floor', fuel: 'gas' });
  const heated = elements.filter(({ heatedM }) => heatedM !== undefined);
  expect(heated.map(({ id }) => id)).toEqual(['floor']);
  const { layers, heatedM } = heated[0]!;
  const above = layers.reduce((sum, { thicknessM }) => sum + thicknessM, 0) - heatedM!;
  expect(above).toBeCloseTo(0.01 + MODEST.floor.thicknessM / 2, 12);
  expect(zones[0]!.heatedFaceMaxC).toBe(29);
  const rooms = modelWith(DIVIDED, { kind: 'floor', fuel: 'gas' }).elements;
  expect(rooms.filter((one) => one.heatedM !== undefined).map(({ id }) => id)).toEqual(['floor room-1']);
});

test('a heated wall is the extra mass of heated rooms, heated in its middle; rooms without one are named', () => {
  const wall = { kind: 'wall', fuel: 'gas' };
  const massive: Design = { ...DIVIDED, mass: { ...DIVIDED.mass, areaM2: 30, thicknessM: 0.2 } };
  const model = modelWith(massive, wall);
  const heated = model.elements.filter(({ heatedM }) => heatedM !== undefined);
  expect(heated.map(({ id, heatedM }) => [id, heatedM])).toEqual([['extra mass room-1', 0.1]]);
  expect(model.zones[0]!.heatedFaceMaxC).toBe(40);
  expect(heatedAsAir(withSource(massive, wall), model)).toEqual([]);
  const bare = withSource({ ...MODEST, mass: { ...MODEST.mass, areaM2: 0 } }, wall);
  expect(heatedAsAir(bare, modelOf(bare, SITE, GROUND))).toEqual(['house']);
  const upstairs = withSource(DIVIDED, { kind: 'floor', fuel: 'gas' });
  const all = {
    ...upstairs,
    rooms: { ...DIVIDED.rooms!, list: DIVIDED.rooms!.list.map((room) => ({ ...room, heated: true })) },
  };
  const noFloor = DIVIDED.rooms!.list.flatMap(({ storey }, i) => (storey > 0 ? [`room-${i + 1}`] : []));
  expect(noFloor.length).toBeGreaterThan(0);
  expect(heatedAsAir(all, modelOf(all, SITE, GROUND))).toEqual(noFloor);
});

test('whoever is away or asleep feeds no fire', () => {
  const hoursOf = (design: Design, source: object) => {
    const { mayFeed } = modelWith(design, { ...USUAL_STOVE, ...source }).zones[0]!.stove!;
    const told = (day: readonly number[]) => day.flatMap((may, hour) => (may > 0 ? [hour] : []));
    return [told(mayFeed.workday), told(mayFeed.weekend!)];
  };
  const waking = Array.from({ length: 15 }, (_, i) => 7 + i);
  const away: Design = { ...MODEST, people: { ...MODEST.people, awayWorkdays: true } };
  expect(hoursOf(MODEST, {})).toEqual([waking, waking]);
  expect(hoursOf(away, {})).toEqual([[7, 17, 18, 19, 20, 21], waking]);
  expect(hoursOf(away, { lit: 'noon' })).toEqual([[], [11, 12, 13]]);
  const weekends: Design = { ...MODEST, people: { ...MODEST.people, awayWeekends: true } };
  expect(hoursOf(weekends, { stove: 'masonry' })).toEqual([[7, 19], []]);
  expect(hoursOf({ ...MODEST, people: { ...MODEST.people, count: 0 } }, {})).toEqual([[], []]);
});

test('a heater of the air with its fuel told has the model of one without, and its fuel by its measure', () => {
  const propane = withSource(MODEST, { kind: 'heater', fuel: 'propane' });
  expect(modelOf(propane, SITE, GROUND)).toEqual(modelOf(MODEST, SITE, GROUND));
  expect(fuelOf(MODEST, { stoves: [] } as never, 1000)).toBe(null);
  const fuel = fuelOf(propane, {} as never, 1000)!;
  // 1000 kWh at 90 %: 1111 kWh of propane, 6.55 kWh each litre.
  expect(fuel.litres).toBeCloseTo(1000 / 0.9 / 6.55, 9);
  expect(fuel.lostKWh).toBeCloseTo(1000 / 0.9 - 1000, 9);
  expect(fuelWords(fuel, propane, wordingOf('metric'))).toBe('170 litres of propane');
  expect(fuelWords(fuel, propane, wordingOf('us'))).toBe('44.8 gal of propane');
  expect(sourceWords(USUAL_STOVE)).toMatch(
    /^light steel stove, 78 % of its heat used; lit at any waking hour/,
  );
});

test('a file in which the stove was unlit at weekends is opened as one whose people are away then', () => {
  const unlit = { ...USUAL_STOVE, unlitWeekends: true };
  const older = { ...MODEST, heating: { ...MODEST.heating, source: unlit } };
  expect(openDesign(JSON.parse(JSON.stringify(older)))).toEqual({
    ok: true,
    design: {
      ...MODEST,
      people: { ...MODEST.people, awayWeekends: true },
      heating: { ...MODEST.heating, source: USUAL_STOVE },
    },
  });
  const wrong = { ...MODEST, heating: { ...MODEST.heating, source: { ...USUAL_STOVE, unlitWeekends: 3 } } };
  expect(openDesign(wrong)).toMatchObject({
    ok: false,
    faults: [{ path: 'heating.source.unlitWeekends' }],
  });
});
