// What would help most: every lever pulled alone; then, as an adviser would, the best first, and on top of it the next
// among those that alone did something against what is left. Best is what leaves the fewest hours too hot or too damp.
// In: a design and a runner. Out: the figures of each lever, and the steps with what stands after each.

import type { Design } from '../design/design.ts';
import { withChoiceKept } from '../design/too-hot-criterion.ts';
import { ACCEPTABLE_DAMP_HOURS, NEARLY_ACCEPTABLE } from '../outcomes/acceptable-hours.ts';
import { type HotAndDamp, trouble } from './choice-of-houses.ts';
import { type Figures, figuresOf } from './figures.ts';
import { type Lever, leversOf, type Pulled } from './levers.ts';
import type { RunJob } from './run-job.ts';
import type { Runner } from './runner.ts';

export interface PulledLevers {
  readonly drawn: Figures;
  readonly pulled: readonly Pulled[];
}

export interface Help extends PulledLevers {
  /** each on top of those before it, with the figures then */
  readonly steps: readonly Pulled[];
  /** a milder lever, with the figures of all steps when it stands in for the one it is milder than */
  readonly milder?: Pulled;
}

/** Steps told; more is a list nobody keeps. */
const MOST_STEPS = 3;
/** A step is worth a word when it takes away a tenth of the hours, and no less than these. House rules. */
const LEAST_HOURS = 40;
const LEAST_SHARE = 0.1;
/** Hours, mould index and heat [kWh] that nobody would tell apart. House rules. */
const ALIKE_HOURS = 10;
const ALIKE_MOULD = 0.2;
const ALIKE_KWH = 50;
/** Steps that do this share of what all of them do are enough. House rule. */
const ENOUGH_SHARE = 0.9;
/** What a lever has to take off the hours too hot, or too damp, alone, to be tried on top of others. House rules. */
const PROMISING_HOURS = 20;
const PROMISING_SHARE = 0.03;

/** Whether neither heat nor damp is worth a change. */
export function isCalm({ tooHotHours, tooHotLimitHours, humidHours }: HotAndDamp): boolean {
  return (
    tooHotHours <= NEARLY_ACCEPTABLE * tooHotLimitHours &&
    humidHours <= NEARLY_ACCEPTABLE * ACCEPTABLE_DAMP_HOURS
  );
}

/**
 * Pull every lever of a design alone; all are judged by what the design as drawn counts as too hot.
 *
 * @param known the figures of the design as drawn, where it has been run already
 */
export async function pullLevers(
  drawnDesign: Design,
  runner: Runner,
  known?: Figures,
): Promise<PulledLevers> {
  const design = withChoiceKept(drawnDesign);
  const [drawn, pulled] = await Promise.all([
    known ?? runner.run([jobOf('as drawn', design)]).then(([run]) => figuresOf(run!.outcome)),
    pullEach(leversOf(design), design, runner),
  ]);
  return { drawn, pulled };
}

/** The steps that help most, one on top of the other. */
export async function helpFor(
  drawnDesign: Design,
  { drawn, pulled }: PulledLevers,
  runner: Runner,
): Promise<Help> {
  const design = withChoiceKept(drawnDesign);
  const steps: Pulled[] = [];
  let [at, figures, tried] = [design, drawn, pulled];
  while (steps.length < MOST_STEPS && !isCalm(figures)) {
    const best = bestOf(tried);
    const before = trouble(figures);
    const won = best === null ? 0 : before - trouble(best.figures);
    if (best === null || won < Math.max(Math.min(LEAST_HOURS, before), LEAST_SHARE * before)) break;
    steps.push(best);
    at = best.lever.apply(at);
    figures = best.figures;
    if (steps.length === MOST_STEPS || isCalm(figures)) break;
    const taken = new Set(steps.map(({ lever }) => lever.id));
    const left = leversOf(at).filter(
      ({ id }) => !taken.has(id) && isPromising(id, figures, { drawn, pulled }),
    );
    tried = await pullEach(left, at, runner);
  }
  const told = enoughOf(steps, drawn);
  return { drawn, pulled, steps: told, ...(await milderThan(told, design, runner)) };
}

/** Whether a lever may do something against what is left: alone it did, or alone it was not there to be pulled. */
function isPromising(id: string, left: Figures, { drawn, pulled }: PulledLevers): boolean {
  const alone = pulled.find(({ lever }) => lever.id === id)?.figures;
  if (alone === undefined) return true;
  const helps = (key: 'tooHotHours' | 'humidHours', allowed: number) =>
    left[key] > allowed && drawn[key] - alone[key] >= Math.max(PROMISING_HOURS, PROMISING_SHARE * drawn[key]);
  return helps('tooHotHours', left.tooHotLimitHours) || helps('humidHours', ACCEPTABLE_DAMP_HOURS);
}

/** The steps as far as they are worth the work: one that does nearly all of it stands alone. */
function enoughOf(steps: readonly Pulled[], drawn: Figures): readonly Pulled[] {
  const before = trouble(drawn);
  const won = ({ figures }: Pulled) => before - trouble(figures);
  const all = steps.length === 0 ? 0 : won(steps.at(-1)!);
  const enough = steps.findIndex((step) => won(step) >= ENOUGH_SHARE * all);
  return steps.slice(0, enough + 1);
}

/** All steps again with one of them in its milder form, where there is one. */
async function milderThan(
  steps: readonly Pulled[],
  design: Design,
  runner: Runner,
): Promise<Pick<Help, 'milder'>> {
  const ids = steps.map(({ lever }) => lever.id);
  const lever = leversOf(design).find(
    ({ milderThan: harder }) => harder !== undefined && ids.includes(harder),
  );
  if (lever === undefined) return {};
  const taken = steps.map((step) => (step.lever.id === lever.milderThan ? lever : step.lever));
  const all = taken.reduce((at, { apply }) => apply(at), design);
  const [result] = await runner.run([jobOf(lever.id, all)]);
  return { milder: { lever, figures: figuresOf(result!.outcome) } };
}

async function pullEach(
  levers: readonly Lever[],
  design: Design,
  runner: Runner,
): Promise<readonly Pulled[]> {
  const results = await runner.run(levers.map(({ id, apply }) => jobOf(id, apply(design))));
  return levers.map((lever, i) => ({ lever, figures: figuresOf(results[i]!.outcome) }));
}

function jobOf(id: string, design: Design): RunJob {
  return { id, label: id, design, at: {} };
}

/** Other levers that are worth a word alone, the one that leaves the least trouble first. */
export function otherWays({ drawn, pulled, steps }: Help): readonly Pulled[] {
  const before = trouble(drawn);
  const least = Math.max(Math.min(LEAST_HOURS, before), LEAST_SHARE * before);
  const taken = new Set(steps.map(({ lever }) => lever.id));
  return pulled
    .filter(({ lever }) => !taken.has(lever.id) && lever.milderThan === undefined)
    .filter(({ figures }) => before > 0 && before - trouble(figures) >= least)
    .sort((one, other) => trouble(one.figures) - trouble(other.figures));
}

/**
 * The lever that leaves the least trouble: of those that are alike in that (no more than a few hours) the one that leaves
 * the least mould, then the least heat to add. No milder form of another unless it is better than that other.
 */
export function bestOf(pulled: readonly Pulled[]): Pulled | null {
  const of = (id: string) => pulled.find(({ lever }) => lever.id === id);
  const fair = pulled.filter(({ lever, figures }) => {
    const harder = lever.milderThan === undefined ? undefined : of(lever.milderThan);
    return harder === undefined ? lever.milderThan === undefined : isBetter(figures, harder.figures);
  });
  return fair.reduce<Pulled | null>(
    (best, entry) => (best === null || isBetter(entry.figures, best.figures) ? entry : best),
    null,
  );
}

function isBetter(one: Figures, other: Figures): boolean {
  const less = trouble(other) - trouble(one);
  if (Math.abs(less) > ALIKE_HOURS) return less > 0;
  const mould = other.worstMouldIndex - one.worstMouldIndex;
  if (Math.abs(mould) > ALIKE_MOULD) return mould > 0;
  return one.heatingKWh < other.heatingKWh - ALIKE_KWH;
}

/** What a `Help` says without the levers' own code, to be kept as text. */
export interface PlainHelp {
  readonly drawn: Figures;
  readonly pulled: readonly PlainPulled[];
  readonly steps: readonly PlainPulled[];
}

interface PlainPulled {
  readonly id: string;
  readonly figures: Figures;
}

/** As plain data; the milder form, which no act tells, is left out. */
export function plainHelp({ drawn, pulled, steps }: Help): PlainHelp {
  const plain = ({ lever, figures }: Pulled): PlainPulled => ({ id: lever.id, figures });
  return { drawn, pulled: pulled.map(plain), steps: steps.map(plain) };
}

/** The same with the levers of its design; throws RangeError for a lever the design has not. */
export function helpOfPlain(drawnDesign: Design, { drawn, pulled, steps }: PlainHelp): Help {
  const design = withChoiceKept(drawnDesign);
  const withLever = ({ id, figures }: PlainPulled, at: Design): Pulled => {
    const lever = leversOf(at).find((entry) => entry.id === id);
    if (lever === undefined) throw new RangeError(`lever is '${id}'; allowed: one of the design`);
    return { lever, figures };
  };
  let at = design;
  const told = steps.map((step) => {
    const found = withLever(step, at);
    at = found.lever.apply(at);
    return found;
  });
  return { drawn, pulled: pulled.map((entry) => withLever(entry, design)), steps: told };
}
