// The equator-facing glass: how much against wall and floor, what leaning does by season, which way it faces.
// Marks of 7, 12 and 20 % of floor: US guideline series of about 1989–1995 (from memory, high confidence).

import type { DrawnBy } from '../../design/design.ts';
import { glassById } from '../../design/glass-catalogue.ts';
import { heatByMonth } from '../../outcomes/balances.ts';
import { isTooHot } from '../../outcomes/too-hot.ts';
import { SIZING_RULES } from '../../physics/sizing-rules.ts';
import { type PlaneIrradiance, planeIrradiance } from '../../weather/prepared/plane-irradiance.ts';
import { equatorAzimuth } from '../../weather/prepared/prepared-climate.ts';
import { HOURS } from '../../weather/typical-year.ts';
import type { Context } from '../context.ts';
import { isOnFront } from '../cover-words.ts';
import { finding, type Rule } from '../rule.ts';
import { months, percent, plain } from '../wording.ts';
import { solsticeMonths, sumOverMonths } from './season.ts';

const markOf = (id: string) => SIZING_RULES.find((rule) => rule.id === id)!.low;
const DIRECT_GAIN = markOf('direct-gain');
const ALL_PASSIVE = markOf('all-passive');
const MOST_TURN_DEG = markOf('orientation');
const MARK_SOURCE = 'US passive-solar guideline series, about 1989–1995 (from memory, high confidence)';
/** Glass leans when it is further from upright than this [°]: model building codes call it sloped from here on. */
export const UPRIGHT_WITHIN_DEG = 15;
/** Less sun than this in three months is a polar winter, and ratios of it say nothing [kWh/m²]. */
const LEAST_SUN_KWH = 1;
/** Light that plants want through glass (US energy department's fact sheet on sunspaces). */
const PLANT_LIGHT = 0.7;

/** The guide's ceiling for this kind of house. */
function ceilingOf({ design }: Context): number {
  return design.sunspace.join === 'none' ? DIRECT_GAIN : ALL_PASSIVE;
}

function isLeaning({ design, geometry }: Context): boolean {
  return geometry.glassM2 > 0 && design.glass.tiltDeg < 90 - UPRIGHT_WITHIN_DEG;
}

/** Sun on a square metre over some months, in the direction the design faces [kWh/m²]. */
function sunOn({ design, climate }: Context, tiltDeg: number, chosen: readonly boolean[]): number {
  const azimuth = equatorAzimuth(climate.year.site.latitudeDeg) + design.house.turnDeg;
  return sumOverMonths(totalOf(planeIrradiance(climate, tiltDeg, azimuth)), chosen) / 1000;
}

/** Sun on the glass over some months, against upright glass; 1 in months without sun. */
function timesUpright(context: Context, chosen: readonly boolean[]): number {
  const upright = sunOn(context, 90, chosen);
  return upright < LEAST_SUN_KWH ? 1 : sunOn(context, context.design.glass.tiltDeg, chosen) / upright;
}

/** Sun on the glass in the months of low sun, against glass that faces the equator squarely, 0…1. */
function winterShareWhenTurned(context: Context): number {
  const { design, climate } = context;
  const low = solsticeMonths(climate.year.site.latitudeDeg, false);
  const square = { ...context, design: { ...design, house: { ...design.house, turnDeg: 0 } } };
  const best = sunOn(square, design.glass.tiltDeg, low);
  return best < LEAST_SUN_KWH ? 1 : sunOn(context, design.glass.tiltDeg, low) / best;
}

/** Sun taken in and heat lost through all glass in the three months of low sun, all zones [kWh]. */
function winterGlass({ year, climate }: Context): { inKWh: number; outKWh: number } {
  const low = solsticeMonths(climate.year.site.latitudeDeg, false);
  const taken = year.zones.reduce((sum, zone) => sum + sumOverMonths(zone.solarW, low), 0);
  const lost = heatByMonth(year)
    .filter(({ cause }) => cause === 'glass')
    .reduce(
      (sum, { months }) => sum + months.reduce((part, kWh, month) => part + (low[month] ? kWh : 0), 0),
      0,
    );
  return { inKWh: taken / 1000, outKWh: -lost };
}

function totalOf(plane: PlaneIrradiance): Float64Array {
  const total = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    total[hour] =
      plane.beam[hour]! +
      plane.circumsolar[hour]! +
      plane.isotropic[hour]! +
      plane.horizon[hour]! +
      plane.ground[hour]!;
  }
  return total;
}

/** A cover on the equator-facing glass, drawn by one of these. */
function hasFrontCover({ design }: Context, drawnBy: readonly DrawnBy[]): boolean {
  return (design.covers ?? []).some((cover) => isOnFront(cover) && drawnBy.includes(cover.drawnBy));
}

export const GLASS_RULES: readonly Rule[] = [
  finding({
    id: 'glass-share',
    severity: (context) =>
      context.geometry.shareOfFloor > ceilingOf(context) && isTooHot(context.house) ? 'warning' : 'note',
    applies: ({ geometry }) => geometry.glassM2 > 0,
    figures: (context) => ({
      areaM2: context.geometry.glassM2,
      shareOfFloor: context.geometry.shareOfFloor,
      shareOfWall: context.geometry.shareOfWall,
      ceiling: ceilingOf(context),
      windowsCeiling: DIRECT_GAIN,
      sunspaceCeiling: ALL_PASSIVE,
      isHot: isTooHot(context.house) ? 'yes' : 'no',
      source: MARK_SOURCE,
    }),
    says: (f, { words, design }) =>
      `The equator-facing glass is ${words.area(f.areaM2)}. That is ${percent(f.shareOfFloor)} of the heated floor, or ${percent(f.shareOfWall)} of the equator-facing wall${f.shareOfWall > 1 && design.glass.tiltDeg < 90 ? ', for leaning glass is longer than the wall is high' : ''}. Builders use either figure, so name the one you mean. ` +
      `Guides of the 1990s stop at about ${percent(f.windowsCeiling)} of the floor for windows alone, and at ${percent(f.sunspaceCeiling)} with a sunspace, or walls that store heat behind glass. ` +
      (f.shareOfFloor > f.ceiling
        ? 'This house has more.'
        : f.isHot === 'yes'
          ? 'This house keeps to that and still gets too hot: go by its hours, not by the guides.'
          : 'This house keeps to that.'),
  }),
  finding({
    id: 'glass-leans',
    severity: 'warning',
    applies: (context) =>
      isLeaning(context) &&
      timesUpright(context, solsticeMonths(context.climate.year.site.latitudeDeg, true)) > 1.05,
    figures: (context) => {
      const { latitudeDeg } = context.climate.year.site;
      const high = solsticeMonths(latitudeDeg, true);
      const low = solsticeMonths(latitudeDeg, false);
      const { tiltDeg } = context.design.glass;
      return {
        tiltDeg,
        highSun: months(high),
        lowSun: months(low),
        summerTimes: timesUpright(context, high),
        winterTimes: timesUpright(context, low),
        source: 'shade outside leaning glass: common practice, no source',
      };
    },
    says: (f) =>
      `At ${f.tiltDeg}° the glass takes ${plain(f.summerTimes, 1)} times as much sun from ${f.highSun} as upright glass would, when you least want it. ` +
      (f.winterTimes > 1.02
        ? `From ${f.lowSun} it takes only ${percent(f.winterTimes - 1)} more. `
        : `From ${f.lowSun} it takes no more than upright glass. `) +
      'An overhang does little for leaning glass. Shade it from outside with a mat, a blind or a net that you take off by autumn. That is common practice; no study stands behind it.',
  }),
  finding({
    id: 'glass-loses',
    severity: 'note',
    applies: (context) => {
      const { inKWh, outKWh } = winterGlass(context);
      return (
        outKWh > inKWh && context.design.glass.nightResistance === 0 && !hasFrontCover(context, ['night'])
      );
    },
    figures: (context) => ({
      ...winterGlass(context),
      lowSun: months(solsticeMonths(context.climate.year.site.latitudeDeg, false)),
    }),
    says: (f, { words }) =>
      `From ${f.lowSun} more heat leaves through the glass than the sun brings in: ${words.energy(f.outKWh)} out, ${words.energy(f.inKWh)} in, all windows together. Quilts or shutters drawn at dusk would turn that round; so would better glass, or less.`,
  }),
  finding({
    id: 'glass-pays',
    severity: 'good',
    applies: (context) => {
      const { inKWh, outKWh } = winterGlass(context);
      return context.geometry.glassM2 > 0 && inKWh > 1.3 * outKWh;
    },
    figures: (context) => ({
      ...winterGlass(context),
      lowSun: months(solsticeMonths(context.climate.year.site.latitudeDeg, false)),
    }),
    says: (f, { words }) =>
      `Even from ${f.lowSun} the windows bring in more than they lose: ${words.energy(f.inKWh)} of sun against ${words.energy(f.outKWh)} of heat.`,
  }),
  finding({
    id: 'glass-upright',
    severity: 'good',
    applies: (context) =>
      context.geometry.glassM2 > 0 && !isLeaning(context) && context.design.glass.overhangM > 0,
    figures: ({ design, house }) => ({
      overhangM: design.glass.overhangM,
      tiltDeg: design.glass.tiltDeg,
      isHot: isTooHot(house) ? 'yes' : 'no',
    }),
    says: (f, { words }) =>
      `Upright glass under an overhang of ${words.length(f.overhangM)} lets the winter sun in and keeps some of the high summer sun out.${f.isHot === 'yes' ? ' Here that is not enough by itself.' : ''}`,
  }),
  finding({
    id: 'no-overhang',
    severity: 'note',
    applies: (context) =>
      context.geometry.glassM2 > 0 &&
      !isLeaning(context) &&
      context.design.glass.overhangM === 0 &&
      context.design.glass.summerShade === 0 &&
      !hasFrontCover(context, ['sun', 'heat', 'season']) &&
      isTooHot(context.house),
    figures: ({ house }) => ({ hours: house.tooHot.hours }),
    says: () =>
      'Nothing shades the glass in summer. A roof edge, a vine on wires or an outside blind would take the high sun off it and cost no winter heat if it is off by autumn.',
  }),
  finding({
    id: 'turned-away',
    severity: 'note',
    applies: (context) =>
      context.geometry.glassM2 > 0 &&
      Math.abs(context.design.house.turnDeg) > 20 &&
      winterShareWhenTurned(context) < 0.98,
    figures: (context) => ({
      turnDeg: Math.abs(context.design.house.turnDeg),
      lowSun: months(solsticeMonths(context.climate.year.site.latitudeDeg, false)),
      winterShare: winterShareWhenTurned(context),
      mostTurnDeg: MOST_TURN_DEG,
      source: MARK_SOURCE,
    }),
    says: (f) =>
      `The glass faces ${f.turnDeg}° away from the equator. From ${f.lowSun} it gets ${percent(f.winterShare)} of the sun it could have. Up to ${f.mostTurnDeg}° guides call that acceptable; the side that turns west brings hot late afternoons.`,
  }),
  finding({
    id: 'dark-glass-for-plants',
    severity: 'note',
    applies: ({ design }) => design.plants.bedM2 > 0 && glassById(design.glass.type).visible < PLANT_LIGHT,
    figures: ({ design }) => ({
      visible: glassById(design.glass.type).visible,
      wanted: PLANT_LIGHT,
      source: 'US Department of Energy, fact sheet on sunspaces, 1990s',
    }),
    says: (f) =>
      `This glass lets ${percent(f.visible)} of the light through. Plants do better with ${percent(f.wanted)} or more.`,
  }),
];
