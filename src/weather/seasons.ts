// The months of low and of high sun at a latitude: three months round each solstice. For sentences that say winter
// and summer in both hemispheres.

const DECEMBER = [10, 11, 0];
const JUNE = [4, 5, 6];

/** Months round the winter solstice, January = 0. */
export function lowSunMonths(latitudeDeg: number): readonly number[] {
  return latitudeDeg >= 0 ? DECEMBER : JUNE;
}

/** Months round the summer solstice, January = 0. */
export function highSunMonths(latitudeDeg: number): readonly number[] {
  return latitudeDeg >= 0 ? JUNE : DECEMBER;
}

/** Sum of monthly values over some months, January = 0; in their unit. */
export function sumOver(monthly: readonly number[], months: readonly number[]): number {
  return months.reduce((sum, month) => sum + monthly[month]!, 0);
}
