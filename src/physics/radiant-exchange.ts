// Long-wave exchange among the surfaces of a room through one radiant node: areas and emissivities in, one exchange
// area per surface out, so that the heat it gives the node is 4σT³ · g · (T_surface − T_node). No view factors needed.
// Source: Carroll, An MRT method of computing radiant energy exchange in rooms, 2nd Systems Simulation and Economic
// Analysis Conference, San Diego 1980.
import { requireRange } from './require-range.ts';

/**
 * A flat surface is never larger than all others of its enclosure together. Where a model says so (a room with little
 * but a floor), it counts in the geometry with this share of the others' area; its own area stays in the grey-body term.
 */
const LARGEST_SHARE = 0.99;

/**
 * Exchange areas of the surfaces of one enclosure.
 *
 *   F_i = 1/(1 − A_i F_i/Σ A_j F_j),  g_i = A_i/((1 − ε_i)/ε_i + 1/F_i)
 *
 * Solved for S = Σ A_j F_j by halving: each A_i F_i is a root of x − x²/S = A_i. One surface alone exchanges with
 * nothing and gets ε A. Two surfaces get F = 2 on the smaller area, which is the exact exchange of two surfaces
 * seeing only each other.
 *
 * @param areas [m²]; > 0
 * @param emissivities one each; 0.01…1
 * @returns g_i [m²]; W/K = 4 σ T³ g_i
 * Error: exact for two surfaces and for a cube; against exact view factors a few per cent in ordinary rooms.
 */
export function radiantConductances(
  areas: readonly number[],
  emissivities: readonly number[],
): readonly number[] {
  requireRange('number of emissivities', emissivities.length, areas.length, areas.length, '');
  for (const area of areas) requireRange('area', area, Number.MIN_VALUE, Number.POSITIVE_INFINITY, 'm²');
  for (const emissivity of emissivities) requireRange('emissivity', emissivity, 0.01, 1, '');
  if (areas.length === 0) return [];
  if (areas.length === 1) return [areas[0]! * emissivities[0]!];
  const weighted = weightedAreas(areas);
  return areas.map((area, i) => {
    const grey = (1 - emissivities[i]!) / (emissivities[i]! * area);
    return 1 / (grey + 1 / weighted[i]!);
  });
}

/** A_i F_i of each surface [m²]. */
function weightedAreas(areas: readonly number[]): readonly number[] {
  if (areas.length === 2) {
    const smaller = Math.min(...areas);
    return [2 * smaller, 2 * smaller];
  }
  const largest = areas.indexOf(Math.max(...areas));
  const others = areas.reduce((sum, area, i) => (i === largest ? sum : sum + area), 0);
  const seen = areas.map((area, i) => (i === largest ? Math.min(area, LARGEST_SHARE * others) : area));
  const biggest = Math.max(...seen);
  // With the smallest possible S the big surface sits where its two roots meet.
  const floor = 4 * biggest;
  const usesUpperRoot = sumOfRoots(seen, floor, -1) < floor;
  let low = floor;
  let high = 2 * floor;
  const isPast = (s: number) =>
    usesUpperRoot ? sumOfRoots(seen, s, largest) > s : sumOfRoots(seen, s, -1) < s;
  while (!isPast(high)) high *= 2;
  for (let pass = 0; pass < 80; pass++) {
    const middle = (low + high) / 2;
    if (isPast(middle)) high = middle;
    else low = middle;
  }
  return seen.map((area, i) => rootOf(area, high, usesUpperRoot && i === largest));
}

function sumOfRoots(areas: readonly number[], s: number, upper: number): number {
  return areas.reduce((sum, area, i) => sum + rootOf(area, s, i === upper), 0);
}

/** Root of x − x²/s = area. The lower one in the form that keeps its digits for a small surface. */
function rootOf(area: number, s: number, isUpper: boolean): number {
  const root = Math.sqrt(Math.max(1 - (4 * area) / s, 0));
  return isUpper ? (s * (1 + root)) / 2 : (2 * area) / (1 + root);
}
