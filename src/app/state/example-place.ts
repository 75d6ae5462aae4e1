// An example put where the person already is: whoever has chosen a place has not asked to be moved back to the
// example's own. In: examples and the design on screen. Out: the design to show, and which example one is.

import type { Design } from '../../design/design.ts';
import type { Example } from '../../design/examples.ts';
import { ALL_EXAMPLES } from '../../design/stove-examples.ts';

/** The example with the climate, and the hotter year if there is one, of the design on screen. */
export function exampleAt(example: Design, shown: Design): Design {
  if (example.climate === shown.climate && !shown.hotter) return example;
  const { hotter: _, ...still } = example;
  return { ...still, climate: shown.climate, ...(shown.hotter && { hotter: shown.hotter }) };
}

/** The example a design is, whatever its place; undefined once anything else was changed. */
export function exampleOf(design: Design): Example | undefined {
  return ALL_EXAMPLES.find((example) =>
    (Object.keys(example.design) as (keyof Design)[]).every(
      (part) => part === 'climate' || part === 'hotter' || example.design[part] === design[part],
    ),
  );
}
