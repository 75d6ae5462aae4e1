// Latent heat, from the moisture balance to the thermal network: what moisture-balance.ts says of a step in, heat on the air
// hubs and on the panes' inner faces of the next steps out. What is pending after a step is applied over the next ones,
// most of it in the first: applied all at once it would answer a step late to itself, and a wet, closed room would ring.

import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { airHub, type Layout } from '../layout/layout.ts';
import { endB } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';
import type { HourlyGains } from '../sun/hourly-gains.ts';
import type { MoistureBalance } from './moisture-balance.ts';

/** Share of the pending latent heat that a step applies; of 0.5 to 1 the one whose year changed least with a finer step. */
const APPLIED_SHARE = 0.6;
/** Less than this is applied at once [W]: pending forever it would shrink to numbers too small to reckon with quickly. */
const LEAST_PENDING_W = 1e-6;

export interface LatentHeat {
  /** applied to each pane's inner node, added up over the steps of the hour [W] */
  readonly paneHourW: Float64Array;
  /** take a laid-out model in, with nothing pending */
  load(layout: Layout): void;
  /** the hour's sources are about to be written, and with them what was applied to faces is gone */
  beginHour(): void;
  /** apply what is due to hubs and nodes, before the network's step */
  apply(): void;
}

/** Latent heat between these, with room for so many zones and panes; load() before use. */
export function createLatentHeat(
  capacity: EngineCapacity,
  stepper: Stepper,
  gains: HourlyGains,
  moisture: MoistureBalance,
): LatentHeat {
  let zones = 0;
  let panes = 0;
  /** the inner end of each pane's chain */
  const paneEnd = new Int32Array(capacity.panes);
  /** still to be applied to zones' air and panes; on each pane's inner node now [W] */
  const pendingAir = new Float64Array(capacity.zones);
  const pendingPanes = new Float64Array(capacity.panes);
  const appliedToPanes = new Float64Array(capacity.panes);
  const paneHourW = new Float64Array(capacity.panes);
  /** a pane holds latent heat or has some pending */
  let anyPending = false;

  function load(layout: Layout): void {
    zones = layout.zoneIds.length;
    panes = layout.panes.length;
    for (const array of [pendingAir, pendingPanes, appliedToPanes]) array.fill(0);
    anyPending = false;
    layout.panes.forEach(({ chain }, p) => {
      paneEnd[p] = endB(chain);
    });
  }

  function beginHour(): void {
    if (anyPending) appliedToPanes.fill(0);
    for (let p = 0; p < panes; p++) paneHourW[p] = 0;
  }

  function apply(): void {
    const { hubW } = stepper;
    const { airGain } = gains;
    const { airW } = moisture;
    const pending = pendingAir;
    const count = zones;
    for (let z = 0; z < count; z++) {
      const due = pending[z]! + airW[z]!;
      const applied = due * APPLIED_SHARE;
      pending[z] = due - applied;
      hubW[airHub(z, count)] = airGain[z]! + applied;
    }
    if (anyPending || moisture.wetPanes() > 0) applyToPanes();
  }

  function applyToPanes(): void {
    const { paneW } = moisture;
    anyPending = false;
    for (let p = 0; p < panes; p++) {
      const due = pendingPanes[p]! + paneW[p]!;
      if (due === 0 && appliedToPanes[p]! === 0) continue;
      const applied = Math.abs(due) > LEAST_PENDING_W ? due * APPLIED_SHARE : due;
      pendingPanes[p] = due - applied;
      stepper.addHeat(paneEnd[p]!, applied - appliedToPanes[p]!);
      appliedToPanes[p] = applied;
      paneHourW[p]! += applied;
      anyPending = true;
    }
  }

  return { paneHourW, load, beginHour, apply };
}
