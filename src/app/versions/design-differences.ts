// What differs between designs. In: two to four designs. Out: one row for every number or choice that is not the same
// in all of them, in the order of the input panel, with its value in each in words.

import type { Design, Hotter } from '../../design/design.ts';
import { valueAt } from '../../design/design-path.ts';
import { hotterName } from '../../design/hotter.ts';
import { coverWords } from '../../findings/cover-words.ts';
import { foundWords, UNKNOWN_WORDS } from '../../findings/found-words.ts';
import { sourceWords } from '../../findings/fuel-words.ts';
import { hotterWords } from '../../findings/hotter-words.ts';
import { wordingOf } from '../../findings/wording.ts';
import { roomsOf } from '../../report/inputs.ts';
import { ABSENT, choiceOf } from '../inputs/choice-list.ts';
import { INPUT_GROUPS } from '../inputs/input-groups.ts';
import { numberRange } from '../inputs/number-range.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';

export interface Difference {
  readonly path: string;
  readonly label: string;
  /** one a design; '–' where it has no meaning for that design */
  readonly values: readonly string[];
}

/** Rows that differ; climate first, then the inputs. */
export function designDifferences(
  designs: readonly Design[],
  placeOf: (climate: string) => string,
  system: UnitSystem,
): readonly Difference[] {
  const rows: Difference[] = [
    { path: 'climate', label: 'Place', values: designs.map(({ climate }) => placeOf(climate)) },
    { path: 'asFound', label: 'As found', values: designs.map((design) => foundText(design, system)) },
    { path: 'hotter', label: 'Year', values: designs.map(({ hotter }) => yearText(hotter, system)) },
  ];
  for (const { path, kind, when } of INPUT_GROUPS.flatMap((group) => group.entries)) {
    const label = kind === 'number' ? numberRange(path, designs[0]!, system).label : choiceOf(path).label;
    const values = designs.map((design) =>
      when && !when(design) ? '–' : valueText(path, kind, design, system),
    );
    rows.push({ path, label, values });
  }
  rows.push({
    path: 'heating.source',
    label: 'Back-up heat from',
    values: designs.map(({ heating }) => sourceWords(heating.source)),
  });
  rows.push({ path: 'covers', label: 'Shades and covers', values: designs.map(coversText) });
  rows.push(...roomRows(designs, system));
  return rows.filter(({ values }) => values.some((value) => value !== values[0]));
}

/** How they are divided: which rooms there are, then what stands between them and each room by its name. */
function roomRows(designs: readonly Design[], system: UnitSystem): readonly Difference[] {
  const told = designs.map(
    (design) => new Map(roomsOf(design, wordingOf(system)).flatMap(({ rows }) => rows)),
  );
  const labels = [...new Set(told.flatMap((rows) => [...rows.keys()]))];
  return [
    {
      path: 'rooms',
      label: 'Rooms',
      values: designs.map(({ rooms }) => rooms?.list.map(({ name }) => name).join(', ') ?? 'one room'),
    },
    ...labels.map((label) => ({
      path: `rooms: ${label}`,
      label,
      values: told.map((rows) => rows.get(label) ?? '–'),
    })),
  ];
}

function foundText({ asFound }: Design, system: UnitSystem): string {
  if (asFound === undefined) return 'as drawn';
  const all = asFound.unknowns.map(
    (found) => `${UNKNOWN_WORDS[found.id]} ${foundWords(found, wordingOf(system))}`,
  );
  return `from ${asFound.from} to ${asFound.until}: ${all.join('; ')}`;
}

function coversText(design: Design): string {
  const all = (design.covers ?? []).map((cover) => coverWords(cover, design));
  return all.length === 0 ? 'none' : all.join('; ');
}

function yearText(hotter: Hotter | undefined, system: UnitSystem): string {
  return hotter === undefined
    ? 'typical year'
    : `${hotterName(hotter)}: ${hotterWords(hotter, wordingOf(system))}`;
}

function valueText(path: string, kind: 'number' | 'choice', design: Design, system: UnitSystem): string {
  if (kind === 'choice') {
    const value = valueAt(design, path) ?? ABSENT;
    return choiceOf(path).options.find((option) => option.value === value)?.label ?? String(value);
  }
  const { value, quantity, digits } = numberRange(path, design, system);
  return quantityText(value, quantity, system, digits);
}
