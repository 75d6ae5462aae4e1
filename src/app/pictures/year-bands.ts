// The bands a year picture is painted in for paper: few enough that each has a texture of its own. In: a layer of the
// year map and the limits of comfort. Out: bands from low to high, with the values between them.

import type { Design } from '../../design/design.ts';
import type { YearLayer } from '../charts/year-layers.ts';
import { cssColour } from '../parts/colour-scale.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';
import type { Texture, TextureName } from './texture.ts';

export interface YearBands {
  /** values between the bands, rising; one fewer than the bands, in the layer's own unit */
  readonly edges: readonly number[];
  readonly bands: readonly { readonly texture: Texture; readonly words: string }[];
}

/** How far beyond a limit the next band begins [K]. */
const FAR_K = 4;
/** A band narrower than this would not be seen [K]. */
const LEAST_BAND_K = 1;

/** Bands of a layer. */
export function yearBands(layer: YearLayer, design: Design, system: UnitSystem): YearBands {
  const { edges, textures } = plan(layer, design);
  const text = (value: number) =>
    quantityText(value, layer.quantity, system, layer.quantity === 'powerKW' ? 1 : 0);
  const words = textures.map((_, i) => {
    if (i === 0) return `below ${text(edges[0]!)}`;
    if (i === edges.length) return `above ${text(edges.at(-1)!)}`;
    return `${bare(text(edges[i - 1]!))} to ${text(edges[i]!)}`;
  });
  return {
    edges,
    bands: textures.map((name, i) => ({
      texture: { name, colour: cssColour(middleOf(edges, i), layer.scale) },
      words: words[i]!,
    })),
  };
}

function plan(
  layer: YearLayer,
  design: Design,
): { readonly edges: readonly number[]; readonly textures: readonly TextureName[] } {
  const { underheatC, humidLimit } = design.comfort;
  if (layer.hot !== undefined) {
    const { lowC, highC } = layer.hot;
    return {
      // Where the limit follows the weather, what lies between its lowest and its highest is too hot by season.
      edges: [underheatC - FAR_K, underheatC, lowC, highC - lowC >= LEAST_BAND_K ? highC : lowC + FAR_K],
      textures: ['level', 'dots', 'plain', 'rising', 'cross'],
    };
  }
  if (layer.quantity === 'share') {
    const damp = Math.min(0.95, humidLimit);
    return {
      edges: [damp - 0.3, damp - 0.15, damp, (damp + 1) / 2].map((edge) => Math.max(0.02, edge)),
      textures: ['plain', 'plain', 'dots', 'rising', 'cross'],
    };
  }
  const most = Math.max(0.1, layer.ticks.at(-1)!);
  return { edges: [0.05 * most, most / 3, (2 / 3) * most], textures: ['plain', 'dots', 'rising', 'cross'] };
}

/** A value inside a band; the outer bands are taken as wide as their neighbours. */
function middleOf(edges: readonly number[], band: number): number {
  const first = edges[0]!;
  const last = edges.at(-1)!;
  if (band === 0) return first - (edges[1]! - first) / 2;
  if (band === edges.length) return last + (last - edges.at(-2)!) / 2;
  return (edges[band - 1]! + edges[band]!) / 2;
}

/** The number without its unit. */
function bare(text: string): string {
  return text.replace(/[\s\u202f].*$/, '');
}
