// Above the drawing: what this is and whose house is drawn, one sentence on how it does, and the changes that help most.
// The changes are run in the background once the design has come to rest, and given up when it moves again.

import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Design } from '../../design/design.ts';
import { wordingOf } from '../../findings/wording.ts';
import type { OutcomeFigures } from '../../outcomes/outcome.ts';
import { type Cost, hasPrices, type PriceList } from '../../quantities/prices.ts';
import { figuresOf } from '../../questions/figures.ts';
import { USUAL_WEIGHTS, WEIGHT_KEYS, type Weights } from '../../questions/weights.ts';
import { type Help, hasNothingToWin, helpOfPlain, isCalm } from '../../questions/what-helps.ts';
import { type Act, actsOf, actTitle, asksInWords } from '../../report/acts.ts';
import { verdictOf } from '../../report/verdict.ts';
import { browserStore } from '../keeping/browser-store.ts';
import { exampleOf } from '../state/example-place.ts';
import { pricesChoice } from '../state/prices-choice.ts';
import { useSession, useWorkspace } from '../state/session-context.ts';
import { weightsChoice } from '../state/weights-choice.ts';
import { helpOf } from './pulled-levers.ts';
import { useRunAtRest } from './run-for.ts';
import { WeightsBox } from './WeightsBox.tsx';

const store = browserStore(() => localStorage);
const FOLD_KEY = 'daystone-acts';
const FOLDED = 'folded';

/** The hand has left the design when nothing has moved for so long [ms]. */
const REST_MS = 250;

const TRY = ['Try it', 'Try both', 'Try all three'] as const;
const TRIED = ['Tried', 'Tried with the one before it', 'Tried with the two before it'] as const;

interface VerdictPanelProps {
  readonly onOwn: () => void;
  readonly onAsk: () => void;
}

export function VerdictPanel({ onOwn, onAsk }: VerdictPanelProps) {
  const workspace = useWorkspace();
  const design = workspace.design.value;
  const shown = workspace.shown.value;
  const stale = workspace.stale.value;
  const words = wordingOf(workspace.units.value);
  const verdict = shown ? verdictOf(shown.outcome, shown.design, words) : '';
  const isSample = exampleOf(design) !== undefined;
  return (
    <section
      class="verdict"
      aria-labelledby="verdict-title"
      aria-busy={stale}
      data-made={shown?.run === null ? 'with the page' : undefined}
    >
      <p class="verdict-what">
        Daystone computes, hour by hour, a year in a house that the sun heats: how hot, how cold, how damp,
        and how much heat it takes.
      </p>
      {/* Always there, so that the drawing below does not move when the first number of a sample is changed. */}
      <p class="verdict-sample">
        {isSample ? 'This is a made-up sample house, not yours.' : 'This house is as you have drawn it.'}{' '}
        <button type="button" class="is-main" data-act="own" onClick={onOwn}>
          Start with your own
        </button>{' '}
        <button type="button" data-act="ask" onClick={onAsk}>
          Ask a question
        </button>
      </p>
      <h2 id="verdict-title" class="visually-hidden">
        How it does, and what helps most
      </h2>
      <p class="verdict-line">{verdict || 'Computing the year…'}</p>
      <ActsFold />
      <LiveVerdict text={stale ? '' : verdict} />
    </section>
  );
}

/** Folded away nothing is run for it, and so it stays from visit to visit. */
function ActsFold() {
  const [open, setOpen] = useState(() => store.getItem(FOLD_KEY) !== FOLDED);
  return (
    <details
      class="acts-fold"
      open={open}
      onToggle={({ currentTarget }) => {
        if (currentTarget.open === open) return;
        setOpen(currentTarget.open);
        try {
          store.setItem(FOLD_KEY, currentTarget.open ? 'open' : FOLDED);
        } catch {
          // A browser that keeps nothing asks again next time.
        }
      }}
    >
      <summary>What helps most</summary>
      {open && <ActsBox />}
    </details>
  );
}

/** Keeps its height while the changes are run anew, so that the drawing below does not move under the hand that drags it. */
function ActsBox() {
  const { help, isMade } = useHelp();
  const box = useRef<HTMLDivElement>(null);
  const height = useRef<number | null>(null);
  useLayoutEffect(() => {
    if (help !== null) height.current = box.current!.getBoundingClientRect().height;
  });
  const kept = help !== null || height.current === null ? undefined : `${height.current}px`;
  return (
    <div ref={box} class={help === null ? 'acts-box is-waiting' : 'acts-box'} style={{ minHeight: kept }}>
      <Acts help={help} isMade={isMade} />
      <WeightsBox />
    </div>
  );
}

/** The changes to be made; each is drawn as a ghost while it is pointed at or has the focus. */
function Acts({ help, isMade }: { help: Help | 'failed' | null; isMade: boolean }) {
  const { workspace, offer } = useSession();
  const design = workspace.design.value;
  const prices = pricesChoice.list.value;
  const costs = useCosts(help, design, prices);
  // What is looked at goes with the list it stands in.
  useEffect(() => {
    workspace.preview.value = null;
  }, [help, design]);
  if (help === null) return <p class="acts-wait">Trying what would help most…</p>;
  if (help === 'failed') return <p class="acts-wait">What would help could not be computed.</p>;
  const acts = actsOf(help, wordingOf(workspace.units.value));
  if (acts.length === 0)
    return (
      <p class="acts-wait">
        {isCalm(help.drawn)
          ? 'Neither heat nor damp is worth a change.'
          : 'No single change of those tried helps much: change several together.'}
      </p>
    );
  const look = (act: Act) => {
    workspace.preview.value = { words: act.words, design: act.apply(design), figures: act.figures };
  };
  const lookAway = () => {
    workspace.preview.value = null;
  };
  const tryAct = (act: Act) => {
    lookAway();
    const tried = act.apply(design);
    workspace.replace(tried);
    offer(`${TRIED[act.onTopOf ?? 0]}: ${act.words}.`, 'Take it back', () => {
      if (workspace.design.value === tried) workspace.history.undo();
      else workspace.replace(design);
    });
  };
  return (
    <ol class="acts" data-acts={acts.length} data-made={isMade ? 'with the page' : undefined}>
      {acts.map((act, i) => (
        <li
          key={act.id}
          data-act-id={act.id}
          // A finger that taps has not looked first; it goes by "Take it back".
          onPointerEnter={({ pointerType }) => pointerType === 'mouse' && look(act)}
          onPointerLeave={lookAway}
          onFocusIn={() => look(act)}
          onFocusOut={lookAway}
        >
          <p>
            <b>{actTitle(act, i)}</b>{' '}
            <span class="acts-asks">{asksInWords(act, costs?.[i] ?? null, prices)}</span>{' '}
            <span class="acts-brings">{act.brings}</span>
          </p>
          <button type="button" data-act="try" onClick={() => tryAct(act)}>
            {TRY[act.onTopOf ?? 0]}
          </button>
        </li>
      ))}
    </ol>
  );
}

/** What each act costs, where prices stand; null while that is reckoned, and without prices. */
function useCosts(
  help: Help | 'failed' | null,
  design: Design,
  prices: PriceList,
): readonly (Cost | null)[] | null {
  const isAsked = help !== null && help !== 'failed' && hasPrices(prices);
  const newest = useRunAtRest([help, design, prices], isAsked, 0, async () => {
    const { actCost } = await import('../../report/act-cost.ts');
    const acts = actsOf(help as Help, wordingOf('metric'));
    return acts.map((_, i) => actCost(acts, i, design, prices));
  });
  // Days stand there without it.
  return newest?.isCurrent ? newest.result : null;
}

/** What helps the design on screen, at first as made with the page; null while it is run or waits for the hand to rest. */
function useHelp(): { readonly help: Help | 'failed' | null; readonly isMade: boolean } {
  const workspace = useWorkspace();
  const design = workspace.design.value;
  const climate = workspace.climate.value;
  const answer = workspace.answer.value;
  const weights = weightsChoice.value;
  const year = climate.state === 'ready' ? climate.typical : null;
  const outcome = answer?.job.design === design ? answer.outcome : null;
  const made = useMemo(
    () => workspace.madeHelp.value && helpOfPlain(design, workspace.madeHelp.value),
    [workspace.madeHelp.value, design],
  );
  const calm = useMemo(() => (outcome === null ? null : calmHelp(outcome, weights)), [outcome, weights]);
  const isReady = outcome !== null && calm === null && year !== null && !workspace.stale.value;
  const newest = useRunAtRest([design, year, weights], isReady, REST_MS, (signal) =>
    helpOf(design, year!, outcome!, signal),
  );
  if (calm !== null) return { help: calm, isMade: false };
  if (newest?.isCurrent) return { help: newest.result ?? 'failed', isMade: false };
  // What was made with the page was weighed as usual.
  const isMade = made !== null && WEIGHT_KEYS.every((key) => weights[key] === USUAL_WEIGHTS[key]);
  return { help: isMade ? made : null, isMade };
}

/** That nothing is worth a change, where that is plain without a run. */
function calmHelp(outcome: OutcomeFigures, weights: Weights): Help | null {
  const drawn = figuresOf(outcome);
  return hasNothingToWin(drawn, weights) ? { drawn, pulled: [], steps: [] } : null;
}

/** The newest verdict, told once it stands; what is seen changes too often to be read out. */
function LiveVerdict({ text }: { text: string }) {
  const [told, setTold] = useState('');
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => {
    if (text === '') return;
    timer.current = setTimeout(() => setTold(text), REST_MS);
    return () => clearTimeout(timer.current);
  }, [text]);
  return (
    <p class="visually-hidden" role="status" data-live="verdict">
      {told}
    </p>
  );
}
