// Air that passes a house of several storeys one way: in at what is open below, through doors and up the stairs, out at what
// is open above; the other way round while the rooms are the cooler. Shares open and temperatures of the trial in; flows of
// places and ways out, and what they change in the exchange of every zone.
// Method: the openings of each height, in series with the doors and stairs that lead to them, on both sides of one neutral
// level (BS 5925, ASHRAE Fundamentals), the air inside as warm as the mean of the storeys; flow that no way can carry
// back is what the ways carry on. Cracks keep what the leakage model lets through in all, and let in below, and out above, the
// share of it that the stack drives. Every zone takes in as much as it gives. Wind is left to each room's own windows.

import type { HouseStack, Opening } from '../../model/model.ts';
import { GRAVITY, ZERO_CELSIUS_K } from '../../physics/constants.ts';
import { crackStackShare } from '../../physics/leakage.ts';
import { SHARP_EDGE_DISCHARGE } from '../../physics/openings.ts';
import { rootOfKelvins } from '../../physics/stairwell.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import type { ZoneAir } from '../people/zone-air.ts';

/** A door this far open carries all that cracks let through. */
const CRACK_WAY = 0.05;
/** Halvings of the height between the lowest and highest place, with more than two levels. */
const HALVINGS = 40;
const SAME_LEVEL_M = 1e-6;

interface OpeningColumns {
  readonly volume: Float64Array;
  /** how far open in the mean of the step, airing left out, 0…1 */
  readonly steady: Float64Array;
}

interface ZoneFlows {
  readonly outdoors: Float64Array;
  readonly between: Float64Array;
}

/** One-way air of a run, with room for so much; load() before use. */
export function createStackFlows(
  capacity: EngineCapacity,
  { volume, steady: share }: OpeningColumns,
  { outdoors, between }: ZoneFlows,
  air: ZoneAir,
) {
  const most = 2 * capacity.zones;
  const place = {
    zone: new Int32Array(most),
    heightM: new Float64Array(most),
    windows: new Int32Array(most),
    cracks: new Int32Array(most),
    part: new Float64Array(most),
    windowM2: new Float64Array(most),
    /** what it has open, in series with its way [m²] */
    areaM2: new Float64Array(most),
    /** through windows, and through cracks of the hour; in is positive [m³/s] */
    windowFlow: new Float64Array(most),
    crackFlow: new Float64Array(most),
  };
  const way = {
    zone: new Int32Array(most),
    to: new Int32Array(most),
    opening: new Int32Array(most),
    /** wide open [m²] */
    areaM2: new Float64Array(most),
    isStairs: new Int32Array(most),
    /** from `zone` to `to` [m³/s] */
    flow: new Float64Array(most),
  };
  /** way from each zone, −1 for none; net inflow of a zone while the ways are summed [m³/s] */
  const wayOf = new Int32Array(capacity.zones);
  const net = new Float64Array(capacity.zones);
  let zones = 0;
  let places = 0;
  let ways = 0;
  let openings: readonly Opening[] = [];
  let neutralM = 0;
  /** the ways carry the hour's cracks alone */
  let isStill = false;

  function load(stack: HouseStack | undefined, model: readonly Opening[], zoneIds: readonly string[]): void {
    for (const column of [...Object.values(place), ...Object.values(way)]) column.fill(0);
    wayOf.fill(-1);
    zones = zoneIds.length;
    openings = model;
    places = 0;
    ways = 0;
    isStill = false;
    if (stack === undefined) return;
    const openingAt = (id: string | null) => model.findIndex((opening) => opening.id === id);
    for (const { zone, to, opening } of stack.ways) {
      const at = openingAt(opening);
      const of = model[at]!;
      way.zone[ways] = zoneIds.indexOf(zone);
      way.to[ways] = zoneIds.indexOf(to);
      way.opening[ways] = at;
      way.areaM2[ways] = of.kind === 'stairs' ? of.areaM2 : of.kind === 'door' ? of.widthM * of.heightM : 0;
      way.isStairs[ways] = of.kind === 'stairs' ? 1 : 0;
      wayOf[way.zone[ways]!] = ways;
      ways++;
    }
    const reached = new Set(stack.ways.flatMap(({ zone, to }) => [zone, to]));
    for (const { zone, heightM, windows, cracks, share: part } of stack.places) {
      if (!reached.has(zone)) continue;
      const window = model[openingAt(windows)];
      place.zone[places] = zoneIds.indexOf(zone);
      place.heightM[places] = heightM;
      place.windows[places] = openingAt(windows);
      place.cracks[places] = openingAt(cracks);
      place.part[places] = part;
      place.windowM2[places] = window?.kind === 'vent' ? part * (window.lowM2 + window.highM2) : 0;
      places++;
    }
  }

  /** Doors and stairs stand as the hour has them: what the cracks let through one way. */
  function beginHour(): void {
    const { zone, heightM, cracks, part, crackFlow } = place;
    if (places === 0) return;
    isStill = false;
    const { dryBulbC, windSpeed } = air.weather;
    let [weighted, whole, warmest] = [0, 0, 0];
    for (let p = 0; p < places; p++) {
      const flow = cracks[p]! < 0 ? 0 : part[p]! * volume[cracks[p]!]! * wayOpen(zone[p]!);
      crackFlow[p] = flow;
      weighted += flow * heightM[p]!;
      whole += flow;
      warmest += flow * (air.zoneC[zone[p]!]! - dryBulbC);
    }
    if (whole === 0) return;
    const middleM = weighted / whole;
    let farthestM = 0;
    for (let p = 0; p < places; p++) farthestM = Math.max(farthestM, Math.abs(heightM[p]! - middleM));
    const sign = warmest >= 0 ? 1 : -1;
    for (let p = 0; p < places; p++) {
      if (crackFlow[p] === 0) continue;
      const opening = openings[cracks[p]!]!;
      if (opening.kind !== 'cracks') continue;
      const driven = crackStackShare(
        opening.stackCoefficient,
        opening.windCoefficient,
        air.zoneC[zone[p]!]! - dryBulbC,
        windSpeed,
      );
      const lift = farthestM < SAME_LEVEL_M ? 0 : (middleM - heightM[p]!) / farthestM;
      crackFlow[p]! *= sign * driven * lift;
    }
    balance(crackFlow);
  }

  /** How open the ways from a zone on are, for what cracks let through, 0…1. */
  function wayOpen(zone: number): number {
    let open = 1;
    for (let w = wayOf[zone]!; w >= 0; w = wayOf[way.to[w]!]!) {
      open *= Math.min(1, share[way.opening[w]!]! / CRACK_WAY);
    }
    return open;
  }

  /**
   * Flows for the trial temperatures and shares open. What a window passes one way is taken from what it exchanges by itself,
   * so that both together are their quadrature.
   */
  function find(): void {
    if (places === 0) return;
    const { windows, windowFlow, windowM2 } = place;
    let isShut = true;
    for (let p = 0; p < places; p++) {
      windowFlow[p] = 0;
      if (windows[p]! >= 0 && windowM2[p]! * share[windows[p]!]! > 0) isShut = false;
    }
    // With all windows shut the ways carry what the cracks of the hour let through, whatever is tried.
    if (isShut && isStill) return;
    isStill = isShut;
    if (!isShut) openAreas();
    if (!isShut && findNeutral()) {
      writeWindowFlows();
      balance(windowFlow);
    }
    for (let p = 0; p < places; p++) {
      const at = windows[p]!;
      if (at < 0 || windowFlow[p] === 0) continue;
      const through = Math.abs(windowFlow[p]!);
      volume[at] = Math.sqrt(volume[at]! * volume[at]! + through * through) - through;
    }
    for (let z = 0; z < zones; z++) net[z] = 0;
    for (let p = 0; p < places; p++) net[place.zone[p]!]! += windowFlow[p]! + place.crackFlow[p]!;
    for (let w = ways - 1; w >= 0; w--) {
      way.flow[w] = net[way.zone[w]!]!;
      net[way.to[w]!]! += way.flow[w]!;
    }
  }

  function openAreas(): void {
    const { zone, windows, windowM2, areaM2 } = place;
    for (let p = 0; p < places; p++) {
      let inverse = 0;
      const own = windows[p]! < 0 ? 0 : windowM2[p]! * share[windows[p]!]!;
      let open = own;
      for (let w = wayOf[zone[p]!]!; w >= 0 && open > 0; w = wayOf[way.to[w]!]!) {
        if (way.isStairs[w] === 1) continue;
        const doorM2 = way.areaM2[w]! * share[way.opening[w]!]!;
        inverse += 1 / (doorM2 * doorM2);
        if (doorM2 === 0) open = 0;
      }
      areaM2[p] = open === 0 ? 0 : 1 / Math.sqrt(1 / (own * own) + inverse);
    }
    // Stairs are shared by all that lies behind them: the farthest first.
    for (let w = ways - 1; w >= 0; w--) {
      if (way.isStairs[w] === 0) continue;
      let behind = 0;
      for (let p = 0; p < places; p++) if (liesBehind(zone[p]!, w)) behind += areaM2[p]!;
      if (behind === 0) continue;
      const stairs = way.areaM2[w]! * share[way.opening[w]!]!;
      const kept = stairs / Math.sqrt(behind * behind + stairs * stairs);
      for (let p = 0; p < places; p++) if (liesBehind(zone[p]!, w)) areaM2[p]! *= kept;
    }
  }

  function liesBehind(zone: number, which: number): boolean {
    for (let w = wayOf[zone]!; w >= 0; w = wayOf[way.to[w]!]!) if (w === which) return true;
    return false;
  }

  /** The height at which as much comes in below as goes out above; false where all that is open stands at one height. */
  function findNeutral(): boolean {
    const { heightM, areaM2 } = place;
    let [lowM, highM] = [Infinity, -Infinity];
    for (let p = 0; p < places; p++) {
      if (areaM2[p] === 0) continue;
      lowM = Math.min(lowM, heightM[p]!);
      highM = Math.max(highM, heightM[p]!);
    }
    if (!(highM - lowM > SAME_LEVEL_M)) return false;
    let [low, high, between] = [0, 0, 0];
    for (let p = 0; p < places; p++) {
      if (heightM[p]! - lowM < SAME_LEVEL_M) low += areaM2[p]!;
      else if (highM - heightM[p]! < SAME_LEVEL_M) high += areaM2[p]!;
      else between += areaM2[p]!;
    }
    if (between === 0) {
      neutralM = lowM + ((highM - lowM) * high * high) / (low * low + high * high);
      return true;
    }
    for (let n = 0; n < HALVINGS; n++) {
      neutralM = (lowM + highM) / 2;
      let excess = 0;
      for (let p = 0; p < places; p++) {
        const below = neutralM - heightM[p]!;
        excess += Math.sign(below) * areaM2[p]! * Math.sqrt(Math.abs(below));
      }
      if (excess > 0) highM = neutralM;
      else lowM = neutralM;
    }
    return true;
  }

  function writeWindowFlows(): void {
    const { zone, heightM, areaM2, windowFlow } = place;
    const { dryBulbC } = air.weather;
    let [lowM2, highM2, lowC, highC] = [0, 0, 0, 0];
    for (let p = 0; p < places; p++) {
      const insideC = air.zoneC[zone[p]!]!;
      if (heightM[p]! < neutralM) {
        lowM2 += areaM2[p]!;
        lowC += areaM2[p]! * insideC;
      } else {
        highM2 += areaM2[p]!;
        highC += areaM2[p]! * insideC;
      }
    }
    // So little is open on one side that the neutral level lies in it.
    if (lowM2 === 0 || highM2 === 0) return;
    const insideC = (lowC / lowM2 + highC / highM2) / 2;
    const warmerK = insideC - dryBulbC;
    const meanK = (insideC + dryBulbC) / 2 + ZERO_CELSIUS_K;
    const speed =
      SHARP_EDGE_DISCHARGE *
      Math.sign(warmerK) *
      Math.sqrt((2 * GRAVITY) / meanK) *
      rootOfKelvins(Math.abs(warmerK));
    for (let p = 0; p < places; p++) {
      const below = neutralM - heightM[p]!;
      windowFlow[p] = areaM2[p]! * Math.sign(below) * Math.sqrt(Math.abs(below)) * speed;
    }
  }

  /** As much in as out: the larger is drawn down to the smaller. */
  function balance(flow: Float64Array): void {
    let [into, outOf] = [0, 0];
    for (let p = 0; p < places; p++) {
      if (flow[p]! > 0) into += flow[p]!;
      else outOf -= flow[p]!;
    }
    const least = Math.min(into, outOf);
    for (let p = 0; p < places; p++) {
      if (flow[p]! > 0) flow[p]! *= least / into;
      else if (flow[p]! < 0) flow[p]! *= least / outOf;
    }
  }

  /** Into the zones' exchange, which is summed already; and what passes each window and way in all. */
  function apply(): void {
    if (places === 0) return;
    const { zone, windows, windowFlow, crackFlow } = place;
    const { airDensity } = air.weather;
    for (let p = 0; p < places; p++) {
      const at = zone[p]!;
      // What leaves by cracks is air that no longer comes in by them.
      const mass = (Math.max(0, windowFlow[p]!) + crackFlow[p]!) * airDensity;
      outdoors[at]! += mass;
      if (windows[p]! >= 0) volume[windows[p]!]! += Math.abs(windowFlow[p]!);
    }
    for (let w = 0; w < ways; w++) {
      const through = Math.abs(way.flow[w]!);
      if (through === 0) continue;
      const opening = way.opening[w]!;
      const from = way.flow[w]! > 0 ? way.zone[w]! : way.to[w]!;
      const to = way.flow[w]! > 0 ? way.to[w]! : way.zone[w]!;
      const both = volume[opening]!;
      const forward = Math.max(through, both + through / 2);
      between[to * zones + from]! += (forward - both) * airDensity;
      between[from * zones + to]! += (forward - through - both) * airDensity;
      volume[opening] = forward;
    }
  }

  return { load, beginHour, find, apply, place, way };
}
