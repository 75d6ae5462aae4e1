// What stands with an input besides its field: what it means, the words the trade has for its numbers, and what is usual
// where the house has something else.

import { useComputed } from '@preact/signals';
import { valueAt } from '../../design/design-path.ts';
import { bedFloorM2, isBedTooLarge } from '../../design/numbers-that-fit.ts';
import { quantityText } from '../parts/number-text.ts';
import { useWorkspace } from '../state/session-context.ts';
import type { InputEntry } from './input-groups.ts';
import { INPUT_HELP, TRADE_WORDS } from './input-help.ts';
import { inputWords } from './input-words.ts';
import { isUsual, usualOf } from './unusual.ts';

/** Two values nobody would tell apart, as a share. */
const SAME = 0.02;

export function InputNotes({ entry }: { entry: InputEntry }) {
  const { path } = entry;
  const workspace = useWorkspace();
  const { design, units } = workspace;
  const usual = useComputed(() => {
    const like = usualOf(design.value);
    return isUsual(path, design.value, like) ? '' : inputWords(entry, like, units.value).value;
  }).value;
  const value = useComputed(() => valueAt(design.value, path)).value;
  const help = INPUT_HELP[path];
  const words = TRADE_WORDS[path];
  const bed = useComputed(() =>
    path === 'plants.bedM2' && isBedTooLarge(design.value)
      ? `The ${design.value.sunspace.join === 'none' ? 'house' : 'sunspace'} has ${quantityText(bedFloorM2(design.value), 'area', units.value)} of floor; the run plants all of it and no more.`
      : '',
  ).value;
  if (!help && !words && usual === '' && bed === '') return null;
  const { label } = inputWords(entry, design.peek(), units.peek());
  return (
    <>
      {help && (
        <details class="input-what">
          <summary aria-label={`What it means: ${label}`}>?</summary>
          <p>{help}</p>
        </details>
      )}
      {bed !== '' && (
        <p class="input-notice" data-note="plants.bedM2">
          {bed}
        </p>
      )}
      {(words || usual !== '') && (
        <div class="input-notes">
          {words && (
            <fieldset class="input-words">
              <legend class="visually-hidden">{label}, in words</legend>
              {words.map((word) => (
                <button
                  key={word.words}
                  type="button"
                  data-word={`${path} ${word.words}`}
                  aria-pressed={Math.abs(Number(value) - word.value) <= SAME * word.value}
                  onClick={() => workspace.set(path, word.value, '')}
                >
                  {word.words}
                </button>
              ))}
            </fieldset>
          )}
          {usual !== '' && <small class="input-usual">usual: {usual}</small>}
        </div>
      )}
    </>
  );
}
