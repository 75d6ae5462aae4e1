// Water in a room that nothing enters or leaves: constant without sources, and no air past saturation with them.
import { expect, test } from 'vitest';
import type { Model } from '../../src/model/model.ts';
import { simulate } from '../../src/network/simulate.ts';
import { saturationPressure } from '../../src/physics/moist-air.ts';
import { madeClimate } from '../outcomes/made-climate.ts';
import { always } from './always.ts';
import { boxModel } from './box-model.ts';

/** Over a slab in the open air. */
function sealed(gramsPerHour: number): Model {
  return boxModel({
    zone: { moisture: gramsPerHour > 0 ? [{ cause: 'people', rate: always(gramsPerHour) }] : [] },
    floor: {
      a: {
        kind: 'outdoors',
        absorptance: 0.6,
        emissivity: 0.9,
        tiltDeg: 180,
        azimuthDeg: 0,
        film: { kind: 'computed' },
        exposed: false,
      },
    },
  });
}

/** A day that swings, so that relative humidity moves while the vapour stands. */
const climate = madeClimate({
  dryBulbC: (hour) => 20 + 5 * Math.sin((2 * Math.PI * hour) / 24),
  dewPointC: 5,
});

test('with no sources and no exchange the vapour in a room stays as it was', () => {
  const { relativeHumidity, airC } = simulate(sealed(0), climate).zones[0]!;
  const vapour = (hour: number) => relativeHumidity[hour]! * saturationPressure(airC[hour]!);
  const first = vapour(0);
  for (let hour = 0; hour < 8760; hour += 7) expect(Math.abs(vapour(hour) / first - 1)).toBeLessThan(2e-3);
});

test('air that is fed without end fills up and never passes saturation; the rest runs off and is counted', () => {
  const year = simulate(sealed(200), climate);
  const [room] = year.zones;
  expect(Math.max(...room!.relativeHumidity)).toBeLessThanOrEqual(1 + 1e-12);
  // The heat of the water comes a step late, so the full air breathes a little below 1.
  const full = room!.relativeHumidity.subarray(1000);
  expect(full.reduce((sum, value) => sum + value, 0) / full.length).toBeGreaterThan(0.9);
  // All that is released over the year runs off again, but for what the air holds more at its end.
  expect(room!.drainedKg).toBeGreaterThan(0.99 * 0.2 * 8760);
  expect(Math.abs(year.books.waterResidual)).toBeLessThan(1e-9);
});
