// Two-dimensional reference for heat in the ground: a vertical section through half a floor, the walls at its edge and
// the soil around. Materials, surfaces and a period in; the complex heat flow into each surface per kelvin of a wave
// indoors and of one outdoors, out. Nothing here is shared with the engine.
//
// Domain. x runs from the plane of symmetry in the middle of the floor outwards, z from the top downwards. Blocks of
//   material are painted over soil, later ones over earlier ones; voids (the room) hold nothing. The floor is as wide as
//   the characteristic dimension B = A/(0.5 P), which is how ISO 13370 asks for a plan to be cut for two dimensions.
// Boundaries. Nothing crosses the plane of symmetry, the far side, the bottom, or a face without a surface on it (the
//   strip w under a wall). On a surface a film stands between the material and a temperature that swings indoors,
//   outdoors, or, for a closed form in the tests, as a mixture of both.
// Grid. Cell faces lie on every edge of a block and end of a surface; cells grow from `finestM` there by `growth` per
//   metre of distance. Temperatures sit in the middles of cells, conduction passes two half cells in series.
// Method. T = Re(T̂ e^(iωt)) turns ρc ∂T/∂t = ∇(λ∇T) into one complex system, solved directly (band, LDLᵀ, no
//   pivots needed: the matrix is diagonally dominant). A period of Infinity is the steady state.
// Convergence, and the closed forms it is held against: tests/reference/ground-section.test.ts.

export interface Complex {
  readonly re: number;
  readonly im: number;
}

export type Span = readonly [from: number, to: number];

export interface Block {
  /** [m] */
  readonly x: Span;
  readonly z: Span;
  /** λ [W/(m·K)] */
  readonly conductivity: number;
  /** ρc [J/(m³·K)] */
  readonly heatCapacity: number;
}

export interface Surface {
  /** what its heat is counted as */
  readonly part: string;
  /** level: material below it; upright: material beyond it, away from the middle */
  readonly lies: 'level' | 'upright';
  /** depth of a level surface, distance from the middle of an upright one [m] */
  readonly at: number;
  readonly span: Span;
  /** film [m²K/W]; may be 0 */
  readonly resistance: number;
  /** share of the swing indoors in the temperature beyond the film, by place along the span; the rest is outdoors */
  readonly indoorShare: (along: number) => number;
}

export interface Section {
  /** [m] */
  readonly widthM: number;
  readonly depthM: number;
  readonly soil: { readonly conductivity: number; readonly heatCapacity: number };
  readonly blocks: readonly Block[];
  readonly voids: readonly { readonly x: Span; readonly z: Span }[];
  readonly surfaces: readonly Surface[];
}

export interface Grid {
  /** cell at an edge [m] */
  readonly finestM: number;
  /** by how much cells grow per metre of distance from the nearest edge */
  readonly growth: number;
}

/** Heat into the ground at each part per metre of the third direction [W/(m·K)], positive from the air. */
export interface SectionResponse {
  /** indoors swings by 1 K, outdoors stands */
  readonly indoor: Readonly<Record<string, Complex>>;
  /** outdoors swings by 1 K, indoors stands */
  readonly outdoor: Readonly<Record<string, Complex>>;
  readonly cells: number;
  /** temperature at a place, from either swing alone [K/K] */
  readonly at: (x: number, z: number) => { readonly indoor: Complex; readonly outdoor: Complex };
}

export const FINE: Grid = { finestM: 0.03, growth: 0.22 };

/**
 * Solve a section for one period.
 *
 * @param periodS [s]; Infinity for the steady state
 * @returns see SectionResponse
 */
export function solveSection(section: Section, periodS: number, grid: Grid = FINE): SectionResponse {
  const { widthM, depthM, soil, blocks, voids, surfaces } = section;
  const level = surfaces.filter(({ lies }) => lies === 'level');
  const upright = surfaces.filter(({ lies }) => lies === 'upright');
  const boxes = [...blocks, ...voids];
  const xs = cellFaces(
    widthM,
    [...boxes.flatMap(({ x }) => x), ...level.flatMap(({ span }) => span), ...upright.map(({ at }) => at)],
    grid,
  );
  const zs = cellFaces(
    depthM,
    [...boxes.flatMap(({ z }) => z), ...upright.flatMap(({ span }) => span), ...level.map(({ at }) => at)],
    grid,
  );
  const columns = xs.length - 1;
  const rows = zs.length - 1;
  const cells = columns * rows;
  const inBox = ({ x, z }: { x: Span; z: Span }, i: number, j: number) => {
    const [midX, midZ] = [(xs[i]! + xs[i + 1]!) / 2, (zs[j]! + zs[j + 1]!) / 2];
    return midX > x[0] && midX < x[1] && midZ > z[0] && midZ < z[1];
  };
  const conductivity = new Float64Array(cells);
  const capacity = new Float64Array(cells);
  for (let i = 0; i < columns; i++) {
    for (let j = 0; j < rows; j++) {
      const n = i * rows + j;
      const own = blocks.findLast((block) => inBox(block, i, j)) ?? soil;
      const hollow = voids.some((hole) => inBox(hole, i, j));
      conductivity[n] = hollow ? 0 : own.conductivity;
      capacity[n] = hollow ? 0 : own.heatCapacity * (xs[i + 1]! - xs[i]!) * (zs[j + 1]! - zs[j]!);
    }
  }

  const band = createBand(cells, rows);
  const omega = periodS === Number.POSITIVE_INFINITY ? 0 : (2 * Math.PI) / periodS;
  const link = (a: number, b: number, across: number, half: number, otherHalf: number) => {
    if (conductivity[a] === 0 || conductivity[b] === 0) return;
    const g = across / (half / conductivity[a]! + otherHalf / conductivity[b]!);
    band.add(a, a, g, 0);
    band.add(b, b, g, 0);
    band.add(b, a, -g, 0);
  };
  for (let i = 0; i < columns; i++) {
    for (let j = 0; j < rows; j++) {
      const n = i * rows + j;
      const [width, height] = [xs[i + 1]! - xs[i]!, zs[j + 1]! - zs[j]!];
      band.add(n, n, conductivity[n] === 0 ? 1 : 0, omega * capacity[n]!);
      if (j + 1 < rows) link(n, n + 1, width, height / 2, (zs[j + 2]! - zs[j + 1]!) / 2);
      if (i + 1 < columns) link(n, n + rows, height, width / 2, (xs[i + 2]! - xs[i + 1]!) / 2);
    }
  }

  /** every piece of surface: cell, conductance [W/(m·K)], share of indoors, part */
  const pieces: { cell: number; g: number; share: number; part: string }[] = [];
  for (const { part, lies, at, span, resistance, indoorShare } of surfaces) {
    const [along, across] = lies === 'level' ? [xs, zs] : [zs, xs];
    const row = across.findIndex((face) => Math.abs(face - at) < 1e-9);
    for (let k = 0; k + 1 < along.length; k++) {
      const middle = (along[k]! + along[k + 1]!) / 2;
      if (middle < span[0] || middle > span[1]) continue;
      const cell = lies === 'level' ? k * rows + row : row * rows + k;
      const half = (across[row + 1]! - across[row]!) / 2 / conductivity[cell]!;
      const g = (along[k + 1]! - along[k]!) / (resistance + half);
      band.add(cell, cell, g, 0);
      pieces.push({ cell, g, share: indoorShare(middle), part });
    }
  }

  band.factorise();
  const field = (share: (piece: (typeof pieces)[number]) => number) => {
    const re = new Float64Array(cells);
    const im = new Float64Array(cells);
    for (const piece of pieces) re[piece.cell]! += piece.g * share(piece);
    band.solve(re, im);
    const flow: Record<string, { re: number; im: number }> = {};
    for (const piece of pieces) {
      flow[piece.part] ??= { re: 0, im: 0 };
      const sum = flow[piece.part]!;
      sum.re += piece.g * (share(piece) - re[piece.cell]!);
      sum.im -= piece.g * im[piece.cell]!;
    }
    return { re, im, flow };
  };
  const indoor = field(({ share }) => share);
  const outdoor = field(({ share }) => 1 - share);
  return {
    indoor: indoor.flow,
    outdoor: outdoor.flow,
    cells,
    at: (x, z) => {
      const n = placeIn(xs, x) * rows + placeIn(zs, z);
      return {
        indoor: { re: indoor.re[n]!, im: indoor.im[n]! },
        outdoor: { re: outdoor.re[n]!, im: outdoor.im[n]! },
      };
    },
  };
}

function placeIn(faces: readonly number[], at: number): number {
  const after = faces.findIndex((face) => face > at);
  return Math.max(0, (after < 0 ? faces.length - 1 : after) - 1);
}

/** Cell faces from 0 to the end, one on every edge; cells grow away from edges, evenly fitted between them. */
function cellFaces(end: number, edges: readonly number[], { finestM, growth }: Grid): number[] {
  const inner = edges.filter((edge) => edge > 0 && edge < end);
  const fixed = [...new Set([0, ...inner, end].map((x) => Math.round(x * 1e9) / 1e9))].sort((a, b) => a - b);
  // The outer ends of the domain are no edges; a level surface at depth 0 is.
  const real = fixed.filter((x) => edges.some((edge) => Math.abs(edge - x) < 1e-8));
  const wanted = (x: number) => finestM + growth * Math.min(...real.map((edge) => Math.abs(edge - x)));
  const faces = [0];
  for (let s = 0; s + 1 < fixed.length; s++) {
    const [from, to] = [fixed[s]!, fixed[s + 1]!];
    const sizes: number[] = [];
    for (let at = from; at < to; ) {
      const first = wanted(at);
      const size = (first + wanted(Math.min(to, at + first))) / 2;
      sizes.push(size);
      at += size;
    }
    // No block is passed in a single cell.
    while (sizes.length < 2) sizes.push(sizes[0]!);
    const scale = (to - from) / sizes.reduce((a, b) => a + b, 0);
    let at = from;
    for (const size of sizes.slice(0, -1)) {
      at += size * scale;
      faces.push(at);
    }
    faces.push(to);
  }
  return faces;
}

/** Complex symmetric band matrix, lower half by rows: entry (i, j) at i · (width + 1) + width − (i − j). */
function createBand(size: number, width: number) {
  const stride = width + 1;
  const re = new Float64Array(size * stride);
  const im = new Float64Array(size * stride);
  const at = (i: number, j: number) => i * stride + width - (i - j);
  function add(i: number, j: number, real: number, imaginary: number): void {
    const n = at(i, j);
    re[n]! += real;
    im[n]! += imaginary;
  }
  /** In place: unit lower L below the diagonal, 1/D on it. */
  function factorise(): void {
    const colRe = new Float64Array(stride);
    const colIm = new Float64Array(stride);
    for (let k = 0; k < size; k++) {
      const d = at(k, k);
      const square = re[d]! ** 2 + im[d]! ** 2;
      const invRe = re[d]! / square;
      const invIm = -im[d]! / square;
      re[d] = invRe;
      im[d] = invIm;
      const last = Math.min(size - 1, k + width);
      for (let i = k + 1; i <= last; i++) {
        const n = at(i, k);
        colRe[i - k] = re[n]!;
        colIm[i - k] = im[n]!;
      }
      for (let i = k + 1; i <= last; i++) {
        const aRe = colRe[i - k]!;
        const aIm = colIm[i - k]!;
        if (aRe === 0 && aIm === 0) continue;
        const lRe = aRe * invRe - aIm * invIm;
        const lIm = aRe * invIm + aIm * invRe;
        const row = at(i, k);
        re[row] = lRe;
        im[row] = lIm;
        for (let j = 1; j <= i - k; j++) {
          re[row + j]! -= lRe * colRe[j]! - lIm * colIm[j]!;
          im[row + j]! -= lRe * colIm[j]! + lIm * colRe[j]!;
        }
      }
    }
  }
  /** Right side in, solution out, in place. */
  function solve(xRe: Float64Array, xIm: Float64Array): void {
    for (let i = 0; i < size; i++) {
      for (let j = Math.max(0, i - width); j < i; j++) {
        const n = at(i, j);
        xRe[i]! -= re[n]! * xRe[j]! - im[n]! * xIm[j]!;
        xIm[i]! -= re[n]! * xIm[j]! + im[n]! * xRe[j]!;
      }
    }
    for (let i = 0; i < size; i++) {
      const d = at(i, i);
      const real = xRe[i]! * re[d]! - xIm[i]! * im[d]!;
      xIm[i] = xRe[i]! * im[d]! + xIm[i]! * re[d]!;
      xRe[i] = real;
    }
    for (let i = size - 1; i >= 0; i--) {
      for (let j = Math.max(0, i - width); j < i; j++) {
        const n = at(i, j);
        xRe[j]! -= re[n]! * xRe[i]! - im[n]! * xIm[i]!;
        xIm[j]! -= re[n]! * xIm[i]! + im[n]! * xRe[i]!;
      }
    }
  }
  return { add, factorise, solve };
}
