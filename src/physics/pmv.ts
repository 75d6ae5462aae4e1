// How a room full of people would vote on its warmth, from −3 cold to +3 hot, and how many would complain. In: air and
// radiant temperature, air speed, humidity, activity, clothing. Out: predicted mean vote and percentage dissatisfied.
// Method: ISO 7730:2005 (from memory, high confidence). Relative humidity is a fraction 0–1.
import { requireRange } from './require-range.ts';

/** 1 met, W/m² of body: ISO 7730. */
const MET = 58.15;

/** 1 clo, m²K/W: ISO 7730. */
const CLO = 0.155;

/** What a person does, wears and is surrounded by. */
export interface ComfortInput {
  /** [°C]; 10…40, the standard's own range ends at 30 */
  readonly airTempC: number;
  /** [°C]; 10…50, the standard's own range ends at 40 */
  readonly meanRadiantTempC: number;
  /** at the person [m/s]; 0…1 */
  readonly airSpeed: number;
  /** [–]; 0…1 */
  readonly relativeHumidity: number;
  /** metabolic rate [met]; 0.8…4; 1.0 seated, 1.2 light work, 1.6 standing work */
  readonly activityMet: number;
  /** [clo]; 0…2; 0.5 summer, 1.0 winter */
  readonly clothingClo: number;
}

/**
 * Predicted mean vote, no external work.
 *
 *   PMV = (0.303 e^(−0.036 M) + 0.028) · (M − losses by skin, sweat, breath, radiation and convection)
 *
 * The clothing temperature solves its heat balance by halving an interval it is known to lie in.
 *
 * @param input see `ComfortInput`
 * @returns vote [–]; meaningful between −2 and 2
 * Source: ISO 7730:2005, equations 1 to 4.
 */
export function predictedMeanVote(input: ComfortInput): number {
  const { airTempC, meanRadiantTempC, airSpeed, relativeHumidity, activityMet, clothingClo } = input;
  requireRange('airTempC', airTempC, 10, 40, '°C');
  requireRange('meanRadiantTempC', meanRadiantTempC, 10, 50, '°C');
  requireRange('airSpeed', airSpeed, 0, 1, 'm/s');
  requireRange('relativeHumidity', relativeHumidity, 0, 1, '');
  requireRange('activityMet', activityMet, 0.8, 4, 'met');
  requireRange('clothingClo', clothingClo, 0, 2, 'clo');
  const metabolism = activityMet * MET;
  const clothing = clothingClo * CLO;
  const coverage = clothing <= 0.078 ? 1 + 1.29 * clothing : 1.05 + 0.645 * clothing;
  const vapour = relativeHumidity * 1000 * Math.exp(16.6536 - 4030.183 / (airTempC + 235));
  /** Dry loss at a clothing temperature [W/m²]. */
  const dryLoss = (clothingTempC: number): number => {
    const natural = 2.38 * Math.abs(clothingTempC - airTempC) ** 0.25;
    const convection = Math.max(natural, 12.1 * Math.sqrt(airSpeed));
    const radiant = 3.96e-8 * ((clothingTempC + 273) ** 4 - (meanRadiantTempC + 273) ** 4);
    return coverage * (radiant + convection * (clothingTempC - airTempC));
  };
  const skin = 35.7 - 0.028 * metabolism;
  const clothingTempC = rootOf(
    (t) => t - skin + clothing * dryLoss(t),
    Math.min(skin, airTempC, meanRadiantTempC),
    Math.max(skin, airTempC, meanRadiantTempC),
  );
  const losses =
    3.05e-3 * (5733 - 6.99 * metabolism - vapour) +
    0.42 * (metabolism - MET) +
    1.7e-5 * metabolism * (5867 - vapour) +
    0.0014 * metabolism * (34 - airTempC) +
    dryLoss(clothingTempC);
  return (0.303 * Math.exp(-0.036 * metabolism) + 0.028) * (metabolism - losses);
}

/**
 * Percentage who would be dissatisfied at a vote: 100 − 95·exp(−0.03353 v⁴ − 0.2179 v²); never below 5.
 *
 * @param vote PMV [–]; −10…10
 * @returns [%]
 * Source: ISO 7730:2005, equation 5.
 */
export function percentageDissatisfied(vote: number): number {
  requireRange('vote', vote, -10, 10, '');
  return 100 - 95 * Math.exp(-0.03353 * vote ** 4 - 0.2179 * vote ** 2);
}

/** Root of a rising function between two ends that enclose it, to 1e-9 of their distance. */
function rootOf(rising: (x: number) => number, low: number, high: number): number {
  let [below, above] = [low, high];
  for (let i = 0; i < 32; i++) {
    const middle = 0.5 * (below + above);
    if (rising(middle) > 0) above = middle;
    else below = middle;
  }
  return 0.5 * (below + above);
}
