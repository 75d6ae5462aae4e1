// How far a fit is from what was measured, against two simple guesses, and what that is worth.

/** Nearer than this on unseen days a house matches its record, and up to the second it follows it roughly [K]. */
export const MATCHES_K = 0.7;
export const ROUGHLY_K = 1.5;

export type VerdictId = 'matches' | 'roughly' | 'not' | 'no-better';

/** Root of the mean square among the hours that count; NaN for none. */
export function rms(residual: Float64Array, among: Uint8Array): number {
  let [sum, count] = [0, 0];
  for (let hour = 0; hour < residual.length; hour++) {
    if (among[hour] !== 1 || Number.isNaN(residual[hour]!)) continue;
    sum += residual[hour]! ** 2;
    count++;
  }
  return count === 0 ? Number.NaN : Math.sqrt(sum / count);
}

/** Misfit of the simplest guess: as it was yesterday at this hour. */
export function yesterday(measured: Float64Array, among: Uint8Array): number {
  return rms(
    measured.map((value, hour) => value - (measured[hour - 24] ?? Number.NaN)),
    among,
  );
}

/** The verdict by misfits on hours that nothing was fitted on: of the house as found, as drawn, and of yesterday’s reading [K]. */
export function verdictOf(unseenK: number, drawnK: number, yesterdayK: number): VerdictId {
  if (!(unseenK <= drawnK) || unseenK > yesterdayK) return 'no-better';
  if (unseenK < MATCHES_K) return 'matches';
  return unseenK <= ROUGHLY_K ? 'roughly' : 'not';
}
