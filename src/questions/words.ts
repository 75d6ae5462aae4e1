// How amounts are said in sentences: a few functions from SI numbers to words. Questions speak through this
// interface, so that a page in other units passes its own words in; metric is here as the default.

export interface Words {
  readonly temperature: (celsius: number, digits?: 0 | 1) => string;
  readonly degrees: (kelvin: number) => string;
  readonly area: (m2: number) => string;
  readonly length: (m: number) => string;
  readonly thickness: (m: number) => string;
  readonly volume: (m3: number) => string;
  readonly weight: (kg: number) => string;
  readonly energy: (kWh: number) => string;
  /** a fan's [m³/h] */
  readonly airFlow: (m3PerHour: number) => string;
  readonly power: (watts: number) => string;
  /** firewood stacked [m³] */
  readonly stackedWood: (m3: number) => string;
  /** of air [m/s] */
  readonly speed: (metresPerSecond: number) => string;
  /** thermal resistance [m²K/W] */
  readonly resistance: (si: number) => string;
}

export const METRIC_WORDS: Words = {
  temperature: (celsius, digits = 0) => `${signed(celsius, digits)} °C`,
  degrees: (kelvin) => `${signed(kelvin, Number.isInteger(kelvin) ? 0 : 1)} °C`,
  area: (m2) => `${signed(m2, m2 < 10 ? 1 : 0)} m²`,
  length: (m) => `${signed(m, 1)} m`,
  thickness: (m) => `${signed(100 * m, Number.isInteger(Math.round(1000 * m) / 10) ? 0 : 1)} cm`,
  volume: (m3) => `${signed(m3, m3 < 10 ? 1 : 0)} m³`,
  weight: (kg) => (kg < 2000 ? `${signed(kg, 0)} kg` : `${signed(kg / 1000, kg < 10_000 ? 1 : 0)} tonnes`),
  airFlow: (m3PerHour) => `${signed(m3PerHour, 0)} m³/h`,
  speed: (metresPerSecond) => `${signed(metresPerSecond, 1)} m/s`,
  resistance: (si) => `R ${signed(si, 1)} m²K/W`,
  energy: (kWh) => `${signed(kWh, 0)} kWh`,
  power: (watts) => `${signed(watts / 1000, 1)} kW`,
  stackedWood: (m3) => `${signed(m3, 1)} m³ stacked`,
};

/** With a capital at its head. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Without one, to stand inside a sentence. */
export function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** A count of hours, to the hour, as every table and the head of the page have it. */
export function countInWords(hours: number): string {
  return String(Math.round(hours));
}

/** "1 hour", "85 hours", "643 hours". */
export function hoursInWords(hours: number): string {
  const count = countInWords(hours);
  return count === '1' ? '1 hour' : `${count} hours`;
}

/** A share as a whole per cent. */
export function percentInWords(share: number): string {
  const value = Math.round(100 * share);
  return value === 0 && share > 0 ? 'less than 1 %' : `${value} %`;
}

function signed(value: number, digits: number): string {
  const text = value.toFixed(digits);
  return (Number(text) === 0 ? (0).toFixed(digits) : text).replace('-', '−');
}
