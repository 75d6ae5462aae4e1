// Latent heat of the water, from the water balance to the thermal network: what vapour.ts says of a step in, heat on the
// air hubs and on the panes' inner faces of the next steps out. It is owed by one step and paid over the next ones, most of
// it in the first: paid all at once it would answer a step late to itself, and a wet, closed room would ring.

import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { airHub, type Layout } from '../layout/layout.ts';
import type { Stepper } from '../solver/stepper-form.ts';
import type { HourlyGains } from '../sun/hourly-gains.ts';
import type { Vapour } from './vapour.ts';

/** Share of the latent heat owed that a step pays; of 0.5 to 1 the one whose year changed least with a finer step. */
const LATENT_SHARE = 0.6;
/** Less than this is paid at once [W]: owed forever it would shrink to numbers too small to reckon with quickly. */
const LEAST_OWED_W = 1e-6;

export interface LatentHeat {
  /** paid onto each pane's inner node, added up over the steps of the hour [W] */
  readonly paneHourW: Float64Array;
  /** take a laid-out model in, with nothing owed */
  load(layout: Layout): void;
  /** the hour's sources are about to be written, and with them what was paid onto faces is gone */
  beginHour(): void;
  /** pay what is due onto hubs and nodes, before the network's step */
  pay(): void;
}

/** Latent heat between these, with room for so many zones and panes; load() before use. */
export function createLatentHeat(
  capacity: EngineCapacity,
  stepper: Stepper,
  gains: HourlyGains,
  vapour: Vapour,
): LatentHeat {
  let zones = 0;
  let panes = 0;
  /** the inner end of each pane's chain */
  const paneEnd = new Int32Array(capacity.panes);
  /** still to be paid to zones' air and panes; on each pane's inner node now [W] */
  const owedAir = new Float64Array(capacity.zones);
  const owedPanes = new Float64Array(capacity.panes);
  const onPanes = new Float64Array(capacity.panes);
  const paneHourW = new Float64Array(capacity.panes);
  /** a pane holds or owes latent heat */
  let panesOwe = false;

  function load(layout: Layout): void {
    zones = layout.zoneIds.length;
    panes = layout.panes.length;
    for (const array of [owedAir, owedPanes, onPanes]) array.fill(0);
    panesOwe = false;
    layout.panes.forEach(({ chain }, p) => {
      paneEnd[p] = 2 * chain + 1;
    });
  }

  function beginHour(): void {
    if (panesOwe) onPanes.fill(0);
    for (let p = 0; p < panes; p++) paneHourW[p] = 0;
  }

  function pay(): void {
    const { hubW } = stepper;
    const { airGain } = gains;
    const { airW } = vapour;
    const owing = owedAir;
    const count = zones;
    for (let z = 0; z < count; z++) {
      const owed = owing[z]! + airW[z]!;
      const paid = owed * LATENT_SHARE;
      owing[z] = owed - paid;
      hubW[airHub(z, count)] = airGain[z]! + paid;
    }
    if (panesOwe || vapour.wetPanes() > 0) payPanes();
  }

  function payPanes(): void {
    const { paneW } = vapour;
    panesOwe = false;
    for (let p = 0; p < panes; p++) {
      const owed = owedPanes[p]! + paneW[p]!;
      if (owed === 0 && onPanes[p]! === 0) continue;
      const paid = Math.abs(owed) > LEAST_OWED_W ? owed * LATENT_SHARE : owed;
      owedPanes[p] = owed - paid;
      stepper.addHeat(paneEnd[p]!, paid - onPanes[p]!);
      onPanes[p] = paid;
      paneHourW[p]! += paid;
      panesOwe = true;
    }
  }

  return { paneHourW, load, beginHour, pay };
}
