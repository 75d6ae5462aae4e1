// What passes through all openings, summed by zone: exchange with outdoors and between zones, for heat and for water.
// Volume flows and zones of the openings in; masses out. A kernel made once of the columns it reads.

import type { OpeningState } from '../people/occupant-control.ts';
import type { ZoneAir } from '../people/zone-air.ts';

/** Air changes in a step below which a step's end is exact enough. */
const FEW_CHANGES = 1e-3;

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
  readonly outdoorsForWater: Float64Array;
  /** share of the old air that is there still when the step's exchange of water begins */
  readonly keptAir: Float64Array;
  readonly recovered: Float64Array;
  readonly spared: Float64Array;
  readonly between: Float64Array;
  /** air of each zone [kg] */
  readonly airKg: Float64Array;
}

/** The sum over so many openings of so many zones, for a step of this length [s]. */
export function createExchangeSum(byOpening: OpeningColumns, byZone: ZoneColumns, air: ZoneAir) {
  return function sumExchange(
    zoneCount: number,
    last: number,
    states: readonly OpeningState[],
    stepS: number,
  ): void {
    const { zoneOf, otherOf, volume, isVent, recovers, spares } = byOpening;
    const { outdoors: toOutdoors, outdoorsForWater: forWater, between: toZones, airKg, keptAir } = byZone;
    const { recovered: givenBack, spared: leavesCold } = byZone;
    const { airDensity } = air.weather;
    // Loops, not fill(): on arrays this short the call costs more than the work.
    for (let z = 0; z < zoneCount; z++) {
      toOutdoors[z] = 0;
      forWater[z] = 0;
      keptAir[z] = 1;
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
      forWater[zone]! += mass;
      if (isVent[i] === 0 || states[i]!.airingShare === 0) continue;
      leavesCold[zone]! += mass * spares[i]!;
      // Of n air changes in a step a room keeps e⁻ⁿ of its old air, and (1 − e⁻ⁿ)/n of what is given off meanwhile. Water is
      // exchanged at the step's end, by which 1/(1 + m) is kept: m for what is given off, and the old air is changed by as
      // much before as makes up the rest.
      const changes = (mass * stepS) / airKg[zone]!;
      if (changes < FEW_CHANGES) continue;
      const left = Math.exp(-changes);
      const atEnd = changes / (1 - left) - 1;
      forWater[zone]! += ((atEnd - changes) * airKg[zone]!) / stepS;
      keptAir[zone]! *= (1 + atEnd) * left;
    }
  };
}
