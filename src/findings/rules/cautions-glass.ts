// Overhead and sloped glass: safety glass, leaks, snow. Sources: the model building code's rules for glass more
// than 15° from upright (IBC 2405, read in a state edition of 2018); snow shape factors of EN 1991-1-3 (from
// memory, high confidence); leaks: US Department of Energy fact sheet on sunspaces. Local codes decide.

import { snowShapeFactor } from '../../physics/snow-load.ts';
import type { Context } from '../context.ts';
import { caution, type Rule } from '../rule.ts';
import { percent } from '../wording.ts';
import { UPRIGHT_WITHIN_DEG } from './glass.ts';

/** Hours of frost a year from which snow has to be thought of. House rule. */
const SNOW_FROST_HOURS = 300;

function isSloped({ design, geometry }: Context): boolean {
  return geometry.glassM2 > 0 && design.glass.tiltDeg < 90 - UPRIGHT_WITHIN_DEG;
}

function frostHours({ climate }: Context): number {
  return climate.year.dryBulbC.reduce((count, celsius) => count + (celsius < 0 ? 1 : 0), 0);
}

export const GLASS_CAUTIONS: readonly Rule[] = [
  caution({
    id: 'caution-overhead-glass',
    severity: 'danger',
    applies: isSloped,
    figures: ({ design }) => ({
      leanDeg: 90 - design.glass.tiltDeg,
      codeDeg: UPRIGHT_WITHIN_DEG,
      source: 'International Building Code, section 2405 (state edition of 2018)',
    }),
    says: (f) =>
      `Glass that leans ${f.leanDeg}° hangs over people's heads. Codes call it sloped glass from ${f.codeDeg}° on, and ask for safety glass: a laminated inner pane that stays up when it breaks, with a toughened one outside. Plain window units are not made for this. Ask your building office and a glazier who has done it before.`,
  }),
  caution({
    id: 'caution-leaks',
    severity: 'warning',
    applies: isSloped,
    figures: () => ({ source: 'US Department of Energy, fact sheet on sunspaces, 1990s' }),
    says: () =>
      'Leaning glass has a name for leaks. Use a glazing-bar system made for slopes, with drains inside the bars, and not window units sealed to rafters on site. Ask the maker whether the warranty holds on a slope, and a glazier who has built such slopes.',
  }),
  caution({
    id: 'caution-snow',
    severity: 'warning',
    applies: (context) => isSloped(context) && frostHours(context) > SNOW_FROST_HOURS,
    figures: (context) => ({
      tiltDeg: context.design.glass.tiltDeg,
      frostHours: frostHours(context),
      freeShare: snowShapeFactor(context.design.glass.tiltDeg, true),
      heldShare: snowShapeFactor(context.design.glass.tiltDeg, false),
      source: 'EN 1991-1-3, snow shape factor (from memory, high confidence)',
    }),
    says: (f) =>
      `Snow will lie on this glass and slide off it. By the European snow code, glass at ${f.tiltDeg}° carries ${f.freeShare > 0 ? percent(f.freeShare) : 'none'} of the snow that lies on flat ground, as long as it can slide off. Where bars or gutters hold it, count ${percent(f.heldShare)}. Leave room at its foot for what comes down, keep doors out of the way, and have an engineer size the bars.`,
  }),
  caution({
    id: 'caution-large-panes',
    severity: 'warning',
    applies: (context) => context.geometry.glassM2 > 0,
    figures: () => ({
      source: 'International Building Code, section 2406 (from memory, high confidence); local codes decide',
    }),
    says: () =>
      'Panes near the floor, near doors and next to a bath have to be safety glass under most codes, upright or leaning. People fall against them, and children do not see them. Ask your glazier or your building office before you order.',
  }),
];
