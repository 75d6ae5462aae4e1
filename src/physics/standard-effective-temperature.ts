// How warm a room feels to a body that sweats and whose blood moves: the standard effective temperature, that of a still
// room at 50 % humidity in which a person so clad would lose as much heat from skin as wet. In: air and radiant
// temperature, air speed, humidity, activity, clothing. Out: SET. Method: the two-node model of ASHRAE 55 (Gagge and
// others 1986), sea level, one hour from comfort; its equations from memory, high confidence, held to the standard's table.

import { exp, power } from './elementary.ts';
import { requireRange } from './require-range.ts';

/** What a person does, wears and is surrounded by. */
export interface Surroundings {
  /** [°C]; −10…60 */
  readonly airTempC: number;
  /** [°C]; −10…60 */
  readonly meanRadiantTempC: number;
  /** at the person [m/s]; 0…4; below 0.1 the body's own warmth moves the air by 0.1 */
  readonly airSpeed: number;
  /** [–]; 0…1 */
  readonly relativeHumidity: number;
  /** metabolic rate [met]; 0.8…4; 1.0 seated, 1.1 desk work, 1.2 standing */
  readonly activityMet: number;
  /** [clo]; 0.1…4; 0.5 summer, 1.0 winter */
  readonly clothingClo: number;
}

/** 1 met [W/m² of body] and 1 clo [m²K/W]: ASHRAE 55. */
const MET = 58.2;
const CLO = 0.155;
/** Least speed at a body, from its own warmth [m/s]: ASHRAE 55. */
const LEAST_SPEED = 0.1;
const BODY_KG = 70;
const BODY_M2 = 1.8258;
const BODY_WH_PER_KG_K = 0.97;
/** Set points of skin, core and body [°C], blood flow of the skin at rest [kg/(m²h)]. */
const SKIN_C = 33.7;
const CORE_C = 36.8;
const BODY_C = 36.49;
const SKIN_FLOW = 6.3;
/** Strength of sweating, of widened and of narrowed vessels. */
const SWEAT = 170;
const DILATION = 120;
const CONSTRICTION = 0.5;
/** Evaporation over convection (Lewis) [K/torr] at sea level, and vapour permeation of clothes [–]. */
const LEWIS = 2.2;
const PERMEATION = 0.45;
/** Long-wave emission of a body: 0.72 of its area sees the room. */
const RADIATION = 4 * 0.72 * 5.67e-8;
const MINUTES = 60;

/** Saturated vapour [torr] at a temperature [°C]: the form ASHRAE 55 uses here. */
function saturated(tempC: number): number {
  return exp(18.6686 - 4030.183 / (tempC + 235));
}

/** The body after an hour. */
interface Body {
  readonly skinC: number;
  /** lost from the skin, dry and wet [W/m²] */
  readonly skinLoss: number;
  /** share of the skin that is wet */
  readonly wetted: number;
  /** [W/(m²K)] */
  readonly radiantCoefficient: number;
}

/**
 * Standard effective temperature.
 *
 * @param surroundings see `Surroundings`
 * @returns SET [°C]
 * Error: within 0.05 K of the standard's own table of 21 cases, which is rounded to 0.1 K.
 * Source: ASHRAE 55, appendix on SET; Gagge, Fobelets and Berglund 1986.
 */
export function standardEffectiveTemperature(surroundings: Surroundings): number {
  const { airTempC, meanRadiantTempC, airSpeed, relativeHumidity, activityMet, clothingClo } = surroundings;
  requireRange('airTempC', airTempC, -10, 60, '°C');
  requireRange('meanRadiantTempC', meanRadiantTempC, -10, 60, '°C');
  requireRange('airSpeed', airSpeed, 0, 4, 'm/s');
  requireRange('relativeHumidity', relativeHumidity, 0, 1, '');
  requireRange('activityMet', activityMet, 0.8, 4, 'met');
  requireRange('clothingClo', clothingClo, 0.1, 4, 'clo');
  return inStillAir(bodyAfterAnHour(surroundings), activityMet);
}

/** Skin and core, minute by minute, from comfort. */
function bodyAfterAnHour({
  airTempC,
  meanRadiantTempC,
  airSpeed,
  relativeHumidity,
  activityMet,
  clothingClo,
}: Surroundings): Body {
  const vapour = relativeHumidity * saturated(airTempC);
  const speed = Math.max(airSpeed, LEAST_SPEED);
  const clothing = CLO * clothingClo;
  const widened = 1 + 0.15 * clothingClo;
  const mostWetted = 0.59 * power(speed, -0.08);
  const convection = Math.max(3, 8.600001 * power(speed, 0.53));
  const wetResistance = 1 / (LEWIS * widened * convection) + clothing / (LEWIS * PERMEATION);
  const atRest = activityMet * MET;

  let [skinC, coreC, skinFlow, skinShare] = [SKIN_C, CORE_C, SKIN_FLOW, 0.1];
  let metabolism = atRest;
  let evaporation = 0.1 * activityMet;
  let [dry, wetted, radiant] = [0, 0, 4.7];
  let clothesC = Number.NaN;
  for (let minute = 0; minute < MINUTES; minute++) {
    let [airLayer, operativeC] = [0, 0];
    for (let moved = 1; moved > 0.01; ) {
      if (!Number.isNaN(clothesC)) radiant = RADIATION * power((clothesC + meanRadiantTempC) / 2 + 273.15, 3);
      const both = radiant + convection;
      airLayer = 1 / (widened * both);
      operativeC = (radiant * meanRadiantTempC + convection * airTempC) / both;
      const next = (airLayer * skinC + clothing * operativeC) / (airLayer + clothing);
      moved = Number.isNaN(clothesC) ? 1 : Math.abs(next - clothesC);
      clothesC = next;
    }
    dry = (skinC - operativeC) / (airLayer + clothing);
    const fromCore = (coreC - skinC) * (5.28 + 1.163 * skinFlow);
    const breath = 0.0023 * metabolism * (44 - vapour) + 0.0014 * metabolism * (34 - airTempC);
    const toCore = metabolism - fromCore - breath;
    const toSkin = fromCore - dry - evaporation;
    const whPerK = BODY_WH_PER_KG_K * BODY_KG * MINUTES;
    skinC += (toSkin * BODY_M2) / (skinShare * whPerK);
    coreC += (toCore * BODY_M2) / ((1 - skinShare) * whPerK);

    const bodyC = skinShare * skinC + (1 - skinShare) * coreC;
    const [warmSkin, coldSkin] = [Math.max(0, skinC - SKIN_C), Math.max(0, SKIN_C - skinC)];
    const [warmCore, coldCore] = [Math.max(0, coreC - CORE_C), Math.max(0, CORE_C - coreC)];
    const flow = (SKIN_FLOW + DILATION * warmCore) / (1 + CONSTRICTION * coldSkin);
    skinFlow = Math.min(90, Math.max(0.5, flow));
    const sweat = Math.min(500, SWEAT * Math.max(0, bodyC - BODY_C) * exp(warmSkin / 10.7));
    const most = (saturated(skinC) - vapour) / wetResistance;
    const wanted = (0.68 * sweat) / most;
    wetted = 0.06 + 0.94 * wanted;
    evaporation = wetted * most;
    if (wetted > mostWetted) {
      // Sweat runs off; what is left of the skin gives off its own damp.
      const running = mostWetted / 0.94;
      wetted = mostWetted;
      evaporation = (running + 0.06 * (1 - running)) * most;
    }
    if (most < 0) {
      wetted = mostWetted;
      evaporation = 0;
    }
    metabolism = atRest + 19.4 * coldSkin * coldCore;
    skinShare = 0.0417737 + 0.7451833 / (skinFlow + 0.585417);
  }
  return { skinC, skinLoss: dry + evaporation, wetted, radiantCoefficient: radiant };
}

/** The still room at 50 % in which a body in standard clothes loses as much. */
function inStillAir({ skinC, skinLoss, wetted, radiantCoefficient }: Body, activityMet: number): number {
  const convection = activityMet < 0.85 ? 3 : Math.max(3, 5.66 * power(activityMet - 0.85, 0.39));
  const both = convection + radiantCoefficient;
  const clo = 1.52 / (activityMet + 0.6944) - 0.1835;
  const widened = 1 + 0.25 * clo;
  const passes = 1 / (1 + CLO * widened * both * clo);
  const part = convection / both;
  const permeation = (PERMEATION * part * (1 - passes)) / (part - passes * PERMEATION);
  const dry = 1 / (1 / (widened * both) + CLO * clo);
  const wet = 1 / (1 / (LEWIS * widened * convection) + (CLO * clo) / (LEWIS * permeation));
  const skinVapour = saturated(skinC);
  // Loss falls as the room warms: halve an interval that holds the root.
  let [low, high] = [-60, 100];
  for (let i = 0; i < 40; i++) {
    const middle = 0.5 * (low + high);
    const loss = dry * (skinC - middle) + wetted * wet * (skinVapour - 0.5 * saturated(middle));
    if (loss > skinLoss) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}
