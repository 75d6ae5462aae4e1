// Water that faces and furniture take up: it leaves its latent heat there, and it is taken by the humidity at their own
// temperature. Both against balances that need no engine: the first law, and vapour that stands still.
import { expect, test } from 'vitest';
import type { Model } from '../../src/model/model.ts';
import { simulate } from '../../src/network/simulate.ts';
import { saturationPressure } from '../../src/physics/moist-air.ts';
import { madeClimate } from '../outcomes/made-climate.ts';
import { always } from './always.ts';
import { boxModel } from './box-model.ts';

/** Latent heat of water at room temperature [J/kg]: 2.45 MJ/kg, psychrometric tables (from memory, high confidence). */
const LATENT_HEAT = 2.45e6;
const SLAB_J_PER_K = 20 * 0.1 * 2000 * 1000;
const START_C = 20;

interface RoomOf {
  readonly gramsPerHour?: number;
  /** to the air alone [W] */
  readonly lampW?: number;
  readonly under: Model['elements'][number]['a'];
}

/** A room of 50 m³ over a slab, no air to or from it; furniture takes water up. */
function room({ gramsPerHour = 0, lampW = 0, under }: RoomOf): Model {
  return boxModel({
    zone: {
      furnitureMoisture: 40,
      gains: [{ id: 'lamp', power: always(lampW), radiantShare: 0 }],
      moisture: [{ cause: 'people', rate: always(gramsPerHour) }],
    },
    floor: { a: under },
  });
}

test('a sealed, insulated room grows warmer by the latent heat of the water that its furniture takes up', () => {
  const model = room({ gramsPerHour: 1, under: { kind: 'adiabatic' } });
  const year = simulate(model, madeClimate(), { startC: START_C });
  const [zone] = year.zones;
  // 8.76 kg in the year, of which the air keeps little.
  const airKg = (50 * 101325) / (287 * 293);
  const taken = zone!.waterGainKg;
  expect(taken).toBeCloseTo(8.76, 6);
  const kept = airKg * 0.01;
  const rise = zone!.airC.at(-1)! - START_C;
  const capacity = SLAB_J_PER_K + airKg * 1006;
  expect(rise).toBeLessThan((LATENT_HEAT * taken) / capacity);
  expect(rise).toBeGreaterThan((LATENT_HEAT * (taken - kept)) / capacity - 0.05);
  const latent = year.heat.find(({ cause }) => cause === 'evaporation and dew')!;
  const booked = latent.monthJ.reduce((sum, joule) => sum + joule, 0);
  expect(booked / (capacity * rise)).toBeCloseTo(1, 2);
  expect(Math.abs(year.books.heatResidual)).toBeLessThan(1e-9);
  expect(Math.abs(year.books.waterResidual)).toBeLessThan(1e-9);
});

test('in air warmer than the faces the vapour is that over what they hold at their own temperature', () => {
  const outdoors = {
    kind: 'outdoors',
    absorptance: 0,
    emissivity: 0.9,
    tiltDeg: 180,
    azimuthDeg: 0,
    film: { kind: 'computed' },
    exposed: false,
  } as const;
  const year = simulate(room({ lampW: 400, under: outdoors }), madeClimate());
  const [zone] = year.zones;
  const hour = 8000;
  const airC = zone!.airC[hour]!;
  const facesC = 2 * zone!.operativeC[hour]! - airC;
  expect(airC - facesC).toBeGreaterThan(3);
  // Steady: the buffer stands at the humidity it started from, and no water has anywhere to go.
  const vapour = zone!.relativeHumidity[hour]! * saturationPressure(airC);
  const held = vapour / saturationPressure(facesC);
  expect(held).toBeGreaterThan(0.49);
  expect(held).toBeLessThan(0.51);
});
