// Panes from the glass catalogue: the make-up as the network sees it and what every window of a house shares.

import { glassById } from '../design/glass-catalogue.ts';
import { BARE_EMISSIVITY } from '../physics/glass-u-value.ts';
import type { GlassSystem, Pane } from './model.ts';

/** Timber frames: ISO 10077-1, from memory, high confidence [W/(m²K)]. */
export const FRAME_U_VALUE = 1.8;
/** Share of light that dirt and bars leave: 0.90–0.95 in handbooks; from memory, medium confidence. */
const DIRT = 0.95;
const GLASS_CONDUCTIVITY = 1;
const PLASTIC_CONDUCTIVITY = 0.2;

/** A catalogue glass as the network sees it. */
export function glassSystem(id: string): GlassSystem {
  const glass = glassById(id);
  return {
    sheets: glass.sheets,
    sheetM: glass.sheetM,
    sheetConductivity: id === 'twin-wall' ? PLASTIC_CONDUCTIVITY : GLASS_CONDUCTIVITY,
    gapM: glass.gapM,
    gas: glass.gas,
    gapEmissivity: glass.gapEmissivity,
    outsideEmissivity: BARE_EMISSIVITY,
    insideEmissivity: BARE_EMISSIVITY,
    optics: {
      kind: 'scaled',
      solarTransmittance: glass.solarTransmittance,
      solarHeatGain: glass.solarHeatGain,
    },
  };
}

/** An upright window from outdoors without shade or shutters; give what differs. */
export function paneWith(
  own: Pick<Pane, 'id' | 'areaM2' | 'frameShare' | 'glass' | 'azimuthDeg' | 'to'> & Partial<Pane>,
): Pane {
  return {
    frameUValue: FRAME_U_VALUE,
    tiltDeg: 90,
    from: 'outdoors',
    shading: null,
    filmOutside: { kind: 'computed' },
    filmInside: { kind: 'computed' },
    nightResistance: 0,
    lightRoom: null,
    dirt: DIRT,
    ...own,
  };
}
