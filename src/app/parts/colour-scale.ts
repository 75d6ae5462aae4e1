// Colours for numbers. Each scale is a list of stops, value → colour, mixed linearly between; darkness rises away from
// the middle (or from the low end), so the scales hold for colour-blind readers and in grey print. In: a value. Out:
// red, green, blue 0…255.

export interface Stop {
  readonly at: number;
  readonly rgb: readonly [number, number, number];
}

export type ColourScale = readonly Stop[];

const stop = (at: number, r: number, g: number, b: number): Stop => ({ at, rgb: [r, g, b] });

/**
 * Temperatures around comfort: paper between the limits, sky blue to ink below, clay to burnt earth above.
 *
 * @param coldC too cold below [°C]
 * @param hotC too hot above [°C]
 */
export function comfortScale(coldC: number, hotC: number): ColourScale {
  return [
    stop(Math.min(-15, coldC - 25), 14, 36, 66),
    stop(coldC - 14, 42, 88, 133),
    stop(coldC - 4, 124, 170, 201),
    stop(coldC, 205, 222, 228),
    stop((coldC + hotC) / 2, 244, 239, 226),
    stop(hotC, 243, 217, 168),
    stop(hotC + 3, 224, 150, 66),
    stop(hotC + 8, 176, 78, 28),
    stop(Math.max(44, hotC + 18), 82, 22, 10),
  ];
}

/** Relative humidity 0…1: paper while dry, moss and deep water when damp. */
export const HUMIDITY_SCALE: ColourScale = [
  stop(0.2, 250, 244, 226),
  stop(0.5, 214, 224, 205),
  stop(0.7, 122, 168, 150),
  stop(0.85, 46, 108, 112),
  stop(1, 12, 46, 66),
];

/** Back-up heat [W]: paper for none, ember for much. */
export function heatScale(mostW: number): ColourScale {
  const most = Math.max(1, mostW);
  return [
    stop(0, 246, 241, 230),
    stop(most * 0.05, 236, 206, 160),
    stop(most * 0.5, 190, 100, 45),
    stop(most, 82, 22, 10),
  ];
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
