// A number a cover may have of its own: typed, or left empty for the usual one. It takes effect as soon as it is a number
// within its limits.

import { useId, useState } from 'preact/hooks';
import type { CoverLimit } from '../../design/cover-rules.ts';
import { type ShownQuantity, toShown, toSi, unitOf } from '../parts/display-unit.ts';
import { numberText, quantityText, typedNumber } from '../parts/number-text.ts';
import { useWorkspace } from '../state/session-context.ts';

export interface CoverNumberProps {
  readonly name: string;
  readonly limit: CoverLimit;
  readonly quantity: ShownQuantity;
  /** SI; undefined for the usual */
  readonly value: number | undefined;
  readonly change: (value: number | undefined) => void;
}

export function CoverNumber({ name, limit, quantity, value, change }: CoverNumberProps) {
  const system = useWorkspace().units.value;
  const [typing, setTyping] = useState<string | null>(null);
  const id = useId();
  const { sign, digits } = unitOf(quantity, system);
  const siOf = (text: string) => {
    const typed = typedNumber(text);
    return typed === null ? null : Number(toSi(typed, quantity, system).toFixed(4));
  };
  const isSound = (si: number | null): si is number => si !== null && si >= limit.min && si <= limit.max;
  const wrong = typing !== null && typing.trim() !== '' && !isSound(siOf(typing));
  const limits = `${quantityText(limit.min, quantity, system)} to ${quantityText(limit.max, quantity, system)}, or nothing for the usual`;
  const shown = value === undefined ? '' : numberText(toShown(value, quantity, system), digits);
  const onType = (text: string) => {
    setTyping(text);
    const si = siOf(text);
    if (text.trim() === '' && value !== undefined) change(undefined);
    else if (isSound(si) && si !== value) change(si);
  };
  return (
    <div class={`input${wrong ? ' is-wrong' : ''}`}>
      <label class="input-label" for={`${id}-field`}>
        {limit.label}
      </label>
      <span class="input-field">
        <input
          id={`${id}-field`}
          class="input-text"
          type="text"
          inputMode="decimal"
          autocomplete="off"
          data-cover-field={name}
          placeholder="usual"
          value={typing ?? shown}
          aria-invalid={wrong}
          aria-describedby={`${id}-limits`}
          onInput={(event) => onType(event.currentTarget.value)}
          onBlur={() => setTyping(null)}
        />
        <span class="input-unit" aria-hidden="true">
          {sign}
        </span>
      </span>
      <span class="input-limits" id={`${id}-limits`}>
        {limits}
      </span>
    </div>
  );
}
