// Ventilation of a design that says nothing of it: rooms aired as they need it, no unit with heat recovery, an extract fan, if there is one, that runs
// all the time. The other numbers are where a unit starts once it gets air to move.

import type { Design } from './design.ts';

/**
 * Airing: German advice for the winter, three or four times a day for five to ten minutes, as collected by mould helps and
 * window builders. Effectiveness and fan power of a unit that just earns a certifier's mark for low-energy houses (75 % and 0.45 W for each
 * m³/h; from memory, high confidence); humidity: common practice, no source.
 */
export const USUAL_VENTILATION: Design['ventilation'] = {
  aired: 'by-need',
  airedMinutes: 10,
  airedTimes: 4,
  extractRuns: 'always',
  extractHumidity: 0.65,
  recoveryAch: 0,
  recoveryEffectiveness: 0.75,
  fanWPerM3H: 0.45,
  frost: 'preheat',
};
