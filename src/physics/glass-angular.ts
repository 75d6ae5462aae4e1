// A glazing's solar shares degree by degree, ready for the hourly loop: a named glass in, tables of transmitted and
// absorbed shares for 0…90° and for diffuse light out.
// Method. Clear panes of the same number give the shape (glass-transmittance.ts). A named glass states its normal
// transmittance and solar heat gain: the transmittance curve is scaled to the one; the absorbed part of every pane is
// scaled by one factor so that τ + Σ N α at normal incidence is the other (N = share of a pane's absorbed heat that
// flows inward). If so much absorption would leave less than 4 % for reflection, all of it is put in the pane with
// the largest N. Error: coated glass falls off up to 0.03 (of 1) earlier between 50 and 75° than its clear shape.

import { type ClearPane, glassAtAngle, glassDiffuse } from './glass-transmittance.ts';
import { requireRange } from './require-range.ts';

/** Degrees between table entries. */
const STEP_DEG = 1;

/** No bare or coated glass throws back less sun than this at normal incidence. */
const LEAST_REFLECTANCE = 0.04;

export interface AngularSystem {
  /** number of equal panes, 1…3 */
  readonly panes: number;
  /** of the clear panes that give the shape */
  readonly refractiveIndex: number;
  readonly extinctionPerM: number;
  readonly thicknessM: number;
  /** stated solar transmittance at normal incidence, 0…1; absent: as clear */
  readonly solarTransmittanceNormal?: number;
  /** stated solar heat gain coefficient at normal incidence, ≥ transmittance; absent: absorption as clear */
  readonly solarHeatGainNormal?: number;
  /** share of the heat absorbed in each pane that flows inward, outer first, 0…1; needed with the line above */
  readonly inwardFractions?: readonly number[];
}

/** Shares of the incident sunlight by angle; entry i is for i degrees from the normal. */
export interface AngularTable {
  readonly stepDeg: number;
  /** 91 entries */
  readonly transmittance: Float64Array;
  /** one array of 91 entries a pane, outer first */
  readonly absorbed: readonly Float64Array[];
  /** for light from the whole hemisphere alike */
  readonly diffuseTransmittance: number;
  readonly diffuseAbsorbed: readonly number[];
}

/**
 * Tabulate a glazing.
 *
 * @param system see AngularSystem; a stated pair of values that no glass of so many panes can have is refused
 * @returns transmitted and absorbed shares; without stated values exactly those of the clear panes
 */
export function angularTable(system: AngularSystem): AngularTable {
  requireRange('panes', system.panes, 1, 3, '');
  const pane: ClearPane = {
    refractiveIndex: system.refractiveIndex,
    extinctionPerM: system.extinctionPerM,
    thicknessM: system.thicknessM,
  };
  const panes = Array.from({ length: system.panes }, () => pane);
  const clear = Array.from({ length: 90 / STEP_DEG + 1 }, (_, i) => glassAtAngle(panes, i * STEP_DEG));
  const diffuse = glassDiffuse(panes);
  const scale = scaling(system, clear[0]!.transmittance, clear[0]!.absorptance);
  const table = {
    stepDeg: STEP_DEG,
    transmittance: Float64Array.from(clear, (at) => scale.transmittance * at.transmittance),
    absorbed: panes.map((_, i) =>
      Float64Array.from(clear, (at) => scale.absorptance[i]! * at.absorptance[i]!),
    ),
    diffuseTransmittance: scale.transmittance * diffuse.transmittance,
    diffuseAbsorbed: diffuse.absorptance.map((share, i) => scale.absorptance[i]! * share),
  };
  refuseImpossible(table);
  return table;
}

interface Scale {
  readonly transmittance: number;
  readonly absorptance: readonly number[];
}

/** Factors on the clear curves, from the stated normal values and the clear ones. */
function scaling(
  system: AngularSystem,
  clearTransmittance: number,
  clearAbsorptance: readonly number[],
): Scale {
  const { solarTransmittanceNormal, solarHeatGainNormal, inwardFractions } = system;
  const transmitted = solarTransmittanceNormal ?? clearTransmittance;
  requireRange('solarTransmittanceNormal', transmitted, 0, 1, '');
  const transmittance = solarTransmittanceNormal === undefined ? 1 : transmitted / clearTransmittance;
  if (solarHeatGainNormal === undefined) return { transmittance, absorptance: clearAbsorptance.map(() => 1) };

  requireRange('solarHeatGainNormal', solarHeatGainNormal, transmitted, 1, '');
  if (inwardFractions === undefined || inwardFractions.length !== clearAbsorptance.length) {
    throw new RangeError(
      `inwardFractions has ${inwardFractions?.length ?? 0} entries; allowed ${system.panes}`,
    );
  }
  for (const inward of inwardFractions) requireRange('inwardFractions', inward, 0, 1, '');
  const wanted = solarHeatGainNormal - transmitted;
  const clearInward = clearAbsorptance.reduce((sum, share, i) => sum + share * inwardFractions[i]!, 0);
  const factor = wanted / clearInward;
  const absorbed = factor * clearAbsorptance.reduce((sum, share) => sum + share, 0);
  if (transmitted + absorbed <= 1 - LEAST_REFLECTANCE) {
    return { transmittance, absorptance: clearAbsorptance.map(() => factor) };
  }
  const warmest = inwardFractions.indexOf(Math.max(...inwardFractions));
  return {
    transmittance,
    absorptance: clearAbsorptance.map((share, i) =>
      i === warmest ? wanted / (share * inwardFractions[i]!) : 0,
    ),
  };
}

/** A glazing cannot take in more light than it gets, at any angle. */
function refuseImpossible(table: AngularTable): void {
  for (let i = 0; i < table.transmittance.length; i++) {
    const taken = table.absorbed.reduce((sum, pane) => sum + pane[i]!, table.transmittance[i]!);
    if (taken <= 1) continue;
    throw new RangeError(
      `transmitted and absorbed share at ${i * table.stepDeg}° is ${taken.toFixed(3)}; allowed 0 to 1: ` +
        'the stated normal transmittance and solar heat gain do not go together',
    );
  }
}
