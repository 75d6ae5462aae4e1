// Dew on the panes, step by step, as the water balance (vapour.ts) sees it: panes' temperatures and the zones' vapour in;
// what each pane takes or gives as terms of the balance, then films, run-off and latent heat, out.
// Method: Lewis relation, src/physics/surface-condensation.ts; a pane follows its zone's vapour while its film lasts, and
// gives the last of it as a rate.

import { LATENT_HEAT, ZERO_CELSIUS_K } from '../../physics/constants.ts';
import { dewPointUnchecked, saturationPressureHeld } from '../../physics/moist-air.ts';
import type { VapourInputs, VapourState } from './vapour-state.ts';

/** How a wet pane goes through a step: after the air's vapour, or giving all it has. */
const FOLLOWS = 1;
const GIVES_ALL = 2;

export interface PaneDew {
  /** so many zones and panes from now on, dry */
  load(zones: number, panes: number): void;
  /** which panes water meets in the step, from what is known at its start */
  begin(): void;
  /** panes that water meets in the step */
  count(): number;
  /** add their terms to the balance */
  addTo(matrix: Float64Array, rhs: Float64Array): void;
  /** panes that would give more than their film at these ratios give it all and no more; whether there was one */
  driesUp(ratio: Float64Array): boolean;
  /** films, dew and latent heat at the zones' vapour at the step's end */
  settle(): void;
}

/** Dew on the panes of a state; load() before use. */
export function createPaneDew(state: VapourState, inputs: VapourInputs): PaneDew {
  let zones = 0;
  let panes = 0;
  let wets = 0;

  function begin(): void {
    const { dewPointC, pressure } = state.zone;
    const { zoneOf, film, paneW, wet } = state.pane;
    const { zoneC, paneC } = inputs;
    const count = panes;
    for (let w = 0; w < wets; w++) paneW[wet[w]!] = 0;
    wets = 0;
    for (let p = 0; p < count; p++) {
      // A dry pane above the dew point takes no dew: no need to know its saturation; nor the dew point, by a warm pane.
      if (film[p] === 0) {
        const z = zoneOf[p]!;
        if (paneC[p]! >= zoneC[z]!) continue;
        if (Number.isNaN(dewPointC[z]!)) dewPointC[z] = dewPointUnchecked(pressure[z]!);
        if (paneC[p]! > dewPointC[z]!) continue;
      }
      meet(p);
    }
  }

  /** Dew, or drying of what is there, as a conductance to the pane's saturation; drying the last drop as a rate. */
  function meet(p: number): void {
    const { zoneOf, film, transfer, wet, dewMode, dewPull, saturation } = state.pane;
    const { stepS, paneC } = inputs;
    const full = saturationPressureHeld(paneC[p]!);
    saturation[p] = full;
    const pull = transfer[p]! / (paneC[p]! + ZERO_CELSIUS_K);
    const drying = pull * (full - state.zone.pressure[zoneOf[p]!]!);
    wet[wets++] = p;
    if (film[p]! >= drying * stepS) {
      dewMode[p] = FOLLOWS;
      dewPull[p] = pull;
    } else {
      dewMode[p] = GIVES_ALL;
      dewPull[p] = film[p]! / stepS;
    }
  }

  function addTo(matrix: Float64Array, rhs: Float64Array): void {
    const { zoneOf, wet, dewMode, dewPull, saturation } = state.pane;
    const { perRatio } = state.zone;
    for (let w = 0; w < wets; w++) {
      const p = wet[w]!;
      const z = zoneOf[p]!;
      if (dewMode[p] === FOLLOWS) {
        matrix[z * zones + z]! += dewPull[p]! * perRatio[z]!;
        rhs[z]! += dewPull[p]! * saturation[p]!;
      } else {
        rhs[z]! += dewPull[p]!;
      }
    }
  }

  function driesUp(ratio: Float64Array): boolean {
    const { zoneOf, film, wet, dewMode, dewPull, saturation } = state.pane;
    const { perRatio } = state.zone;
    const { stepS } = inputs;
    let found = false;
    for (let w = 0; w < wets; w++) {
      const p = wet[w]!;
      if (dewMode[p] !== FOLLOWS) continue;
      const z = zoneOf[p]!;
      const air = ratio[z]! * perRatio[z]!;
      if (dewPull[p]! * (air - saturation[p]!) * stepS >= -film[p]!) continue;
      dewMode[p] = GIVES_ALL;
      dewPull[p] = film[p]! / stepS;
      found = true;
    }
    return found;
  }

  function settle(): void {
    const { zoneOf, film, fullFilm, paneW, wet, dewMode, dewPull, saturation } = state.pane;
    const { pressure, dew, drained, received } = state.zone;
    const { stepS } = inputs;
    for (let w = 0; w < wets; w++) {
      const p = wet[w]!;
      const z = zoneOf[p]!;
      const rate = dewMode[p] === FOLLOWS ? dewPull[p]! * (pressure[z]! - saturation[p]!) : -dewPull[p]!;
      film[p] = Math.max(0, film[p]! + rate * stepS);
      dew[z]! += rate;
      paneW[p] = rate * LATENT_HEAT;
      if (film[p]! > fullFilm[p]!) {
        const run = film[p]! - fullFilm[p]!;
        film[p] = fullFilm[p]!;
        drained[z]! += run;
        received[z]! -= run;
      }
    }
  }

  return {
    load(zoneCount, paneCount) {
      zones = zoneCount;
      panes = paneCount;
      wets = 0;
    },
    begin,
    count: () => wets,
    addTo,
    driesUp,
    settle,
  };
}
