// The short form of findings: the three that matter and every serious caution, each in two sentences and an act. Whatever
// stands second in a finding explains it; its last sentence is what to do. In: findings, gravest first. Out: those to show
// at once, in short, and how many more there are. A serious caution is never among the "more".

import type { Finding } from '../outcomes/outcome.ts';

export interface ShortForm {
  /** at most three, gravest first, in short */
  readonly first: readonly Finding[];
  /** serious cautions, in short */
  readonly serious: readonly Finding[];
  /** the findings and the cautions that are left, in full */
  readonly moreFindings: readonly Finding[];
  readonly moreCautions: readonly Finding[];
}

const FIRST = 3;
/** Sentences before the act. */
const SENTENCES = 2;
/** Said at length elsewhere, of every house. */
const NEVER_FIRST = ['how-sure'];

/** The short form of a run's findings. */
export function shortForm(findings: readonly Finding[]): ShortForm {
  const cautions = findings.filter(isCaution);
  const others = findings.filter((finding) => !isCaution(finding));
  const first = others.filter(({ id }) => !NEVER_FIRST.includes(id)).slice(0, FIRST);
  const serious = cautions.filter(({ severity }) => severity === 'danger');
  return {
    first: first.map(inShort),
    serious: serious.map(inShort),
    moreFindings: others.filter((finding) => !first.includes(finding)),
    moreCautions: cautions.filter((finding) => !serious.includes(finding)),
  };
}

/** A caution's id says that it is one. */
export function isCaution({ id }: Pick<Finding, 'id'>): boolean {
  return id.startsWith('caution-');
}

/** Two sentences and the last, which says what to do. */
export function inShort(finding: Finding): Finding {
  const sentences = finding.text.split(/(?<=[.?])\s+(?=[A-Z\d])/);
  if (sentences.length <= SENTENCES + 1) return finding;
  return { ...finding, text: [...sentences.slice(0, SENTENCES), sentences.at(-1)].join(' ') };
}
