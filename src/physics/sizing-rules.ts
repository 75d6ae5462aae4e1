// Rules of thumb of passive-solar sizing, to be shown beside what the simulation says and never instead of it. In: floor
// area, glass, mass. Out: glass limits, mass a rule asks for. Sources: the US guideline series of about 1989–1995 (glass
// and mass shares, partly read in later guides), the older handbooks of 1979 and 1980; each row says which and how sure.
// Areas in m²; glass shares are of heated floor area unless a row says otherwise.
import { requireRange } from './require-range.ts';

/** How far a rule can be trusted. */
export type RuleMark =
  | 'document'
  | 'memory, high'
  | 'memory, medium'
  | 'memory, low'
  | 'common practice, no source';

export interface SizingRule {
  readonly id: string;
  readonly says: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly source: string;
  readonly mark: RuleMark;
}

const SERIES = 'US passive-solar guideline series, about 1989–1995';

/** Single rules as ranges; low equals high where a rule gives one number. */
export const SIZING_RULES: readonly SizingRule[] = [
  {
    id: 'sun-tempered',
    says: 'glass that needs no mass beyond ordinary finishes, share of floor at most',
    low: 0.07,
    high: 0.07,
    unit: '',
    source: SERIES,
    mark: 'document',
  },
  {
    id: 'direct-gain',
    says: 'direct-gain glass, share of floor at most about',
    low: 0.12,
    high: 0.12,
    unit: '',
    source: SERIES,
    mark: 'memory, high',
  },
  {
    id: 'all-passive',
    says: 'all passive glass with storage walls and sunspace, share of floor at most about',
    low: 0.2,
    high: 0.2,
    unit: '',
    source: SERIES,
    mark: 'memory, high',
  },
  {
    id: 'solar-house',
    says: 'glass of a solar house, share of the reference area; above 12 % each per cent needs much mass',
    low: 0.12,
    high: 0.2,
    unit: '',
    source: 'common practice, no source',
    mark: 'common practice, no source',
  },
  {
    id: 'orientation',
    says: 'turn from the true equator side that keeps about 90 % of winter gain, at most',
    low: 30,
    high: 30,
    unit: '°',
    source: SERIES,
    mark: 'memory, high',
  },
  {
    id: 'pole-glass',
    says: 'pole-facing glass, share of floor at most',
    low: 0.04,
    high: 0.04,
    unit: '',
    source: SERIES,
    mark: 'memory, medium',
  },
  {
    id: 'east-glass',
    says: 'east glass, share of floor at most',
    low: 0.04,
    high: 0.04,
    unit: '',
    source: SERIES,
    mark: 'memory, medium',
  },
  {
    id: 'west-glass',
    says: 'west glass, share of floor at most',
    low: 0.02,
    high: 0.02,
    unit: '',
    source: SERIES,
    mark: 'memory, medium',
  },
  {
    id: 'masonry-weight',
    says: 'masonry for each m² of glass',
    low: 730,
    high: 730,
    unit: 'kg/m²',
    source: 'sustainable-building sourcebook of the 1990s',
    mark: 'document',
  },
  {
    id: 'water-volume',
    says: 'water for each m² of glass instead',
    low: 160,
    high: 160,
    unit: 'L/m²',
    source: 'sustainable-building sourcebook of the 1990s',
    mark: 'document',
  },
  {
    id: 'struck-surface',
    says: 'mass surface struck by the sun for each m² of glass; texts differ threefold',
    low: 3,
    high: 9,
    unit: 'm²/m²',
    source: 'sourcebook of the 1990s (9); other texts (3 sunlit, 6)',
    mark: 'memory, medium',
  },
  {
    id: 'heat-capacity',
    says: 'heat capacity for each m² of glass, design minimum to reference case',
    low: 613,
    high: 920,
    unit: 'kJ/(m²·K)',
    source: 'Passive Solar Design Handbook, 1980',
    mark: 'memory, medium',
  },
  {
    id: 'sunspace-mass',
    says: '100 mm masonry in a lived-in sunspace for each m² of its glass',
    low: 3,
    high: 3,
    unit: 'm²/m²',
    source: `DOE fact sheet and ${SERIES}`,
    mark: 'memory, medium',
  },
  {
    id: 'sunspace-water',
    says: 'water in a sunspace for each m² of its glass; more for growing',
    low: 0.12,
    high: 0.3,
    unit: 'm³/m²',
    source: SERIES,
    mark: 'memory, medium',
  },
  {
    id: 'sunspace-vents',
    says: 'summer vents of a sunspace, share of its glass; about 7 K over outdoors without wind and 2.5 m of height',
    low: 1 / 6,
    high: 1 / 6,
    unit: '',
    source: 'greenhouse handbooks',
    mark: 'memory, low',
  },
  {
    id: 'doorway-openings',
    says: 'doorways between house and sunspace, share of sunspace glass',
    low: 0.1,
    high: 0.15,
    unit: '',
    source: 'US sunspace primer, 1980s',
    mark: 'memory, low',
  },
  {
    id: 'paired-openings',
    says: 'low and high vents 2.4 m apart to the house, each, share of sunspace glass',
    low: 0.05,
    high: 0.05,
    unit: '',
    source: 'US sunspace primer, 1980s',
    mark: 'memory, low',
  },
];

/**
 * Glass shares of the handbooks of the 1970s, made for poorly insulated houses: history, not advice.
 * Source: US pattern handbook, 1979; from memory, medium confidence.
 */
export const HISTORICAL_GLASS_SHARES: readonly {
  readonly system: string;
  readonly coldClimate: readonly [number, number];
  readonly temperateClimate: readonly [number, number];
}[] = [
  { system: 'direct gain', coldClimate: [0.19, 0.38], temperateClimate: [0.11, 0.25] },
  { system: 'masonry storage wall', coldClimate: [0.43, 1.0], temperateClimate: [0.22, 0.6] },
  { system: 'water storage wall', coldClimate: [0.31, 0.85], temperateClimate: [0.16, 0.43] },
  { system: 'attached greenhouse', coldClimate: [0.65, 1.5], temperateClimate: [0.33, 0.9] },
];

export type MassLocation = 'sunlit-floor' | 'unlit-floor' | 'wall-or-ceiling';

/** m² of bare 100 mm mass for each m² of glass beyond the sun-tempered share. Source: guideline series, read in two guides. */
export const MASS_RATIOS: Readonly<Record<MassLocation, number>> = {
  'sunlit-floor': 5.5,
  'unlit-floor': 40,
  'wall-or-ceiling': 8.3,
};

/** No more than this many times the equator-facing glass counts as sunlit floor [–]. Guideline series; memory, medium. */
export const SUNLIT_FLOOR_CAP = 1.5;

/** The three ceilings of the guideline series for a heated floor area [m²]. */
export interface GlassLimits {
  readonly sunTemperedM2: number;
  readonly directGainM2: number;
  readonly allPassiveM2: number;
}

/**
 * Glass a floor area carries by rule: 7, 12 and 20 %.
 *
 * @param floorAreaM2 heated [m²]; 0…10 000
 */
export function glassLimits(floorAreaM2: number): GlassLimits {
  requireRange('floorAreaM2', floorAreaM2, 0, 10000, 'm²');
  return {
    sunTemperedM2: ruleShare('sun-tempered') * floorAreaM2,
    directGainM2: ruleShare('direct-gain') * floorAreaM2,
    allPassiveM2: ruleShare('all-passive') * floorAreaM2,
  };
}

/**
 * Glass beyond what the house carries without added mass.
 *
 * @param glassM2 direct-gain glass [m²]; ≥ 0
 * @param floorAreaM2 heated [m²]; ≥ 0
 * @returns glass that needs mass [m²]; 0 when there is none
 */
export function glassNeedingMass(glassM2: number, floorAreaM2: number): number {
  requireRange('glassM2', glassM2, 0, 10000, 'm²');
  return Math.max(glassM2 - glassLimits(floorAreaM2).sunTemperedM2, 0);
}

/** Area of 100 mm mass the rule asks for at one location [m²] for glass that needs mass [m²; ≥ 0]. */
export function massForGlass(extraGlassM2: number, location: MassLocation): number {
  requireRange('extraGlassM2', extraGlassM2, 0, 10000, 'm²');
  return MASS_RATIOS[location] * extraGlassM2;
}

/**
 * Glass that a mix of mass serves by rule.
 *
 * @param massM2 100 mm mass by location [m²]; ≥ 0
 * @param glassM2 equator-facing glass [m²]; caps the sunlit floor at 1.5 times it
 * @returns glass beyond the sun-tempered share that the mass serves [m²]
 */
export function glassServed(massM2: Readonly<Record<MassLocation, number>>, glassM2: number): number {
  requireRange('glassM2', glassM2, 0, 10000, 'm²');
  for (const [location, area] of Object.entries(massM2)) requireRange(location, area, 0, 100000, 'm²');
  const sunlit = Math.min(massM2['sunlit-floor'], SUNLIT_FLOOR_CAP * glassM2);
  const unlit = massM2['unlit-floor'] + (massM2['sunlit-floor'] - sunlit);
  return (
    sunlit / MASS_RATIOS['sunlit-floor'] +
    unlit / MASS_RATIOS['unlit-floor'] +
    massM2['wall-or-ceiling'] / MASS_RATIOS['wall-or-ceiling']
  );
}

/**
 * Sunspace glass as the guideline series counts it: its upright projection, A · sin(tilt).
 *
 * @param areaM2 of the pane [m²]; ≥ 0
 * @param tiltDeg 90 upright, 0 flat [°]; 0…90
 */
export function projectedGlass(areaM2: number, tiltDeg: number): number {
  requireRange('areaM2', areaM2, 0, 10000, 'm²');
  requireRange('tiltDeg', tiltDeg, 0, 90, '°');
  return areaM2 * Math.sin((tiltDeg * Math.PI) / 180);
}

function ruleShare(id: string): number {
  return SIZING_RULES.find((rule) => rule.id === id)!.high;
}
