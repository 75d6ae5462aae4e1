// Condensation on the panes, step by step, as the moisture balance (moisture-balance.ts) sees it: panes' temperatures, the
// convection their heat has in the hour (past covers: what stands before the glass holds vapour back as it does heat), and
// the zones' vapour in; what each pane takes or gives as terms of the balance, then films, run-off and latent heat, out.
// Method: Lewis relation, src/physics/surface-condensation.ts; a pane follows its zone's vapour while its film lasts, and
// gives the last of it as a rate.

import { GAS_CONSTANT_VAPOUR, LATENT_HEAT, ZERO_CELSIUS_K } from '../../physics/constants.ts';
import { dewPointUnchecked, saturationPressureHeld } from '../../physics/moist-air.ts';
import { massTransferCoefficient } from '../../physics/surface-condensation.ts';
import type { MoistureInputs, MoistureState } from './moisture-state.ts';

/** Vapour by the pascal and kelvin that goes with a convective conductance to the air [kg·K/(s·Pa) by W/K]. */
const VAPOUR_BY_HEAT = massTransferCoefficient(1) / GAS_CONSTANT_VAPOUR;

/** How a wet pane goes through a step: after the air's vapour, or giving all it has. */
const FOLLOWS = 1;
const GIVES_ALL = 2;

export interface PaneCondensation {
  /** so many zones and panes from now on, dry */
  load(zones: number, panes: number): void;
  /** which panes water meets in the step, from what is known at its start */
  begin(): void;
  /** panes that water meets in the step */
  count(): number;
  /** add their terms to the balance */
  addTo(matrix: Float64Array, rhs: Float64Array): void;
  /** panes that would give more than their film at these ratios give it all and no more; whether there was one */
  limitDrying(ratio: Float64Array): boolean;
  /** latent heat of the panes at these ratios */
  respond(ratio: Float64Array): void;
  /** films and condensation at the zones' vapour at the step's end */
  endStep(): void;
}

/** Condensation on the panes of a state; load() before use. */
export function createPaneCondensation(state: MoistureState, inputs: MoistureInputs): PaneCondensation {
  let zones = 0;
  let panes = 0;
  let wets = 0;

  function begin(): void {
    const { dewPointC, vapourPa } = state.zone;
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
        if (Number.isNaN(dewPointC[z]!)) dewPointC[z] = dewPointUnchecked(vapourPa[z]!);
        if (paneC[p]! > dewPointC[z]!) continue;
      }
      meetPane(p);
    }
  }

  /** Condensation, or drying of what is there, as a conductance to the pane's saturation; drying the last drop as a rate. */
  function meetPane(p: number): void {
    const { zoneOf, film, wet, mode, exchange, paneSaturationPa } = state.pane;
    const { stepS, paneC, paneFilm } = inputs;
    const saturation = saturationPressureHeld(paneC[p]!);
    paneSaturationPa[p] = saturation;
    const perPa = (VAPOUR_BY_HEAT * paneFilm[p]!) / (paneC[p]! + ZERO_CELSIUS_K);
    const drying = perPa * (saturation - state.zone.vapourPa[zoneOf[p]!]!);
    wet[wets++] = p;
    if (film[p]! >= drying * stepS) {
      mode[p] = FOLLOWS;
      exchange[p] = perPa;
    } else {
      mode[p] = GIVES_ALL;
      exchange[p] = film[p]! / stepS;
    }
  }

  function addTo(matrix: Float64Array, rhs: Float64Array): void {
    const { zoneOf, wet, mode, exchange, paneSaturationPa } = state.pane;
    const { pressurePerRatio } = state.zone;
    for (let w = 0; w < wets; w++) {
      const p = wet[w]!;
      const z = zoneOf[p]!;
      if (mode[p] === FOLLOWS) {
        matrix[z * zones + z]! += exchange[p]! * pressurePerRatio[z]!;
        rhs[z]! += exchange[p]! * paneSaturationPa[p]!;
      } else {
        rhs[z]! += exchange[p]!;
      }
    }
  }

  function limitDrying(ratio: Float64Array): boolean {
    const { zoneOf, film, wet, mode, exchange, paneSaturationPa } = state.pane;
    const { pressurePerRatio } = state.zone;
    const { stepS } = inputs;
    let found = false;
    for (let w = 0; w < wets; w++) {
      const p = wet[w]!;
      if (mode[p] !== FOLLOWS) continue;
      const z = zoneOf[p]!;
      const air = ratio[z]! * pressurePerRatio[z]!;
      if (exchange[p]! * (air - paneSaturationPa[p]!) * stepS >= -film[p]!) continue;
      mode[p] = GIVES_ALL;
      exchange[p] = film[p]! / stepS;
      found = true;
    }
    return found;
  }

  function respond(ratio: Float64Array): void {
    const { zoneOf, paneW, wet, mode, exchange, paneSaturationPa } = state.pane;
    const { pressurePerRatio } = state.zone;
    for (let w = 0; w < wets; w++) {
      const p = wet[w]!;
      const z = zoneOf[p]!;
      const vapour = ratio[z]! * pressurePerRatio[z]!;
      const rate = mode[p] === FOLLOWS ? exchange[p]! * (vapour - paneSaturationPa[p]!) : -exchange[p]!;
      paneW[p] = rate * LATENT_HEAT;
    }
  }

  function endStep(): void {
    const { zoneOf, film, mostFilm, wet, mode, exchange, paneSaturationPa } = state.pane;
    const { vapourPa, condensation, drained, received } = state.zone;
    const { stepS } = inputs;
    for (let w = 0; w < wets; w++) {
      const p = wet[w]!;
      const z = zoneOf[p]!;
      const rate = mode[p] === FOLLOWS ? exchange[p]! * (vapourPa[z]! - paneSaturationPa[p]!) : -exchange[p]!;
      film[p] = Math.max(0, film[p]! + rate * stepS);
      condensation[z]! += rate;
      if (film[p]! > mostFilm[p]!) {
        const run = film[p]! - mostFilm[p]!;
        film[p] = mostFilm[p]!;
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
    limitDrying,
    respond,
    endStep,
  };
}
