// A divided house is the house in parts: whatever it is divided into, its shell, glass, people, water and ways for air add up
// to what the undivided house has.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withRooms } from '../../src/design/room-rules.ts';
import { requireModel } from '../../src/model/check-model.ts';
import { modelOf } from '../../src/model/from-design.ts';
import type { Model, Opening, Schedule } from '../../src/model/model.ts';
import { alikeRooms, fourRooms } from '../design/divided.ts';
import { anyDivided } from './any-rooms.ts';
import { NORTH, SOUTH, WAVE } from './sites.ts';

const sumOf = <T>(items: readonly T[], of: (item: T) => number): number =>
  items.reduce((sum, item) => sum + of(item), 0);
const dayOf = ({ workday, weekend }: Schedule) => [...workday, ...(weekend ?? workday)];
const week = (schedules: readonly Schedule[]) =>
  Array.from({ length: 48 }, (_, hour) => sumOf(schedules, (schedule) => dayOf(schedule)[hour]!));

/** Doors of the sunspace. */
const sunspaceDoors = (openings: readonly Opening[]) =>
  openings.flatMap((opening) => (opening.kind === 'door' && opening.zone === 'sunspace' ? [opening] : []));

/** What must be the same in parts and whole. */
function totals({ zones, elements, panes, openings }: Model) {
  const rooms = zones.filter(({ id }) => id !== 'sunspace');
  const outer = elements.filter(
    ({ a, b }) => a.kind !== 'zone' && a.kind !== 'adiabatic' && b.zone !== 'sunspace',
  );
  const toRooms = panes.filter(({ from, to }) => from === 'outdoors' && to !== 'sunspace');
  const of = (kind: Opening['kind'], starts: string) =>
    openings.filter(
      (opening) => opening.kind === kind && opening.zone !== 'sunspace' && opening.id.includes(starts),
    );
  return {
    shellM2: sumOf(outer, ({ areaM2 }) => areaM2) + sumOf(toRooms, ({ areaM2 }) => areaM2),
    floorM2: sumOf(rooms, ({ floorAreaM2 }) => floorAreaM2),
    volumeM3: sumOf(rooms, ({ volumeM3 }) => volumeM3),
    massM2: sumOf(
      elements.filter(({ id }) => id.startsWith('extra mass')),
      ({ areaM2 }) => areaM2,
    ),
    heaterW: sumOf(rooms, ({ thermostat }) => thermostat?.heatCapacityW ?? 0),
    leakageCm2: sumOf(of('cracks', ''), (opening) => (opening.kind === 'cracks' ? opening.leakageCm2 : 0)),
    // The mass wall with its windows and its door, which is cut to the room it is in.
    commonM2:
      sumOf(
        elements.filter(({ id }) => id.startsWith('common wall')),
        ({ areaM2 }) => areaM2,
      ) +
      sumOf(
        panes.filter(({ from }) => from === 'sunspace'),
        ({ areaM2 }) => areaM2,
      ) +
      sumOf(sunspaceDoors(openings), ({ widthM, heightM }) => widthM * heightM),
    fans: week(
      openings.flatMap((opening) =>
        opening.kind === 'fixed' && opening.zone !== 'sunspace' && opening.other === undefined
          ? [opening.flow]
          : [],
      ),
    ),
    people: week(rooms.flatMap(({ people }) => (people ? [people] : []))),
    gains: week(rooms.flatMap(({ gains }) => gains.map(({ power }) => power))),
    water: week(rooms.flatMap(({ moisture }) => moisture.map(({ rate }) => rate))),
  };
}

test('the parts of 60 random divided houses add up to the house', () => {
  let divided = 0;
  fc.assert(
    fc.property(anyDivided, fc.boolean(), (design, isNorth) => {
      if (design.rooms === undefined) return;
      divided++;
      const site = isNorth ? NORTH : SOUTH;
      const parts = modelOf(design, site, WAVE);
      requireModel(parts);
      for (const pane of parts.panes) expect(pane.areaM2).toBeLessThanOrEqual(pane.wallM2! * (1 + 1e-9));
      expect(parts.zones.map(({ id }) => id)).toEqual([
        ...design.rooms.list.map((_, i) => `room-${i + 1}`),
        ...(design.sunspace.join === 'none' ? [] : ['sunspace']),
      ]);
      const ours = totals(parts);
      const whole = totals(modelOf(withRooms(design, undefined), site, WAVE));
      for (const key of Object.keys(whole) as (keyof typeof whole)[]) {
        // A two-storey space has air above its floor, and no second floor.
        if (key === 'floorM2' && design.rooms.list.some(({ reachesUp }) => reachesUp)) continue;
        const [own, all] = [[ours[key]].flat(), [whole[key]].flat()];
        own.forEach((value, i) => {
          // Schedules are summed in another order; areas lose the dust of rounding.
          expect(Math.abs(value - all[i]!), key).toBeLessThan(1e-4 + 1e-6 * Math.abs(all[i]!));
        });
      }
    }),
    { numRuns: 60, seed: 11 },
  );
  expect(divided).toBeGreaterThan(30);
});

test('without windows of their own, rooms have the glass and the openable area of the house', () => {
  for (const design of [fourRooms(), alikeRooms()]) {
    const [parts, whole] = [design, withRooms(design, undefined)].map((each) => modelOf(each, NORTH, WAVE));
    const glass = ({ panes }: Model) => sumOf(panes, ({ areaM2 }) => areaM2);
    const openable = ({ openings }: Model) =>
      sumOf(openings, (opening) => (opening.kind === 'vent' ? opening.lowM2 + opening.highM2 : 0));
    expect(glass(parts!)).toBeCloseTo(glass(whole!), 9);
    expect(openable(parts!)).toBeCloseTo(openable(whole!), 9);
  }
});

test('air may pass one way only in a house of several storeys, and between any two rooms by one way', () => {
  expect(modelOf(alikeRooms(), NORTH, WAVE).stack).toBeUndefined();
  const { stack } = modelOf(fourRooms(), NORTH, WAVE);
  expect(stack!.places.map(({ heightM }) => heightM)).toEqual([1.25, 1.25, 3.75, 3.75]);
  expect(stack!.ways.map(({ zone, to }) => [zone, to])).toEqual([
    ['room-2', 'room-1'],
    ['room-3', 'room-1'],
    ['room-4', 'room-3'],
  ]);
});
