import { expect, test } from 'vitest';
import { GLASS } from '../../src/design/glass-catalogue.ts';
import { BARE_EMISSIVITY } from '../../src/physics/glass-u-value.ts';
import { glazingUValue } from '../reference/whole-formulas.ts';

/** Quoted values are rounded, and plastic sheets differ by maker. */
const QUOTED_REL = 0.06;
const PLASTIC_CONDUCTIVITY = 0.2;

test.each(GLASS)('$name has the make-up its quoted U-value stands for, by EN 673', (glass) => {
  const conductivity = glass.id === 'twin-wall' ? PLASTIC_CONDUCTIVITY : 1;
  const uValue = glazingUValue(
    {
      panes: Array.from({ length: glass.sheets }, () => ({ thicknessM: glass.sheetM, conductivity })),
      gaps: Array.from({ length: glass.sheets - 1 }, () => ({
        gas: glass.gas,
        widthM: glass.gapM,
        emissivityOuter: BARE_EMISSIVITY,
        emissivityInner: glass.gapEmissivity,
      })),
      insideEmissivity: BARE_EMISSIVITY,
    },
    90,
  );
  expect(Math.abs(uValue / glass.quotedUValue - 1)).toBeLessThan(QUOTED_REL);
});

test('no glazing lets in more light than heat, or more than it gets', () => {
  expect(GLASS).toHaveLength(8);
  for (const glass of GLASS) {
    expect(glass.solarTransmittance).toBeLessThan(glass.solarHeatGain);
    expect(glass.solarHeatGain).toBeLessThan(0.96);
  }
});
