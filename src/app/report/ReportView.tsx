// The report: what is typed for it, which versions stand beside the design, and the paper as it will be printed. The
// browser prints it, to paper or to a PDF file.

import '../style/report.css';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { NumberedAnswer } from '../../../workers/bridge.ts';
import { toldAnswer } from '../../report/report.ts';
import { browserStore } from '../keeping/browser-store.ts';
import { useFocusedHeading } from '../parts/focused-heading.ts';
import { pricesChoice } from '../state/prices-choice.ts';
import { useSession } from '../state/session-context.ts';
import { helpOf, sureOf } from '../why/pulled-levers.ts';
import { useRunFor } from '../why/run-for.ts';
import { usePageFoot } from './page-foot.ts';
import { ReportFields } from './ReportFields.tsx';
import { ReportPaper } from './ReportPaper.tsx';
import { MOST_BESIDE, type NamedAnswer, reportContent } from './report-content.ts';
import { keptReportWords } from './report-words.ts';

const words = keptReportWords(browserStore(() => localStorage));

export function ReportView() {
  const { workspace, toldNow, told } = useSession();
  const heading = useFocusedHeading();
  const answer = workspace.answer.value;
  const climate = workspace.climate.value;
  const system = workspace.units.value;
  const others = useOthers(answer);
  const design = workspace.design.value;
  const help = useRunFor(
    workspace.stale.value ? null : answer,
    climate.state === 'ready' ? climate.typical : null,
    helpOf,
  );
  const sure = useRunFor(
    workspace.stale.value ? null : answer,
    climate.state === 'ready' ? climate.typical : null,
    sureOf,
  );
  const prices = pricesChoice.list.value;
  const isReady =
    answer !== null && !workspace.stale.value && answer.job.units === system && climate.state === 'ready';
  const report = useMemo(
    () =>
      isReady && others !== null
        ? reportContent({
            words: words.value,
            answer,
            climate: climate.year,
            others,
            answers: toldNow().flatMap(({ title, finding, sure }) =>
              finding ? [toldAnswer(title, finding, sure)] : [],
            ),
            prices,
            help: typeof help === 'string' ? null : help,
            sure: typeof sure === 'string' ? null : sure,
            units: system,
            today: new Date(),
          })
        : null,
    [isReady, answer, others, help, sure, words.value, told.value, design, system, prices],
  );
  useEffect(() => {
    const before = document.title;
    // Browsers offer the title as the name of the PDF file.
    document.title = `${design.name}, report`;
    return () => {
      document.title = before;
    };
  }, [design.name]);

  usePageFoot(report?.foot ?? null);
  return (
    <main class="report-view" aria-busy={report === null || help === 'running' || sure === 'running'}>
      <div class="report-tools">
        <div class="report-bar">
          <h1 ref={heading} tabIndex={-1}>
            The report
          </h1>
          <a class="button" href="#trust">
            How far to trust it
          </a>
          <a class="button" href="#sheet">
            Back to the sheet
          </a>
          <button
            type="button"
            disabled={report === null || help === 'running'}
            onClick={() => window.print()}
          >
            Print, or save as PDF
          </button>
        </div>
        <ReportFields words={words} />
        {help === 'running' && <p role="status">Running the changes one by one, to see what helps most…</p>}
        {help === 'failed' && <p role="alert">The changes could not be run; the report does without them.</p>}
        {workspace.runFault.value !== null && (
          <p class="is-trouble" role="alert">
            This year could not be computed: {workspace.runFault.value}
          </p>
        )}
        {climate.state === 'failed' && (
          <p class="is-trouble" role="alert">
            {climate.message}
          </p>
        )}
      </div>
      {report && answer && climate.state === 'ready' ? (
        <ReportPaper report={report} answer={answer} climate={climate.year} system={system} />
      ) : (
        <p class="late" role="status">
          Computing the year…
        </p>
      )}
    </main>
  );
}

/** Years of the versions ticked for comparison, in the weather of the design; null until all are there. */
function useOthers(answer: NumberedAnswer | null): readonly NamedAnswer[] | null {
  const session = useSession();
  const chosen = session.list.comparedVersions.value
    .filter(({ design }) => design !== session.workspace.design.value)
    .slice(0, MOST_BESIDE);
  const climate = answer?.job.climateKey ?? null;
  const key = JSON.stringify([climate, chosen.map(({ id, name }) => [id, name])]);
  const [found, setFound] = useState<{ key: string; others: readonly NamedAnswer[] } | null>(null);
  useEffect(() => {
    let current = true;
    if (climate === null) return;
    const running = chosen.map(async ({ name, design }) => {
      const answerOf = await session.answerOf(design.climate === climate ? design : { ...design, climate });
      return answerOf === null ? [] : [{ name, answer: answerOf }];
    });
    void Promise.all(running).then((others) => current && setFound({ key, others: others.flat() }));
    return () => {
      current = false;
    };
  }, [key]);
  return found?.key === key ? found.others : null;
}
