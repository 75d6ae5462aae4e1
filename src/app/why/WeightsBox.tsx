// What weighs how much where one change is called better than another: seen beside the changes, and moved there.

import { MOST_WEIGHT, WEIGHT_KEYS, WEIGHT_WORDS, type Weights } from '../../questions/weights.ts';
import { weightsChoice } from '../state/weights-choice.ts';

const TIMES = [0, 0.5, 1, 2, 4, MOST_WEIGHT];
const LABELS: Readonly<Record<keyof Weights, string>> = {
  hot: 'Hours too hot',
  damp: 'Hours too damp',
  cold: 'Hours too cold',
  mould: 'Mould',
  heat: 'Back-up heat',
  labour: 'Work',
};

export function WeightsBox() {
  const weights = weightsChoice.value;
  return (
    <details class="weights-box">
      <summary>What weighs how much</summary>
      <p>At their usual weight these weigh alike. Move one, and the changes are chosen anew.</p>
      {WEIGHT_KEYS.map((key) => (
        <label key={key}>
          {LABELS[key]}: {WEIGHT_WORDS[key]}{' '}
          <select
            data-weight={key}
            value={String(weights[key])}
            onChange={({ currentTarget }) => {
              weightsChoice.value = { ...weights, [key]: Number(currentTarget.value) };
            }}
          >
            {[...new Set([...TIMES, weights[key]])].map((times) => (
              <option key={times} value={String(times)}>
                {times === 0 ? 'left out' : times === 1 ? 'as usual' : `${times} times`}
              </option>
            ))}
          </select>
        </label>
      ))}
    </details>
  );
}
