// What the warnings of heat say of how hot it feels: the hours, the worst of them and its band by the US National Weather
// Service. A zone's felt heat in, figures of a caution out.

import type { ZoneOutcome } from '../../outcomes/outcome.ts';
import { HEAT_INDEX_CHART_END_C, heatBand } from '../../physics/heat-index.ts';
import { moment } from '../wording.ts';

/** Figures of a zone with any such hours. */
export function feltFigures({ hours, limitC, maxC, maxHour }: ZoneOutcome['feltHeat']) {
  return {
    hours,
    fromC: limitC,
    worstC: maxC!,
    beyondChart: maxC === HEAT_INDEX_CHART_END_C ? 'yes' : 'no',
    band: heatBand(maxC!),
    worst: moment(maxHour!),
  };
}
