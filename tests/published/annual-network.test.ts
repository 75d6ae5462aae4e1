// A 13-node house and sunspace through a year of two real climates, solved exactly (matrix exponential) by an
// independent program; run here through the network's own stepping, four steps an hour. The file's
// surface-to-surface link of 30 W/K is a massless radiant hub with two branches of 60.
// Source: annual-network.json (computed; checked by modal decomposition and a stiff solver).
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { LinearNetwork } from '../../src/network/solver/linear-network.ts';
import { MONTH_START_HOUR } from '../../src/weather/typical-year.ts';
import { compileStepper } from '../network/compile-stepper.ts';
import { check } from './ledger.ts';

const DATA = join(import.meta.dirname, '../data/reference');
const STEP_S = 900;
/** Inputs stand still within an hour; what jumps at its start is all that four exponential steps leave. */
const HOURLY_AIR_K = 0.015;
const MONTHLY_MEAN_K = 0.0002;

interface Case {
  readonly hourly_first_240: { readonly hour: number[]; readonly T: number[][] };
  readonly monthly: { readonly month: number; readonly mean: number[] }[];
}
const reference = JSON.parse(readFileSync(join(DATA, 'annual-network.json'), 'utf8')) as {
  readonly nodes: string[];
  readonly C_J_per_K: number[];
  readonly cases: Record<string, Case>;
};
const capacityOf = (name: string) => reference.C_J_per_K[reference.nodes.indexOf(name)]!;

const AIR = 0;
const SURFACE = 1;
const SUNSPACE = 2;
const SUN_RADIANT = 3;
const hub = (index: number, conductance: number) => ({ hub: index, conductance });

const network: LinearNetwork = {
  hubs: [
    { id: 'house_air', capacity: capacityOf('house_air'), boundary: 60 },
    { id: 'house_surface', capacity: capacityOf('house_surface'), boundary: 40 },
    { id: 'sunspace_air', capacity: capacityOf('sunspace_air'), boundary: 90 },
    { id: 'sun_radiant', capacity: 0, boundary: 0 },
  ],
  hubLinks: [
    { from: AIR, to: SURFACE, conductance: 500 },
    { from: AIR, to: SUNSPACE, conductance: 30 },
  ],
  chains: [
    {
      id: 'floor',
      capacity: ['floor_bottom', 'floor_mid', 'floor_top'].map(capacityOf),
      link: [3200, 3200],
      a: { boundary: 20, hubs: [] },
      b: { boundary: 0, hubs: [hub(AIR, 450), hub(SURFACE, 150)] },
    },
    {
      id: 'backwall',
      capacity: ['backwall_out', 'backwall_mid', 'backwall_in'].map(capacityOf),
      link: [210, 210],
      a: { boundary: 15, hubs: [] },
      b: { boundary: 0, hubs: [hub(AIR, 180), hub(SURFACE, 60)] },
    },
    {
      id: 'common',
      capacity: ['common_house_side', 'common_sun_side'].map(capacityOf),
      link: [112],
      a: { boundary: 0, hubs: [hub(AIR, 120), hub(SURFACE, 40)] },
      b: { boundary: 0, hubs: [hub(SUNSPACE, 140), hub(SUN_RADIANT, 60)] },
    },
    {
      id: 'ssfloor',
      capacity: ['ssfloor_bottom', 'ssfloor_top'].map(capacityOf),
      link: [640],
      a: { boundary: 10, hubs: [] },
      b: { boundary: 0, hubs: [hub(SUNSPACE, 110), hub(SUN_RADIANT, 60)] },
    },
  ],
};

/** Node order of the stepper's chains, for reading the file's columns. */
const NODE_NAMES = [
  ...['floor_bottom', 'floor_mid', 'floor_top', 'backwall_out', 'backwall_mid', 'backwall_in'],
  ...['common_house_side', 'common_sun_side', 'ssfloor_bottom', 'ssfloor_top'],
];
const T_GROUND = 14;
const Q_INTERNAL = 400;

function inputs(site: string): { outC: Float64Array; southWm2: Float64Array } {
  const lines = readFileSync(join(DATA, 'annual-network-inputs.csv'), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  const header = lines[0]!.split(',');
  const rows = lines.slice(1).map((line) => line.split(',').map(Number));
  expect(rows).toHaveLength(8760);
  const column = (name: string) => Float64Array.from(rows, (row) => row[header.indexOf(name)]!);
  return { outC: column(`T_out_${site}`), southWm2: column(`I_south_${site}`) };
}

describe.each(Object.keys(reference.cases))('the annual network in %s', (site) => {
  const expected = reference.cases[site]!;
  const { outC, southWm2 } = inputs(site);
  const stepper = compileStepper(network, STEP_S, 20);
  const hubAt = (name: string) => network.hubs.findIndex((entry) => entry.id === name);
  const temperatureOf = (name: string) =>
    hubAt(name) >= 0 ? stepper.hubC[hubAt(name)]! : stepper.nodeC[NODE_NAMES.indexOf(name)]!;

  let worstAir = 0;
  let compared = 0;
  const monthSum = new Float64Array(12);
  for (let hour = 0, month = 0; hour < 8760; hour++) {
    if (hour >= MONTH_START_HOUR[month + 1]!) month++;
    const sun = southWm2[hour]!;
    stepper.endBoundaryC.set([T_GROUND, 0, outC[hour]!, 0, 0, 0, T_GROUND, 0]);
    stepper.hubBoundaryC.fill(outC[hour]!);
    stepper.hubW.set([0.4 * sun + 0.7 * Q_INTERNAL, 1.2 * sun + 0.3 * Q_INTERNAL, 2.6 * sun, 0]);
    stepper.nodeW[2] = 2.3 * sun;
    stepper.nodeW[7] = 5.0 * sun;
    stepper.nodeW[9] = 6.2 * sun;
    stepper.refreshSources();
    for (let n = 0; n < 3600 / STEP_S; n++) {
      stepper.step();
      monthSum[month]! += stepper.hubMeanC[AIR]! * STEP_S;
    }
    if (hour < 240) {
      const row = expected.hourly_first_240.T[hour + 1]!;
      worstAir = Math.max(
        worstAir,
        Math.abs(temperatureOf('house_air') - row[reference.nodes.indexOf('house_air')]!),
      );
      compared++;
    }
  }

  test('house air follows the exact solution at every hour of the first ten days', () => {
    expect(compared).toBe(240);
    check({
      source: 'Thirteen-node house solved exactly',
      case: site,
      quantity: 'house air, largest error of 240 hours',
      reference: 0,
      ours: worstAir,
      allowed: HOURLY_AIR_K,
      unit: 'K',
      mark: 'computed',
    });
  });

  test('monthly means of house air follow the exact solution', () => {
    expect(expected.monthly).toHaveLength(12);
    expected.monthly.forEach((row, month) => {
      const seconds = (MONTH_START_HOUR[month + 1]! - MONTH_START_HOUR[month]!) * 3600;
      check({
        source: 'Thirteen-node house solved exactly',
        case: `${site}, month ${row.month}`,
        quantity: 'house air, mean',
        reference: row.mean[reference.nodes.indexOf('house_air')]!,
        ours: monthSum[month]! / seconds,
        allowed: MONTHLY_MEAN_K,
        unit: '°C',
        mark: 'computed',
      });
    });
  });
});
