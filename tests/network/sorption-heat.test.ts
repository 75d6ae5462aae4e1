// Water that faces and furniture take up: it leaves its latent heat there, and it is taken by the humidity at their own
// temperature. Both against balances that need no engine: the first law, and vapour that stands still.
import { expect, test } from 'vitest';
import type { Model } from '../../src/model/model.ts';
import { simulate } from '../../src/network/simulate.ts';
import { saturationPressure } from '../../src/physics/moist-air.ts';
import { madeClimate } from '../outcomes/made-climate.ts';
import { always } from './always.ts';

/** Latent heat of water at room temperature [J/kg]: 2.45 MJ/kg, psychrometric tables (from memory, high confidence). */
const LATENT_HEAT = 2.45e6;
const SLAB_J_PER_K = 20 * 0.1 * 2000 * 1000;
const START_C = 20;

interface Box {
  readonly gramsPerHour?: number;
  /** to the air alone [W] */
  readonly watt?: number;
  readonly a: Model['elements'][number]['a'];
  readonly furnitureMoisture: number;
}

/** A room of 50 m³ over a slab, no air to or from it. */
function box({ gramsPerHour = 0, watt = 0, a, furnitureMoisture }: Box): Model {
  return {
    name: 'box',
    zones: [
      {
        id: 'house',
        floorAreaM2: 20,
        volumeM3: 50,
        furnitureCapacity: 0,
        furnitureMoisture,
        thermostat: null,
        gains: [{ id: 'lamp', power: always(watt), radiantShare: 0 }],
        moisture: [{ cause: 'people', rate: always(gramsPerHour) }],
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
        a,
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

test('a sealed, insulated room grows warmer by the latent heat of the water that its furniture takes up', () => {
  const model = box({ gramsPerHour: 1, a: { kind: 'adiabatic' }, furnitureMoisture: 40 });
  const year = simulate(model, madeClimate(), { startC: START_C });
  const [room] = year.zones;
  // 8.76 kg in the year, of which the air keeps little.
  const airKg = (50 * 101325) / (287 * 293);
  const taken = room!.waterGainKg;
  expect(taken).toBeCloseTo(8.76, 6);
  const kept = airKg * 0.01;
  const rise = room!.airC.at(-1)! - START_C;
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
  const year = simulate(box({ watt: 400, a: outdoors, furnitureMoisture: 40 }), madeClimate());
  const [room] = year.zones;
  const hour = 8000;
  const airC = room!.airC[hour]!;
  const facesC = 2 * room!.operativeC[hour]! - airC;
  expect(airC - facesC).toBeGreaterThan(3);
  // Steady: the buffer stands at the humidity it started from, and no water has anywhere to go.
  const vapour = room!.relativeHumidity[hour]! * saturationPressure(airC);
  const held = vapour / saturationPressure(facesC);
  expect(held).toBeGreaterThan(0.49);
  expect(held).toBeLessThan(0.51);
});
