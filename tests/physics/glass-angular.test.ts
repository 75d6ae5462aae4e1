import { expect, test } from 'vitest';
import { angularTable } from '../../src/physics/glass-angular.ts';
import { glassAtAngle, glassDiffuse } from '../../src/physics/glass-transmittance.ts';
import { BARE_EMISSIVITY, glazingPath } from '../../src/physics/glass-u-value.ts';
import { solarHeatGain } from '../reference/whole-formulas.ts';

const SHEET = { refractiveIndex: 1.526, extinctionPerM: 13.1, thicknessM: 0.004 };

test('unscaled clear glass is the clear curve to the last bit', () => {
  for (const panes of [1, 2, 3]) {
    const table = angularTable({ panes, ...SHEET });
    const stack = Array.from({ length: panes }, () => SHEET);
    for (const angle of [0, 37, 60, 89, 90]) {
      const clear = glassAtAngle(stack, angle);
      expect(table.transmittance[angle]).toBe(clear.transmittance);
      expect(table.absorbed.map((pane) => pane[angle])).toEqual(clear.absorptance);
    }
    expect(table.diffuseTransmittance).toBe(glassDiffuse(stack).transmittance);
    expect(table.diffuseAbsorbed).toEqual(glassDiffuse(stack).absorptance);
  }
});

test('grazing light is all thrown back', () => {
  const table = angularTable({ panes: 2, ...SHEET });
  expect(table.transmittance).toHaveLength(91);
  expect(table.transmittance[90]).toBeCloseTo(0, 12);
  expect(table.absorbed[0]![90]).toBeCloseTo(0, 12);
});

/** panes, gap, gas, emissivity, transmittance, solar heat gain of common named glasses. */
const NAMED = [
  ['single clear', 1, 0, 'air', BARE_EMISSIVITY, 0.83, 0.86],
  ['double clear', 2, 0.012, 'air', BARE_EMISSIVITY, 0.7, 0.76],
  ['double soft coat', 2, 0.016, 'argon', 0.04, 0.54, 0.62],
  ['double hard coat', 2, 0.016, 'argon', 0.15, 0.64, 0.71],
  ['double sun control', 2, 0.016, 'argon', 0.03, 0.3, 0.35],
  ['triple clear', 3, 0.012, 'air', BARE_EMISSIVITY, 0.59, 0.68],
  ['triple two coats', 3, 0.016, 'argon', 0.06, 0.5, 0.61],
] as const;

test.each(NAMED)('%s comes out at its stated normal transmittance and solar heat gain', (...glass) => {
  const [, panes, widthM, gas, coating, solarTransmittanceNormal, solarHeatGainNormal] = glass;
  const { inwardFractions } = glazingPath(
    {
      panes: Array.from({ length: panes }, () => ({ thicknessM: 0.004, conductivity: 1 })),
      gaps: Array.from({ length: panes - 1 }, () => ({
        gas,
        widthM,
        emissivityOuter: BARE_EMISSIVITY,
        emissivityInner: coating,
      })),
      insideEmissivity: BARE_EMISSIVITY,
    },
    90,
  );
  const table = angularTable({
    panes,
    ...SHEET,
    solarTransmittanceNormal,
    solarHeatGainNormal,
    inwardFractions,
  });
  expect(table.transmittance[0]).toBeCloseTo(solarTransmittanceNormal, 12);
  expect(solarHeatGain(table, inwardFractions, 0)).toBeCloseTo(solarHeatGainNormal, 12);
  for (let angle = 0; angle <= 90; angle++) {
    const taken = table.absorbed.reduce((sum, pane) => sum + pane[angle]!, table.transmittance[angle]!);
    expect(taken).toBeLessThanOrEqual(1);
  }
  expect(table.diffuseTransmittance).toBeLessThan(solarTransmittanceNormal);
});

test('where even absorption would leave nothing to reflect, the inner pane takes it all', () => {
  const inwardFractions = [0.02, 0.9];
  const table = angularTable({
    panes: 2,
    ...SHEET,
    solarTransmittanceNormal: 0.6,
    solarHeatGainNormal: 0.78,
    inwardFractions,
  });
  expect(table.absorbed[0]![0]).toBe(0);
  expect(table.absorbed[1]![0]).toBeCloseTo(0.2, 12);
  expect(solarHeatGain(table, inwardFractions, 0)).toBeCloseTo(0.78, 12);
});

test('a pair of values no glass can have is refused, and so are fractions for the wrong number of panes', () => {
  const base = { panes: 1, ...SHEET, solarTransmittanceNormal: 0.7, solarHeatGainNormal: 0.95 };
  expect(() => angularTable({ ...base, inwardFractions: [0.3] })).toThrow(/do not go together/);
  expect(() => angularTable({ ...base, inwardFractions: [0.3, 0.5] })).toThrow(/inwardFractions has 2/);
  expect(() => angularTable({ ...base, panes: 4 })).toThrow(RangeError);
});
