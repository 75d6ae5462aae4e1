// A number of the design: its name, a field to type in with the unit behind, a slider under it. Typing takes effect
// as soon as the text is a number within limits; otherwise the limits are said beside it and nothing changes.

import { useId, useRef, useState } from 'preact/hooks';
import { toShown, toSi } from '../parts/display-unit.ts';
import { numberText, quantityText, typedNumber } from '../parts/number-text.ts';
import { useSameRecord } from '../state/same-record.ts';
import { useWorkspace } from '../state/session-context.ts';
import { numberRange } from './number-range.ts';

export function NumberInput({ path }: { path: string }) {
  const workspace = useWorkspace();
  const system = workspace.units.value;
  const range = useSameRecord(() => numberRange(path, workspace.design.value, workspace.units.value));
  const id = useId();
  const [typing, setTyping] = useState<string | null>(null);
  const dragCount = useRef(0);
  const shown = toShown(range.value, range.quantity, system);
  const limits = `${quantityText(range.min, range.quantity, system, range.digits)} to ${quantityText(range.max, range.quantity, system, range.digits)}`;

  const typed = typing === null ? null : typedNumber(typing);
  const typedSi = typed === null ? null : tidy(toSi(typed, range.quantity, system));
  const isAllowed = (si: number) =>
    si >= range.min - 1e-9 && si <= range.max + 1e-9 && (!range.whole || Number.isInteger(si));
  const wrong = typing !== null && (typedSi === null || !isAllowed(typedSi));

  // Text stays as typed while it is not yet a number, or while it is the number there is.
  const isHeld = wrong || typedSi === null || Math.abs(typedSi - range.value) < 1e-9;
  const fieldText = typing !== null && isHeld ? typing : fieldNumber(shown, range.digits);

  const onType = (text: string) => {
    setTyping(text);
    const number = typedNumber(text);
    if (number === null) return;
    const si = tidy(toSi(number, range.quantity, system));
    if (!isAllowed(si) || si === range.value) return;
    workspace.set(path, Math.min(range.max, Math.max(range.min, si)), `type ${path}`);
  };
  const onSlide = (text: string) => {
    setTyping(null);
    const si = tidy(toSi(Number(text), range.quantity, system));
    workspace.set(path, Math.min(range.max, Math.max(range.min, si)), `slide ${path} ${dragCount.current}`);
  };

  return (
    <div class={`input${wrong ? ' is-wrong' : ''}`}>
      <label class="input-label" for={`${id}-field`}>
        {range.label}
      </label>
      <span class="input-field">
        <input
          id={`${id}-field`}
          class="input-text"
          type="text"
          inputMode="decimal"
          autocomplete="off"
          data-path={path}
          value={fieldText}
          aria-invalid={wrong}
          aria-describedby={`${id}-unit ${id}-limits`}
          onInput={(event) => onType(event.currentTarget.value)}
          onBlur={() => setTyping(null)}
        />
        <span class="input-unit" aria-hidden="true">
          {range.sign}
        </span>
        <span class="visually-hidden" id={`${id}-unit`}>
          {range.words}
        </span>
      </span>
      <input
        class="input-slider"
        type="range"
        aria-label={`${range.label}, slider`}
        aria-valuetext={quantityText(range.value, range.quantity, system, range.digits)}
        min={range.sliderMin}
        max={range.sliderMax}
        step={range.step}
        value={shown}
        data-slider={path}
        onInput={(event) => onSlide(event.currentTarget.value)}
        onChange={() => {
          dragCount.current += 1;
        }}
      />
      <span class="input-limits" id={`${id}-limits`}>
        {wrong ? `Give a ${range.whole ? 'whole ' : ''}number from ${limits}` : limits}
      </span>
    </div>
  );
}

/** One decimal more than the step has, when the number needs it: 10 ft are 3.05 m. */
function fieldNumber(shown: number, digits: number): string {
  const isRound = Math.abs(shown - Number(shown.toFixed(digits))) < 1e-6;
  return numberText(shown, isRound ? digits : Math.min(2, digits + 1)).replaceAll(',', '');
}

/** Unit conversion leaves dust; a design keeps at most six decimals. */
function tidy(value: number): number {
  return Number(value.toFixed(6));
}
