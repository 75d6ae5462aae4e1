// The last few answers of the page's runs: a hand on its way back, and undo, pass through the same designs again. A
// job and its answer in, the answer to an equal job out.

import type { RunAnswer, RunJob } from './service.ts';

/** Answers remembered; each holds some 3 MB. */
const MOST = 12;

export class AnswerCache {
  /** by job, the oldest first */
  readonly #answers = new Map<string, RunAnswer>();

  get(job: RunJob): RunAnswer | undefined {
    return this.#answers.get(keyOf(job));
  }

  keep(job: RunJob, answer: RunAnswer): void {
    this.#answers.set(keyOf(job), answer);
    if (this.#answers.size > MOST) this.#answers.delete(this.#answers.keys().next().value!);
  }

  clear(): void {
    this.#answers.clear();
  }
}

/** All that an answer depends on, the climate by its key. */
function keyOf({ design, climateKey, history, units }: RunJob): string {
  return JSON.stringify([climateKey, history, units, design]);
}
