// Outcomes to sentences: every rule that applies to a run, the gravest first. A run in, findings out.

import type { Finding } from '../outcomes/outcome.ts';
import { contextOf, type Run } from './context.ts';
import { RULES } from './rules.ts';

const ORDER: readonly Finding['severity'][] = ['danger', 'warning', 'note', 'good'];

/**
 * The findings of one run.
 *
 * @param run design, climate, year and outcome of one run
 * @returns findings, gravest first; of equal gravity in the order of the rules
 */
export function findingsOf(run: Run): readonly Finding[] {
  const context = contextOf(run);
  return RULES.filter((rule) => rule.applies(context))
    .map((rule) => ({
      id: rule.id,
      severity: typeof rule.severity === 'function' ? rule.severity(context) : rule.severity,
      text: rule.text(context),
      figures: rule.figures(context),
    }))
    .sort((one, other) => ORDER.indexOf(one.severity) - ORDER.indexOf(other.severity));
}
