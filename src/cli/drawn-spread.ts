// How far a figure hangs on the draw of a made year: the design in the year itself and in other draws of its normals.

import { runYear } from '../daystone.ts';
import type { Design } from '../design/design.ts';
import type { OutcomeFigures } from '../outcomes/outcome.ts';
import { figuresOf } from '../questions/figures.ts';
import { otherDraws } from '../weather/synthetic/other-draws.ts';
import type { TypicalYear } from '../weather/typical-year.ts';

export interface DrawnFigures {
  readonly seed: number;
  readonly heatingKWh: number;
  readonly tooHotHours: number;
  readonly humidHours: number;
}

/** The figures of every draw, the year's own first; none where the year was not made. */
export function drawnFigures(
  design: Design,
  year: TypicalYear,
  own: OutcomeFigures,
): readonly DrawnFigures[] {
  const { madeFrom } = year;
  if (madeFrom === undefined) return [];
  const seed = madeFrom.seed ?? 1;
  const others = otherDraws(year).map((draw) => runYear(design, draw, { lend: true }).figures);
  return [own, ...others].map((figures, i) => {
    const { heatingKWh, tooHotHours, humidHours } = figuresOf(figures);
    return { seed: seed + i, heatingKWh, tooHotHours, humidHours };
  });
}

/** The spread in a sentence; nothing where there is none. */
export function drawnSentences(drawn: readonly DrawnFigures[]): readonly string[] {
  if (drawn.length === 0) return [];
  const span = (of: (figures: DrawnFigures) => number) => {
    const values = drawn.map((figures) => Math.round(of(figures)));
    return `${Math.min(...values)} to ${Math.max(...values)}`;
  };
  return [
    `Days of a made year are drawn. Drawn ${drawn.length} times from the same normals, back-up heat is ${span((f) => f.heatingKWh)} kWh, hours too hot ${span((f) => f.tooHotHours)}, humid hours ${span((f) => f.humidHours)}.`,
  ];
}
