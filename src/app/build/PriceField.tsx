// A price or a wage, typed: a draft that is taken when it is a number from 0 up, or nothing for none (state/number-draft.ts).

import { useId, useRef } from 'preact/hooks';
import { isPrice } from '../../quantities/prices.ts';
import { typedNumber } from '../parts/number-text.ts';
import { useNumberDraft } from '../state/use-number-draft.ts';

interface PriceFieldProps {
  readonly name: string;
  readonly label: string;
  /** of the unit */
  readonly sign: string;
  readonly value: number | null;
  readonly change: (value: number | null) => void;
  /** the label is for who does not see the row */
  readonly isQuiet?: boolean;
}

export function PriceField({ name, label, sign, value, change, isQuiet = false }: PriceFieldProps) {
  const id = useId();
  const before = useRef<{ readonly gesture: string; readonly value: number | null } | null>(null);
  const { text, refused, on } = useNumberDraft<{ readonly price: number | null }>(`price ${name}`, {
    read(typed) {
      if (typed.trim() === '') return { price: null };
      const price = typedNumber(typed);
      return isPrice(price) ? { price } : null;
    },
    take({ price }, gesture) {
      if (price === value) return;
      if (before.current?.gesture !== gesture) before.current = { gesture, value };
      change(price);
    },
    cancel(gesture) {
      if (before.current?.gesture === gesture) change(before.current.value);
      before.current = null;
    },
  });
  return (
    <span class={`price-field${refused ? ' is-wrong' : ''}`}>
      <label for={`${id}-field`} class={isQuiet ? 'visually-hidden' : undefined}>
        {label}
      </label>
      <span class="input-field">
        <input
          id={`${id}-field`}
          class="input-text"
          type="text"
          inputMode="decimal"
          autocomplete="off"
          data-price={name}
          placeholder={isQuiet ? 'price' : 'unpaid'}
          value={text ?? (value === null ? '' : String(value))}
          aria-invalid={refused}
          aria-describedby={refused ? `${id}-limits` : undefined}
          {...on}
        />
        <span class="input-unit" aria-hidden="true">
          {sign}
        </span>
      </span>
      {refused && (
        <span class="input-limits" id={`${id}-limits`}>
          A number from 0 up, or nothing
        </span>
      )}
    </span>
  );
}
