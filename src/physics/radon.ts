/** Bq/m³ in 1 pCi/L. */
export const BECQUEREL_PER_PICOCURIE = 37;

export interface RadonLevel {
  readonly body: string;
  /** [Bq/m³] */
  readonly level: number;
  readonly meaning: string;
  readonly source: string;
}

const REVIEW = 'review of action levels for residential radon in a European respiratory journal (2017)';

/** Ascending by level. */
export const RADON_LEVELS: readonly RadonLevel[] = [
  {
    body: 'US EPA',
    level: 74,
    meaning: 'consider mending (2 pCi/L)',
    source: `${REVIEW}; home inspectors quoting the agency (2017)`,
  },
  { body: 'WHO', level: 100, meaning: 'reference level', source: REVIEW },
  { body: 'United Kingdom', level: 100, meaning: 'target level', source: REVIEW },
  {
    body: 'US EPA',
    level: 148,
    meaning: 'act (4 pCi/L)',
    source: `${REVIEW}; home inspectors quoting the agency (2017)`,
  },
  {
    body: 'Health Canada',
    level: 200,
    meaning: 'guideline',
    source: 'Canadian guideline for radon in indoor air, quoted text (2007)',
  },
  { body: 'United Kingdom', level: 200, meaning: 'action level', source: REVIEW },
  { body: 'Ireland', level: 200, meaning: 'reference level', source: REVIEW },
  { body: 'WHO', level: 300, meaning: 'not above, where 100 cannot be met', source: REVIEW },
  {
    body: 'European Union, directive 2013/59',
    level: 300,
    meaning: 'highest national reference level allowed',
    source: REVIEW,
  },
];
