// Mass: whether there is enough for the glass, whether it stands in the sun, whether the day reaches it, and what
// building it takes. Ratios: a sourcebook of the 1990s and the US guideline series (physics/sizing-rules.ts);
// useful thickness: peak of the diurnal heat capacity (physics/wall-response.ts); tyres as on the bill of quantities; labour:
// common practice, no source (physics/labour.ts).

import { materialById } from '../../design/materials.ts';
import { equatorFront } from '../../model/equator-front.ts';
import { otherSides } from '../../model/other-windows.ts';
import { isTooHot } from '../../outcomes/too-hot.ts';
import { TYRE_PRACTICE } from '../../physics/labour.ts';
import { MASS_RATIOS, SIZING_RULES } from '../../physics/sizing-rules.ts';
import { usefulThickness } from '../../physics/wall-response.ts';
import { massWork } from '../../quantities/items.ts';
import type { Context } from '../context.ts';
import { finding, type Rule } from '../rule.ts';
import { isUs, plain } from '../wording.ts';

const BY_WEIGHT = SIZING_RULES.find(({ id }) => id === 'masonry-weight')!.low;
const TYRES = 'earth-tyres';
/** Swing between night and day that people take as steady [K]. House rule. */
const STEADY_SWING_K = 4;
const WIDE_SWING_K = 7;
/** Glass beyond this share of the floor asks for mass (guideline series). */
const SUN_TEMPERED = SIZING_RULES.find(({ id }) => id === 'sun-tempered')!.low;

/** Thickness beyond which a wall takes up no more of a day's heat [m]. */
function usefulThicknessOf(materialId: string): number {
  return usefulThickness(materialById(materialId));
}

/** The thickest earth or masonry wall of the design: extra mass or the lining of the outer walls. */
function thickestWall({ design }: Context): { material: string; thicknessM: number } {
  const { mass, envelope } = design;
  const lining = { material: envelope.wallLining, thicknessM: envelope.wallLiningM };
  if (mass.areaM2 === 0) return lining;
  return mass.thicknessM >= lining.thicknessM ? mass : lining;
}

function isIdle(context: Context): boolean {
  const { material, thicknessM } = thickestWall(context);
  return (
    material !== 'water' && materialById(material).mass && thicknessM > 1.5 * usefulThicknessOf(material)
  );
}

/** Tyres and earth of the lined outer walls and the extra mass, as the bill of quantities counts them. */
function tyreWalls({ design, climate, geometry }: Context): {
  readonly pieces: number;
  readonly weightKg: number;
} {
  const { envelope, mass, sunspace } = design;
  const sidesM2 = otherSides(design, climate.year.site).reduce(
    (sum, { bareM2, bermedM2 }) => sum + bareM2 + bermedM2,
    0,
  );
  const frontM2 =
    sunspace.join === 'none'
      ? equatorFront(design).slopeWallM2
      : geometry.equatorWallM2 - sunspace.lengthM * geometry.heightM;
  const [lined, extra] = [
    envelope.wallLining === TYRES ? (sidesM2 + frontM2) * envelope.wallLiningM : 0,
    mass.material === TYRES ? mass.areaM2 * mass.thicknessM : 0,
  ];
  return massWork(TYRES, lined + extra, 1);
}

export const MASS_RULES: readonly Rule[] = [
  finding({
    id: 'mass-enough',
    severity: 'good',
    applies: ({ outcome, house, geometry }) =>
      geometry.shareOfFloor > SUN_TEMPERED &&
      (outcome.mass.kgPerM2Glass ?? 0) >= BY_WEIGHT &&
      house.meanDailySwingK <= STEADY_SWING_K,
    figures: ({ outcome, house }) => ({
      kgPerM2Glass: outcome.mass.kgPerM2Glass!,
      swingK: house.meanDailySwingK,
    }),
    says: (f, { words, units }) =>
      `By the guides there is mass enough for the glass: ${words.weightPerArea(f.kgPerM2Glass)} for each ${isUs(units) ? 'square foot' : 'square metre'} of it, and the rooms swing by only ${words.degrees(f.swingK)} between night and day.`,
  }),
  finding({
    id: 'mass-too-little',
    severity: 'warning',
    applies: ({ outcome, house, geometry }) =>
      geometry.shareOfFloor > SUN_TEMPERED &&
      (outcome.mass.kgPerM2Glass ?? Number.POSITIVE_INFINITY) < BY_WEIGHT &&
      (isTooHot(house) || house.meanDailySwingK > WIDE_SWING_K),
    figures: ({ outcome, house }) => ({
      kgPerM2Glass: outcome.mass.kgPerM2Glass!,
      ruleKgPerM2: BY_WEIGHT,
      swingK: house.meanDailySwingK,
      source: 'a US sustainable-building sourcebook of the 1990s',
    }),
    says: (f, { words, units }) =>
      `The mass is light for so much glass: ${words.weightPerArea(f.kgPerM2Glass)} for each ${isUs(units) ? 'square foot' : 'square metre'} of it. An old rule asks for ${words.weightPerArea(f.ruleKgPerM2)}. Add mass where the sun falls, or take less glass.`,
  }),
  finding({
    id: 'wide-swing',
    severity: 'note',
    applies: ({ house }) => house.meanDailySwingK > WIDE_SWING_K,
    figures: ({ house }) => ({ swingK: house.meanDailySwingK }),
    says: (f, { words }) =>
      `On an average day the rooms swing by ${words.degrees(f.swingK)} between their coldest and their warmest hour. People notice half of that.`,
  }),
  finding({
    id: 'mass-in-shade',
    severity: 'note',
    applies: ({ design, geometry }) =>
      design.mass.areaM2 > 0 && design.mass.place === 'shaded' && geometry.shareOfFloor > SUN_TEMPERED,
    figures: ({ design }) => ({
      areaM2: design.mass.areaM2,
      times: MASS_RATIOS['unlit-floor'] / MASS_RATIOS['sunlit-floor'],
      source: 'US passive-solar guideline series, about 1989–1995',
    }),
    says: (f, { words }) =>
      `The ${words.area(f.areaM2)} of added mass stands out of the sun, and takes up heat only from warm air. Move it where the sun falls on it. By the guides, a floor in the sun does as much as one ${plain(f.times, 0)} times its size in the shade.`,
  }),
  finding({
    id: 'mass-idle',
    severity: 'note',
    applies: isIdle,
    figures: (context) => {
      const { material, thicknessM } = thickestWall(context);
      return {
        thicknessM,
        usefulM: usefulThicknessOf(material),
        material: materialById(material).name.toLowerCase(),
        source: 'diurnal heat capacity of a slab (ISO 13786, 24 h)',
      };
    },
    says: (f, { words }) =>
      `The day's heat reaches about ${words.thickness(f.usefulM)} into ${f.material}. The rest of the ${words.thickness(f.thicknessM)} wall evens out weeks, not days. Mass to cool the afternoon does more in a thinner wall with a larger face, where the sun falls.`,
  }),
  finding({
    id: 'floor-idle',
    severity: 'note',
    applies: ({ design: { floor } }) =>
      materialById(floor.material).mass && floor.thicknessM > 1.5 * usefulThicknessOf(floor.material),
    figures: ({ design: { floor } }) => ({
      thicknessM: floor.thicknessM,
      usefulM: usefulThicknessOf(floor.material),
      material: materialById(floor.material).name.toLowerCase(),
      source: 'diurnal heat capacity of a slab (ISO 13786, 24 h)',
    }),
    says: (f, { words }) =>
      `The floor is ${words.thickness(f.thicknessM)} of ${f.material}, and the day's heat reaches about ${words.thickness(f.usefulM)} into it. What lies deeper evens out weeks, not days, and adds little to the glass the house can carry.`,
  }),
  finding({
    id: 'floor-covered',
    severity: 'note',
    applies: ({ design, geometry }) =>
      (design.floor.cover === 'carpet' || design.floor.cover === 'wood') &&
      materialById(design.floor.material).mass &&
      geometry.shareOfFloor > SUN_TEMPERED,
    figures: ({ design }) => ({
      cover: design.floor.cover,
      source: 'US sourcebooks of the 1990s',
    }),
    says: (f) =>
      `The ${f.cover} keeps the sun's heat out of the slab beneath. Bare or tiled floor, at least where the sun falls, is mass you have already paid for.`,
  }),
  finding({
    id: 'tyre-work',
    severity: 'note',
    applies: (context) => tyreWalls(context).pieces > 0,
    figures: (context) => {
      const { pieces: tyres, weightKg } = tyreWalls(context);
      const [slow, fast] = TYRE_PRACTICE.tyresPerDayRange;
      return {
        tyres: Math.round(tyres / 10) * 10,
        earthKg: weightKg,
        daysFew: Math.round(tyres / fast),
        daysMany: Math.round(tyres / slow),
        perDayMost: fast,
        perDayLeast: slow,
        source: 'common practice, no source',
      };
    },
    says: (f, { words }) =>
      `The tyre walls need about ${f.tyres} tyres and ${words.weight(f.earthKg)} of earth. A strong worker rams ${f.perDayLeast} to ${f.perDayMost} a day, so count on ${f.daysFew} to ${f.daysMany} days of one person's work. This is common practice; no study stands behind it.`,
  }),
];
