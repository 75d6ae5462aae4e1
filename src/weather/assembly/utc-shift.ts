// A year of hours in UTC turned into a year in local standard time. Rows that fall off one end come back at the
// other: December and January of a typical year are from different years anyway.

/** Column in UTC → column in local time `offsetH` whole hours ahead: local hour i is UTC hour i − offset. */
export function shiftedFromUtc(column: Float64Array, offsetH: number): Float64Array {
  const count = column.length;
  return Float64Array.from(column, (_, hour) => column[(((hour - offsetH) % count) + count) % count]!);
}

/** The note every shiftedFromUtc year carries. */
export function utcShiftNote(offsetH: number): string {
  const signed = offsetH > 0 ? `+${offsetH}` : String(offsetH).replace('-', '−');
  return `The file is in UTC; the year was rolled by ${signed} h to local standard time.`;
}
