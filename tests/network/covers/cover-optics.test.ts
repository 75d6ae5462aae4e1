// Light and heat of a drawn cover: at normal incidence every kind on every glass gains together what ISO 52022-1 says
// (src/physics/shaded-glazing.ts, checked against published rows), and no more light and heat come of a watt than a watt.
import { expect, test } from 'vitest';
import { COVER_KINDS } from '../../../src/design/cover-catalogue.ts';
import { GLASS } from '../../../src/design/glass-catalogue.ts';
import { glassSystem } from '../../../src/model/glazing.ts';
import type { PaneCover } from '../../../src/model/model.ts';
import { coverOptics } from '../../../src/network/sun/cover-optics.ts';
import { atCosine, opticsOf, ratedPath } from '../../../src/network/sun/pane-optics.ts';
import { shadedSolarHeatGain } from '../../../src/physics/shaded-glazing.ts';

/** Inward share of heat in the nodes of a glass: two half sheets of single glass as one. */
function inwardOf(id: string): readonly number[] {
  const { inwardFractions } = ratedPath(glassSystem(id));
  return inwardFractions.length === 1 ? [inwardFractions[0]!, inwardFractions[0]!] : inwardFractions;
}

for (const { id: glassId, solarHeatGain, sheets } of GLASS) {
  test(`${glassId}: gain as the standard has it, light and heat within what falls on it`, () => {
    const glass = glassSystem(glassId);
    const { uValue } = ratedPath(glass);
    const optics = opticsOf(glass);
    const bare = atCosine(optics.transmittance, 1);
    const absorbed = optics.absorbed.map((table) => atCosine(table, 1));
    for (const kind of COVER_KINDS) {
      if (kind.place === 'between' && sheets === 1) continue;
      const cover = { ...kind, hand: '', rule: null!, control: 'never' } as PaneCover;
      const drawn = coverOptics(glass, cover);
      const inSheets = absorbed.map((share, n) => drawn.absorbed * share + bare * drawn.nodeHeat[n]!);
      const inward = inSheets.reduce((sum, share, n) => sum + share * inwardOf(glassId)[n]!, 0);
      const gain = bare * (drawn.passed + drawn.roomHeat) + inward;
      const standard = shadedSolarHeatGain(kind.place, solarHeatGain, uValue, kind);
      expect(gain, kind.id).toBeCloseTo(standard, 9);
      const all = bare * (drawn.passed + drawn.roomHeat) + inSheets.reduce((sum, share) => sum + share, 0);
      expect(all, kind.id).toBeLessThan(1);
      expect(
        Math.min(drawn.passed, drawn.absorbed, drawn.roomHeat, ...drawn.nodeHeat),
      ).toBeGreaterThanOrEqual(0);
      expect(gain, kind.id).toBeLessThanOrEqual(solarHeatGain + 1e-9);
    }
  });
}
