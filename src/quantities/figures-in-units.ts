// Quantities as a person checks them with a tape and a pencil: in metres or in feet, with enough digits to follow the sum.
// SI in, words out. Factors: NIST SP 811, appendix B.

import { KWH_PER_THERM } from '../physics/constants.ts';
import { CORD_M3 } from '../physics/wood-fuel.ts';
import type { NormUnit } from './norms.ts';

/** Of the systems of units, those that differ here by heat alone are one. */
export type BillUnits = 'metric' | 'us' | 'us-therms';

const FOOT_M = 0.3048;
const POUND_KG = 0.45359237;

/** What quantities are counted in here; of fuels also stacked cubic metres, heat, litres and weight. */
export type Measure = NormUnit | 'stere' | 'kWh' | 'L' | 'kg';

/** Units that quantities are bought by, with what one of them is in those. */
export const BOUGHT_BY = {
  'm²': { of: 'm²', size: 1 },
  'm³': { of: 'm³', size: 1 },
  'ft²': { of: 'm²', size: FOOT_M ** 2 },
  'ft³': { of: 'm³', size: FOOT_M ** 3 },
  'yd³': { of: 'm³', size: (3 * FOOT_M) ** 3 },
  piece: { of: 'piece', size: 1 },
  // A stacked cubic metre.
  stere: { of: 'stere', size: 1 },
  cord: { of: 'stere', size: CORD_M3 },
  kWh: { of: 'kWh', size: 1 },
  therm: { of: 'kWh', size: KWH_PER_THERM },
  L: { of: 'L', size: 1 },
  gal: { of: 'L', size: 3.785411784 },
  kg: { of: 'kg', size: 1 },
  lb: { of: 'kg', size: POUND_KG },
} as const satisfies Record<string, { of: Measure; size: number }>;

export type BoughtBy = keyof typeof BOUGHT_BY;

/** The unit an item is told in. */
export function unitIn(unit: Measure, units: BillUnits, us: BoughtBy = IN_US[unit]): BoughtBy {
  return units === 'metric' ? unit : us;
}

const IN_US: Readonly<Record<Measure, BoughtBy>> = {
  'm²': 'ft²',
  'm³': 'yd³',
  piece: 'piece',
  stere: 'cord',
  kWh: 'kWh',
  L: 'gal',
  kg: 'lb',
};

/** An amount [m², m³ or pieces] in the unit it is told in. */
export function amountIn(amount: number, unit: NormUnit, units: BillUnits): number {
  return amount / BOUGHT_BY[unitIn(unit, units)].size;
}

/** Numbers of a formula in words. */
export interface FormulaWords {
  readonly area: (m2: number) => string;
  readonly length: (m: number) => string;
  readonly thickness: (m: number) => string;
  readonly volume: (m3: number) => string;
  readonly flow: (m3PerHour: number) => string;
  /** said behind a sum of volumes: what turns it into the unit it is told in */
  readonly volumeSums: string;
}

/** At most so many decimals, without idle zeros. */
export function short(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}

const METRIC: FormulaWords = {
  area: (m2) => `${short(m2, 2)} m²`,
  length: (m) => `${short(m, 2)} m`,
  thickness: (m) => `${short(m, 4)} m`,
  volume: (m3) => `${short(m3, m3 < 1 ? 4 : 2)} m³`,
  flow: (m3PerHour) => `${short(m3PerHour, 0)} m³/h`,
  volumeSums: '',
};

const US: FormulaWords = {
  area: (m2) => `${short(m2 / FOOT_M ** 2, 1)} ft²`,
  length: (m) => `${short(m / FOOT_M, 2)} ft`,
  thickness: (m) => `${short(m / FOOT_M, 4)} ft`,
  volume: (m3) => `${short(m3 / BOUGHT_BY['ft³'].size, 2)} ft³`,
  flow: (m3PerHour) => `${short(m3PerHour / 60 / FOOT_M ** 3, 0)} cfm`,
  volumeSums: '; cubic feet ÷ 27',
};

export function formulaWordsIn(units: BillUnits): FormulaWords {
  return units === 'metric' ? METRIC : US;
}

/** Of one, in a name: [in feet, pounds or gallons, how that is called]. */
const IN_NAMES = {
  kg: [1 / POUND_KG, 'lb'],
  m: [1 / FOOT_M, 'ft'],
  litres: [1 / 3.785411784, 'gal'],
} as const;

const STERE_NAMED = 'a stere being a stacked m³';
const CORD_NAMED = 'a cord being 128 stacked ft³';

/** A name with a measure in it: "bags of cement of 25 kg" are "bags of cement of 55 lb". */
export function namedIn(name: string, units: BillUnits): string {
  if (units === 'metric') return name;
  return name
    .replace(STERE_NAMED, CORD_NAMED)
    .replace(/(\d+) (kg|m|litres)\b/g, (_, amount: string, unit: keyof typeof IN_NAMES) => {
      const [size, told] = IN_NAMES[unit];
      const value = Number(amount) * size;
      return `${short(value, value < 10 ? 1 : 0)} ${told}`;
    });
}

/** A weight as it is hauled. */
export function weightIn(kg: number, units: BillUnits): string {
  if (units !== 'metric')
    return kg < 1000 ? `${short(kg / POUND_KG, 0)} lb` : `${short(kg / POUND_KG / 2000, 1)} short tons`;
  return kg < 1000 ? `${short(kg, 0)} kg` : `${short(kg / 1000, 1)} t`;
}
