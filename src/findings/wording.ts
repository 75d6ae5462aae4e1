// Numbers as an adviser says them: rounded to what the model can vouch for, each with its unit, in metric or US
// customary units. SI in, words out. Factors: NIST SP 811, appendix B.

import { dateOfHour, MONTH_NAMES } from '../outcomes/calendar.ts';
import { BTU_PER_KWH, KWH_PER_THERM } from '../physics/constants.ts';
import { CORD_M3 } from '../physics/wood-fuel.ts';
import { feetAndInches } from './feet-and-inches.ts';

export type Units = 'metric' | 'us' | 'us-therms';

/** Feet and degrees Fahrenheit, whatever heat is told in. */
export function isUs(units: Units): boolean {
  return units !== 'metric';
}

export interface Wording {
  /** a temperature [°C], to a whole degree unless a tenth is asked for */
  readonly temperature: (celsius: number, digits?: 0 | 1) => string;
  /** a difference of one kelvin, exactly */
  readonly degree: string;
  /** a difference of temperatures [K] */
  readonly degrees: (kelvin: number) => string;
  readonly area: (m2: number) => string;
  /** a length [m], in metres or in feet and inches */
  readonly length: (m: number) => string;
  /** a length that is a rule of thumb [m], in feet to the half of one */
  readonly aboutLength: (m: number) => string;
  /** a thickness [m], in centimetres, as it is typed, or inches */
  readonly thickness: (m: number) => string;
  readonly volume: (m3: number) => string;
  readonly water: (kg: number) => string;
  readonly weight: (kg: number) => string;
  /** firewood stacked [m³], in steres or cords */
  readonly stackedWood: (m3: number) => string;
  readonly weightPerArea: (kgPerM2: number) => string;
  /** heat */
  readonly energy: (kWh: number) => string;
  readonly electricity: (kWh: number) => string;
  readonly energyPerArea: (kWhPerM2: number) => string;
  readonly power: (watts: number) => string;
  /** electricity of a fan [W for each m³/h] */
  readonly fanPower: (wPerM3H: number) => string;
  /** a fan's [m³/h] */
  readonly airFlow: (m3PerHour: number) => string;
  /** of air [m/s] */
  readonly speed: (metresPerSecond: number) => string;
  /** thermal resistance [m²K/W] */
  readonly resistance: (si: number) => string;
}

const METRIC: Wording = {
  degree: '1 °C',
  temperature: (celsius, digits = 0) => `${plain(celsius, digits)} °C`,
  degrees: (kelvin) => `${plain(kelvin, Number.isInteger(kelvin) || kelvin >= 10 ? 0 : 1)} °C`,
  area: (m2) => `${plain(m2, m2 < 10 ? 1 : 0)} m²`,
  length: (m) => `${plain(m, 1)} m`,
  aboutLength: (m) => `${plain(m, 1)} m`,
  thickness: (m) => `${plain(100 * m, Number.isInteger(Math.round(1000 * m) / 10) ? 0 : 1)} cm`,
  volume: (m3) => `${plain(m3, m3 < 10 ? 1 : 0)} m³`,
  water: (kg) => `${plain(kg, kg < 10 ? 1 : 0)} litres`,
  weight: (kg) => (kg < 2000 ? `${round(kg, 10)} kg` : `${plain(kg / 1000, kg < 10_000 ? 1 : 0)} tonnes`),
  stackedWood: (m3) => `${plain(m3, 1)} m³ stacked`,
  weightPerArea: (kgPerM2) => `${round(kgPerM2, 10)} kg`,
  energy: (kWh) => `${plain(kWh, 0)} kWh`,
  electricity: (kWh) => `${plain(kWh, 0)} kWh`,
  energyPerArea: (kWhPerM2) => `${plain(kWhPerM2, kWhPerM2 < 10 ? 1 : 0)} kWh`,
  power: (watts) => `${plain(watts / 1000, 1)} kW`,
  fanPower: (wPerM3H) => `${plain(wPerM3H, 2)} W for each m³/h`,
  airFlow: (m3PerHour) => `${plain(m3PerHour, 0)} m³/h`,
  speed: (metresPerSecond) => `${plain(metresPerSecond, 1)} m/s`,
  resistance: (si) => `R ${plain(si, 1)} m²K/W`,
};

const FOOT = 0.3048;
const POUND = 0.45359237;
const GALLON = 3.785411784;

const US: Wording = {
  degree: '1.8 °F',
  temperature: (celsius, digits = 0) => `${plain(1.8 * celsius + 32, digits)} °F`,
  degrees: (kelvin) => `${plain(1.8 * kelvin, 0)} °F`,
  area: (m2) => `${plain(m2 / FOOT ** 2, m2 / FOOT ** 2 < 10 ? 1 : 0)} ft²`,
  length: (m) => feetAndInches(m),
  aboutLength: (m) => feetAndInches(round(m / FOOT, 0.5) * FOOT),
  thickness: (m) => `${plain((12 * m) / FOOT, 1)} in`,
  volume: (m3) => `${plain(m3 / FOOT ** 3, 0)} ft³`,
  water: (kg) => `${plain(kg / GALLON, 1)} gal`,
  weight: (kg) => (kg < 2000 ? `${round(kg / POUND, 10)} lb` : `${plain(kg / POUND / 2000, 1)} short tons`),
  stackedWood: (m3) => `${plain(m3 / CORD_M3, 1)} cords`,
  weightPerArea: (kgPerM2) => `${plain((kgPerM2 / POUND) * FOOT ** 2, 0)} lb`,
  energy: METRIC.energy,
  electricity: METRIC.electricity,
  energyPerArea: (kWhPerM2) => `${plain(kWhPerM2 * FOOT ** 2, 1)} kWh`,
  power: METRIC.power,
  fanPower: (wPerM3H) => `${plain((60 * wPerM3H) / (1 / FOOT) ** 3, 2)} W for each cfm`,
  airFlow: (m3PerHour) => `${plain(m3PerHour / 60 / FOOT ** 3, 0)} cfm`,
  speed: (metresPerSecond) => `${plain(metresPerSecond / 0.44704, 1)} mph`,
  resistance: (si) => `R ${plain(5.678263 * si, 0)} ft²·°F·h/Btu`,
};

/** Heat as it is billed where it is gas. */
const US_THERMS: Wording = {
  ...US,
  energy: (kWh) => {
    const therms = kWh / KWH_PER_THERM;
    return `${plain(therms, therms < 10 ? 1 : 0)} therms`;
  },
  energyPerArea: (kWhPerM2) => `${plain(((kWhPerM2 * BTU_PER_KWH) / 1000) * FOOT ** 2, 1)} kBtu`,
  power: (watts) => `${plain((watts * BTU_PER_KWH) / 1e6, 1)} kBtu/h`,
};

const BY_UNITS: Readonly<Record<Units, Wording>> = { metric: METRIC, us: US, 'us-therms': US_THERMS };

/** The words of a unit system. */
export function wordingOf(units: Units): Wording {
  return BY_UNITS[units];
}

/** Hours of a year, to the hour, as tables and the head of the page have them. */
export function hours(count: number): string {
  const shown = Math.round(count);
  if (shown === 0) return 'no hours';
  return shown === 1 ? '1 hour' : `${shown} hours`;
}

/** A share as a whole per cent, "less than 1 %" where it rounds to nothing. */
export function percent(share: number): string {
  const value = Math.round(100 * share);
  return value === 0 && share > 0 ? 'less than 1 %' : `${value} %`;
}

/** A share at the head of a sentence: "All" or "45 %". */
export function portion(share: number): string {
  return Math.round(100 * share) === 100 ? 'All' : percent(share);
}

/** "12 September at 4 in the afternoon", by the start of the hour in local standard time. */
export function moment(hour: number): string {
  const { month, day, hour: start } = dateOfHour(hour);
  return `${day} ${MONTH_NAMES[month - 1]} at ${clock(start)}`;
}

function clock(start: number): string {
  if (start === 0) return 'midnight';
  if (start === 12) return 'noon';
  if (start < 12) return `${start} in the morning`;
  return start < 18 ? `${start - 12} in the afternoon` : `${start - 12} in the evening`;
}

interface Runs {
  /** months that stand alone or in pairs */
  readonly single: readonly string[];
  /** three months and more, first and last */
  readonly long: readonly (readonly [from: string, to: string])[];
}

/** Months that follow each other; runs join over new year. */
function runsOf(chosen: readonly boolean[]): Runs {
  const single: string[] = [];
  const long: [string, string][] = [];
  for (let first = 0; first < 12; first++) {
    if (!chosen[first] || chosen[(first + 11) % 12]) continue;
    let length = 1;
    while (chosen[(first + length) % 12]) length++;
    const names = Array.from({ length }, (_, i) => MONTH_NAMES[(first + i) % 12]!);
    if (length > 2) long.push([names[0]!, names.at(-1)!]);
    else single.push(...names);
  }
  return { single, long };
}

/**
 * Months as a person names them: "July", "July and August", "November to February".
 *
 * @param chosen twelve flags, January first
 */
export function months(chosen: readonly boolean[]): string {
  if (chosen.every(Boolean)) return 'every month';
  const { single, long } = runsOf(chosen);
  return listed([...single, ...long.map(([from, to]) => `${from} to ${to}`)]);
}

/** Fewer months left out than this are named in place of the many that are not. */
const FEW_MONTHS = 3;

/** Months after a verb: "in July", "in July and August", "from November to February", "outside April and May". */
export function during(chosen: readonly boolean[]): string {
  if (chosen.every(Boolean)) return 'all year';
  const left = chosen.map((is) => !is);
  if (left.filter(Boolean).length < FEW_MONTHS) return `outside ${months(left)}`;
  const { single, long } = runsOf(chosen);
  const inThem = single.length === 0 ? [] : [`in ${listed(single)}`];
  return listed([...inThem, ...long.map(([from, to]) => `from ${from} to ${to}`)]);
}

/** "a", "a and b", "a, b and c". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}

/** A number with so many decimals, a true minus sign, no "−0". */
export function plain(value: number, digits: number): string {
  const text = value.toFixed(digits);
  const unsigned = Number(text) === 0 ? (0).toFixed(digits) : text;
  return unsigned.replace('-', '−');
}

function round(value: number, step: number): number {
  return step * Math.round(value / step);
}
