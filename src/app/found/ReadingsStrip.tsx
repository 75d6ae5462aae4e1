// What a column read, small: a line of hours with its holes left open. The numbers that matter stand beside it in words.

import type { LoggerColumn } from '../../loggers/logger-file.ts';
import type { HourGrid } from '../../weather/real/hourly-means.ts';
import { toShown, type UnitSystem } from '../parts/display-unit.ts';
import { numberText, quantityText } from '../parts/number-text.ts';

const WIDTH = 600;
const HEIGHT = 44;

interface StripProps {
  readonly column: Pick<LoggerColumn, 'header' | 'kind' | 'values'> & { readonly leftOut?: number };
  readonly grid: HourGrid;
  readonly system: UnitSystem;
}

export function ReadingsStrip({ column: { kind, values, leftOut = 0 }, system }: StripProps) {
  const known = values.filter((value) => !Number.isNaN(value));
  if (known.length === 0) return <p>Nothing of it can be used.</p>;
  const low = known.reduce((a, b) => Math.min(a, b));
  const high = known.reduce((a, b) => Math.max(a, b));
  const say = (value: number, digits = 1) =>
    kind === 'temperature' ? quantityText(value, 'temperature', system, digits) : `${numberText(value, 0)} %`;
  const first =
    kind === 'temperature'
      ? numberText(toShown(low, 'temperature', system), system === 'us' ? 0 : 1)
      : numberText(low, 0);
  const holes = values.length - known.length;
  return (
    <div class="found-strip">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} preserveAspectRatio="none" aria-hidden="true">
        {segments(values, low, high).map((points) => (
          <polyline key={points.slice(0, 24)} points={points} vector-effect="non-scaling-stroke" />
        ))}
      </svg>
      <small>
        {first} to {say(high, system === 'us' ? 0 : 1)}
        {holes > 0 && `; ${holes} of ${values.length} hours are holes`}
        {leftOut > 0 && `; ${leftOut} readings left out`}
      </small>
    </div>
  );
}

/** Stretches without a hole, as points. */
function segments(values: Float64Array, low: number, high: number): string[] {
  const found: string[][] = [];
  let open = false;
  values.forEach((value, hour) => {
    if (Number.isNaN(value)) {
      open = false;
      return;
    }
    if (!open) found.push([]);
    open = true;
    const x = (WIDTH * (hour + 0.5)) / values.length;
    const y = 3 + ((high - value) / Math.max(0.1, high - low)) * (HEIGHT - 6);
    found.at(-1)!.push(`${x.toFixed(1)},${y.toFixed(1)}`);
  });
  return found.map((points) => points.join(' '));
}
