// Rows of amounts that run up hour by hour and are kept by month. Adding to a flat row that stays in cache, and moving
// it to its month twelve times a year, is cheaper than twelve places for every amount.

export interface MonthlySums {
  /** of the month that runs, by row; add to it */
  readonly running: Float64Array;
  /** by row · 12 + month; of the months that are over, and after close() of all */
  readonly monthly: Float64Array;
  /** forget everything; so many rows from now on, and what has run up times `factor` is what a month holds */
  clear(rows: number, factor: number): void;
  /** before a month's amounts are added; hours of one month may follow without a word */
  turnTo(month: number): void;
  /** what has run up belongs to its month */
  close(): void;
}

/** Sums with room for so many rows; clear() before use. */
export function createMonthlySums(mostRows: number): MonthlySums {
  const running = new Float64Array(mostRows);
  const monthly = new Float64Array(12 * mostRows);
  let rows = 0;
  let factor = 1;
  let month = 0;

  function close(): void {
    for (let row = 0; row < rows; row++) {
      monthly[row * 12 + month]! += running[row]! * factor;
      running[row] = 0;
    }
  }

  return {
    running,
    monthly,
    clear(rowCount, times) {
      rows = rowCount;
      factor = times;
      month = 0;
      running.fill(0);
      monthly.fill(0);
    },
    turnTo(next) {
      if (next === month) return;
      close();
      month = next;
    },
    close,
  };
}
