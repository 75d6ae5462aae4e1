// The sections whose answers are kept in tests/data/ground-sections.json: which they are, what they are made of, and how
// they are solved. Nothing in; cases, their layers and their answers out.

import { bermSection, type SolidLayer, slabSection } from './ground-cases.ts';
import { type Complex, type SectionResponse, solveSection } from './ground-section.ts';

export const YEAR_S = 365 * 86_400;

export interface StoredSection {
  /** slab on the ground, with upright insulation at its edge 0.6 m down, or wall behind a berm */
  readonly kind: 'slab' | 'edge' | 'berm';
  /** λ [W/(m·K)] and ρc [J/(m³·K)] of the soil */
  readonly conductivity: number;
  readonly heatCapacity: number;
  /** B [m] */
  readonly dimensionM: number;
  /** under the floor [m²K/W] */
  readonly floorInsulation: number;
  /** of the wall over the edge [m]; behind a berm that of the wall's layers */
  readonly wallThicknessM: number;
  /** at the edge, or outside the wall behind a berm [m²K/W] */
  readonly insulation: number;
  /** of the earth behind a wall [m] */
  readonly heightM: number;
}

/** Per area of the floor, or of the wall behind a berm [W/(m²·K)]. */
export interface SectionAnswer {
  readonly uValue: number;
  /** into the ground per kelvin indoors, out of it per kelvin outdoors, over a year */
  readonly inside: Complex;
  readonly outside: Complex;
  /** of the floor in front of the wall */
  readonly floorUValue: number;
}

export const EDGE_DEPTH_M = 0.6;

const SOILS = [
  [0.8, 1.5e6],
  [1.5, 3.0e6],
  [2.0, 2.0e6],
  [3.5, 2.0e6],
] as const;
const CONCRETE = { thicknessM: 0.1, conductivity: 1.75, heatCapacity: 2.3e6 };
const ADOBE = { thicknessM: 0.3, conductivity: 0.7, heatCapacity: 1.5e6 };
const BOARD = { conductivity: 0.034, heatCapacity: 50_750 };

/** Slabs of 0.1 m concrete, bare to R 6; half of them again with their edge insulated; walls of 0.3 m adobe in earth. */
export function storedSections(): StoredSection[] {
  const of = (sizes: Omit<StoredSection, 'conductivity' | 'heatCapacity'>, soils: number = SOILS.length) =>
    SOILS.slice(0, soils).map(([conductivity, heatCapacity]) => ({ ...sizes, conductivity, heatCapacity }));
  const grid = <A, B>(a: readonly A[], b: readonly B[]) => a.flatMap((x) => b.map((y) => [x, y] as const));
  const slabs = grid([0, 1, 3, 6], grid([3, 4.5, 6, 12], [0.3, 0.6])).flatMap(
    ([floorInsulation, [dimensionM, wallThicknessM]]) =>
      of({ kind: 'slab', dimensionM, floorInsulation, wallThicknessM, insulation: 0, heightM: 0 }),
  );
  const edges = grid(grid([0, 1, 3], [0.5, 1.5, 4]), grid([3, 6, 12], [0.3, 0.6])).flatMap(
    ([[floorInsulation, insulation], [dimensionM, wallThicknessM]]) =>
      of({ kind: 'edge', dimensionM, floorInsulation, wallThicknessM, insulation, heightM: 0 }, 3),
  );
  const berms = grid(grid([0, 3], [0, 0.6, 2.5]), [1, 1.7, 2.6]).flatMap(
    ([[floorInsulation, insulation], heightM]) => {
      const wallThicknessM = ADOBE.thicknessM + insulation * BOARD.conductivity;
      return of({ kind: 'berm', dimensionM: 6, floorInsulation, wallThicknessM, insulation, heightM });
    },
  );
  return [...slabs, ...edges, ...berms];
}

/** Layers of a section's floor from the room down, or of its wall from the room outwards. */
export function layersOf(section: StoredSection, of: 'floor' | 'wall'): SolidLayer[] {
  const [inner, resistance] =
    of === 'floor' ? [CONCRETE, section.floorInsulation] : [ADOBE, section.insulation];
  return resistance > 0 ? [inner, board(resistance)] : [inner];
}

/** Solve a section of the list. */
export function sectionAnswer(section: StoredSection): SectionAnswer {
  const { kind, dimensionM, wallThicknessM, insulation, heightM, conductivity, heatCapacity } = section;
  const base = {
    dimensionM,
    wallThicknessM,
    soil: { conductivity, heatCapacity },
    layers: layersOf(section, 'floor'),
  };
  const drawn =
    kind === 'berm'
      ? bermSection({ ...base, heightM, wallLayers: layersOf(section, 'wall') })
      : slabSection(
          kind === 'edge' ? { ...base, upright: { ...board(insulation), reachM: EDGE_DEPTH_M } } : base,
        );
  const [part, lengthM] = kind === 'berm' ? ['wall', heightM] : ['floor', dimensionM / 2];
  const steady = solveSection(drawn, Number.POSITIVE_INFINITY);
  const yearly = solveSection(drawn, YEAR_S);
  const per = (side: SectionResponse['indoor'], sign: number): Complex => ({
    re: round((sign * side[part]!.re) / lengthM),
    im: round((sign * side[part]!.im) / lengthM),
  });
  return {
    uValue: round(steady.indoor[part]!.re / lengthM),
    inside: per(yearly.indoor, 1),
    outside: per(yearly.outdoor, -1),
    floorUValue: round(steady.indoor.floor!.re / (dimensionM / 2)),
  };
}

function board(resistance: number): SolidLayer {
  return { ...BOARD, thicknessM: resistance * BOARD.conductivity };
}

function round(value: number): number {
  return Number(value.toPrecision(7));
}
