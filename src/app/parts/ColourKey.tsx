// A key of colours: the bar, and the numbers that stand under it. A scale and its ticks in; not read aloud, for what it
// tells is told in numbers beside it.

import { type ColourScale, cssColour } from './colour-scale.ts';
import { type ShownQuantity, toShown, type UnitSystem } from './display-unit.ts';
import { numberText, quantityText } from './number-text.ts';

interface ColourKeyProps {
  readonly scale: ColourScale;
  /** values marked, from low to high */
  readonly ticks: readonly number[];
  readonly quantity: ShownQuantity;
  readonly digits: number;
  readonly system: UnitSystem;
}

const STEPS = 24;

export function ColourKey({ scale, ticks, quantity, digits, system }: ColourKeyProps) {
  const low = ticks[0]!;
  const high = ticks.at(-1)!;
  const share = (value: number) => ((value - low) / Math.max(1e-9, high - low)) * 100;
  const colours = Array.from(
    { length: STEPS + 1 },
    (_, i) => `${cssColour(low + ((high - low) * i) / STEPS, scale)} ${(i / STEPS) * 100}%`,
  );
  const lastDigits = digits === 1 && quantity === 'temperature' ? 0 : digits;
  return (
    <div class="legend" aria-hidden="true">
      <div class="legend-bar" style={{ background: `linear-gradient(to right, ${colours.join(', ')})` }} />
      {ticks.map((tick, i) => (
        <span key={tick} class="legend-tick" style={{ left: `${share(tick)}%` }}>
          {i === ticks.length - 1
            ? quantityText(tick, quantity, system, lastDigits)
            : numberText(toShown(tick, quantity, system), quantity === 'powerKW' ? 1 : 0)}
        </span>
      ))}
    </div>
  );
}
