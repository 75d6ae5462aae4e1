// A number of the design: its name, a field to type in with the unit behind, a slider under it. A typed number is a
// draft (state/number-draft.ts); one that cannot be taken stays in the field with the limit beside it, and so does what
// was asked for and does not fit the house as it stands.

import { useEffect, useId, useRef } from 'preact/hooks';
import { isOnTape, toShown, toSi } from '../parts/display-unit.ts';
import { fieldText, quantityText, typedQuantity } from '../parts/number-text.ts';
import { useSameRecord } from '../state/same-record.ts';
import { useWorkspace } from '../state/session-context.ts';
import { useNumberDraft } from '../state/use-number-draft.ts';
import { FitChoice } from './FitChoice.tsx';
import { numberRange } from './number-range.ts';
import { TouchTrack } from './TouchTrack.tsx';
import { TypedField } from './TypedField.tsx';

export function NumberInput({ path }: { path: string }) {
  const workspace = useWorkspace();
  const system = workspace.units.value;
  const range = useSameRecord(() => numberRange(path, workspace.design.value, workspace.units.value));
  const id = useId();
  const dragCount = useRef(0);
  const shown = toShown(range.value, range.quantity, system);
  const say = (si: number) => quantityText(si, range.quantity, system, range.digits);
  const isTape = isOnTape(range.quantity, system);
  const standing = fieldText(range.value, range.quantity, system, fieldDigits(shown, range.digits));

  const siOf = (text: string) => {
    // What is typed as it stands there changes nothing, however many decimals it has behind.
    if (text.trim() === standing) return range.value;
    const typed = typedQuantity(text, range.quantity, system);
    return typed === null ? null : tidy(typed);
  };
  const within = (si: number) => Math.min(range.max, Math.max(range.min, si));
  // A limit is rounded where it is told, and whoever types it as told means it.
  const isAllowed = (si: number) =>
    (near(si, within(si)) || say(si) === say(within(si))) && (!range.whole || Number.isInteger(si));
  const read = (text: string) => {
    const si = siOf(text);
    return si === null || !isAllowed(si) ? null : within(si);
  };
  const put = (si: number, gesture: string) => {
    if (Math.abs(si - range.value) > 1e-9) workspace.set(path, si, gesture);
  };
  const stepBy = (by: number, gesture: string) => {
    const now = numberRange(path, workspace.design.value, system).value;
    const step = Math.sign(by) * (Math.abs(by) < 1 ? range.fineStep : Math.abs(by) * range.step);
    const next = Math.round((toShown(now, range.quantity, system) + step) * 1e6) / 1e6;
    workspace.set(path, within(tidy(toSi(next, range.quantity, system))), gesture);
  };
  const { draft, text, refused, on } = useNumberDraft(path, { read, take: put }, stepBy);
  // A number changed elsewhere goes before a draft that could not be taken.
  useEffect(() => draft.giveUp(), [range.value, draft]);

  const typed = text === null ? null : siOf(text);
  const wrong = text !== null && read(text) === null;
  const isHeld = wrong || draft.waits.value || near(typed, range.value);
  const slideTo = (moved: number, gesture: string) => {
    draft.giveUp();
    put(within(tidy(toSi(moved, range.quantity, system))), gesture);
  };
  // Where the slider stood when the finger landed.
  const touched = useRef({ gesture: '', from: 0 });
  const onTouchSlide = (share: number, gesture: string) => {
    if (touched.current.gesture !== gesture) touched.current = { gesture, from: shown };
    const { sliderMin: low, sliderMax: high, step } = range;
    const wanted = Math.min(high, Math.max(low, touched.current.from + share * (high - low)));
    slideTo(Math.round(wanted / step) * step, gesture);
  };
  const tap = (by: number) => {
    draft.leave();
    stepBy(by, `tap ${path}`);
  };

  return (
    <div class={`input${refused ? ' is-wrong' : ''}`}>
      <TypedField
        id={`${id}-field`}
        label={range.label}
        sign={isTape ? null : range.sign}
        field={{
          // The keys of a phone for decimals have neither minus nor marks for feet and inches.
          inputMode: range.min < 0 || isTape ? 'text' : 'decimal',
          'data-path': path,
          'data-draft': text === null ? undefined : '',
          value: text !== null && isHeld ? text : standing,
          'aria-invalid': wrong,
          'aria-describedby': `${id}-unit ${id}-limits`,
          ...on,
        }}
      >
        <span class="visually-hidden" id={`${id}-unit`}>
          {range.words}
        </span>
      </TypedField>
      <span class="input-steps">
        <button type="button" aria-label={`${range.label}: one step less`} onClick={() => tap(-1)}>
          −
        </button>
        <button type="button" aria-label={`${range.label}: one step more`} onClick={() => tap(1)}>
          +
        </button>
      </span>
      <div class="input-track">
        <input
          class="input-slider"
          type="range"
          aria-label={`${range.label}, slider`}
          aria-valuetext={say(range.value)}
          min={range.sliderMin}
          max={range.sliderMax}
          step={range.step}
          value={shown}
          data-slider={path}
          onInput={(event) =>
            slideTo(Number(event.currentTarget.value), `slide ${path} ${dragCount.current}`)
          }
          onChange={() => {
            dragCount.current += 1;
          }}
        />
        <TouchTrack
          name={path}
          onMove={onTouchSlide}
          onCancel={(gesture) => workspace.history.cancel(gesture)}
        />
      </div>
      <span class="input-limits" id={`${id}-limits`}>
        {refused
          ? `Give a ${range.whole ? 'whole ' : ''}number from ${say(range.min)} to ${say(range.max)}. ${say(range.value)} stands.`
          : `${say(range.min)} to ${say(range.max)}`}
        {range.mostBecause !== '' && ` ${range.mostBecause}`}
      </span>
      {refused && (
        <span class="input-choices">
          {typed !== null && !near(nearest(typed), range.value) && (
            <button
              type="button"
              data-take={path}
              onClick={() => {
                draft.restore();
                put(nearest(typed), '');
              }}
            >
              Take {say(nearest(typed))}
            </button>
          )}
          <button type="button" data-restore={path} onClick={() => draft.restore()}>
            Back to {say(range.value)}
          </button>
        </span>
      )}
      <FitChoice path={path} isNamed={false} />
    </div>
  );

  function nearest(si: number): number {
    const inside = within(si);
    return range.whole ? Math.round(inside) : inside;
  }
}

/** One decimal more than the step has, when the number needs it: 10 ft are 3.05 m. */
function fieldDigits(shown: number, digits: number): number {
  const isRound = Math.abs(shown - Number(shown.toFixed(digits))) < 1e-6;
  return isRound ? digits : Math.min(2, digits + 1);
}

/** Unit conversion leaves dust; a design keeps at most six decimals. */
function tidy(value: number): number {
  return Number(value.toFixed(6));
}

function near(one: number | null, other: number): boolean {
  return one !== null && Math.abs(one - other) < 1e-9;
}
