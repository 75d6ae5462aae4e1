// How much mass? Area and thickness of each material against hours too hot at the glass as drawn; where more
// thickness stops helping; the least mass that keeps to the limit in each way to build it, and what would do instead
// where no mass is enough. Depth a day reaches: ISO 13786 (physics/wall-response.ts).

import { materialById } from '../design/materials.ts';
import { criterionInWords } from '../findings/hot-words.ts';
import { usefulThickness } from '../physics/wall-response.ts';
import { DAYS_SAY } from '../quantities/words.ts';
import { nextPlaces } from './bracket.ts';
import { ALL_WAYS, WAYS_TO_BUILD, type WayToBuild } from './building-work.ts';
import { houseOfRun } from './in-doubt.ts';
import { leastMassTable, massAdvised, massFinding } from './least-mass.ts';
import { bracketFor, byArea, mostArea } from './mass-runs.ts';
import type { AnswerBody, Basis, Chart, Curve, Mark, Question, Runs } from './question.ts';
import { FLOOR_GIVEN, STANDS_M } from './room-for-mass.ts';
import type { RunJob } from './run-job.ts';
import { runTable } from './run-table.ts';
import { type Changes, varied } from './variation.ts';
import { countInWords, percentInWords } from './words.ts';

const DRAWN = 'as drawn';
const AREA_STEPS = [0, 1, 0.5, 0.25, 0.125, 0.75];
const THICKNESSES_M = [0.05, 0.3, 0.15, 0.1, 0.2, 0.5];
const PLACES = 3;
const RESOLUTION = 1 / 64;

export const howMuchMass: Question = {
  id: 'how-much-mass',
  title: 'How much mass?',
  asks: 'How much mass does this glass ask for, and in what form?',
  plan: (basis) => [
    { id: DRAWN, label: 'as drawn', design: basis.design, at: { drawn: 'yes' } },
    ...AREA_STEPS.flatMap((share) =>
      ALL_WAYS.map((way) => areaJob(basis, way, share * mostArea(basis, way))),
    ),
    ...THICKNESSES_M.flatMap((thicknessM) =>
      WAYS_TO_BUILD.map((way) => thicknessJob(basis, way, thicknessM)),
    ),
  ],
  refine: (basis, runs) => {
    const brackets = ALL_WAYS.map((way) => [way, bracketFor(basis, way, runs)] as const);
    const sought = brackets.flatMap(([way, bracket]) =>
      bracket.passesAtStart
        ? []
        : nextPlaces(bracket, PLACES, mostArea(basis, way) * RESOLUTION).map((areaM2) =>
            areaJob(basis, way, areaM2),
          ),
    );
    if (sought.length > 0) return sought;
    const helpless = brackets.every(([, { passesAtStart, after }]) => !passesAtStart && after === null);
    return helpless ? instead(basis) : [];
  },
  doubt: (basis, runs) => {
    const told = massAdvised(basis, runs);
    return {
      houses: [houseOfRun('told', told)],
      advice: (figuresOf) =>
        figuresOf('told').tooHotHours <= basis.criterion.hours
          ? 'that keeps to the limit'
          : `that passes the limit of ${countInWords(basis.criterion.hours)} hours: build more, or shade`,
      subject: told.job.id === 'none' ? 'Without extra mass the house' : `With ${told.job.label} the house`,
    };
  },
  answer,
};

/** No mass is the same run whatever it is not made of. */
function areaJob({ design, words }: Basis, way: WayToBuild, areaM2: number): RunJob {
  const none = areaM2 === 0;
  const name = materialById(way.material).name.toLowerCase();
  return {
    id: none ? 'none' : `${way.id}, ${areaM2.toFixed(3)} m²`,
    label: none ? 'no extra mass' : `${words.area(areaM2)} of ${name}, ${words.thickness(way.thicknessM)}`,
    design: varied(design, {
      'mass.material': way.material,
      'mass.thicknessM': way.thicknessM,
      'mass.areaM2': areaM2,
    }),
    at: { way: none ? 'any' : way.id, areaM2 },
  };
}

/** Thickness is tried at the area drawn, or at a third of the floor where none is. */
function thicknessJob({ design, words }: Basis, { material }: WayToBuild, thicknessM: number): RunJob {
  const areaM2 = design.mass.areaM2 > 0 ? design.mass.areaM2 : design.house.floorAreaM2 / 3;
  return {
    id: `${material}, ${thicknessM} m thick`,
    label: `${words.area(areaM2)} of ${materialById(material).name.toLowerCase()}, ${words.thickness(thicknessM)}`,
    design: varied(design, {
      'mass.material': material,
      'mass.thicknessM': thicknessM,
      'mass.areaM2': areaM2,
    }),
    at: { thicknessOf: material, thicknessM },
  };
}

/** What is tried where no mass is enough, besides the most of the first material. */
function instead({ design }: Basis): RunJob[] {
  const { vents, sunspace } = design;
  const path = sunspace.join === 'none' ? 'vents.houseM2' : 'vents.sunspaceM2';
  const area = sunspace.join === 'none' ? vents.houseM2 : vents.sunspaceM2;
  const airing: Changes = { [path]: Math.max(2 * area, 2), 'vents.habit': 'automatic' };
  const shading: Changes = { 'glass.summerShade': 0.7 };
  const tried: readonly (readonly [string, string, Changes])[] = [
    ['vents', 'twice the vents, opened by an automatic opener', airing],
    ['shade', 'a seasonal shade that keeps out 70 % of the summer sun', shading],
    ['both', 'twice the vents with an automatic opener, and a seasonal shade', { ...airing, ...shading }],
  ];
  return tried.map(([id, label, changes]) => ({
    id: `instead: ${id}`,
    label,
    design: varied(design, changes),
    at: { instead: id },
  }));
}

/** Thickness beyond which a wall takes up no more of a day's heat [m]; null for stirred water, which has none. */
export function usefulThicknessOf(material: string): number | null {
  return material === 'water' ? null : usefulThickness(materialById(material));
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const { words, criterion } = basis;
  const others = [...runs.values()].filter(({ job }) => job.at.instead !== undefined);
  return {
    finding: complete ? massFinding(basis, runs) : null,
    charts: [areaChart(basis, runs), thicknessChart(basis, runs)],
    tables: [
      ...(complete ? [leastMassTable(basis, runs)] : []),
      ...(others.length > 0
        ? [
            runTable(
              'instead',
              'What would do instead of mass',
              'change',
              ['tooHotHours', 'heatingKWh', 'warmestC'],
              others,
            ),
          ]
        : []),
    ],
    map: null,
    notes: [
      `The limit is ${criterionInWords(criterion, words)} (${criterion.source}).`,
      `Tried is what the house has room for: walls ${words.length(STANDS_M)} high on at most ${percentInWords(FLOOR_GIVEN)} of the floor, or as much as is drawn. The mass stands ${basis.design.mass.place === 'sunlit' ? 'where the sun falls' : 'out of the sun'}, as drawn.`,
      DAYS_SAY,
      'Sizes of pieces are common practice, no source.',
      'Heavy walls, bermed walls and filled drums need footings and floors made for them: ask an engineer, and follow the local code.',
    ],
    proposal: null,
  };
}

function areaChart(basis: Basis, runs: Runs): Chart {
  return {
    id: 'area',
    title: 'Each further square metre of mass takes away less',
    x: { label: 'face area of extra mass', unit: 'm²' },
    y: ['tooHotHours', 'swingK', 'heatingKWh', 'coldestC'],
    curves: ALL_WAYS.map((way): Curve => {
      const name = materialById(way.material).name.toLowerCase();
      return {
        id: way.id,
        label: `${name}, ${basis.words.thickness(way.thicknessM)}`,
        points: byArea(way, runs).map((run) => ({
          x: Number(run.job.at.areaM2),
          run: run.job.id,
          figures: run.figures,
        })),
      };
    }),
    marks: [drawnMark(basis.design.mass.areaM2)],
  };
}

function thicknessChart(basis: Basis, runs: Runs): Chart {
  const of = (material: string) =>
    [...runs.values()]
      .filter(({ job }) => job.at.thicknessOf === material)
      .sort((one, other) => Number(one.job.at.thicknessM) - Number(other.job.at.thicknessM));
  return {
    id: 'thickness',
    title: 'Beyond the depth that a day reaches, thickness stops helping',
    x: { label: 'thickness', unit: 'm' },
    y: ['tooHotHours', 'swingK', 'heatingKWh', 'coldestC'],
    curves: WAYS_TO_BUILD.map(({ material }) => ({
      id: material,
      label: materialById(material).name,
      points: of(material).map((run) => ({
        x: Number(run.job.at.thicknessM),
        run: run.job.id,
        figures: run.figures,
      })),
    })),
    marks: [
      drawnMark(basis.design.mass.thicknessM),
      ...WAYS_TO_BUILD.flatMap(({ material }): Mark[] => {
        const depth = usefulThicknessOf(material);
        if (depth === null) return [];
        return [
          {
            id: `depth-${material}`,
            kind: 'depth',
            x: depth,
            label: `a day reaches this far into ${materialById(material).name.toLowerCase()}`,
            curve: material,
            source: 'diurnal heat capacity of a slab, ISO 13786 at 24 h',
          },
        ];
      }),
    ],
  };
}

function drawnMark(x: number): Mark {
  return { id: 'drawn', kind: 'drawn', x, label: 'as drawn', curve: null, source: 'the design' };
}
