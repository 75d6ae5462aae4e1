// Latent heat of the water within a step of the thermal network: what moisture-balance.ts says of a tried step in; heat on
// the air hubs, as a line in their own temperature, on the panes' inner faces, and on walls, floor and ceiling, out. A step is
// solved again until the heat it was solved with is the heat its water took; the small rest is pending for the next step, so
// that the books close.

import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { airHub, type Layout, radiantHub } from '../layout/layout.ts';
import { endB } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';
import type { Beds } from './beds.ts';
import { createJointSearch } from './joint-search.ts';
import type { MoistureBalance } from './moisture-balance.ts';

/** Heat a step was solved with and heat its water took agree [W]; of 20 to 500 no year is nearer its fine steps. */
const AGREED_W = 200;
/** The same where there are beds, whose glass may stay at the edge of saturation for hours [W]; for each square metre of a bed [W/m²]. */
const AGREED_WITH_BEDS_W = 20;
const AGREED_BED = 1;
/** Less than this is dropped from what a pane has pending [W]: it would shrink to numbers too small to reckon with quickly. */
const LEAST_PENDING_W = 1e-6;
/** A chord between temperatures nearer than this tells nothing [K]. */
const LEAST_CHORD_K = 1e-6;

export interface LatentHeat {
  /** applied to each pane's inner node, added up over the steps of the hour [W] */
  readonly paneHourW: Float64Array;
  /** the same to walls, floor and ceiling of each zone [W] */
  readonly facesHourW: Float64Array;
  /** take a laid-out model in, with nothing pending */
  load(layout: Layout): void;
  /** how the latent heat of faces follows their warmth in the hour, before conductances are refreshed */
  renewFaces(withWater: boolean): void;
  /** the hour's sources have been written, and with them what was applied to faces is gone */
  beginHour(): void;
  /** what is expected and pending, onto hubs and nodes, before the network's step */
  beginStep(): void;
  /** whether the tried step's water took the heat it was solved with; if not, expect better */
  agrees(): boolean;
  /** what is left is pending */
  endStep(): void;
}

/** Latent heat between these, with room for so many zones and panes; load() before use. */
export function createLatentHeat(
  capacity: EngineCapacity,
  stepper: Stepper,
  moisture: MoistureBalance,
  beds: Beds,
): LatentHeat {
  let zones = 0;
  let panes = 0;
  const paneChain = new Int32Array(capacity.panes);
  const perZone = () => new Float64Array(capacity.zones);
  const perPane = () => new Float64Array(capacity.panes);
  /** still to be applied to zones' air and panes; on each pane's inner node now [W] */
  const pendingAir = perZone();
  const pendingPanes = perPane();
  const appliedToPanes = perPane();
  const paneHourW = perPane();
  const facesHourW = perZone();
  /** expected: heat at this temperature of the air, and more by the kelvin [W], [°C], [W/K] */
  const expected = { watt: perZone(), atC: perZone(), perK: perZone() };
  /** on each zone's walls, floor and ceiling now [W] */
  const appliedToFaces = perZone();
  /** a pane holds latent heat or has some pending */
  let anyOnPanes = false;
  let rounds = 0;
  /** air of all zones, then all faces of beds, then all panes */
  const joint = createJointSearch(3 * capacity.zones + capacity.panes);

  function load(layout: Layout): void {
    zones = layout.zoneIds.length;
    panes = layout.panes.length;
    const { watt, atC, perK } = expected;
    for (const array of [pendingAir, pendingPanes, appliedToPanes, appliedToFaces, watt, atC, perK])
      array.fill(0);
    anyOnPanes = false;
    layout.panes.forEach(({ chain }, p) => {
      paneChain[p] = chain;
    });
  }

  function beginHour(): void {
    const onPanes = appliedToPanes;
    const hourW = paneHourW;
    const count = panes;
    for (let p = 0; p < count; p++) {
      onPanes[p] = 0;
      hourW[p] = 0;
    }
    for (let z = 0; z < zones; z++) {
      appliedToFaces[z] = 0;
      facesHourW[z] = 0;
    }
    if (beds.count() > 0) beds.beginHour();
  }

  function renewFaces(withWater: boolean): void {
    const { hubBoundary } = stepper;
    const { facesWPerK } = moisture;
    for (let z = 0; z < zones; z++) hubBoundary[radiantHub(z)] = withWater ? facesWPerK[z]! : 0;
  }

  function writeLines(): void {
    const { hubLineW, hubLineG } = stepper;
    const { watt, atC, perK } = expected;
    const count = zones;
    for (let z = 0; z < count; z++) {
      const air = airHub(z, count);
      hubLineG[air] = -perK[z]!;
      hubLineW[air] = pendingAir[z]! + watt[z]! - perK[z]! * atC[z]!;
    }
  }

  function beginStep(): void {
    rounds = 0;
    writeLines();
    if (anyOnPanes) applyToPanes();
    applyToFaces();
    if (beds.count() > 0) {
      beds.beginStep();
      const dry = zones + beds.count();
      joint.begin(dry, dry + panes);
    }
  }

  /** Before the network's step begins. */
  function applyToPanes(): void {
    const { paneW } = moisture;
    for (let p = 0; p < panes; p++) {
      const due = pendingPanes[p]! + paneW[p]!;
      if (due === appliedToPanes[p]!) continue;
      stepper.addHeat(endB(paneChain[p]!), due - appliedToPanes[p]!);
      appliedToPanes[p] = due;
    }
  }

  /**
   * What soaked into faces and furniture in the step before, less what they gave back: a step late, since it follows the
   * room by hours; onto the hub that all faces exchange with, before they are swept. Warmer faces take less, so the hub is
   * tied to its last mean as they would follow it, or light walls that hold much water would swing; what that moves is
   * pending for the next step.
   */
  function applyToFaces(): void {
    const { hubW, hubBoundaryC, hubC, stepS } = stepper;
    const { facesJ } = moisture;
    const count = zones;
    for (let z = 0; z < count; z++) {
      const hub = radiantHub(z);
      const due = facesJ[z]! / stepS;
      hubW[hub]! += due - appliedToFaces[z]!;
      hubBoundaryC[hub] = hubC[hub]!;
      appliedToFaces[z] = due;
    }
  }

  function endFaces(): void {
    const { hubBoundary, hubBoundaryC, hubMeanC, stepS } = stepper;
    const { facesJ } = moisture;
    const count = zones;
    for (let z = 0; z < count; z++) {
      const hub = radiantHub(z);
      const given = appliedToFaces[z]! + hubBoundary[hub]! * (hubBoundaryC[hub]! - hubMeanC[hub]!);
      facesHourW[z]! += given;
      facesJ[z]! -= given * stepS;
    }
  }

  function agrees(): boolean {
    const { watt, atC, perK } = expected;
    const { airW, paneW } = moisture;
    const { hubMeanC } = stepper;
    const count = zones;
    let airOff = 0;
    for (let z = 0; z < count; z++) {
      const line = watt[z]! + perK[z]! * (hubMeanC[airHub(z, count)]! - atC[z]!);
      airOff = Math.max(airOff, Math.abs(airW[z]! - line));
    }
    let panesOff = 0;
    if (anyOnPanes || moisture.wetPanes() > 0) {
      for (let p = 0; p < panes; p++) {
        panesOff = Math.max(panesOff, Math.abs(pendingPanes[p]! + paneW[p]! - appliedToPanes[p]!));
      }
    }
    const hasBeds = beds.count() > 0;
    const bedsOff = hasBeds ? beds.readOff(joint.off, zones) : 0;
    const agreed = hasBeds ? AGREED_WITH_BEDS_W : AGREED_W;
    if (airOff <= agreed && panesOff <= agreed && bedsOff <= AGREED_BED) return true;
    if (hasBeds) expectTogether();
    else expectBetter();
    writeLines();
    if (!hasBeds && panesOff > AGREED_W) {
      applyToPanes();
      anyOnPanes = true;
    }
    if (hasBeds) stepper.beginSolving();
    else if (panesOff > AGREED_W) stepper.beginStep();
    return false;
  }

  function expectBetter(): void {
    const { watt, atC, perK } = expected;
    const { airW, airWPerK } = moisture;
    const { hubMeanC } = stepper;
    for (let z = 0; z < zones; z++) {
      const nowC = hubMeanC[airHub(z, zones)]!;
      const moved = nowC - atC[z]!;
      // At the edge of saturation the slope is another on each side: from the second round on, the chord.
      const isChord = rounds > 0 && Math.abs(moved) > LEAST_CHORD_K;
      perK[z] = isChord ? Math.min(0, (airW[z]! - watt[z]!) / moved) : airWPerK[z]!;
      watt[z] = airW[z]!;
      atC[z] = nowC;
    }
    rounds++;
  }

  /** Air, beds and panes move each other: leaves by what the air holds, air and panes by what they give it once it is full. */
  function expectTogether(): void {
    const { watt, atC, perK } = expected;
    const { off, move } = joint;
    const { hubMeanC } = stepper;
    for (let z = 0; z < zones; z++) {
      const line = watt[z]! + perK[z]! * (hubMeanC[airHub(z, zones)]! - atC[z]!);
      off[z] = moisture.airW[z]! - line;
    }
    const { paneW } = moisture;
    const first = zones + beds.count();
    // Dry panes, which are most of them most of the time, are no unknowns.
    if (anyOnPanes || moisture.wetPanes() > 0) joint.widen();
    for (let p = 0; first + p < joint.count(); p++) {
      off[first + p] = pendingPanes[p]! + paneW[p]! - appliedToPanes[p]!;
    }
    joint.next();
    for (let z = 0; z < zones; z++) watt[z]! += move[z]!;
    beds.add(move, zones);
    for (let p = 0; first + p < joint.count(); p++) {
      const more = move[first + p]!;
      if (more === 0) continue;
      stepper.addHeatInStep(paneChain[p]!, more);
      appliedToPanes[p]! += more;
      anyOnPanes = true;
    }
    rounds++;
  }

  function endStep(): void {
    endFaces();
    const { watt, atC, perK } = expected;
    const { airW, airWPerK, paneW } = moisture;
    const { hubMeanC, hubLineW, hubLineG } = stepper;
    const count = zones;
    for (let z = 0; z < count; z++) {
      const air = airHub(z, count);
      const nowC = hubMeanC[air]!;
      pendingAir[z] = pendingAir[z]! + airW[z]! - (hubLineW[air]! - hubLineG[air]! * nowC);
      watt[z] = airW[z]!;
      atC[z] = nowC;
      perK[z] = airWPerK[z]!;
    }
    if (beds.count() > 0) beds.endStep();
    if (!anyOnPanes && moisture.wetPanes() === 0) return;
    anyOnPanes = false;
    for (let p = 0; p < panes; p++) {
      const applied = appliedToPanes[p]!;
      const pending = pendingPanes[p]! + paneW[p]! - applied;
      paneHourW[p]! += applied;
      pendingPanes[p] = Math.abs(pending) > LEAST_PENDING_W ? pending : 0;
      if (paneW[p] !== 0 || pendingPanes[p] !== 0 || applied !== 0) anyOnPanes = true;
    }
  }

  return { paneHourW, facesHourW, load, renewFaces, beginHour, beginStep, agrees, endStep };
}
