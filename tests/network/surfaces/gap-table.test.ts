import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { GlassSystem } from '../../../src/model/model.ts';
import { conductanceAt, gapTable } from '../../../src/network/surfaces/gap-table.ts';
import { gapConductance } from '../../../src/physics/gas-gap.ts';
import { BARE_EMISSIVITY } from '../../../src/physics/glass-u-value.ts';

const GLASS: GlassSystem = {
  sheets: 2,
  sheetM: 0.004,
  sheetConductivity: 1,
  gapM: 0.016,
  gas: 'argon',
  gapEmissivity: 0.04,
  outsideEmissivity: 0.837,
  insideEmissivity: 0.837,
  optics: { kind: 'scaled', solarTransmittance: 0.54, solarHeatGain: 0.62 },
};
/** Between table points; the corner where convection sets in is the worst of it. */
const TABLE_REL = 0.01;
const NEAR_NOTHING_REL = 0.04;

test('the gap table agrees with EN 673 between its points, at any tilt', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 20, max: 90, noNaN: true }),
      fc.double({ min: -45, max: 85, noNaN: true }),
      fc.double({ min: -45, max: 45, noNaN: true }),
      (tiltDeg, meanC, deltaK) => {
        const exact = gapConductance({
          gas: 'argon',
          widthM: 0.016,
          tiltDeg,
          meanTempK: meanC + 273.15,
          deltaTempK: deltaK,
          emissivity1: BARE_EMISSIVITY,
          emissivity2: 0.04,
        }).total;
        const ours = conductanceAt(gapTable(GLASS, tiltDeg), meanC, deltaK);
        // Below 4 K the power law's root is steep; the absolute error there is what counts.
        const allowed = Math.abs(deltaK) < 4 ? NEAR_NOTHING_REL * exact : TABLE_REL * exact;
        expect(Math.abs(ours - exact)).toBeLessThan(allowed);
      },
    ),
    { numRuns: 300 },
  );
});

test('beyond its edges the table gives its edge', () => {
  const table = gapTable(GLASS, 90);
  expect(conductanceAt(table, 500, 0)).toBeCloseTo(conductanceAt(table, 90, 0), 2);
  expect(conductanceAt(table, 0, -900)).toBeCloseTo(conductanceAt(table, 0, -50), 2);
});
