// Whether an answer keeps its promises: every changed house that it proposes, saved as a file and run anew in its own climate,
// gives the figures that the answer has for it, and tables and curves say those very figures. This holds our own code to
// itself, so it is no outside check of the physics.
import { runYear } from '../../src/daystone.ts';
import type { Design } from '../../src/design/design.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { climateOfDesign } from '../../src/model/design-climate.ts';
import { ask } from '../../src/questions/ask.ts';
import { basisOf } from '../../src/questions/basis.ts';
import { FIGURE_NAMES, type FigureKey, type Figures, figuresOf } from '../../src/questions/figures.ts';
import type { Answer, Basis, Question } from '../../src/questions/question.ts';
import type { RunResult } from '../../src/questions/run-job.ts';
import { createPlainRunner, type Runner } from '../../src/questions/runner.ts';
import type { PreparedClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { bundledClimate } from '../weather/bundled-climates.ts';

const KEYS = Object.keys(FIGURE_NAMES) as FigureKey[];

/** A bundled climate by its id. */
export function climateById(id: string): PreparedClimate {
  return bundledClimate(id);
}

const runners = new Map<string, Runner>();

/** A runner in a bundled climate that runs no year twice: questions about one house have many in common. */
function runnerIn(id: string): Runner {
  const known = runners.get(id);
  if (known !== undefined) return known;
  const plain = createPlainRunner(climateById(id));
  const results = new Map<string, RunResult>();
  const runner: Runner = {
    async run(jobs, options = {}) {
      const all: RunResult[] = [];
      for (const job of jobs) {
        const key = JSON.stringify({ ...job, id: null, label: null, at: null });
        if (!results.has(key)) results.set(key, (await plain.run([job]))[0]!);
        const result = { ...results.get(key)!, id: job.id };
        all.push(result);
        options.onResult?.(result);
      }
      return all;
    },
  };
  runners.set(id, runner);
  return runner;
}

/** The whole answer to a question about a design in the climate it names. */
export function answerFor(question: Question, design: Design, set: Partial<Basis> = {}): Promise<Answer> {
  const climate = climateById(design.climate);
  return ask(question, basisOf(design, climate.year.site, set), runnerIn(design.climate));
}

const anew = new Map<string, Figures>();

/** Figures of a design as a file gives them when it is run; a house that several answers propose is run once. */
function figuresAnew(design: unknown): Figures {
  const file = JSON.stringify(design);
  const known = anew.get(file);
  if (known !== undefined) return known;
  const parsed = parseDesign(JSON.parse(file));
  if (!parsed.ok) throw new Error(`a proposed house is no design: ${JSON.stringify(parsed.faults)}`);
  const climate = climateOfDesign(parsed.design, climateById(parsed.design.climate));
  const figures = figuresOf(runYear(parsed.design, climate).outcome);
  anew.set(file, figures);
  return figures;
}

/**
 * Promises that are not kept, a line each.
 *
 * @param most proposals run anew, spread over them all
 */
export function brokenPromises(answer: Answer, most = Number.POSITIVE_INFINITY): readonly string[] {
  const { proposals } = answer;
  const stride = Math.max(1, Math.ceil(proposals.length / most));
  const rerun = proposals
    .filter((_, i) => i % stride === 0)
    .flatMap(({ words, design, figures }) => {
      const found = figuresAnew(design);
      return KEYS.filter((key) => found[key] !== figures[key]).map(
        (key) => `${words}: ${key} is promised as ${figures[key]}, run anew it is ${found[key]}`,
      );
    });
  return [...rerun, ...brokenTables(answer), ...brokenCurves(answer), ...unproved(answer)];
}

/** Cells of figures that are not those of the run their row tells of. */
function brokenTables({ tables, runs }: Answer): readonly string[] {
  return tables.flatMap(({ title, columns, rows, rowRuns }) =>
    rows.flatMap((row, r) => {
      const run = runs.find(({ id }) => id === rowRuns?.[r]);
      if (run === undefined) return [];
      return columns.flatMap(({ label }, c) => {
        const key = KEYS.find((name) => FIGURE_NAMES[name].label === label);
        if (key === undefined || row[c] === run.figures[key]) return [];
        return [`${title}, ${row[0]}: ${label} is ${row[c]}, its run has ${run.figures[key]}`];
      });
    }),
  );
}

function brokenCurves({ charts, runs }: Answer): readonly string[] {
  const byId = new Map(runs.map((run) => [run.id, run]));
  return charts.flatMap(({ title, curves }) =>
    curves.flatMap(({ points }) =>
      points
        .filter(({ run, figures }) => JSON.stringify(byId.get(run)?.figures) !== JSON.stringify(figures))
        .map(({ run }) => `${title}: the point of '${run}' is not that of its run`),
    ),
  );
}

/** Hours and heat of the closing sentence that stand neither in a run nor are the difference of two. */
function unproved({ finding, runs }: Answer): readonly string[] {
  const said = [...(finding?.text ?? '').matchAll(/(\d+) (?:hours|kWh)/g)].map(([, number]) =>
    Number(number),
  );
  const proofs = new Set(
    [...Object.values(finding?.figures ?? {}), ...runs.flatMap(({ figures }) => Object.values(figures))]
      .filter((value) => typeof value === 'number')
      .map((value) => Math.round(Math.abs(value))),
  );
  const heat = runs.map(({ figures }) => figures.heatingKWh);
  const isDifference = (number: number) =>
    heat.some((one) => heat.some((other) => Math.round(one - other) === number));
  return said
    .filter((number) => !proofs.has(number) && !isDifference(number))
    .map((number) => `"${finding!.text}": ${number} stands in no run`);
}
