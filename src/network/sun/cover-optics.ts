// What a drawn cover makes of the light on a pane: glass system and cover in; the share of the light that still passes,
// of what each sheet takes up, and the further heat in sheets and room, out. At normal incidence glass and cover together
// gain what ISO 52022-1 says (physics/shaded-glazing.ts); at other angles and for diffuse light the same shares of what the
// bare glass passes are taken, since the standard has normal incidence alone.
// The direct part is what passes both. Of the rest, light an inside cover throws back is taken up by the sheets on its way
// out; what then still lacks of the standard's gain is heat of the cover: given to the room by an inside one, to the inner
// sheet by the others, as much as makes the lacking heat flow inward.

import type { GlassSystem, PaneCover } from '../../model/model.ts';
import { shadedSolarHeatGain, shadedTransmittance } from '../../physics/shaded-glazing.ts';
import { atCosine, opticsOf, ratedPath } from './pane-optics.ts';

export interface CoverOptics {
  /** of the light that passes the bare glass, so much passes with the cover drawn */
  readonly passed: number;
  /** of what each node takes up bare, so much with the cover drawn */
  readonly absorbed: number;
  /** heat in each node, outer first, and to the room, for a watt of light that passes the bare glass */
  readonly nodeHeat: readonly number[];
  readonly roomHeat: number;
}

/** Shares of light and heat with a cover drawn over the whole glass. */
export function coverOptics(glass: GlassSystem, cover: PaneCover): CoverOptics {
  const optics = opticsOf(glass);
  const { uValue, inwardFractions } = ratedPath(glass);
  const nodes = optics.absorbed.length;
  const inward = Array.from(
    { length: nodes },
    (_, n) => inwardFractions[nodes === inwardFractions.length ? n : 0]!,
  );
  const bare = atCosine(optics.transmittance, 1);
  const absorbed = optics.absorbed.map((table) => atCosine(table, 1));
  const reflected = Math.max(0, 1 - bare - sumOf(absorbed));
  const gain = Math.min(1, bare + weighed(absorbed, inward));
  const total = shadedSolarHeatGain(cover.place, gain, uValue, cover);
  const direct = shadedTransmittance(bare, reflected, cover);
  const sheets = cover.place === 'outside' ? direct / bare : 1;
  const thrownBack =
    cover.place === 'inside' ? (bare * cover.reflectance) / (1 - reflected * cover.reflectance) : 0;
  const extra = absorbed.map((_, n) => thrownBack * absorbed[nodes - 1 - n]!);
  const known = direct + sheets * weighed(absorbed, inward) + weighed(extra, inward);
  const lacking = total - known;
  // Very clear cloth: the parts alone may come to more than the standard's whole, and are then drawn back to it.
  const scale = lacking < 0 ? total / known : 1;
  const heat = Math.max(0, lacking);
  const toRoom = cover.place === 'inside' ? heat : 0;
  const nodeHeat = extra.map((share, n) => {
    const toSheet = cover.place !== 'inside' && n === nodes - 1 ? heat / inward[n]! : 0;
    return (scale * share + toSheet) / bare;
  });
  return { passed: (scale * direct) / bare, absorbed: scale * sheets, nodeHeat, roomHeat: toRoom / bare };
}

function weighed(shares: readonly number[], weights: readonly number[]): number {
  return shares.reduce((sum, share, i) => sum + share * weights[i]!, 0);
}

function sumOf(shares: readonly number[]): number {
  return shares.reduce((sum, share) => sum + share, 0);
}
