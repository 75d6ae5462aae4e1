// What passes through one opening that stands open: a vent by stack and wind, steadily and in the minutes of an airing; a
// doorway; stairs. How far each is open, and the zones' air, in; volume flows out, and how far a vent wide open may be opened.
// Volume formulas: src/physics/openings, doorway, stairwell.

import type { Model, Opening, StairOpening, VentOpening } from '../../model/model.ts';
import { SPECIFIC_HEAT_AIR } from '../../physics/constants.ts';
import { doorwayExchange } from '../../physics/doorway.ts';
import {
  combinedQuadrature,
  effectiveArea,
  singleSidedStackFlow,
  stackFlow,
} from '../../physics/openings.ts';
import { rootOfKelvins, STRAIGHT_BELOW_K, stairConductance, stairExchange } from '../../physics/stairwell.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { AIRED_CHANGES, airedHeat, airingLengthened } from '../people/airing.ts';
import type { OpeningState } from '../people/occupant-control.ts';
import type { Will } from '../people/will.ts';
import { WALLS_W_PER_M2K } from '../people/window-rules.ts';
import type { ZoneAir } from '../people/zone-air.ts';

interface OpeningColumns {
  readonly zoneOf: Int32Array;
  readonly otherOf: Int32Array;
  /** 1 for doors and stairs that stand open by a schedule */
  readonly isKept: Int32Array;
  /** how far open in the mean of the step, 0…1; an airing is added */
  readonly share: Float64Array;
  /** written: volume flow each way [m³/s]; share of it that leaves with no heat of its zone's, since an airing cools the air
      before the furniture */
  readonly volume: Float64Array;
  readonly spares: Float64Array;
}

/** Flows through openings, with room for so many; load() before use. */
export function createOpeningFlow(
  capacity: EngineCapacity,
  byOpening: OpeningColumns,
  air: ZoneAir,
  will: Will,
) {
  let openings: readonly Opening[] = [];
  /** of each zone: air [kg]; furniture kept with the air by the air's own heat [–]; what its walls give colder air [W/K] */
  const airKg = new Float64Array(capacity.zones);
  const furnitureByAir = new Float64Array(capacity.zones);
  const wallsWK = new Float64Array(capacity.zones);
  // Read from the openings' own records, which are of many shapes, a number would be looked up and boxed anew at every trial.
  /** a vent wide open: its pair of openings in series, 0 for one alone; all of it; what the wind blows on [m²] */
  const pairM2 = new Float64Array(capacity.openings);
  const allM2 = new Float64Array(capacity.openings);
  const windM2 = new Float64Array(capacity.openings);
  /** width of a doorway; its height, that between the pair of a vent, or of a vent alone [m]; discharge of either [–] */
  const widthM = new Float64Array(capacity.openings);
  const heightM = new Float64Array(capacity.openings);
  const discharge = new Float64Array(capacity.openings);
  /** of stairs, flow by the root of kelvins [m³/(s·√K)]; 0 for all else */
  const stairFlow = new Float64Array(capacity.openings);
  /** what a vent wide open would let through [m³/s]: written here, for a number handed back by a function is an allocation */
  const wholeM3 = new Float64Array(16);

  function load(model: Model, roomDensity: number): void {
    openings = model.openings;
    model.zones.forEach((zone, z) => {
      airKg[z] = zone.volumeM3 * roomDensity;
      furnitureByAir[z] = zone.furnitureCapacity / (airKg[z]! * SPECIFIC_HEAT_AIR);
      wallsWK[z] = WALLS_W_PER_M2K * zone.floorAreaM2;
    });
    openings.forEach((opening, i) => {
      stairFlow[i] = opening.kind === 'stairs' ? stairConductance(opening.areaM2, opening.thicknessM) : 0;
      if (opening.kind === 'door') {
        widthM[i] = opening.widthM;
        heightM[i] = opening.heightM;
        discharge[i] = opening.discharge;
      }
      if (opening.kind !== 'vent') return;
      const { lowM2, highM2, windCoefficient } = opening;
      const isPair = lowM2 > 0 && highM2 > 0;
      pairM2[i] = isPair ? effectiveArea(lowM2, highM2) : 0;
      allM2[i] = lowM2 + highM2;
      heightM[i] = pairM2[i]! > 0 ? opening.stackM : opening.openingHeightM;
      discharge[i] = opening.discharge;
      windM2[i] = windCoefficient * (isPair ? Math.min(lowM2, highM2) : lowM2 + highM2);
    });
  }

  /** A vent: stack between low and high openings, or through one; wind; combined by quadrature (ASHRAE). */
  function throughVent(i: number, state: OpeningState): void {
    const { volume, share, spares } = byOpening;
    findWhole(i);
    volume[i] = share[i]! * wholeM3[0]!;
    spares[i] = 0;
    if (state.airingShare !== 0) airThroughVent(i, state);
  }

  /** The minutes of an airing, on what passes steadily. */
  function airThroughVent(i: number, { airingShare, airingS }: OpeningState): void {
    const { zoneOf, volume, share, spares } = byOpening;
    const { airing } = openings[i] as VentOpening;
    if (airing === undefined) return;
    const whole = wholeM3[0]!;
    const steady = volume[i]!;
    // Wide open for a part of the step, and until the air has been changed: the mean of the step.
    const zone = zoneOf[i]!;
    const kg = airKg[zone]!;
    const { airDensity } = air.weather;
    const changed = (AIRED_CHANGES * kg) / (60 * airing.minutes * airDensity);
    const flow = Math.min(whole, changed);
    const added = airingShare * Math.max(0, flow - steady);
    volume[i] = steady + added;
    if (added > 0) {
      const heat = kg * SPECIFIC_HEAT_AIR;
      const taken = airedHeat(
        (flow * airDensity) / kg,
        wallsWK[zone]! / heat,
        furnitureByAir[zone]!,
        airingS,
      );
      spares[i] = ((1 - taken) * added) / volume[i]!;
    }
    share[i]! += airingShare * (1 - share[i]!);
  }

  function throughDoor(i: number): void {
    const { zoneOf, otherOf, volume, share, isKept } = byOpening;
    const { zoneC } = air;
    const oneC = zoneC[zoneOf[i]!]!;
    const otherC = zoneC[otherOf[i]!]!;
    volume[i] = share[i]! * doorwayExchange(widthM[i]!, heightM[i]!, oneC, otherC, discharge[i]!);
    if (isKept[i] === 0) return;
    // Rooms come nearer to each other than a room and its sunspace: near nothing the exchange runs straight.
    const apartK = Math.abs(oneC - otherC);
    if (apartK > 0 && apartK < STRAIGHT_BELOW_K) volume[i]! *= rootOfKelvins(apartK) / Math.sqrt(apartK);
  }

  function throughStairs(i: number): void {
    const { zoneOf, otherOf, volume, share } = byOpening;
    const { areaM2 } = openings[i] as StairOpening;
    const { zoneC } = air;
    volume[i] = share[i]! * stairExchange(stairFlow[i]!, areaM2, zoneC[zoneOf[i]!]!, zoneC[otherOf[i]!]!);
  }

  /** How far a vent may be open for the walls of its zone to warm the air to its floor of day or night; none warm a sunspace's. */
  function limitByWalls(i: number, state: OpeningState, isForNight: boolean): void {
    const { isRoom, feltC } = will.rooms;
    const zone = byOpening.zoneOf[i]!;
    const { dryBulbC, airDensity } = air.weather;
    state.mostShare = 1;
    if (isRoom[zone] === 0) return;
    const floorC = isForNight ? state.nightFloorC : state.floorC;
    if (dryBulbC >= floorC) return;
    findWhole(i);
    const wattPerK = wholeM3[0]! * airDensity * SPECIFIC_HEAT_AIR;
    state.mostShare = (wallsWK[zone]! * (feltC[zone]! - floorC)) / (wattPerK * (floorC - dryBulbC));
  }

  /** Who airs for a reason keeps a small window open for longer. */
  function lengthenAiring(i: number, state: OpeningState): void {
    findWhole(i);
    const { airing } = openings[i] as VentOpening;
    const changesAnS = (wholeM3[0]! * air.weather.airDensity) / airKg[byOpening.zoneOf[i]!]!;
    state.airingS *= airingLengthened(airing!, changesAnS);
  }

  function findWhole(i: number): void {
    const { dryBulbC, windSpeed } = air.weather;
    const insideC = air.zoneC[byOpening.zoneOf[i]!]!;
    const stack =
      pairM2[i]! > 0
        ? stackFlow(pairM2[i]!, heightM[i]!, insideC, dryBulbC, discharge[i]!)
        : singleSidedStackFlow(allM2[i]!, heightM[i]!, insideC, dryBulbC, discharge[i]!);
    wholeM3[0] = combinedQuadrature(stack, windM2[i]! * windSpeed);
  }

  return { load, stairFlow, throughVent, throughDoor, throughStairs, limitByWalls, lengthenAiring };
}
