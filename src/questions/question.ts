// What a question is: data and pure functions. `plan` says which runs answer it, coarse to fine; `refine` asks for
// more once those are in (a bracketed search); `answer` makes curves, tables, marks and one closing sentence of
// whatever runs are in so far. How runs are run is the runner's business (runner.ts).

import type { Design } from '../design/design.ts';
import type { TooHotCriterion } from '../design/too-hot-criterion.ts';
import type { PriceList } from '../quantities/prices.ts';
import type { Site } from '../weather/typical-year.ts';
import type { ChangeOrder } from './change-order.ts';
import type { FigureKey, Figures } from './figures.ts';
import type { GlassMassMap } from './glass-mass-grid.ts';
import type { RunJob, RunResult } from './run-job.ts';
import type { Weights } from './weights.ts';
import type { Unknown } from './what-nobody-knows.ts';
import type { Words } from './words.ts';

/** What a question is asked about. */
export interface Basis {
  readonly design: Design;
  readonly site: Site;
  /** the year was made from monthly normals, its days drawn */
  readonly isMade: boolean;
  readonly criterion: TooHotCriterion;
  readonly words: Words;
  /** what weighs how much where one house is called better than another */
  readonly weights: Weights;
  /** a person's own prices, in which changes are told beside their work; none where there are none */
  readonly prices: PriceList;
  /** how changes are put in order: by all that weighs, or by what each takes off that for its days or its money */
  readonly order: ChangeOrder;
  /** runs of a sampled spread, 64…256 */
  readonly samples: number;
  /** cells along each side of the glass and mass map, 5…41 */
  readonly mapSide: number;
  /** run every cell of the map; else every second one each way, and all beside the limit */
  readonly everyCell: boolean;
}

export interface Run {
  readonly job: RunJob;
  readonly result: RunResult;
  readonly figures: Figures;
}

/** Runs that are in, by the id of their job, in the order of the plan. */
export type Runs = ReadonlyMap<string, Run>;

/** A house that an advice is about; with its figures where it is run already. */
export interface DoubtedHouse {
  readonly id: string;
  readonly words: string;
  readonly design: Design;
  readonly figures?: Figures;
}

/** What an answer advises, tried over what nobody can know: houses among which it chooses, and how it chooses. */
export interface Doubt {
  /** by an id of their own; the first is the one whose figures are told with their range */
  readonly houses: readonly DoubtedHouse[];
  /** what nobody can know that this question does not already turn over itself */
  readonly over?: (unknown: Unknown['id']) => boolean;
  /** what would be advised if these were the figures, as it follows "then": "the sunspace is better left out" */
  readonly advice: (figuresOf: (house: string) => Figures) => string;
  /** whose figures the range is of, as it begins a sentence: "Closed off, it" */
  readonly subject: string;
}

export interface Question {
  readonly id: string;
  readonly title: string;
  /** one plain sentence */
  readonly asks: string;
  readonly plan: (basis: Basis) => readonly RunJob[];
  /** runs still wanted when all planned ones are in; none when the search is over */
  readonly refine?: (basis: Basis, runs: Runs) => readonly RunJob[];
  /** what to try over what nobody can know, once all runs are in; absent where the question does so itself */
  readonly doubt?: (basis: Basis, runs: Runs) => Doubt | null;
  /** works with any part of the runs; the closing sentence comes when `complete` */
  readonly answer: (basis: Basis, runs: Runs, complete: boolean) => AnswerBody;
}

/** A sentence and the figures that prove it; every number it says stands among them, unrounded. */
export interface Sentence {
  readonly text: string;
  readonly figures: Readonly<Record<string, number | string | null>>;
}

/** A run as people and scripts read it. */
export interface RunLine {
  readonly id: string;
  readonly label: string;
  readonly at: RunJob['at'];
  readonly figures: Figures;
}

export interface Axis {
  readonly label: string;
  readonly unit: string;
  /** the same scale as a share of other amounts in its unit, for second rows of ticks */
  readonly shares?: readonly Share[];
}

export interface Share {
  /** what it is a share of, as in "of the floor area" */
  readonly of: string;
  /** the same in one word, where room is short */
  readonly short: string;
  /** that amount, in the axis' unit */
  readonly wholeX: number;
}

export interface CurvePoint {
  readonly x: number;
  /** id of its run */
  readonly run: string;
  readonly figures: Figures;
}

export interface Curve {
  readonly id: string;
  readonly label: string;
  /** by rising x */
  readonly points: readonly CurvePoint[];
}

/** A place on the x axis worth a line: a handbook's share, the design as drawn, a limit found. */
export interface Mark {
  readonly id: string;
  readonly kind: 'handbook' | 'drawn' | 'limit' | 'depth';
  readonly x: number;
  readonly label: string;
  /** curve it belongs to; null for all */
  readonly curve: string | null;
  readonly source: string;
}

export interface Chart {
  readonly id: string;
  readonly title: string;
  readonly x: Axis;
  /** figures to draw upward, the most telling first */
  readonly y: readonly FigureKey[];
  readonly curves: readonly Curve[];
  readonly marks: readonly Mark[];
}

export interface Column {
  readonly label: string;
  readonly unit: string;
  /** decimals that the figure deserves */
  readonly digits: number;
}

export type Cell = number | string | null;

export interface Table {
  readonly id: string;
  /** id of the run that each row tells of; null for none */
  readonly rowRuns?: readonly (string | null)[];
  /** id of the run that the closing sentence advises; absent where it advises none of the rows */
  readonly advised?: string;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  /** decimals of each row where they are not the columns' */
  readonly rowDigits?: readonly number[];
  /** unit of each row where it is not the columns'; its first cell ends in it too */
  readonly rowUnits?: readonly string[];
}

/** A changed house that an answer promises something of, with the figures of its run, unrounded. */
export interface ProposedHouse {
  /** of its run */
  readonly id: string;
  readonly words: string;
  readonly design: Design;
  readonly figures: Figures;
}

/** A design that the answer proposes. */
export interface Proposal {
  readonly text: string;
  readonly design: Design;
}

export interface AnswerBody {
  readonly finding: Sentence | null;
  readonly charts: readonly Chart[];
  readonly tables: readonly Table[];
  readonly map: GlassMassMap | null;
  /** what was held fixed, what a figure leaves out, cautions */
  readonly notes: readonly string[];
  readonly proposal: Proposal | null;
}

export interface Answer extends AnswerBody {
  readonly question: string;
  readonly title: string;
  readonly criterion: TooHotCriterion;
  /** its range over what nobody can know, and whether the advice holds there; null until all runs are in */
  readonly sure: Sentence | null;
  /** false while runs are still coming */
  readonly complete: boolean;
  readonly runs: readonly RunLine[];
  /** every changed house that can be drawn, once all runs are in; running its design in its climate gives its figures */
  readonly proposals: readonly ProposedHouse[];
}
