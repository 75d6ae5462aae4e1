// Ask: one of the questions a client asks, of the design on screen, run on every core while the page stays free. The
// closing sentence comes first, then curves, map and tables; a proposal is one click, and one undo.

import { signal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Answer } from '../../questions/question.ts';
import { messageOf } from '../parts/message-of.ts';
import { type AskedOf, isAskedOf } from '../state/asked-of.ts';
import { useSession } from '../state/session-context.ts';
import { AnswerView } from './AnswerView.tsx';
import type * as Engine from './question-engine.ts';

/** A partial picture at most this often [ms]; making one of many runs takes a while. */
const PICTURE_MS = 400;
/** The first runs make small pictures, and are waited for: these come quicker. */
const EARLY_RUNS = 12;
const EARLY_PICTURE_MS = 80;

interface Asked extends AskedOf {
  /** of the runs that are in, in the units of the asking */
  readonly soFar: Answer | null;
  /** the whole answer in any units; null until all runs are in */
  readonly answerIn: Engine.TellAnswer | null;
  readonly done: number;
  readonly wanted: number;
  readonly running: boolean;
  readonly fault: string | null;
}

const ID = 'ask';

/** The question chosen; null for the one that suits the house. */
const chosen = signal<string | null>(null);

/** Unfolds the questions and goes there, to one of them where it is named. */
export function openQuestions(question?: string): void {
  if (question !== undefined) chosen.value = question;
  const panel = document.getElementById(ID);
  if (!(panel instanceof HTMLDetailsElement)) return;
  panel.open = true;
  panel.querySelector('summary')?.focus({ preventScroll: true });
  panel.scrollIntoView({ block: 'start' });
}

export function AskPanel() {
  const { workspace, told } = useSession();
  const [engine, setEngine] = useState<typeof Engine | null>(null);
  const [isOutOfReach, setOutOfReach] = useState(false);
  const [asked, setAsked] = useState<Asked | null>(null);
  const stop = useRef<AbortController | null>(null);
  const climate = workspace.climate.value;
  const system = workspace.units.value;
  const design = workspace.design.value;
  const questionId = chosen.value ?? (design.rooms ? 'which-room' : 'how-much-glass');

  // Workers rest after a while, so a hand on the form wakes them again.
  const warm = () => {
    if (engine && climate.state === 'ready') engine.warmRunner(design, climate.key, climate.typical);
  };
  useEffect(warm, [engine, climate.state === 'ready' ? climate.typical : null]);

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
    const { typical } = climate;
    let lastPicture = 0;
    const fresh: Asked = {
      design: of,
      typical,
      soFar: null,
      answerIn: null,
      done: 0,
      wanted: 0,
      running: true,
      fault: null,
    };
    const show = (change: Partial<Asked>) => setAsked((now) => ({ ...(now ?? fresh), ...change }));
    setAsked(fresh);
    try {
      const answerIn = await engine.askOnPage({
        questionId,
        design: of,
        climateKey: climate.key,
        year: typical,
        system,
        signal: controller.signal,
        onProgress: ({ done, wanted, soFar }) => {
          const pause = done <= EARLY_RUNS ? EARLY_PICTURE_MS : PICTURE_MS;
          if (controller.signal.aborted || performance.now() - lastPicture < pause) return;
          lastPicture = performance.now();
          show({ done, wanted, soFar: soFar() });
        },
      });
      if (controller.signal.aborted) return;
      show({ answerIn, running: false });
      const others = told.value.filter(
        (entry) => entry.design !== of || entry.typical !== typical || entry.question !== questionId,
      );
      told.value = [...others, { question: questionId, design: of, typical, answerIn }];
    } catch (reason) {
      if (controller.signal.aborted) return;
      show({ running: false, fault: messageOf(reason) });
    }
  };
  const cancel = () => {
    stop.current?.abort();
    setAsked(null);
  };
  const answer = asked?.answerIn ? asked.answerIn(system) : (asked?.soFar ?? null);
  const question = engine?.QUESTIONS.find(({ id }) => id === questionId);

  return (
    <details class="ask-panel" id={ID} onToggle={open}>
      <summary>
        <h2>Ask a question</h2>
        <small>How much glass, upright or leaning, how much mass, what matters most…</small>
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
          onFocusIn={warm}
          onPointerEnter={warm}
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
              onChange={(event) => {
                chosen.value = event.currentTarget.value;
              }}
            >
              {engine.QUESTIONS.map(({ id, title }) => (
                <option key={id} value={id}>
                  {title}
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
          {climate.state === 'ready' && (
            <p class="ask-says">
              Comfortable means{' '}
              {engine.limitInWords(engine.criterionOf(design, climate.year.site.latitudeDeg), system)}: choose
              it under “Back-up heat and limits”.
            </p>
          )}
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
      {engine && asked && answer && (
        <AnswerView
          answer={answer}
          design={asked.design}
          limit={engine.limitInWords(answer.criterion, system)}
          system={system}
          drawn={engine.placeOnMap(design)}
          isOld={!isAskedOf(asked, design, climate)}
          onPropose={(next) => workspace.replace(next)}
          onMove={(glassM2, massM2) => workspace.replace(engine.designAt(design, glassM2, massM2))}
        />
      )}
    </details>
  );
}
