// Asks a question: runs its plan, then its refinements until it wants no more, and makes the answer. Partial
// answers can be had on the way, so that a curve is seen coarse first and fine later.

import { countedBy } from './criterion.ts';
import { figuresOf } from './figures.ts';
import { doubtInWords, doubtJobs } from './in-doubt.ts';
import { proposalsOf } from './proposals.ts';
import type { Answer, Basis, Doubt, Question, Run, Runs } from './question.ts';
import type { RunJob, RunResult } from './run-job.ts';
import type { Runner, StopSignal } from './runner.ts';
import { unknownsRule } from './what-nobody-knows.ts';

export interface Progress {
  readonly done: number;
  /** runs asked for so far; grows when a search refines */
  readonly wanted: number;
  /** the answer of the runs that are in; made only when called */
  readonly soFar: () => Answer;
}

export interface AskOptions {
  readonly signal?: StopSignal;
  readonly onProgress?: (progress: Progress) => void;
}

/** More rounds than any search needs; a question that still wants runs then is wrong. */
const MOST_ROUNDS = 20;

/**
 * The answer to a question.
 *
 * @param question from the registry
 * @param basis design, site, limit and words
 * @param runner runs the designs
 * @returns the whole answer; rejects with an AbortError when stopped
 */
export async function ask(
  question: Question,
  basis: Basis,
  runner: Runner,
  options: AskOptions = {},
): Promise<Answer> {
  const { signal, onProgress } = options;
  const runs = new Map<string, Run>();
  const jobs = new Map<string, RunJob>();
  const doubted = new Map<string, RunJob>();
  const runAll = async (wanted: readonly RunJob[], into: Map<string, RunJob>) => {
    for (const job of wanted) into.set(job.id, job);
    await runner.run(wanted, {
      signal,
      onResult(result) {
        const job = into.get(result.id);
        if (job === undefined) throw new RangeError(`result ${result.id} was not asked for`);
        runs.set(result.id, { job, result, figures: figuresOf(result.outcome) });
        onProgress?.({
          done: runs.size,
          wanted: jobs.size + doubted.size,
          soFar: () => answerOf(question, basis, { runs: inPlannedOrder(jobs, runs), complete: false }),
        });
      },
    });
  };
  let wanted: readonly RunJob[] = prepared(question.plan(basis), basis);
  for (let round = 0; wanted.length > 0; round++) {
    if (round === MOST_ROUNDS) throw new RangeError(`question ${question.id} does not come to an end`);
    await runAll(wanted, jobs);
    wanted = stillWanted(question, basis, jobs, runs);
  }
  const main = inPlannedOrder(jobs, runs);
  const doubt = question.doubt?.(basis, main) ?? null;
  if (doubt !== null) await runAll(prepared(doubtJobs(basis, doubt), basis), doubted);
  return answerOf(question, basis, {
    runs: main,
    complete: true,
    doubt,
    inDoubt: inPlannedOrder(doubted, runs),
  });
}

/**
 * The same question answered again from the same results, in other words; runs nothing.
 *
 * @param basis as it was asked, but for its words
 * @param results of all its runs, by id
 */
export function answerAgain(
  question: Question,
  basis: Basis,
  results: ReadonlyMap<string, RunResult>,
): Answer {
  const runs = new Map<string, Run>();
  const jobs = new Map<string, RunJob>();
  const doubted = new Map<string, RunJob>();
  const take = (wanted: readonly RunJob[], into: Map<string, RunJob>) => {
    for (const job of wanted) {
      const result = results.get(job.id);
      if (result === undefined) throw new RangeError(`run '${job.id}' is not in; allowed: one that was run`);
      into.set(job.id, job);
      runs.set(job.id, { job, result, figures: figuresOf(result.outcome) });
    }
  };
  let wanted: readonly RunJob[] = prepared(question.plan(basis), basis);
  while (wanted.length > 0) {
    take(wanted, jobs);
    wanted = stillWanted(question, basis, jobs, runs);
  }
  const main = inPlannedOrder(jobs, runs);
  const doubt = question.doubt?.(basis, main) ?? null;
  if (doubt !== null) take(prepared(doubtJobs(basis, doubt), basis), doubted);
  return answerOf(question, basis, {
    runs: main,
    complete: true,
    doubt,
    inDoubt: inPlannedOrder(doubted, runs),
  });
}

function stillWanted(
  question: Question,
  basis: Basis,
  jobs: ReadonlyMap<string, RunJob>,
  runs: Runs,
): readonly RunJob[] {
  const more = question.refine?.(basis, inPlannedOrder(jobs, runs)) ?? [];
  return prepared(
    more.filter(({ id }) => !jobs.has(id)),
    basis,
  );
}

interface RunsIn {
  readonly runs: Runs;
  readonly complete: boolean;
  readonly doubt?: Doubt | null;
  /** runs over what nobody can know, by their ids; told apart, so that no table, search or list of runs meets them */
  readonly inDoubt?: Runs;
}

function answerOf(question: Question, basis: Basis, { runs, complete, doubt, inDoubt }: RunsIn): Answer {
  const all: Runs = new Map([...runs, ...(inDoubt ?? [])]);
  const body = question.answer(basis, runs, complete);
  const sure = doubt && inDoubt ? doubtInWords(basis, doubt, inDoubt) : null;
  return {
    question: question.id,
    title: question.title,
    criterion: basis.criterion,
    complete,
    ...body,
    notes:
      sure === null ? body.notes : [...body.notes, unknownsRule(basis.words, basis.design, basis.isMade)],
    sure,
    runs: [...runs.values()].map(({ job, figures }) => ({
      id: job.id,
      label: job.label,
      at: job.at,
      figures,
    })),
    proposals: complete ? proposalsOf(basis, all) : [],
  };
}

/** Hours are counted by the question's limit, whatever a design counts by; each id once. */
function prepared(jobs: readonly RunJob[], { criterion }: Basis): readonly RunJob[] {
  const byId = new Map<string, RunJob>();
  for (const job of jobs) {
    if (!byId.has(job.id)) byId.set(job.id, { ...job, design: countedBy(job.design, criterion) });
  }
  return [...byId.values()];
}

function inPlannedOrder(jobs: ReadonlyMap<string, RunJob>, runs: Runs): Runs {
  const ordered = new Map<string, Run>();
  for (const id of jobs.keys()) {
    const run = runs.get(id);
    if (run !== undefined) ordered.set(id, run);
  }
  return ordered;
}
