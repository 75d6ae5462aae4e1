// What a question is asked about, with what nobody set filled in: the design's own limit, metric words, the usual weights, no
// prices, sixty-four samples, a map of 21 by 21.

import type { Design } from '../design/design.ts';
import { criterionOf } from '../design/too-hot-criterion.ts';
import { NO_PRICES } from '../quantities/prices.ts';
import type { Site } from '../weather/typical-year.ts';
import type { Basis } from './question.ts';
import { USUAL_WEIGHTS } from './weights.ts';
import { METRIC_WORDS } from './words.ts';

/** A basis; what `set` leaves out is as the head of this file says. */
export function basisOf(
  design: Design,
  site: Site,
  set: Partial<Omit<Basis, 'design' | 'site'>> = {},
): Basis {
  return {
    criterion: criterionOf(design, site.latitudeDeg),
    words: METRIC_WORDS,
    weights: USUAL_WEIGHTS,
    prices: NO_PRICES,
    order: 'weight',
    samples: 64,
    mapSide: 21,
    everyCell: false,
    isMade: false,
    ...set,
    design,
    site,
  };
}
