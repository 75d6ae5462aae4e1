// The headline figures: number, unit, limit, verdict in words, and what changed since the last step. A click
// tells in place why the figure is what it is.

import { type ComponentChildren, Fragment } from 'preact';
import { HotterMark } from '../climate/HotterMark.tsx';
import { toShown, type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { changeText, numberText, quantityText } from '../parts/number-text.ts';
import { pricesChoice } from '../state/prices-choice.ts';
import { useWorkspace } from '../state/session-context.ts';
import type { FigureRanges, HeadlineFigure } from './headline-figures.ts';
import { headlineFigures, inRun } from './headline-figures.ts';

const ZONE_TITLES = {
  house: 'The rooms',
  whole: 'What it asks of people',
  sunspace: 'The sunspace',
} as const;

interface FigurePanelProps {
  readonly onOpen: (figure: HeadlineFigure) => void;
  /** id of the figure whose reasons are asked for; null for none */
  readonly asked: string | null;
  /** the reasons, which stand with that figure */
  readonly reasons: ComponentChildren;
  readonly ranges: FigureRanges;
  /** of a design before: kept in their place, so that nothing moves, and not shown */
  readonly rangesAreOld: boolean;
  /** under the figures */
  readonly children: ComponentChildren;
}

export function FigurePanel({ onOpen, asked, reasons, ranges, rangesAreOld, children }: FigurePanelProps) {
  const workspace = useWorkspace();
  const shown = workspace.shown.value;
  const system = workspace.units.value;
  if (!shown)
    return (
      <section class="figures" aria-label="Headline figures" aria-busy="true">
        <p class="figures-wait">Computing the year…</p>
      </section>
    );
  const figures = headlineFigures(shown.outcome, shown.design, system, pricesChoice.list.value);
  const previous = workspace.previous.value;
  const before = previous ? headlineFigures(previous, workspace.history.before.value!, system) : [];
  const preview = workspace.preview.value;
  const zones = (['house', 'whole', 'sunspace'] as const).filter((zone) =>
    figures.some((f) => f.zone === zone),
  );
  return (
    <section
      class="figures"
      aria-label="Headline figures"
      aria-busy={workspace.stale.value}
      data-run={shown.run?.number}
      data-took={shown.run?.tookMs.toFixed(1)}
      data-made={shown.run === null ? 'with the page' : undefined}
    >
      <p class="figures-old" aria-hidden="true">
        Of the design before; the new year is being computed.
      </p>
      <HotterMark design={shown.design} />
      {zones.map((zone) => (
        <div class="figure-zone" key={zone}>
          <h2>{ZONE_TITLES[zone]}</h2>
          <div class="figure-list">
            {figures
              .filter((figure) => figure.zone === zone)
              .map((figure) => (
                <Fragment key={figure.id}>
                  <Figure
                    figure={figure}
                    before={before.find(({ id }) => id === figure.id)?.value ?? null}
                    ghost={preview && inRun(figure.id, preview.figures)}
                    range={ranges.get(figure.id) ?? null}
                    rangeIsOld={rangesAreOld}
                    system={system}
                    onOpen={() => onOpen(figure)}
                  />
                  {asked === figure.id && <div class="figure-reasons">{reasons}</div>}
                </Fragment>
              ))}
          </div>
        </div>
      ))}
      {children}
    </section>
  );
}

interface FigureProps {
  readonly figure: HeadlineFigure;
  readonly before: number | null;
  /** with the change that is looked at; null for none */
  readonly ghost: number | null;
  readonly range: { readonly least: number; readonly most: number } | null;
  readonly rangeIsOld: boolean;
  readonly system: UnitSystem;
  readonly onOpen: () => void;
}

function Figure({ figure, before, ghost, range, rangeIsOld, system, onOpen }: FigureProps) {
  const { quantity, value, digits } = figure;
  const { sign } = unitOf(quantity, system);
  return (
    <button
      type="button"
      class={`figure is-${figure.verdict}`}
      data-figure={figure.id}
      data-value={value}
      onClick={onOpen}
    >
      <span class="figure-label">{figure.label}</span>
      <span class="figure-number">
        {numberText(toShown(value, quantity, system), digits)}
        {sign !== '' && <span class="figure-unit"> {sign}</span>}
      </span>
      <span class="figure-verdict">{figure.verdictWords}</span>
      {ghost === null ? (
        <Change figure={figure} before={before} system={system} />
      ) : (
        <span class="figure-ghost" data-ghost={ghost}>
          → {quantityText(ghost, quantity, system, digits)}
        </span>
      )}
      {range !== null && (
        <span class={`figure-range ${rangeIsOld ? 'is-old' : ''}`} data-range={figure.id}>
          may be {numberText(toShown(range.least, quantity, system), digits)} to{' '}
          {numberText(toShown(range.most, quantity, system), digits)}
        </span>
      )}
      {figure.limit !== '' && <span class="figure-limit">{figure.limit}</span>}
    </button>
  );
}

function Change({ figure, before, system }: Pick<FigureProps, 'figure' | 'before' | 'system'>) {
  const { value, quantity, digits, better } = figure;
  if (before === null) return null;
  const change = value - before;
  const nothing =
    numberText(toShown(value, quantity, system), digits) ===
    numberText(toShown(before, quantity, system), digits);
  if (nothing) return <span class="figure-change is-same">as before</span>;
  const improved = better === 'neither' ? null : better === 'less' ? change < 0 : change > 0;
  const words = improved === null ? '' : improved ? 'better' : 'worse';
  return (
    <span class={`figure-change is-${words || 'same'}`}>
      {changeText(change, quantity, system, digits)} {words}
      <span class="visually-hidden">, was {quantityText(before, quantity, system, digits)}</span>
    </span>
  );
}
