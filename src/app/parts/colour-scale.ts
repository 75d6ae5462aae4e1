// Colours for numbers. Each scale is a list of stops, value → colour, mixed linearly between; darkness rises away from
// the middle (or from the low end), so the scales hold for colour-blind readers and in grey print. On the dark screen it
// is lightness that rises, so that a calm year does not glare. In: a value. Out: red, green, blue 0…255.

import {
  COMFORT_STOPS,
  COMFORT_STOPS_DARK,
  HEAT_STOPS,
  HEAT_STOPS_DARK,
  HUMIDITY_STOPS,
  HUMIDITY_STOPS_DARK,
} from './palette.ts';

export interface Stop {
  readonly at: number;
  readonly rgb: readonly [number, number, number];
  /** on the dark screen */
  readonly rgbInDark: readonly [number, number, number];
}

export type ColourScale = readonly Stop[];

/**
 * Temperatures around comfort: paper between the limits, sky blue to ink below, clay to burnt earth above.
 *
 * @param coldC too cold below [°C]
 * @param hotC too hot above [°C]
 */
export function comfortScale(coldC: number, hotC: number): ColourScale {
  const below = [Math.min(-15, coldC - 25), coldC - 14, coldC - 4, coldC];
  const above = [hotC, hotC + 3, hotC + 8, Math.max(44, hotC + 18)];
  return scaleOf([...below, (coldC + hotC) / 2, ...above], COMFORT_STOPS, COMFORT_STOPS_DARK);
}

/** Relative humidity 0…1: paper while dry, moss and deep water when damp. */
export const HUMIDITY_SCALE: ColourScale = scaleOf(
  [0.2, 0.5, 0.7, 0.85, 1],
  HUMIDITY_STOPS,
  HUMIDITY_STOPS_DARK,
);

/** Back-up heat [W]: paper for none, ember for much. */
export function heatScale(mostW: number): ColourScale {
  const most = Math.max(1, mostW);
  return scaleOf([0, most * 0.05, most * 0.5, most], HEAT_STOPS, HEAT_STOPS_DARK);
}

/** The same values in the colours of the dark screen. */
export function inDark(scale: ColourScale): ColourScale {
  return scale.map(({ at, rgbInDark }) => ({ at, rgb: rgbInDark, rgbInDark }));
}

/** @param light, dark '#rrggbb', one for each value */
function scaleOf(values: readonly number[], light: readonly string[], dark: readonly string[]): ColourScale {
  return values.map((at, i) => ({ at, rgb: rgbOf(light[i]!), rgbInDark: rgbOf(dark[i]!) }));
}

function rgbOf(colour: string): readonly [number, number, number] {
  const channel = (from: number) => Number.parseInt(colour.slice(from, from + 2), 16);
  return [channel(1), channel(3), channel(5)];
}

/** Colour of a value; beyond the ends the end's colour. */
export function colourOf(value: number, scale: ColourScale): readonly [number, number, number] {
  const first = scale[0]!;
  if (!(value > first.at)) return first.rgb;
  for (let i = 1; i < scale.length; i++) {
    const high = scale[i]!;
    if (value > high.at) continue;
    const low = scale[i - 1]!;
    const share = (value - low.at) / (high.at - low.at);
    return [
      mix(low.rgb[0], high.rgb[0], share),
      mix(low.rgb[1], high.rgb[1], share),
      mix(low.rgb[2], high.rgb[2], share),
    ];
  }
  return scale.at(-1)!.rgb;
}

export function cssColour(value: number, scale: ColourScale): string {
  return `rgb(${colourOf(value, scale).join(' ')})`;
}

function mix(low: number, high: number, share: number): number {
  return Math.round(low + (high - low) * share);
}
