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
    id: 'orientation',
    says: 'turn from the true equator side that keeps about 90 % of winter gain, at most',
    low: 30,
    high: 30,
    unit: '°',
    source: SERIES,
    mark: 'memory, high',
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
    id: 'sunspace-mass',
    says: '100 mm masonry in a lived-in sunspace for each m² of its glass',
    low: 3,
    high: 3,
    unit: 'm²/m²',
    source: `DOE fact sheet and ${SERIES}`,
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
];

export type MassLocation = 'sunlit-floor' | 'unlit-floor' | 'wall-or-ceiling';

/** m² of bare 100 mm mass for each m² of glass beyond the sun-tempered share. Source: guideline series, read in two guides. */
export const MASS_RATIOS: Readonly<Record<MassLocation, number>> = {
  'sunlit-floor': 5.5,
  'unlit-floor': 40,
  'wall-or-ceiling': 8.3,
};
