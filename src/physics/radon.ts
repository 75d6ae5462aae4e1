// Radon in the air of a house that touches much earth. In: how fast it enters, volume, air change. Out: steady
// concentration, and the levels at which health bodies ask for action. Only a measurement of at least three months in
// the heating season settles it; an estimate or a map clears no house. Local rules decide.
import { requireRange } from './require-range.ts';

/** Decay constant of radon-222, 1/h: ln 2 / 3.82 days. */
export const RADON_DECAY_PER_H = 0.00755;

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

/** Concentrations people know, Bq/m³: outdoor air and the average home in the United States. */
export const RADON_FAMILIAR = { outdoorAir: 15, averageHome: 48 } as const;

/**
 * Steady concentration: C = S / [V · (λ_v + λ_decay)].
 *
 * Outdoor radon brought in by the air change is left out, as in the source: add about 15 Bq/m³ where it matters.
 *
 * @param entryBqPerH radon entering from the soil and materials [Bq/h]; ≥ 0
 * @param volumeM3 of the air it mixes with [m³]; > 0
 * @param airChangePerH [1/h]; ≥ 0
 * @returns concentration above that of outdoor air [Bq/m³]
 * Error: entry rates of houses differ a hundredfold and entry itself rises with the stack suction of high vents: an order of magnitude.
 * Source: mass balance of a mixed volume.
 */
export function steadyRadon(entryBqPerH: number, volumeM3: number, airChangePerH: number): number {
  requireRange('entryBqPerH', entryBqPerH, 0, 1e8, 'Bq/h');
  requireRange('volumeM3', volumeM3, 1, 1e5, 'm³');
  requireRange('airChangePerH', airChangePerH, 0, 1000, '1/h');
  return entryBqPerH / (volumeM3 * (airChangePerH + RADON_DECAY_PER_H));
}

/** Levels a concentration [Bq/m³; ≥ 0] reaches or passes, in the order of `RADON_LEVELS`. */
export function radonLevelsReached(concentration: number): readonly RadonLevel[] {
  requireRange('concentration', concentration, 0, 1e6, 'Bq/m³');
  return RADON_LEVELS.filter(({ level }) => concentration >= level);
}
