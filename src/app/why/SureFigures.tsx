// The headline figures with how far each may lie from what is told: the house run as it may turn out, in the background
// once the design has come to rest, and given up when it moves again. Nothing runs while the hand is on it.

import type { ComponentChildren } from 'preact';
import type { Design } from '../../design/design.ts';
import { wordingOf } from '../../findings/wording.ts';
import { drawnOf, type HowSure, howSureSentences, type Ranged, rangeOf } from '../../questions/how-sure.ts';
import { unknownsRule } from '../../questions/what-nobody-knows.ts';
import { FigurePanel } from '../figures/FigurePanel.tsx';
import type { FigureRanges, HeadlineFigure } from '../figures/headline-figures.ts';
import { useWorkspace } from '../state/session-context.ts';
import { sureOf } from './pulled-levers.ts';
import { useRunAtRest } from './run-for.ts';

/** Nobody is at work on the design when nothing has moved for so long [ms]; what would help is asked for long before. */
const REST_MS = 3000;

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
  const { sure, of, isOld } = useHowSure();
  const words = wordingOf(system);
  const ranges: FigureRanges = new Map(
    sure === null
      ? []
      : (Object.keys(FIGURE_OF) as Ranged[]).map((key) => {
          const { least, most } = rangeOf(key, sure);
          return [FIGURE_OF[key], { least, most }] as const;
        }),
  );
  return (
    <FigurePanel {...props} ranges={ranges} rangesAreOld={isOld}>
      {sure !== null && of !== null && (
        <details class={`how-sure ${isOld ? 'is-old' : ''}`} data-how-sure={isOld ? 'old' : 'new'}>
          <summary>How sure are these?</summary>
          <ul>
            {howSureSentences(sure, words).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          <p>{unknownsRule(words, of, drawnOf(sure).length > 0)}</p>
        </details>
      )}
    </FigurePanel>
  );
}

/** The newest that was run, and whether it is of a design before; a house that cannot be run so keeps its figures without a range. */
function useHowSure(): {
  readonly sure: HowSure | null;
  readonly of: Design | null;
  readonly isOld: boolean;
} {
  const workspace = useWorkspace();
  const design = workspace.design.value;
  const climate = workspace.climate.value;
  const year = climate.state === 'ready' ? climate.typical : null;
  const newest = useRunAtRest([design, year], year !== null && !workspace.stale.value, REST_MS, (signal) =>
    sureOf(design, year!, signal),
  );
  return {
    sure: newest?.result ?? null,
    of: newest?.key[0] ?? null,
    isOld: !newest?.isCurrent,
  };
}
