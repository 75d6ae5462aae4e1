// The stoves of a run, hour by hour: loads, what burns, what the body holds and gives. Whether somebody feeds them in;
// heat to their rooms, to heated floors and up the flue out. An hour's heat is even over the hour.
// Wood in = heat to the rooms and floors + flue + what fire, body and store hold more, exactly.

import type { Model, Stove } from '../../model/model.ts';
import { bodyHeatAfter } from '../../physics/stove-body.ts';
import { storeAfter } from '../../physics/water-store.ts';
import { HOURS } from '../../weather/typical-year.ts';
import { type Moment, scheduled } from '../hour/clock.ts';
import { loadShare } from '../people/fire-tending.ts';
import type { Will } from '../people/will.ts';
import type { StoveYear } from '../year.ts';

const HOUR_S = 3600;
/** A store's heat is counted from here [°C]; it starts so too. */
const STORE_FROM_C = 20;

/** A stove and where it stands: what it holds, and its hour. */
export interface StoveFire {
  readonly zone: number;
  readonly stove: Stove;
  /** wood on the fire, and the heat of the body above the room's [J] */
  fireJ: number;
  bodyJ: number;
  /** at which the wood that lies on it burns down [W] */
  burningW: number;
  /** of the hour: wood put on [kg], burnt [W], to the room, to heated floors and up the flue [W] */
  loadKg: number;
  burntW: number;
  /** and of it what its store's loss gives */
  roomW: number;
  storeLossW: number;
  floorW: number;
  flueW: number;
  /** of a store [°C] */
  storeC: number;
  readonly year: StoveYear;
}

/** The stoves of a model; cold. */
export function stoveFires({ zones }: Model): StoveFire[] {
  return zones.flatMap(({ id, stove }, zone) =>
    stove === undefined
      ? []
      : [
          {
            zone,
            stove,
            fireJ: 0,
            bodyJ: 0,
            burningW: 0,
            loadKg: 0,
            burntW: 0,
            roomW: 0,
            storeLossW: 0,
            floorW: 0,
            flueW: 0,
            storeC: STORE_FROM_C,
            year: blankStoveYear(id, stove),
          },
        ],
  );
}

function blankStoveYear(zone: string, { woodJPerKg }: Stove): StoveYear {
  const column = () => new Float64Array(HOURS);
  return {
    zone,
    woodJPerKg,
    loadKg: column(),
    burntW: column(),
    roomW: column(),
    floorW: column(),
    flueW: column(),
    heldJ: column(),
  };
}

/**
 * One hour of a stove.
 *
 * @param isFed false where nobody may light it, whatever the rooms are like
 * @param givenKg wood that was put on, NaN where nobody wrote it down
 */
export function burnHour(fire: StoveFire, moment: Moment, will: Will, isFed: boolean, givenKg: number): void {
  const { stove, zone } = fire;
  const mayFeed = isFed && scheduled(stove.mayFeed, moment) > 0;
  fire.loadKg = Number.isNaN(givenKg)
    ? stove.loadKg * loadShare(stove, mayFeed, fire.burntW > 0, will, zone)
    : givenKg;
  if (fire.loadKg > 0) {
    fire.fireJ += fire.loadKg * stove.woodJPerKg;
    fire.burningW = fire.fireJ / (stove.burnH * HOUR_S);
  }
  // What is left of the last hour of a burn is round-off.
  const isLast = fire.fireJ <= fire.burningW * HOUR_S * (1 + 1e-9);
  const burntJ = isLast ? fire.fireJ : fire.burningW * HOUR_S;
  fire.fireJ -= burntJ;
  fire.burntW = burntJ / HOUR_S;
  const useful = stove.efficiency * fire.burntW;
  fire.flueW = fire.burntW - useful;
  fire.floorW = stove.floorShare * useful;
  const toRoom = useful - fire.floorW;
  const atOnce = stove.atOnce * toRoom;
  const intoBody = toRoom - atOnce;
  const after = bodyHeatAfter(fire.bodyJ, intoBody, stove.coolingH * HOUR_S, HOUR_S);
  fire.roomW = atOnce + intoBody - (after - fire.bodyJ) / HOUR_S;
  fire.bodyJ = after;
}

/** What the hour of a store lies between: its room, and pipes that the rooms want open, to slabs of one mean temperature. */
export interface StoreHour {
  readonly roomC: number;
  /** [W/K] */
  readonly pipes: number;
  readonly slabC: number;
}

/** The hour of a store, after burnHour: what the boiler gave goes in, what floors get comes out; what it cannot hold too. */
export function storeHour(fire: StoveFire, { roomC, pipes, slabC }: StoreHour): void {
  const { store } = fire.stove;
  if (store === undefined) return;
  const after = storeAfter(fire.storeC, fire.floorW, store, { roomC }, { pipes, slabC }, HOUR_S);
  const overJ = Math.max(0, after.celsius - store.mostC) * store.capacity;
  fire.storeC = Math.min(after.celsius, store.mostC);
  fire.floorW = after.pipesW + overJ / HOUR_S;
  fire.storeLossW = after.lossW;
  fire.roomW += after.lossW;
}

/** Write an hour down. */
export function recordFire(fire: StoveFire, row: number): void {
  const { year, fireJ, bodyJ, stove, storeC, ...hour } = fire;
  year.loadKg[row] = hour.loadKg;
  year.burntW[row] = hour.burntW;
  year.roomW[row] = hour.roomW;
  year.floorW[row] = hour.floorW;
  year.flueW[row] = hour.flueW;
  year.heldJ[row] = fireJ + bodyJ + (stove.store?.capacity ?? 0) * (storeC - STORE_FROM_C);
}
