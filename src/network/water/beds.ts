// What planted beds give off, and the heat it takes: of every bed two faces, its leaves and its ground, each an end of a chain
// of the thermal network. Films and light of an hour in; for the network a line in each face's own temperature, for the water
// balance a conductance to saturation at that temperature, out. A step is solved again until both say the same
// (latent-heat.ts); the small rest is pending for the next step, so that the books close.
// Method: src/physics/transpiration.ts, bed-soil.ts, water-surface.ts. A face colder than the dew point gives nothing and takes
// nothing. Ground and leaves are near each other: what the ground sees of leaves it gives their air, a leaf being within a
// kelvin or two of it.

import type { Model } from '../../model/model.ts';
import { soilVapour } from '../../physics/bed-soil.ts';
import { LATENT_HEAT, STEFAN_BOLTZMANN, ZERO_CELSIUS_K } from '../../physics/constants.ts';
import { heldToSaturation, saturationPressureHeld, saturationSlope } from '../../physics/moist-air.ts';
import { diffusePast, leafResistance, leafVapour } from '../../physics/transpiration.ts';
import { openWaterEvaporation, UNDISTURBED_WATER } from '../../physics/water-surface.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import type { Layout } from '../layout/layout.ts';
import { endB, nodeB, slotOf } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';
import type { MoistureInputs, MoistureState } from './moisture-state.ts';

/** Long-wave emissivity of leaves and soil together, one to the other: from memory, high confidence. */
const SHADED_EMISSIVITY = 0.88;
/** Less than this is dropped from what a face has pending [W]. */
const LEAST_PENDING_W = 1e-6;

/** Kinds of faces. */
const LEAVES = 0;
const MULCHED = 1;
const BARE = 2;
const WATER = 3;
const GROUND_KIND = { mulched: MULCHED, bare: BARE, 'open-water': WATER } as const;

export interface Beds {
  /** take a laid-out model's beds in; its network is in the stepper */
  load(model: Model, layout: Layout): void;
  /** conductances of the hour, once its films and its sun are written; without water the faces stay dry */
  renew(withWater: boolean): void;
  /** the hour's sources have been written, and with them what was applied to faces is gone */
  beginHour(): void;
  /** what is expected and pending, onto the faces, before the network's step */
  beginStep(): void;
  /** temperatures of the solved step, for its water */
  readMeans(): void;
  /** faces of all beds */
  count(): number;
  /** what each zone's faces give in dry air [kg/s], and less by the pascal of its vapour [kg/(s·Pa)] */
  readonly givenKg: Float64Array;
  readonly perPa: Float64Array;
  /** faces in air past their own saturation at these ratios stop giving; whether there was one */
  limit(ratio: Float64Array): boolean;
  /** what each face gives at these ratios */
  respond(ratio: Float64Array): void;
  /** how far the heat each face was solved with is off what its water takes [W], from a place on; the furthest [W/m²] */
  readOff(into: Float64Array, from: number): number;
  /** onto each face what it is off by, between the network's sweep and its solution */
  addMissing(): void;
  /** more heat on each face in a swept step [W], from a place on; beginSolving() after it */
  add(watts: Float64Array, from: number): void;
  /** what is left is pending */
  endStep(): void;
  /** by zone, applied to its faces, added up over the steps of the hour [W] */
  readonly hourW: Float64Array;
}

/** Beds on a stepper, with room for so many zones; load() before use. */
export function createBeds(
  capacity: EngineCapacity,
  stepper: Stepper,
  inputs: MoistureInputs,
  state: MoistureState,
): Beds {
  const most = 2 * capacity.zones;
  const perFace = () => new Float64Array(most);
  const faces = {
    zones: new Int32Array(most),
    chains: new Int32Array(most),
    nodes: new Int32Array(most),
    kinds: new Int32Array(most),
    areas: perFace(),
    leafAreas: perFace(),
    boundaries: perFace(),
    /** of the ground, what leaves hide [m²] */
    hiddens: perFace(),
    /** vapour by the pascal [kg/(s·Pa)] */
    vapours: perFace(),
    /** mean of the step [°C], saturation there [Pa] */
    tempC: perFace(),
    saturations: perFace(),
    /** 1 while it gives */
    gives: perFace(),
    /** given in the tried step [kg/s] */
    rates: perFace(),
    /** added to the line at the face, and still to be applied [W] */
    added: perFace(),
    pending: perFace(),
    /** what the tried step's water takes of a face, with what is pending, less what the face was solved with [W] */
    missing: perFace(),
  };
  const perZone = () => new Float64Array(capacity.zones);
  const givenKg = perZone();
  const perPa = perZone();
  const hourW = perZone();
  let count = 0;
  let zones = 0;

  function load(model: Model, layout: Layout): void {
    zones = model.zones.length;
    count = 0;
    for (const array of [...Object.values(faces), givenKg, perPa, hourW]) array.fill(0);
    for (const { zone, planting, ground, canopy } of layout.beds) {
      const { leafAreaIndex, bedM2, boundaryResistance, soil } = planting;
      const add = (kind: number, chain: number) => {
        faces.kinds[count] = kind;
        faces.zones[count] = zone;
        faces.chains[count] = chain;
        faces.nodes[count] = nodeB(stepper.first, chain);
        faces.areas[count] = bedM2;
        faces.leafAreas[count] = leafAreaIndex;
        faces.boundaries[count] = boundaryResistance;
        faces.hiddens[count] = bedM2 * (1 - diffusePast(leafAreaIndex));
        count++;
      };
      if (canopy >= 0) add(LEAVES, canopy);
      add(GROUND_KIND[soil], ground);
    }
  }

  function renew(withWater: boolean): void {
    const { chains, vapours, kinds, nodes, zones: zoneOf } = faces;
    const { nodeC, endBoundary, endBoundaryC } = stepper;
    const { vapourPa } = state.zone;
    for (let i = 0; i < count; i++) {
      const end = endB(chains[i]!);
      const tempC = nodeC[nodes[i]!]!;
      if (kinds[i] !== LEAVES) shadeGround(i);
      vapours[i] = withWater ? vapourOf(i, tempC) : 0;
      const z = zoneOf[i]!;
      const saturation = saturationPressureHeld(tempC);
      const perK = vapours[i]! * saturationSlope(heldToSaturation(tempC));
      const slope = LATENT_HEAT * perK;
      const heat = LATENT_HEAT * vapours[i]! * Math.max(0, saturation - vapourPa[z]!);
      endBoundary[end] = slope;
      endBoundaryC[end] = slope > 0 ? tempC - heat / slope : 0;
    }
  }

  function vapourOf(i: number, tempC: number): number {
    const { kinds, areas, nodes, leafAreas, boundaries, chains, zones: zoneOf, hiddens } = faces;
    const area = areas[i]!;
    if (kinds[i] === WATER) {
      return (area * openWaterEvaporation(1, 0, 0, UNDISTURBED_WATER)) / 1000;
    }
    if (kinds[i] !== LEAVES) {
      const film = stepper.endHubG[slotOf(endB(chains[i]!), 0)]! - hiddens[i]! * seen(tempC);
      return area * soilVapour(film / area, tempC, kinds[i] === BARE ? 'bare' : 'mulched');
    }
    const z = zoneOf[i]!;
    const deficit = saturationPressureHeld(inputs.zoneC[z]!) - state.zone.vapourPa[z]!;
    const inner = leafResistance(stepper.nodeW[nodes[i]!]! / area, leafAreas[i]!, deficit);
    return area * leafVapour(leafAreas[i]!, tempC, boundaries[i]!, inner);
  }

  /** What the ground sees of leaves, to the air among them. */
  function shadeGround(i: number): void {
    const slot = slotOf(endB(faces.chains[i]!), 0);
    stepper.endHubG[slot]! += faces.hiddens[i]! * seen(stepper.nodeC[faces.nodes[i]!]!);
  }

  function beginHour(): void {
    const { added } = faces;
    for (let i = 0; i < count; i++) added[i] = 0;
    for (let z = 0; z < zones; z++) hourW[z] = 0;
  }

  /** What the line at a face comes to at a temperature, with what is added [W]. */
  function lineAt(i: number, tempC: number): number {
    const end = endB(faces.chains[i]!);
    return stepper.endBoundary[end]! * (stepper.endBoundaryC[end]! - tempC) + faces.added[i]!;
  }

  /** More heat than so far into a face. */
  function add(i: number, watt: number): void {
    faces.added[i]! += watt;
    stepper.addHeat(endB(faces.chains[i]!), watt);
  }

  function addInStep(i: number, watt: number): void {
    faces.added[i]! += watt;
    stepper.addHeatInStep(faces.chains[i]!, watt);
  }

  function beginStep(): void {
    const { nodes, vapours, pending, zones: zoneOf } = faces;
    const { vapourPa } = state.zone;
    for (let i = 0; i < count; i++) {
      const tempC = stepper.nodeC[nodes[i]!]!;
      const deficit = Math.max(0, saturationPressureHeld(tempC) - vapourPa[zoneOf[i]!]!);
      add(i, pending[i]! - LATENT_HEAT * vapours[i]! * deficit - lineAt(i, tempC));
    }
  }

  function readMeans(): void {
    const { chains, tempC, saturations, gives } = faces;
    if (count === 0) return;
    stepper.readInnerMeans(chains, count, tempC);
    for (let i = 0; i < count; i++) {
      saturations[i] = saturationPressureHeld(tempC[i]!);
      gives[i] = 1;
    }
    addUp();
  }

  function addMissing(): void {
    const { missing } = faces;
    findMissing();
    for (let i = 0; i < count; i++) addInStep(i, missing[i]!);
  }

  function addUp(): void {
    const { zones: zoneOf, gives, vapours, saturations } = faces;
    for (let z = 0; z < zones; z++) {
      givenKg[z] = 0;
      perPa[z] = 0;
    }
    for (let i = 0; i < count; i++) {
      if (gives[i] === 0) continue;
      const z = zoneOf[i]!;
      givenKg[z]! += vapours[i]! * saturations[i]!;
      perPa[z]! += vapours[i]!;
    }
  }

  function limit(ratio: Float64Array): boolean {
    const { zones: zoneOf, gives, saturations } = faces;
    const { pressurePerRatio } = state.zone;
    let found = false;
    for (let i = 0; i < count; i++) {
      const z = zoneOf[i]!;
      if (gives[i] === 0 || ratio[z]! * pressurePerRatio[z]! <= saturations[i]!) continue;
      gives[i] = 0;
      found = true;
    }
    if (found) addUp();
    return found;
  }

  function respond(ratio: Float64Array): void {
    const { zones: zoneOf, kinds, gives, vapours, saturations, rates } = faces;
    const { pressurePerRatio, plantsKg, soilKg } = state.zone;
    for (let z = 0; z < zones; z++) {
      plantsKg[z] = 0;
      soilKg[z] = 0;
    }
    for (let i = 0; i < count; i++) {
      const z = zoneOf[i]!;
      const rate = gives[i]! * vapours[i]! * (saturations[i]! - ratio[z]! * pressurePerRatio[z]!);
      rates[i] = rate;
      const given = kinds[i] === LEAVES ? plantsKg : soilKg;
      given[z]! += rate;
    }
  }

  /** Into `missing`, face by face. */
  function findMissing(): void {
    const { chains, tempC, added, pending, rates, missing } = faces;
    const { endBoundary, endBoundaryC } = stepper;
    const last = count;
    for (let i = 0; i < last; i++) {
      const end = endB(chains[i]!);
      const line = endBoundary[end]! * (endBoundaryC[end]! - tempC[i]!) + added[i]!;
      missing[i] = pending[i]! - LATENT_HEAT * rates[i]! - line;
    }
  }

  function readOff(into: Float64Array, from: number): number {
    const { areas, missing } = faces;
    let most = 0;
    findMissing();
    for (let i = 0; i < count; i++) {
      into[from + i] = missing[i]!;
      most = Math.max(most, Math.abs(missing[i]!) / areas[i]!);
    }
    return most;
  }

  function endStep(): void {
    const { zones: zoneOf, pending, tempC, missing } = faces;
    findMissing();
    for (let i = 0; i < count; i++) {
      const left = missing[i]!;
      hourW[zoneOf[i]!]! += lineAt(i, tempC[i]!);
      pending[i] = Math.abs(left) > LEAST_PENDING_W ? left : 0;
    }
  }

  return {
    load,
    renew,
    beginHour,
    beginStep,
    readMeans,
    addMissing,
    count: () => count,
    givenKg,
    perPa,
    limit,
    respond,
    readOff,
    add(watts, from) {
      for (let i = 0; i < count; i++) addInStep(i, watts[from + i]!);
    },
    endStep,
    hourW,
  };
}

/** Long-wave between ground and leaves [W/(m²K)]. */
function seen(tempC: number): number {
  const kelvin = tempC + ZERO_CELSIUS_K;
  return 4 * SHADED_EMISSIVITY * STEFAN_BOLTZMANN * kelvin * kelvin * kelvin;
}
