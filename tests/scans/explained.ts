// Scans that fail and are left so, since what they show is physics and no habit: why, beside the failure. A scan's name in;
// the reason in words, or null, out.
import { nameOf, type Scan } from './scan.ts';

const REASONS: readonly (readonly [of: string, why: string])[] = [
  [
    'night set-point, leaning, madrid',
    'Steep and smooth, no cliff, and nobody’s habit: with nothing ever opened the last quarter kelvin costs more of the mean ' +
      'step still. Held at 16 to 17.5 °C by night this heavy house never falls so far, so that a third of the range costs ' +
      'nothing and the mean step is small; beyond, each quarter kelvin asks for heat in more hours of the year, and by eighths ' +
      'of a kelvin the steps grow evenly.',
  ],
  [
    'night fan, leaning, denver, away',
    'Of the right size and no habit: this house is too hot for 1700 hours and lies bare on the earth and against it. What a ' +
      'fan takes out of floor, berm and tyres by summer nights is missing in winter, from November to February; with floor ' +
      'and walls insulated against the earth it comes to 6 kWh in place of 30.',
  ],
  [
    'leaf area, closed, quillayute, attentive',
    'No cliff: by sixteenths of a leaf area heat grows by 16 to 26 kWh a step up to 0.75 and by 9 to 13 from there to 1. The ' +
      'first three quarters evaporate what sun and room give them and the rooms are aired for it; from 0.75 on the sunspace ' +
      'itself is damp enough to be aired at its own vents, which costs the rooms less, and beyond 1.5 leaves shade one ' +
      'another. Three even steps and a long flat end make a small mean step.',
  ],
];

/** Why a scan that fails is left so. */
export function reasonFor(scan: Scan): string | null {
  const name = nameOf(scan);
  return REASONS.find(([of]) => name.startsWith(of))?.[1] ?? null;
}
