// The headline figures with how far each may lie from what is told: the house run as it may turn out, in the background
// once the design has come to rest, and given up when it moves again. Nothing runs while the hand is on it. On a slow machine
// a person has it run only while they look at it, and so it stays from visit to visit.

import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Design } from '../../design/design.ts';
import { wordingOf } from '../../findings/wording.ts';
import { drawnOf, type HowSure, howSureSentences, type Ranged, rangeOf } from '../../questions/how-sure.ts';
import { unknownsRule } from '../../questions/what-nobody-knows.ts';
import { FigurePanel } from '../figures/FigurePanel.tsx';
import type { FigureRanges, HeadlineFigure } from '../figures/headline-figures.ts';
import { browserStore } from '../keeping/browser-store.ts';
import { useWorkspace } from '../state/session-context.ts';
import { sureOf } from './pulled-levers.ts';
import { useRunAtRest } from './run-for.ts';

const store = browserStore(() => localStorage);
const WHEN_KEY = 'daystone-ranges';
const WHEN_ASKED = 'when asked';

/** Nobody is at work on the design when nothing has moved for so long [ms]; what would help is asked for long before. */
const REST_MS = 3000;
/** As long where somebody waits for it [ms]. */
const ASKED_REST_MS = 400;

const FIGURE_OF: Readonly<Record<Ranged, string>> = {
  tooHotHours: 'house-overheated',
  humidHours: 'house-humid',
  heatingKWh: 'heating',
  coldestC: 'house-coldest',
};

interface SureFiguresProps {
  readonly onOpen: (figure: HeadlineFigure) => void;
  readonly asked: string | null;
  readonly reasons: ComponentChildren;
}

export function SureFigures(props: SureFiguresProps) {
  const system = useWorkspace().units.value;
  const [byItself, setByItself] = useState(() => store.getItem(WHEN_KEY) !== WHEN_ASKED);
  const [open, setOpen] = useState(false);
  const { sure, of, isOld } = useHowSure(byItself || open, byItself ? REST_MS : ASKED_REST_MS);
  const words = wordingOf(system);
  const ranges: FigureRanges = new Map(
    sure === null
      ? []
      : (Object.keys(FIGURE_OF) as Ranged[]).map((key) => {
          const { least, most } = rangeOf(key, sure);
          return [FIGURE_OF[key], { least, most }] as const;
        }),
  );
  const choose = (chosen: boolean) => {
    setByItself(chosen);
    try {
      store.setItem(WHEN_KEY, chosen ? 'by itself' : WHEN_ASKED);
    } catch {
      // It holds as long as the page is open.
    }
  };
  return (
    <FigurePanel {...props} ranges={ranges} rangesAreOld={isOld}>
      {(sure !== null || !byItself) && (
        <details
          class={`how-sure ${isOld && byItself ? 'is-old' : ''}`}
          data-how-sure={sure === null || isOld ? 'old' : 'new'}
          open={open}
          onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
        >
          <summary>How sure are these?</summary>
          {sure !== null && of !== null && (byItself || !isOld) ? (
            <>
              <ul>
                {howSureSentences(sure, words).map((sentence) => (
                  <li key={sentence}>{sentence}</li>
                ))}
              </ul>
              <p>{unknownsRule(words, of, drawnOf(sure).length > 0)}</p>
            </>
          ) : (
            <p>{isOld ? 'Running the house as it may turn out…' : 'That could not be computed.'}</p>
          )}
          <label class="check-field">
            <input
              type="checkbox"
              data-how-sure-when
              checked={byItself}
              onChange={({ currentTarget }) => choose(currentTarget.checked)}
            />{' '}
            Work this out by itself after every change; on a slow machine leave it until you look here
          </label>
        </details>
      )}
    </FigurePanel>
  );
}

/** The newest that was run, and whether it is of a design before; a house that cannot be run so keeps its figures without a range. */
function useHowSure(
  isWanted: boolean,
  restMs: number,
): {
  readonly sure: HowSure | null;
  readonly of: Design | null;
  readonly isOld: boolean;
} {
  const workspace = useWorkspace();
  const design = workspace.design.value;
  const climate = workspace.climate.value;
  const year = climate.state === 'ready' ? climate.typical : null;
  const isReady = isWanted && year !== null && !workspace.stale.value;
  const newest = useRunAtRest([design, year], isReady, restMs, (signal) => sureOf(design, year!, signal));
  return {
    sure: newest?.result ?? null,
    of: newest?.key[0] ?? null,
    isOld: !newest?.isCurrent,
  };
}
