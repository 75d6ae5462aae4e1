// Stands beside every result of a design that is in a hotter year, so that nobody takes it for the typical one.

import type { Design } from '../../design/design.ts';
import { hotterName } from '../../design/hotter.ts';
import { hotterWords } from '../../findings/hotter-words.ts';
import { wordingOf } from '../../findings/wording.ts';
import { useWorkspace } from '../state/session-context.ts';

export function HotterMark({ design }: { design: Design }) {
  const system = useWorkspace().units.value;
  if (design.hotter === undefined) return null;
  return (
    <p class="hotter-mark">
      In a {hotterName(design.hotter)} year: {hotterWords(design.hotter, wordingOf(system))}
    </p>
  );
}
