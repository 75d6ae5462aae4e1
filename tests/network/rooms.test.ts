// Rooms against the house they divide and against houses run alone, over years of Denver.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { withRooms } from '../../src/design/room-rules.ts';
import { modelOf } from '../../src/model/from-design.ts';
import type { Element, Model, Opening } from '../../src/model/model.ts';
import { simulate } from '../../src/network/simulate.ts';
import type { Year } from '../../src/network/year.ts';
import { alikeRooms, fourRooms } from '../design/divided.ts';
import { bundledClimate } from '../weather/bundled-climates.ts';

const climate = bundledClimate('denver');

const modelFor = (design: Design): Model => modelOf(design, climate.year.site, climate.ground);
/** The same for all, since an hour has more steps while a window of any room moves. */
const STEPS = { stepsPerHour: 4 };
const isPartition = ({ id }: Element) => id.startsWith('partition');

/** Largest difference between two columns, and its root of mean square [K]. */
function apart(one: Float64Array, other: Float64Array): { most: number; rms: number } {
  let [most, squares] = [0, 0];
  one.forEach((value, hour) => {
    most = Math.max(most, Math.abs(value - other[hour]!));
    squares += (value - other[hour]!) ** 2;
  });
  return { most, rms: Math.sqrt(squares / one.length) };
}

test('rooms alike, with doors sixty times as wide and no partitions, are the house that they divide', () => {
  const design = alikeRooms();
  const divided = modelFor(design);
  const whole = modelFor(withRooms(design, undefined));
  const furniture = whole.zones[0]!.furnitureCapacity / whole.zones[0]!.floorAreaM2;
  // Without partitions one sees, and feels, through.
  const wide = (opening: Opening): Opening =>
    opening.kind === 'door' ? { ...opening, widthM: 60 * opening.widthM, seeThrough: true } : opening;
  const open: Model = {
    ...divided,
    zones: divided.zones.map((zone) => ({ ...zone, furnitureCapacity: furniture * zone.floorAreaM2 })),
    elements: divided.elements.filter((element) => !isPartition(element)),
    openings: divided.openings.map(wide),
  };
  const one = simulate(whole, climate).zones[0]!.airC;
  const rooms = simulate(open, climate).zones;
  const mean = one.map((_, hour) => rooms.reduce((sum, { airC }) => sum + airC[hour]! / 4, 0));
  expect(apart(mean, one).rms).toBeLessThan(0.1);
  for (const { airC } of rooms) expect(apart(airC, one).rms).toBeLessThan(0.1);
});

test('rooms with their doors shut and adiabatic partitions are houses run alone', () => {
  const design = alikeRooms({ door: 'shut' });
  // Nobody opens: trials of a step are ended for all rooms together, within 0.01 K.
  const model = modelFor({ ...design, vents: { ...design.vents, habit: 'never' } });
  // Each half of a partition stands in its own room and passes nothing on.
  const halves = model.elements.filter(isPartition).flatMap((element): Element[] => {
    const half = { ...element, a: { kind: 'adiabatic' } as const, moistureBufferA: 0 };
    if (element.a.kind !== 'zone') return [];
    return [half, { ...half, id: `${element.id}, other side`, b: element.a }];
  });
  const parted = [...model.elements.filter((element) => !isPartition(element)), ...halves];
  const together = simulate({ ...model, elements: parted }, climate, STEPS);
  for (const zone of [model.zones[0]!, model.zones[3]!]) {
    const alone = simulate(
      {
        name: zone.id,
        zones: [zone],
        elements: parted.filter(({ b }) => b.zone === zone.id),
        panes: model.panes.filter(({ to }) => to === zone.id),
        openings: model.openings.filter((opening) => opening.zone === zone.id && opening.kind !== 'door'),
      },
      climate,
      STEPS,
    );
    const found = together.zones.find(({ id }) => id === zone.id)!;
    expect(apart(alone.zones[0]!.airC, found.airC).most).toBeLessThan(1e-3);
    expect(apart(alone.zones[0]!.relativeHumidity, found.relativeHumidity).most).toBeLessThan(1e-3);
  }
});

test('two storeys with doors open: the books of heat and water close, and warm air climbs the stairs', () => {
  const model = modelFor(fourRooms());
  const { stack: _, ...unstacked } = model;
  const [stacked, still] = [simulate(model, climate), simulate(unstacked, climate)];
  expect(Math.abs(stacked.books.heatResidual)).toBeLessThan(1e-9);
  expect(Math.abs(stacked.books.waterResidual)).toBeLessThan(1e-9);
  for (const residual of stacked.books.zoneHeatResidual) expect(Math.abs(residual)).toBeLessThan(1e-9);
  const january = (year: Year, id: string) => {
    const { ventAch } = year.zones.find((zone) => zone.id === id)!;
    return ventAch.subarray(0, 744).reduce((sum, value) => sum + value, 0) / 744;
  };
  // In winter the ground floor takes in what leaves above, which is then aired by the rooms below.
  expect(january(stacked, 'room-1')).toBeGreaterThan(january(still, 'room-1'));
  expect(january(stacked, 'room-3')).toBeLessThan(january(still, 'room-3'));
});
