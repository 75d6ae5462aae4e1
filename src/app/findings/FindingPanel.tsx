// What the year says, in sentences: findings of this run, the gravest first, then the cautions that come with the
// design. The first few stand open; the rest is one click away.

import { useRef } from 'preact/hooks';
import { SEVERITY_WORDS } from '../../findings/severity-words.ts';
import type { Finding } from '../../outcomes/outcome.ts';
import { useChartAnswer } from '../charts/chart-turns.ts';
import { unbroken } from '../parts/unbroken.ts';

const SHOWN = 5;

export function FindingPanel() {
  const ref = useRef<HTMLElement>(null);
  const answer = useChartAnswer(ref);
  if (!answer) return <section ref={ref} class="chart" />;
  const all = answer.outcome.findings;
  const cautions = all.filter(({ id }) => id.startsWith('caution-'));
  const findings = all.filter((finding) => !cautions.includes(finding));
  // Good news is not buried under notes.
  const good = findings.filter(({ severity }) => severity === 'good');
  const first = findings.filter(({ severity }) => severity !== 'good').slice(0, SHOWN);
  const shown = [...first, ...good.slice(0, 2)];
  const rest = findings.filter((finding) => !shown.includes(finding));
  return (
    <section ref={ref} class="chart findings" id="findings" aria-labelledby="findings-title">
      <div class="chart-head">
        <h2 id="findings-title">What this year says</h2>
      </div>
      <FindingList findings={shown} />
      {rest.length > 0 && (
        <details>
          <summary>{rest.length} more</summary>
          <FindingList findings={rest} />
        </details>
      )}
      <details>
        <summary>{cautionsSummary(cautions)}</summary>
        <FindingList findings={cautions} />
      </details>
    </section>
  );
}

function cautionsSummary(cautions: readonly Finding[]): string {
  const serious = cautions.filter(({ severity }) => severity === 'danger').length;
  const ofThem = serious === 0 ? '' : `, ${serious} of them serious`;
  return `Before you build: ${cautions.length} cautions for this design${ofThem}`;
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
