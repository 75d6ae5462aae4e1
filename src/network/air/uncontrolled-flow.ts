// Air through what nobody moves: cracks by stack and wind, fans and fixed openings by their schedules and whether a
// room wants what they give; a fan that cools by night, night-fan.ts. An opening, the moment and the zones' air in; volume
// flow out.

import type { CrackOpening, FixedOpening } from '../../model/model.ts';
import { crackFlow } from '../../physics/leakage.ts';
import { type Moment, scheduled } from '../hour/clock.ts';
import { givesHeat } from '../people/heat-giving.ts';
import type { Will } from '../people/will.ts';
import type { ZoneAir } from '../people/zone-air.ts';

/** Flow each way through an opening between a zone and another, or outdoors where `other` is below 0 [m³/s]. */
export function uncontrolledFlow(
  opening: CrackOpening | FixedOpening,
  moment: Moment,
  air: ZoneAir,
  will: Will,
  zone: number,
  other: number,
): number {
  const insideC = air.zoneC[zone]!;
  switch (opening.kind) {
    case 'cracks':
      return crackFlow(
        opening.leakageCm2,
        opening.stackCoefficient,
        opening.windCoefficient,
        insideC - air.weather.dryBulbC,
        air.weather.windSpeed,
      );
    case 'fixed': {
      const gives = opening.gives === undefined || givesHeat(opening.gives, air, will, zone, other);
      return gives ? scheduled(opening.flow, moment) : 0;
    }
  }
}
