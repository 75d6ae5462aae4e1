// Air through what nobody moves: cracks by stack and wind, fans and fixed openings by their schedules and conditions. An
// opening, the moment and the state of the air in; volume flow out.

import type { CrackOpening, FixedOpening } from '../../model/model.ts';
import { crackFlow } from '../../physics/leakage.ts';
import { type Moment, scheduled } from '../hour/clock.ts';
import { givesHeat } from './opening-rules.ts';
import type { ZoneAir } from './zone-air.ts';

/** Flow each way through an opening between a zone and another, or outdoors where `other` is below 0 [m³/s]. */
export function unmovedFlow(
  opening: CrackOpening | FixedOpening,
  moment: Moment,
  state: ZoneAir,
  zone: number,
  other: number,
): number {
  const insideC = state.zoneC[zone]!;
  switch (opening.kind) {
    case 'cracks':
      return crackFlow(
        opening.leakageCm2,
        opening.stackCoefficient,
        opening.windCoefficient,
        insideC - state.weather.dryBulbC,
        state.weather.windSpeed,
      );
    case 'fixed': {
      const cools =
        opening.onlyAboveC === undefined ||
        (insideC > opening.onlyAboveC && state.weather.dryBulbC < insideC);
      const gives = opening.gives === undefined || givesHeat(opening.gives, state, zone, other);
      return cools && gives ? scheduled(opening.flow, moment) : 0;
    }
  }
}
