// Ask: one of the questions a client asks, of the design on screen, run on every core while the page stays free. The
// closing sentence comes first, then curves, map and tables; a proposal is one click, and one undo.

import { useRef, useState } from 'preact/hooks';
import type { Design } from '../../design/design.ts';
import type { Answer, Table } from '../../questions/question.ts';
import { ScrollTable } from '../charts/ScrollTable.tsx';
import { HotterMark } from '../climate/HotterMark.tsx';
import { useSession } from '../state/session-context.ts';
import { AnswerChart } from './AnswerChart.tsx';
import { AnswerMap } from './AnswerMap.tsx';
import type * as Engine from './question-engine.ts';

/** A partial picture at most this often [ms]; making one of many runs takes a while. */
const PICTURE_MS = 400;
/** Longer tables stand folded. */
const MOST_ROWS_OPEN = 12;

interface Asked {
  readonly design: Design;
  readonly answer: Answer | null;
  readonly done: number;
  readonly wanted: number;
  readonly running: boolean;
  readonly fault: string | null;
}

export function AskPanel() {
  const { workspace, told } = useSession();
  const [engine, setEngine] = useState<typeof Engine | null>(null);
  const [isOutOfReach, setOutOfReach] = useState(false);
  const [questionId, setQuestionId] = useState('how-much-glass');
  const [criterionId, setCriterionId] = useState('');
  const [asked, setAsked] = useState<Asked | null>(null);
  const stop = useRef<AbortController | null>(null);
  const climate = workspace.climate.value;
  const design = workspace.design.value;

  const open = (event: Event) => {
    if (!(event.currentTarget as HTMLDetailsElement).open || engine) return;
    setOutOfReach(false);
    import('./question-engine.ts').then(
      (loaded) => setEngine(loaded),
      () => setOutOfReach(true),
    );
  };

  const ask = async () => {
    if (!engine || climate.state !== 'ready') return;
    stop.current?.abort();
    const controller = new AbortController();
    stop.current = controller;
    const of = design;
    let lastPicture = performance.now();
    const show = (change: Partial<Asked>) =>
      setAsked((now) => ({
        answer: null,
        done: 0,
        wanted: 0,
        running: true,
        fault: null,
        ...now,
        ...change,
        design: of,
      }));
    setAsked({ design: of, answer: null, done: 0, wanted: 0, running: true, fault: null });
    try {
      const answer = await engine.askOnPage({
        questionId,
        criterionId,
        design: of,
        climateKey: climate.key,
        year: climate.typical,
        signal: controller.signal,
        onProgress: ({ done, wanted, soFar }) => {
          if (controller.signal.aborted || performance.now() - lastPicture < PICTURE_MS) return;
          lastPicture = performance.now();
          show({ done, wanted, answer: soFar() });
        },
      });
      if (controller.signal.aborted) return;
      show({ answer, done: answer.runs.length, wanted: answer.runs.length, running: false });
      const others = told.value.filter(
        (entry) => entry.design !== of || entry.answer.question !== answer.question,
      );
      told.value = [...others, { design: of, answer }];
    } catch (reason) {
      if (controller.signal.aborted) return;
      show({ running: false, fault: reason instanceof Error ? reason.message : String(reason) });
    }
  };
  const cancel = () => {
    stop.current?.abort();
    setAsked(null);
  };
  const question = engine?.QUESTIONS.find(({ id }) => id === questionId);

  return (
    <details class="ask-panel" onToggle={open}>
      <summary>
        <h2>Ask a question</h2>
      </summary>
      {!engine && (
        <p role="status">
          {isOutOfReach
            ? 'The questions could not be fetched. Is the network gone? Fold this panel and open it again, or reload the page; the sheet is kept.'
            : 'Fetching the questions…'}
        </p>
      )}
      {engine && (
        <form
          class="ask-form"
          onSubmit={(event) => {
            event.preventDefault();
            void ask();
          }}
        >
          <label>
            Question
            <select
              data-ask="question"
              value={questionId}
              onChange={(event) => setQuestionId(event.currentTarget.value)}
            >
              {engine.QUESTIONS.map(({ id, title }) => (
                <option key={id} value={id}>
                  {title}
                </option>
              ))}
            </select>
          </label>
          <label>
            Comfortable means
            <select value={criterionId} onChange={(event) => setCriterionId(event.currentTarget.value)}>
              {engine.CRITERIA.map(({ id, name }, i) => (
                <option key={id} value={i === 0 ? '' : id}>
                  {name}
                </option>
              ))}
            </select>
          </label>
          <button type="submit" disabled={asked?.running === true || climate.state !== 'ready'}>
            Ask
          </button>
          {asked?.running && (
            <button type="button" onClick={cancel}>
              Stop
            </button>
          )}
          {question && <p class="ask-says">{question.asks}</p>}
        </form>
      )}
      {asked?.running && (
        <p class="ask-progress" role="status">
          <progress value={asked.done} max={Math.max(1, asked.wanted)} aria-label="Runs done" />{' '}
          {asked.wanted > 0 ? `${asked.done} of ${asked.wanted} years run` : 'Starting…'}
        </p>
      )}
      {asked?.fault && (
        <p class="ask-fault" role="alert">
          The question could not be answered: {asked.fault}
        </p>
      )}
      {engine && asked?.answer && (
        <AnswerView
          answer={asked.answer}
          design={asked.design}
          isOld={asked.design !== design}
          onPropose={(next) => workspace.replace(next)}
          onMove={(glassM2, massM2) => workspace.replace(engine.designAt(design, glassM2, massM2))}
        />
      )}
    </details>
  );
}

interface AnswerViewProps {
  readonly answer: Answer;
  readonly design: Design;
  readonly isOld: boolean;
  readonly onPropose: (design: Design) => void;
  readonly onMove: (glassM2: number, massM2: number) => void;
}

function AnswerView({ answer, design, isOld, onPropose, onMove }: AnswerViewProps) {
  const { proposal } = answer;
  return (
    <div class="ask-answer" data-answer={answer.complete ? 'whole' : 'part'}>
      <h3>{answer.title}</h3>
      <HotterMark design={design} />
      {isOld && <p class="ask-old">Asked of an earlier state of the design.</p>}
      {answer.finding && <p class="ask-finding">{answer.finding.text}</p>}
      {proposal && (
        <p>
          <button type="button" data-ask="proposal" onClick={() => onPropose(proposal.design)}>
            {proposal.text}
          </button>
        </p>
      )}
      {answer.map && <AnswerMap map={answer.map} onMove={onMove} />}
      {answer.charts
        .filter(({ curves }) => curves.some(({ points }) => points.length > 1))
        .map((chart) => (
          <AnswerChart key={chart.id} chart={chart} limitHours={answer.criterion.hours} />
        ))}
      {answer.tables.map((table) =>
        table.rows.length > MOST_ROWS_OPEN ? (
          <details key={table.id}>
            <summary>{table.title}</summary>
            <AnswerTable table={table} />
          </details>
        ) : (
          <AnswerTable key={table.id} table={table} />
        ),
      )}
      {answer.notes.length > 0 && (
        <ul class="ask-notes">
          {answer.notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      <p class="ask-source">
        Limit: {answer.criterion.name}. {answer.criterion.source}.
      </p>
    </div>
  );
}

function AnswerTable({ table }: { table: Table }) {
  return (
    <ScrollTable label={table.title}>
      <table>
        <caption>{table.title}</caption>
        <thead>
          <tr>
            {table.columns.map(({ label, unit }) => (
              <th key={label} scope="col">
                {label}
                {unit === '' ? '' : `, ${unit}`}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row) => (
            <tr key={row.join(' ')}>
              {row.map((cell, i) => (
                <td key={table.columns[i]!.label}>
                  {typeof cell === 'number' ? cell.toFixed(table.columns[i]!.digits) : (cell ?? '—')}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollTable>
  );
}
