import { expect, test } from 'vitest';
import { type GasGap, gapConductance } from '../../src/physics/gas-gap.ts';
import { glazingPath } from '../../src/physics/glass-u-value.ts';
import { glazingUValue } from '../reference/whole-formulas.ts';

const GAP: GasGap = {
  gas: 'argon',
  widthM: 0.016,
  tiltDeg: 90,
  meanTempK: 283,
  deltaTempK: 15,
  emissivity1: 0.837,
  emissivity2: 0.04,
};

test('convection grows steadily from upright to flat while heat flows up', () => {
  const values = [90, 75, 60, 45, 30, 15, 0].map((tiltDeg) => gapConductance({ ...GAP, tiltDeg }).convective);
  for (let i = 1; i < values.length; i++) expect(values[i]!).toBeGreaterThan(values[i - 1]!);
});

test('with the warm pane on top a flat gap only conducts', () => {
  const still = gapConductance({ ...GAP, tiltDeg: 0, deltaTempK: -15 });
  // λ of argon at 9.85 °C over the width.
  expect(still.convective).toBeCloseTo((1.634e-2 + 5e-5 * 9.85) / 0.016, 9);
});

test('upright glass does not care which side is warm, and facing down mirrors facing up', () => {
  expect(gapConductance({ ...GAP, deltaTempK: -15 }).total).toBeCloseTo(gapConductance(GAP).total, 12);
  const up = gapConductance({ ...GAP, tiltDeg: 60, deltaTempK: -15 });
  const down = gapConductance({ ...GAP, tiltDeg: 120, deltaTempK: 15 });
  expect(down.total).toBeCloseTo(up.total, 12);
});

test('heavier gas insulates better in a narrow gap; a coating removes most radiation', () => {
  const narrow = { ...GAP, widthM: 0.008 };
  const [air, argon, krypton] = (['air', 'argon', 'krypton'] as const).map(
    (gas) => gapConductance({ ...narrow, gas }).convective,
  );
  expect(argon!).toBeLessThan(air!);
  expect(krypton!).toBeLessThan(argon!);
  expect(gapConductance(GAP).radiative).toBeLessThan(
    0.07 * gapConductance({ ...GAP, emissivity2: 0.837 }).radiative,
  );
});

test('inward fractions rise from the outer to the inner pane and films can be given', () => {
  const gap = { gas: 'air', widthM: 0.012, emissivityOuter: 0.837, emissivityInner: 0.837 } as const;
  const system = {
    panes: Array.from({ length: 3 }, () => ({ thicknessM: 0.004, conductivity: 1 })),
    gaps: [gap, gap],
    insideEmissivity: 0.837,
  };
  const { inwardFractions, outsideFilm, insideFilm } = glazingPath(system, 90, {
    outsideFilm: 21,
    insideFilm: 8.29,
  });
  expect([outsideFilm, insideFilm]).toEqual([21, 8.29]);
  expect(inwardFractions).toHaveLength(3);
  expect(inwardFractions[0]!).toBeLessThan(inwardFractions[1]!);
  expect(inwardFractions[1]!).toBeLessThan(inwardFractions[2]!);
  expect(inwardFractions[2]!).toBeLessThan(1);
  expect(() => glazingUValue({ ...system, gaps: [gap] }, 90)).toThrow(/number of gaps/);
});
