// The design in a hotter year: by a choice with a name, or by four numbers of one's own. It changes the design, so it is
// one step of undo, and files, links and versions keep it.

import { useId } from 'preact/hooks';
import type { Hotter } from '../../design/design.ts';
import { HOTTER_LIMITS, type HotterLimit, hotterName, NO_CHANGE, withHotter } from '../../design/hotter.ts';
import { hotterWords } from '../../findings/hotter-words.ts';
import { wordingOf } from '../../findings/wording.ts';
import { useWorkspace } from '../state/session-context.ts';
import { SHIFTS, shiftOf } from './hotter-shifts.ts';
import { LimitedField } from './LimitedField.tsx';

const WAVE: Pick<Hotter, 'waveDays' | 'waveK'> = { waveDays: 10, waveK: 5 };

export function HotterChoice() {
  const workspace = useWorkspace();
  const words = wordingOf(workspace.units.value);
  const design = workspace.design.value;
  const hotter = design.hotter ?? NO_CHANGE;
  const shift = shiftOf(hotter);
  const id = useId();
  const set = (next: Hotter, gesture: string) => {
    const changed = withHotter(design, next);
    if (changed.hotter === undefined) workspace.replace(changed, [], gesture);
    else workspace.set('hotter', changed.hotter, gesture);
  };
  return (
    <section class="hotter-choice" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>A hotter or colder year</h3>
      <p>
        {design.hotter
          ? `The design stands in a ${hotterName(design.hotter)} year: ${hotterWords(design.hotter, words)}.`
          : 'The design stands in the typical year as it is. Try it in the years its owner will grow old in.'}
      </p>
      <div class="question-fields">
        <label>
          The year is
          <select
            data-hotter="shift"
            value={shift?.id ?? 'own'}
            onChange={(event) => {
              const chosen = SHIFTS.find((entry) => entry.id === event.currentTarget.value);
              if (chosen) set({ ...hotter, winterK: chosen.winterK, summerK: chosen.summerK }, '');
            }}
          >
            {SHIFTS.map((entry) => (
              <option key={entry.id} value={entry.id}>
                {entry.id === 'none' ? 'as it is' : hotterWords({ ...entry, waveDays: 10, waveK: 0 }, words)}
              </option>
            ))}
            {!shift && <option value="own">by numbers of one’s own</option>}
          </select>
        </label>
        <label class="check-field">
          <input
            type="checkbox"
            data-hotter="wave"
            checked={hotter.waveK > 0}
            onChange={(event) =>
              set(event.currentTarget.checked ? { ...hotter, ...WAVE } : { ...hotter, waveK: 0 }, '')
            }
          />{' '}
          a heat wave over its hottest spell
        </label>
      </div>
      <details>
        <summary>Numbers of one’s own</summary>
        <div class="question-fields">
          {HOTTER_LIMITS.map((limit) => (
            <LimitedField
              key={limit.key}
              name={limit.key}
              label={limit.label}
              quantity={quantityOf(limit)}
              value={hotter[limit.key]}
              min={limit.min}
              max={limit.max}
              whole={limit.whole ?? false}
              system={workspace.units.value}
              disabled={limit.key === 'waveDays' && hotter.waveK === 0}
              onChange={(value, gesture) => set({ ...hotter, [limit.key]: value }, gesture)}
            />
          ))}
        </div>
      </details>
      <p class="ask-notes">
        A trial, not a forecast for this site. In a lasting shift the relative humidity stays, in a heat wave
        the dew point; sun, wind and cloud stay as in the typical year.
      </p>
    </section>
  );
}

function quantityOf({ key }: HotterLimit) {
  return key === 'waveDays' ? ('count' as const) : ('temperatureStep' as const);
}
