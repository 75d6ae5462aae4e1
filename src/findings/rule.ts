// What a rule is: rules are data, each with the case in which it speaks, the figures that prove it and the words
// it says. Every number in the words stands among the figures, rounded as it is said.

import type { Finding } from '../outcomes/outcome.ts';
import type { Context } from './context.ts';
import { oncePer } from './once-per.ts';

export type Severity = Finding['severity'];
export type Figures = Finding['figures'];

export interface Rule {
  readonly id: string;
  /** a caution warns of a danger and says what to do; it is no judgement of the design */
  readonly kind: 'finding' | 'caution';
  readonly severity: Severity | ((context: Context) => Severity);
  readonly applies: (context: Context) => boolean;
  readonly figures: (context: Context) => Figures;
  readonly text: (context: Context) => string;
}

interface Draft<F extends Figures> {
  readonly id: string;
  readonly severity: Severity | ((context: Context) => Severity);
  readonly applies: (context: Context) => boolean;
  readonly figures: (context: Context) => F;
  readonly says: (figures: F, context: Context) => string;
}

/** A rule that judges the design. */
export function finding<F extends Figures>(draft: Draft<F>): Rule {
  return ruleOf('finding', draft);
}

/** A rule that warns of a danger. */
export function caution<F extends Figures>(draft: Draft<F>): Rule {
  return ruleOf('caution', draft);
}

function ruleOf<F extends Figures>(kind: Rule['kind'], draft: Draft<F>): Rule {
  const { id, severity, applies, says } = draft;
  // Figures may sum over the year's hours; words and figures of one run share them.
  const figures = oncePer(draft.figures);
  return { id, kind, severity, applies, figures, text: (context) => says(figures(context), context) };
}
