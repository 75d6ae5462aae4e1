// Water in a room that nothing enters or leaves: constant without sources, and no air past saturation with them.
import { expect, test } from 'vitest';
import type { Model } from '../../src/model/model.ts';
import { simulate } from '../../src/network/simulate.ts';
import { saturationPressure } from '../../src/physics/moist-air.ts';
import { madeClimate } from '../outcomes/made-climate.ts';
import { always } from './always.ts';

function sealed(gramsPerHour: number): Model {
  return {
    name: 'sealed room',
    zones: [
      {
        id: 'house',
        floorAreaM2: 20,
        volumeM3: 50,
        furnitureCapacity: 0,
        furnitureMoisture: 0,
        thermostat: null,
        gains: [],
        moisture: gramsPerHour > 0 ? [{ cause: 'people', rate: always(gramsPerHour) }] : [],
        planting: null,
        people: null,
        cornerFactor: 0.8,
      },
    ],
    elements: [
      {
        id: 'floor',
        areaM2: 20,
        layers: [{ name: 'slab', thicknessM: 0.1, conductivity: 1.5, density: 2000, specificHeat: 1000 }],
        a: {
          kind: 'outdoors',
          absorptance: 0.6,
          emissivity: 0.9,
          tiltDeg: 180,
          azimuthDeg: 0,
          film: { kind: 'computed' },
          exposed: false,
        },
        b: {
          kind: 'zone',
          zone: 'house',
          absorptance: 0.6,
          emissivity: 0.9,
          film: { kind: 'computed' },
          lit: 'floor',
          faceTiltDeg: 0,
        },
      },
    ],
    panes: [],
    openings: [],
  };
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
