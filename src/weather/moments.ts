// Dates as a person writes them into moments, and back: local standard time of a site, no summer time.

export const HOUR_MS = 3_600_000;
export const DAY_MS = 24 * HOUR_MS;

/** "2021-03-14" or "2021-03-14 05:30", local standard time. */
const WRITTEN = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:[T ](\d{1,2}):(\d{2}))?$/;

/**
 * Moment of a date in local standard time.
 *
 * @param utcOffsetH of that time minus UTC [h]
 * @returns ms since 1970 UTC; NaN for what is no date
 */
export function momentOfDate(text: string, utcOffsetH: number): number {
  const match = WRITTEN.exec(text.trim());
  if (match === null) return Number.NaN;
  const [year, month, day, hour = 0, minute = 0] = match
    .slice(1)
    .map((part) => (part === undefined ? undefined : Number(part))) as [
    number,
    number,
    number,
    number?,
    number?,
  ];
  const local = Date.UTC(year, month - 1, day, hour, minute);
  const back = new Date(local);
  const isReal = back.getUTCMonth() === month - 1 && back.getUTCDate() === day && hour < 24 && minute < 60;
  return isReal ? local - utcOffsetH * HOUR_MS : Number.NaN;
}

/** "2021-03-14 05:30" of a moment [ms since 1970 UTC], in local standard time, so many hours from UTC. */
export function dateOfMoment(ms: number, utcOffsetH: number): string {
  return new Date(ms + utcOffsetH * HOUR_MS).toISOString().slice(0, 16).replace('T', ' ');
}
