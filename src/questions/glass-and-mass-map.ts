// Glass and mass together: a map of hours too hot over the area of glass and of extra mass, with lines of equal
// value, the limit among them. The design as drawn is a point on it; any other point is a design to move to.
// Every second cell each way is run, and every cell beside the limit; the rest is drawn through between them and the
// map says how far off that is. On asking, every cell is run.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { criterionInWords } from '../findings/hot-words.ts';
import { hotInWords } from './criterion.ts';
import {
  cellsBesideLimit,
  cellsCoarseToFine,
  filledGrid,
  fillingError,
  type GlassMassMap,
  linesOf,
} from './glass-mass-grid.ts';
import { howMuchGlass, mostGlass } from './how-much-glass.ts';
import { type MassAmount, massAmounts } from './mass-amounts.ts';
import type { AnswerBody, Basis, Question, Runs, Sentence } from './question.ts';
import type { RunJob } from './run-job.ts';
import { largestGlassOf, varied, withGlassM2 } from './variation.ts';
import { hoursInWords, percentInWords } from './words.ts';

export const glassAndMassMap: Question = {
  id: 'glass-and-mass-map',
  title: 'Glass and mass together',
  asks: 'Which pairs of glass and mass keep this house from overheating?',
  plan: (basis) => {
    const stride = strideOf(basis);
    const cells = cellsCoarseToFine(basis.mapSide)
      .filter(([column, row]) => column % stride === 0 && row % stride === 0)
      .map((cell) => jobAt(basis, cell));
    return [...cells, ...howMuchGlass.plan(basis).filter(isAtAnEnd)];
  },
  refine: (basis, runs) => {
    const { filled, tooHotHours } = mapOf(basis, runs);
    const edges = howMuchGlass.refine!(basis, runs).filter(isAtAnEnd);
    if (filled === null) return edges;
    const beside = cellsBesideLimit(filled, tooHotHours, basis.mapSide, basis.criterion.hours);
    return [...beside.map((cell) => jobAt(basis, cell)), ...edges];
  },
  doubt: (basis) => ({
    houses: [{ id: 'drawn', words: 'as drawn', design: basis.design }],
    advice: (figuresOf) =>
      figuresOf('drawn').tooHotHours <= basis.criterion.hours
        ? 'the house as drawn keeps to the limit'
        : 'the house as drawn passes the limit',
    subject: 'As drawn the house',
  }),
  answer,
};

/** Runs of the curves along the map's lowest and highest row, whose limits the closing sentence tells: one search for both. */
function isAtAnEnd({ at }: RunJob): boolean {
  return at.mass === 'none' || at.mass === 'plenty';
}

/** Every cell, or every second where the grid allows it. */
function strideOf({ everyCell, mapSide }: Basis): number {
  return everyCell || mapSide % 2 === 0 ? 1 : 2;
}

function jobAt({ design, words, mapSide }: Basis, [column, row]: readonly [number, number]): RunJob {
  const axis = axes(design, mapSide);
  const [glassM2, massM2] = [axis.glassM2[column]!, axis.massM2[row]!];
  return {
    id: `${column}, ${row}`,
    label: `${words.area(glassM2)} of glass, ${words.area(massM2)} of extra mass`,
    design: designAt(design, glassM2, massM2),
    at: { column, row, glassM2, massM2 },
  };
}

/** The design moved to a place on the map: equator-facing glass and face of extra mass [m²], as much as fits. */
export function designAt(design: Design, glassM2: number, massM2: number): Design {
  return withGlassM2(varied(design, { 'mass.areaM2': massM2 }), glassM2);
}

/** Where a design stands on the map. */
export function placeOnMap(design: Design): GlassMassMap['drawn'] {
  return { glassM2: geometryOf(design).glassM2, massM2: design.mass.areaM2 };
}

/** Glass from none to the whole front, mass from none to plenty [m²]. */
function axes(design: Design, side: number): Pick<GlassMassMap, 'glassM2' | 'massM2'> {
  const along = (most: number) => Array.from({ length: side }, (_, i) => (most * i) / (side - 1));
  const plenty = massAmounts(design).at(-1)!.areaM2;
  return { glassM2: along(largestGlassOf(design)), massM2: along(plenty) };
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const map = mapOf(basis, runs);
  const { mapSide } = basis;
  return {
    finding: complete ? finding(basis, map, runs) : null,
    charts: [],
    tables: [],
    map,
    notes: [
      `The limit line is ${criterionInWords(basis.criterion, basis.words)} (${basis.criterion.source}).`,
      ...(complete && map.filledErrorHours !== null
        ? [
            `${map.tooHotHours.filter((value) => value !== null).length} of the ${mapSide * mapSide} cells are run, with all beside the limit; those between are drawn through, and are off by about ${hoursInWords(map.filledErrorHours)}.`,
          ]
        : []),
      'Material, thickness and place of the extra mass, tilt, vents and habits stay as drawn.',
    ],
    proposal: null,
  };
}

function mapOf(basis: Basis, runs: Runs): GlassMassMap {
  const { design, criterion, mapSide } = basis;
  const { glassM2, massM2 } = axes(design, mapSide);
  const tooHotHours = new Array<number | null>(mapSide * mapSide).fill(null);
  const overheatedHours = [...tooHotHours];
  for (const { job, figures } of runs.values()) {
    if (job.at.row === undefined) continue;
    const at = Number(job.at.row) * mapSide + Number(job.at.column);
    tooHotHours[at] = figures.tooHotHours;
    overheatedHours[at] = figures.overheatedHours;
  }
  const filled = filledGrid(tooHotHours, mapSide);
  return {
    glassM2,
    massM2,
    tooHotHours,
    overheatedHours,
    filled,
    filledErrorHours: tooHotHours.includes(null) ? fillingError(tooHotHours, mapSide, strideOf(basis)) : null,
    lines: filled === null ? [] : linesOf(filled, glassM2, massM2, criterion.hours),
    drawn: placeOnMap(design),
  };
}

function finding(basis: Basis, map: GlassMassMap, runs: Runs): Sentence {
  const { design, criterion, words } = basis;
  const last = map.massM2.length - 1;
  const [none, , plenty] = massAmounts(design) as [MassAmount, MassAmount, MassAmount];
  const bare = mostGlass(basis, none, runs);
  const massive = mostGlass(basis, plenty, runs);
  const figures = {
    mostGlassWithoutMassM2: bare,
    mostGlassWithMostMassM2: massive,
    mostMassM2: map.massM2[last]!,
    limitHours: criterion.hours,
    limitC: criterion.aboveC,
  };
  const limit = `${hoursInWords(criterion.hours)} a year ${hotInWords(basis)}`;
  const share = (areaM2: number) =>
    `${words.area(areaM2)} of glass (${percentInWords(areaM2 / design.house.floorAreaM2)} of the floor)`;
  const most = words.area(map.massM2[last]!);
  if (massive === null) {
    return {
      figures,
      text: `No point of this map keeps to ${limit}, with any glass or with any mass up to ${most}. Change the vents or the shade first.`,
    };
  }
  const kept = `The limit is ${limit}.`;
  if (bare === massive) {
    const whole = massive >= largestGlassOf(design) - 1e-6;
    return {
      figures,
      text: `Without extra mass as with ${most} of it, ${whole ? 'the whole front may be glass' : 'the house carries the same'}: ${share(massive)}. ${kept}`,
    };
  }
  const without =
    bare === null
      ? 'Without extra mass no glass keeps to the limit.'
      : `Without extra mass the house carries ${share(bare)}.`;
  return { figures, text: `${without} With ${most} of extra mass it carries ${share(massive)}. ${kept}` };
}
