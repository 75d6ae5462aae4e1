// What the year says, in sentences: the three findings that matter and every serious caution in short, open; the rest, and
// these at length, one click away.

import { useRef } from 'preact/hooks';
import { SEVERITY_WORDS } from '../../findings/severity-words.ts';
import { isCaution, shortForm } from '../../findings/short-form.ts';
import type { Finding } from '../../outcomes/outcome.ts';
import { useChartAnswer } from '../charts/chart-turns.ts';
import { unbroken } from '../parts/unbroken.ts';
import { useWorkspace } from '../state/session-context.ts';

export function FindingPanel() {
  const ref = useRef<HTMLElement>(null);
  const { shown, units } = useWorkspace();
  // The first year's findings are there when the year is, in sight or not: what stands below them must not move later.
  const drawn = useChartAnswer(ref);
  const newest = shown.value;
  // What was made with the page is told in metric units.
  const answer = drawn ?? (newest?.run === null && units.value !== 'metric' ? null : newest);
  if (!answer) return <section ref={ref} class="chart findings" />;
  const { findings } = answer.outcome;
  const { first, serious, moreFindings, moreCautions } = shortForm(findings);
  return (
    <section ref={ref} class="chart findings" id="findings" aria-labelledby="findings-title">
      <div class="chart-head">
        <h2 id="findings-title">What this year says</h2>
      </div>
      <FindingList findings={first} />
      {serious.length > 0 && (
        <>
          <h3>Take care</h3>
          <FindingList findings={serious} />
        </>
      )}
      {moreFindings.length > 0 && (
        <details>
          <summary>{moreFindings.length} more, and these at length</summary>
          <FindingList findings={findings.filter((finding) => !isCaution(finding))} />
        </details>
      )}
      <details>
        <summary>{cautionsSummary(serious.length, moreCautions.length)}</summary>
        <FindingList findings={findings.filter(isCaution)} />
      </details>
    </section>
  );
}

function cautionsSummary(serious: number, others: number): string {
  const ofThem = serious === 0 ? '' : `, ${serious} of them serious`;
  return `Before you build: ${serious + others} cautions for this design${ofThem}`;
}

function FindingList({ findings }: { findings: readonly Finding[] }) {
  return (
    <ul class="finding-list">
      {findings.map((finding) => (
        <li key={finding.id} class={`finding is-${finding.severity}`}>
          <strong>{SEVERITY_WORDS[finding.severity]}</strong>
          <p>{unbroken(finding.text)}</p>
        </li>
      ))}
    </ul>
  );
}
