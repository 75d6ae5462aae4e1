// What passes through all openings, summed by zone: exchange with outdoors and between zones.
// Volume flows and zones of the openings in; masses out. A kernel made once of the columns it reads.

import type { OpeningState } from '../people/occupant-control.ts';
import type { ZoneAir } from '../people/zone-air.ts';

interface OpeningColumns {
  readonly zoneOf: Int32Array;
  readonly otherOf: Int32Array;
  readonly isVent: Int32Array;
  /** [m³/s] */
  readonly volume: Float64Array;
  /** share of the heat in its flow that an exchanger gives back */
  readonly recovers: Float64Array;
  /** share of its flow that leaves with no heat of its zone's */
  readonly spares: Float64Array;
}

interface ZoneColumns {
  /** written [kg/s] */
  readonly outdoors: Float64Array;
  readonly recovered: Float64Array;
  readonly spared: Float64Array;
  readonly between: Float64Array;
}

/** The sum over so many openings of so many zones, for a step of this length [s]. */
export function createExchangeSum(byOpening: OpeningColumns, byZone: ZoneColumns, air: ZoneAir) {
  return function sumExchange(zoneCount: number, last: number, states: readonly OpeningState[]): void {
    const { zoneOf, otherOf, volume, isVent, recovers, spares } = byOpening;
    const { outdoors: toOutdoors, between: toZones } = byZone;
    const { recovered: givenBack, spared: leavesCold } = byZone;
    const { airDensity } = air.weather;
    // Loops, not fill(): on arrays this short the call costs more than the work.
    for (let z = 0; z < zoneCount; z++) {
      toOutdoors[z] = 0;
      givenBack[z] = 0;
      leavesCold[z] = 0;
    }
    for (let z = 0; z < zoneCount * zoneCount; z++) toZones[z] = 0;
    for (let i = 0; i < last; i++) {
      const zone = zoneOf[i]!;
      const other = otherOf[i]!;
      const mass = volume[i]! * airDensity;
      if (other >= 0) {
        toZones[zone * zoneCount + other]! += mass;
        toZones[other * zoneCount + zone]! += mass;
        continue;
      }
      toOutdoors[zone]! += mass;
      givenBack[zone]! += mass * recovers[i]!;
      if (isVent[i] === 0 || states[i]!.airingShare === 0) continue;
      leavesCold[zone]! += mass * spares[i]!;
    }
  };
}
