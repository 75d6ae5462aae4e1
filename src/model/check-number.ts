// Guards the checks of a model share: numbers, zone names and schedules, each with the name of the part they are of.

import { requireRange } from '../physics/require-range.ts';
import type { Film, Schedule } from './model.ts';

/** Refuse a number that is not above zero. */
export function requirePositive(name: string, value: number, unit: string): void {
  if (value > 0 && Number.isFinite(value)) return;
  const suffix = unit === '' ? '' : ` ${unit}`;
  throw new RangeError(`${name} is ${value}${suffix}; allowed: above 0`);
}

/** Refuse a number below zero. */
export function requireAtLeastZero(name: string, value: number, unit: string): void {
  requireRange(name, value, 0, Number.POSITIVE_INFINITY, unit);
}

/** Refuse a share outside 0…1. */
export function requireShare(name: string, value: number): void {
  requireRange(name, value, 0, 1, '');
}

/** Refuse a number that is none, or infinite. */
export function requireFinite(name: string, value: number, unit: string): void {
  requireRange(name, value, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, unit);
}

/** Refuse the name of a zone that is not there. */
export function requireZoneName(name: string, zone: string, zoneIds: ReadonlySet<string>): void {
  if (zoneIds.has(zone)) return;
  throw new RangeError(`${name} is '${zone}'; allowed: one of the zones ${[...zoneIds].join(', ')}`);
}

/** Refuse a schedule without 24 hours a day or 12 months, or with a value below `min`. */
export function requireSchedule(name: string, schedule: Schedule, min: number, unit: string): void {
  const { workday, weekend, months } = schedule;
  requireEntries(`${name}, workday`, workday, 24, min, unit);
  if (weekend) requireEntries(`${name}, weekend`, weekend, 24, min, unit);
  if (months) requireEntries(`${name}, months`, months, 12, 0, '');
}

/** Refuse a list of the wrong length or with values below `min`. */
export function requireEntries(
  name: string,
  values: readonly number[],
  length: number,
  min: number,
  unit: string,
): void {
  if (values.length !== length)
    throw new RangeError(`${name} has ${values.length} values; allowed: ${length}`);
  values.forEach((value, i) => {
    requireRange(`${name}[${i}]`, value, min, Number.POSITIVE_INFINITY, unit);
  });
}

/** Refuse prescribed surface coefficients below zero. */
export function requireFilm(name: string, film: Film): void {
  if (film.kind === 'computed') return;
  requireAtLeastZero(`${name}, convection`, film.convection, 'W/(m²K)');
  if (film.radiation !== 'computed') requireAtLeastZero(`${name}, radiation`, film.radiation, 'W/(m²K)');
}
