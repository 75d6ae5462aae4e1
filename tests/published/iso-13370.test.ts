// Source: ISO 13370:2017, heat transfer via the ground (from memory, high confidence): worked values computed from its
// formulas, and the printed table of uninsulated slabs on clay by perimeter over area (CIBSE Guide A and UK approved
// document, from memory, high confidence). Both basement walls have d_w above d_f; the other branch has no check value.
import { expect, test } from 'vitest';
import {
  basementWallUValue,
  type FloorPlan,
  GROUNDS,
  periodicDepth,
  slabUValue,
} from '../../src/physics/ground-floor.ts';
import { check } from './ledger.ts';

const SOURCE = 'ISO 13370:2017';

function plan(areaM2: number, perimeterM: number, floorResistance: number): FloorPlan {
  return { areaM2, perimeterM, wallThicknessM: 0.3, floorResistance };
}

test('five slabs', () => {
  const rows = [
    ['A 100, P 40, sand, bare', plan(100, 40, 0), GROUNDS.sand, 0.762],
    ['A 100, P 40, sand, R 2.5', plan(100, 40, 2.5), GROUNDS.sand, 0.25],
    ['A 75, P 35, clay, bare', plan(75, 35, 0), GROUNDS.clay, 0.667],
    ['A 100, P 40, clay, bare', plan(100, 40, 0), GROUNDS.clay, 0.603],
    ['A 100, P 40, clay, R 3', plan(100, 40, 3), GROUNDS.clay, 0.203],
  ] as const;
  expect(rows).toHaveLength(5);
  for (const [name, floor, ground, reference] of rows) {
    check({
      source: SOURCE,
      case: name,
      quantity: 'U-value of slab',
      reference,
      ours: slabUValue(floor, ground),
      allowed: 0.001,
      unit: 'W/m²K',
      mark: 'computed',
    });
  }
});

test('uninsulated slabs on clay by perimeter over area: eleven printed and computed values', () => {
  const printed = [
    [0.05, 0.13, 0.126],
    [0.1, 0.22, 0.219],
    [0.15, 0.3, 0.299],
    [0.2, 0.37, 0.37],
    [0.25, 0.44, 0.435],
    [0.3, 0.49, 0.495],
    [0.4, 0.6, 0.603],
    [0.5, 0.7, 0.698],
    [0.6, 0.78, 0.783],
    [0.8, 0.93, 0.929],
    [1, 1.05, 1.051],
  ] as const;
  expect(printed).toHaveLength(11);
  for (const [ratio, table, formula] of printed) {
    const ours = slabUValue(plan(100, 100 * ratio, 0), GROUNDS.clay);
    const name = `P/A ${ratio}`;
    check({
      source: 'CIBSE Guide A, slabs on clay',
      case: name,
      quantity: 'U-value of slab',
      reference: table,
      ours,
      allowed: 0.01,
      unit: 'W/m²K',
      mark: 'memory',
    });
    check({
      source: SOURCE,
      case: name,
      quantity: 'U-value of slab on clay',
      reference: formula,
      ours,
      allowed: 0.005,
      unit: 'W/m²K',
      mark: 'computed',
    });
  }
});

test('two basement walls 2.5 m deep in sand', () => {
  const floor = plan(100, 40, 0);
  for (const [wallResistance, reference] of [
    [0.2, 0.836],
    [2.5, 0.217],
  ] as const) {
    check({
      source: SOURCE,
      case: `z 2.5 m, wall R ${wallResistance}`,
      quantity: 'U-value of basement wall',
      reference,
      ours: basementWallUValue(floor, GROUNDS.sand, { depthM: 2.5, wallResistance }),
      allowed: 0.001,
      unit: 'W/m²K',
      mark: 'computed',
    });
  }
});

test('periodic penetration depths', () => {
  for (const [name, printed, computed] of [
    ['clay', 2.2, 2.24],
    ['sand', 3.2, 3.17],
    ['rock', 4.2, 4.19],
  ] as const) {
    const base = {
      source: SOURCE,
      case: name,
      quantity: 'periodic depth',
      ours: periodicDepth(GROUNDS[name]),
      unit: 'm',
    } as const;
    check({
      ...base,
      quantity: 'periodic depth, printed',
      reference: printed,
      allowed: 0.05,
      mark: 'memory',
    });
    check({ ...base, reference: computed, allowed: 0.006, mark: 'computed' });
  }
});
