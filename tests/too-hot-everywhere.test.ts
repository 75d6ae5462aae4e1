// Holds that what counts as too hot is one thing wherever a person reads it: every finding, figure, question, table and
// report takes its hours and its limit from the design's criterion. The figures of every other limit are set to numbers
// that give themselves away, and no text may hold one of them.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';
import { yearLayer } from '../src/app/charts/year-layers.ts';
import { headlineFigures } from '../src/app/figures/headline-figures.ts';
import { outcomeTable } from '../src/cli/outcome-table.ts';
import type { Design, TooHotChoice } from '../src/design/design.ts';
import { EXAMPLES } from '../src/design/examples.ts';
import { TOO_HOT_CHOICES } from '../src/design/too-hot-criterion.ts';
import { contextOf, type Run } from '../src/findings/context.ts';
import { findingsOf } from '../src/findings/findings.ts';
import { whyOf } from '../src/findings/why.ts';
import { hours } from '../src/findings/wording.ts';
import { modelOf } from '../src/model/from-design.ts';
import type { OutcomeFigures, ZoneOutcome } from '../src/outcomes/outcome.ts';
import { summarise } from '../src/outcomes/summarise.ts';
import { ask } from '../src/questions/ask.ts';
import { helpFor, pullLevers } from '../src/questions/help-runs.ts';
import { QUESTIONS } from '../src/questions/registry.ts';
import type { Runner } from '../src/questions/runner.ts';
import { reportOf } from '../src/report/report.ts';
import { runExample } from './findings/example-run.ts';
import { madeBasis, madeResult, madeRunner, plausible, runnerOf } from './questions/made-runner.ts';
import { order, wordsOf } from './report/report-order.ts';

/** Hours and a limit that are nobody's: 7391 and 7393, which round to 7400; 34 °C is 93.2 °F. */
const TRAP = { overheatedHours: 7391, adaptiveOverheatedHours: 7393, overheatLimitC: 34 } as const;
const TELL_TALE = /(?<![\d.])(739[13]|7400)\b|\b34(\.0)?[\s\u202f]°C|\b93(\.2)?[\s\u202f]°F/;

const trapped = (zone: ZoneOutcome): ZoneOutcome => ({ ...zone, ...TRAP });
function withTraps(outcome: OutcomeFigures): OutcomeFigures {
  const { house, sunspace } = outcome.zones;
  return {
    ...outcome,
    zones: { house: trapped(house), ...(sunspace && { sunspace: trapped(sunspace) }) },
  };
}

/** Every choice but the one whose temperature is the design's own. */
const CHOICES = TOO_HOT_CHOICES.filter((choice) => choice !== 'fixed');
const trapDesign = (design: Design, criterion: TooHotChoice): Design => ({
  ...design,
  comfort: { ...design.comfort, criterion, overheatC: TRAP.overheatLimitC },
});

const LEANING = runExample('leaning').run;

const model = modelOf(LEANING.design, LEANING.climate.year.site, LEANING.climate.ground);

/** The leaning example judged by a choice; its year is the same, so it is run once. */
function judgedBy(criterion: TooHotChoice, units: 'metric' | 'us' = 'metric'): Run {
  const design = trapDesign(LEANING.design, criterion);
  const { climate, year } = LEANING;
  return { ...LEANING, design, outcome: withTraps(summarise(design, model, climate, year)), units };
}

/** Runs by formula, with the traps set in what comes back. */
const trappedRunner = (): Runner =>
  runnerOf((job) => {
    const result = madeResult(job, plausible);
    return { ...result, outcome: withTraps(result.outcome) };
  });

describe.each(CHOICES)('by %s', (choice) => {
  const run = judgedBy(choice);
  const context = contextOf(run);
  const { tooHot } = run.outcome.zones.house;

  test('findings, figures, pictures, tables and report tell the same hours and no others', () => {
    expect(tooHot.criterion).toBe(choice);
    expect(tooHot.hours).toBeGreaterThan(0);
    for (const units of ['metric', 'us'] as const)
      for (const { id, text, figures } of findingsOf(judgedBy(choice, units))) {
        expect(text, id).not.toMatch(TELL_TALE);
        expect(JSON.stringify(figures), id).not.toMatch(TELL_TALE);
      }
    const told = findingsOf(run).find(({ id }) => id === 'too-hot' || id === 'cool-enough')!;
    expect(told.figures.hours).toBe(tooHot.hours);
    expect(told.text).toContain(String(tooHot.limitHours));

    const headline = headlineFigures(run.outcome, run.design, 'metric');
    expect(JSON.stringify(headline)).not.toMatch(TELL_TALE);
    expect(headline.find(({ id }) => id === 'house-overheated')!.value).toBe(tooHot.hours);
    expect(whyOf(context, 'overheatedHours').hours).toHaveLength(tooHot.hours);
    const layer = yearLayer('house', run.year, run.climate.year, run.design, 'metric');
    expect(layer.sentence).toContain(`${tooHot.hours} hours`);

    const table = outcomeTable({ ...run.outcome, findings: findingsOf(run) }, true);
    expect(table).not.toMatch(TELL_TALE);
    expect(table).toMatch(new RegExp(`hours .* ${tooHot.hours}\\b`));

    const words = wordsOf(reportOf(order({ run, others: [judgedBy(choice)] })));
    expect(words).not.toMatch(TELL_TALE);
    expect(words).toContain(hours(tooHot.hours));
  });

  test('every question says, draws and tabulates hours of that limit alone', async () => {
    for (const question of QUESTIONS) {
      for (const { design } of EXAMPLES) {
        const basis = madeBasis(trapDesign(design, choice), { mapSide: 5 });
        const answer = await ask(question, basis, trappedRunner());
        expect(answer.criterion.id, question.id).toBe(choice);
        expect(answer.finding!.text, question.id).not.toMatch(TELL_TALE);
        const { charts, tables, notes, map } = answer;
        expect(JSON.stringify([tables, notes]), question.id).not.toMatch(TELL_TALE);
        for (const { y, title, marks } of charts) {
          expect(y, question.id).not.toContain('overheatedHours');
          expect(JSON.stringify([title, marks]), question.id).not.toMatch(TELL_TALE);
        }
        if (map !== null) expect(map.filled!.every((value) => value < TRAP.overheatedHours)).toBe(true);
      }
    }
  });

  test('what helps is chosen and told by that limit', async () => {
    const design = trapDesign(EXAMPLES[0]!.design, choice);
    const runner = trappedRunner();
    const help = await helpFor(design, await pullLevers(design, runner), runner);
    for (const { figures } of [...help.pulled, ...help.steps])
      expect(figures.tooHotHours).toBeLessThan(TRAP.overheatedHours);
    expect(wordsOf(reportOf(order({ run, help })))).not.toMatch(TELL_TALE);
  });
});

test('a change that shuts the windows is judged by the limit of the house as drawn', async () => {
  const { ran, run } = madeRunner(plausible);
  const design = EXAMPLES.find(({ id }) => id === 'modest')!.design;
  const vents = QUESTIONS.find(({ id }) => id === 'who-opens-the-vents')!;
  await ask(vents, madeBasis(design), { run });
  expect(new Set(ran.map(({ design: { vents: of } }) => of.habit)).size).toBe(5);
  expect(new Set(ran.map(({ design: { comfort } }) => comfort.criterion))).toEqual(new Set(['adaptive-II']));
});

/** Where one fixed temperature is read for what it is. */
const MAY_READ: Readonly<Record<string, string>> = {
  'src/questions/figures.ts': 'runs as scripts read them keep the key of old',
  'src/questions/how-much-glass.ts': 'the same',
  'src/questions/glass-and-mass-map.ts': 'the same',
  'src/questions/glass-mass-grid.ts': 'the same',
  'src/questions/criterion.ts': 'sets the temperature that a question was asked by',
  'src/cli/ask.ts': 'takes it from the words of the command',
  'src/report/inputs.ts': 'lists it where it counts',
  'src/app/section/SectionDrawing.tsx': 'colours, before the first year is in',
  'src/findings/why.ts': 'the name of a figure',
  'src/app/why/WhyNote.tsx': 'the name of a figure',
};

test('nothing else that speaks to people reads the other limits', () => {
  const root = join(import.meta.dirname, '..');
  const reads = ['findings', 'questions', 'report', 'app', 'cli'].flatMap((room) =>
    readdirSync(join(root, 'src', room), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => join(root, 'src', room, name))
      .filter((path) =>
        /overheatedHours|overheatedDegreeHours|overheatLimitC|adaptiveOverheatedHours|\boverheatC\b(?!')/.test(
          readFileSync(path, 'utf8'),
        ),
      )
      .map((path) => relative(root, path)),
  );
  expect(
    reads.filter((path) => !(path in MAY_READ)).filter((path) => !path.endsWith('input-groups.ts')),
  ).toEqual([]);
  expect(Object.keys(MAY_READ).filter((path) => !reads.includes(path))).toEqual([]);
});
