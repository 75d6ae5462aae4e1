// The grid behind the map of glass and mass: which cells to run first, a full field from the cells that are in, and
// lines of equal value through it. Rows run by rising mass, columns by rising glass; a value stands at its cell's
// corner point, not over an area. Lines: marching squares with linear interpolation (d3-contour).

import { contours } from 'd3-contour';
import { square } from '../physics/elementary.ts';

export interface MapLine {
  /** value along the line [h] */
  readonly hours: number;
  readonly kind: 'level' | 'limit';
  /** open or closed paths of points [glass m², mass m²] */
  readonly paths: readonly (readonly (readonly [number, number])[])[];
}

export interface GlassMassMap {
  /** columns, rising [m²] */
  readonly glassM2: readonly number[];
  /** rows, rising: face area of extra mass [m²] */
  readonly massM2: readonly number[];
  /** hours too hot, row-major; null where no run is in */
  readonly tooHotHours: readonly (number | null)[];
  /** hours above the design's one temperature, likewise */
  readonly overheatedHours: readonly (number | null)[];
  /** hours too hot with gaps filled between the finest whole lattice of runs; null before the first lattice is whole */
  readonly filled: readonly number[] | null;
  /** how far filled cells are off, root of the mean square [h]; null where every cell is run or it cannot be told */
  readonly filledErrorHours: number | null;
  readonly lines: readonly MapLine[];
  readonly drawn: { readonly glassM2: number; readonly massM2: number };
}

/** Hours too hot worth a line. */
const LEVELS = [50, 100, 200, 500, 1000, 2000, 4000];

/** Lattices from coarse to fine: the four corners, then every stride that divides the grid, 1 last. */
export function strides(side: number): readonly number[] {
  const steps = side - 1;
  const found: number[] = [];
  for (let stride = steps; stride >= 1; stride--) {
    if (steps % stride === 0) found.push(stride);
  }
  return found;
}

/** Cells [column, row] of a square grid, those of coarser lattices first. */
export function cellsCoarseToFine(side: number): readonly (readonly [number, number])[] {
  const level = strides(side);
  const rank = (column: number, row: number) => level.findIndex((s) => column % s === 0 && row % s === 0);
  return Array.from({ length: side * side }, (_, i) => [i % side, Math.floor(i / side)] as const).sort(
    (one, other) => rank(...one) - rank(...other),
  );
}

/**
 * Fill a grid between its finest whole lattice, bilinear; cells that are in keep their value.
 *
 * @param values row-major, side × side; null where missing
 */
export function filledGrid(values: readonly (number | null)[], side: number): number[] | null {
  const whole = strides(side).filter((stride) => isWhole(values, side, stride));
  const stride = whole.at(-1);
  if (stride === undefined) return null;
  return values.map((value, i) => value ?? between(values, side, stride, i % side, Math.floor(i / side)));
}

/**
 * How far a filled cell is off: runs of one lattice against what the lattice twice as wide says of them. The filling
 * of the finer lattice is better than that, so this errs on the safe side.
 *
 * @param values row-major, side × side; null where missing
 * @param stride of the lattice that is whole
 * @returns root of the mean square [h]; null where no lattice is twice as wide
 */
export function fillingError(
  values: readonly (number | null)[],
  side: number,
  stride: number,
): number | null {
  if ((side - 1) % (2 * stride) !== 0 || !isWhole(values, side, stride)) return null;
  let sum = 0;
  let count = 0;
  for (let row = 0; row < side; row += stride) {
    for (let column = 0; column < side; column += stride) {
      if (row % (2 * stride) === 0 && column % (2 * stride) === 0) continue;
      sum += square(values[row * side + column]! - between(values, side, 2 * stride, column, row));
      count++;
    }
  }
  return Math.sqrt(sum / count);
}

/**
 * Cells without a run where the limit passes: one of their neighbours keeps to it and another does not.
 *
 * @param filled all values, row-major
 * @param values null where no run is in
 */
export function cellsBesideLimit(
  filled: readonly number[],
  values: readonly (number | null)[],
  side: number,
  limitHours: number,
): readonly (readonly [number, number])[] {
  const keeps = (column: number, row: number) => filled[row * side + column]! <= limitHours;
  return cellsCoarseToFine(side).filter(([column, row]) => {
    if (values[row * side + column] != null) return false;
    const here = keeps(column, row);
    return (
      (column > 0 && keeps(column - 1, row) !== here) ||
      (column < side - 1 && keeps(column + 1, row) !== here) ||
      (row > 0 && keeps(column, row - 1) !== here) ||
      (row < side - 1 && keeps(column, row + 1) !== here)
    );
  });
}

function isWhole(values: readonly (number | null)[], side: number, stride: number): boolean {
  for (let row = 0; row < side; row += stride) {
    for (let column = 0; column < side; column += stride) {
      if (values[row * side + column] == null) return false;
    }
  }
  return true;
}

function between(
  values: readonly (number | null)[],
  side: number,
  stride: number,
  column: number,
  row: number,
): number {
  const left = Math.min(Math.floor(column / stride) * stride, side - 1 - stride);
  const low = Math.min(Math.floor(row / stride) * stride, side - 1 - stride);
  const [u, v] = [(column - left) / stride, (row - low) / stride];
  const at = (c: number, r: number) => values[r * side + c]!;
  return (
    (1 - v) * ((1 - u) * at(left, low) + u * at(left + stride, low)) +
    v * ((1 - u) * at(left, low + stride) + u * at(left + stride, low + stride))
  );
}

/**
 * Lines of equal hours too hot through a full grid.
 *
 * @param limitHours drawn as the limit line, besides the levels
 */
export function linesOf(
  filled: readonly number[],
  glassM2: readonly number[],
  massM2: readonly number[],
  limitHours: number,
): MapLine[] {
  const [columns, rows] = [glassM2.length, massM2.length];
  const draw = contours().size([columns, rows]);
  const place = (along: number, values: readonly number[]) => {
    const steps = values.length - 1;
    return values[0]! + ((values[steps]! - values[0]!) * (along - 0.5)) / steps;
  };
  const line = (hours: number, kind: MapLine['kind']): MapLine => {
    const rings = draw.contour([...filled], hours).coordinates.flat();
    const paths = rings.flatMap((ring) => insidePaths(ring as [number, number][], columns, rows));
    return {
      hours,
      kind,
      paths: paths.map((path) => path.map(([x, y]) => [place(x, glassM2), place(y, massM2)] as const)),
    };
  };
  const levels = LEVELS.filter((hours) => hours !== limitHours).map((hours) => line(hours, 'level'));
  return [...levels, line(limitHours, 'limit')].filter(({ paths }) => paths.length > 0);
}

/** Parts of a ring between the outermost grid points; what runs round outside them closes the ring and is no line. */
function insidePaths(ring: readonly [number, number][], columns: number, rows: number): [number, number][][] {
  const inside = ([x, y]: readonly [number, number]) =>
    x >= 0.5 && x <= columns - 0.5 && y >= 0.5 && y <= rows - 0.5;
  if (ring.every(inside)) return [[...ring]];
  // The last point repeats the first; start after an outside point so that no path is cut in two.
  const open = ring.slice(0, -1);
  const start = open.findIndex((point) => !inside(point));
  const paths: [number, number][][] = [];
  let path: [number, number][] = [];
  for (let i = 1; i <= open.length; i++) {
    const point = open[(start + i) % open.length]!;
    if (inside(point)) path.push(point);
    else {
      if (path.length > 1) paths.push(path);
      path = [];
    }
  }
  return paths;
}
