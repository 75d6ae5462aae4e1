// Where light that has entered a zone ends up: for each zone, and for beam that strikes the floor, beam that
// strikes the wall behind and diffuse light, the share absorbed at every surface node, the share lost through
// glass, and the share taken up in each zone. Shares of one source and its losses add to 1.
// Method: beam is absorbed by the absorptance of what it strikes; what it throws back lands on the zone's other
// surfaces by area; everything after that is the integrating sphere, shares by area × absorptance with every
// later reflection summed. Glass counts with what passes back out; openings and glass between zones pass light on.

import type { Model, ZoneFace } from '../../model/model.ts';
import { diffusePast } from '../../physics/transpiration.ts';
import type { Layout } from '../layout/layout.ts';
import { nodeA, nodeB } from '../solver/network-index.ts';
import { opticsOf } from './pane-optics.ts';

/** Light sources of a zone, as row offsets: source = 3 · zone + kind. */
export const BEAM_ON_FLOOR = 0;
export const BEAM_ON_BACK = 1;
export const DIFFUSE = 2;

export interface LightDistribution {
  /** by source: nodes that take up light and their shares */
  readonly nodes: readonly Int32Array[];
  readonly shares: readonly Float64Array[];
  /** by source, then zone: share absorbed in that zone */
  readonly zoneShare: readonly Float64Array[];
  /** by source: share that leaves through glass to outdoors */
  readonly lost: Float64Array;
}

/** A surface as a zone's light sees it. */
interface Surface {
  /** chain of the element, −1 for glass and open sides */
  readonly chain: number;
  readonly areaM2: number;
  readonly lit: ZoneFace['lit'];
  /** node and share of what strikes it */
  readonly absorbs: readonly { readonly node: number; readonly share: number }[];
  /** share that passes to another zone (index) or outdoors (−1) */
  readonly passes: number;
  readonly passesTo: number;
}

const SETTLED = 1e-13;
const MOST_PASSES = 500;

/**
 * Trace the light of every zone.
 *
 * @param model its openings that can be seen through pass light
 * @param layout places of surfaces; `first` of the stepper gives node numbers
 * @param first first node of each chain
 * @returns sources of each zone, then one of each bed: a watt of the floor's beam moved from its ground to its leaves
 */
export function distributeLight(model: Model, layout: Layout, first: Int32Array): LightDistribution {
  const zones = layout.zoneIds.length;
  const surfaces = surfacesOf(model, layout, first);
  const nodeCount = first.at(-1)!;
  const nodes: Int32Array[] = [];
  const shares: Float64Array[] = [];
  const zoneShare: Float64Array[] = [];
  const lost = new Float64Array(3 * zones);
  for (let zone = 0; zone < zones; zone++) {
    for (const kind of [BEAM_ON_FLOOR, BEAM_ON_BACK, DIFFUSE]) {
      const trace = new Trace(surfaces, nodeCount);
      if (kind === DIFFUSE) trace.diffuse[zone] = 1;
      else trace.strike(zone, kind === BEAM_ON_FLOOR ? 'floor' : 'back', 1);
      trace.settle();
      const hit = [...trace.absorbed.keys()].filter((node) => trace.absorbed[node]! > 0);
      nodes.push(Int32Array.from(hit));
      shares.push(Float64Array.from(hit, (node) => trace.absorbed[node]!));
      zoneShare.push(trace.inZone);
      lost[3 * zone + kind] = trace.lost;
    }
  }
  for (const { zone, ground, canopy } of layout.beds) {
    const all = surfaces[zone]!;
    const floorM2 = sumOf(
      all.filter(({ lit }) => lit === 'floor'),
      ({ areaM2 }) => areaM2,
    );
    const bed = all.find(({ chain }) => chain === ground)!;
    const toLeaves = new Trace(surfaces, nodeCount);
    const toGround = new Trace(surfaces, nodeCount);
    if (canopy >= 0) {
      // As though the leaves hid all of the ground, and none of it.
      const [leaves, bare] = underLeaves(layout, first, ground);
      const part = bed.areaM2 / floorM2;
      toLeaves.strikeOne(zone, { ...bed, absorbs: [leaves] }, part);
      toGround.strikeOne(zone, { ...bed, absorbs: [bare] }, part);
    }
    toLeaves.settle();
    toGround.settle();
    const moved = toLeaves.absorbed.map((share, node) => share - toGround.absorbed[node]!);
    const hit = [...moved.keys()].filter((node) => moved[node] !== 0);
    nodes.push(Int32Array.from(hit));
    shares.push(Float64Array.from(hit, (node) => moved[node]!));
    zoneShare.push(toLeaves.inZone.map((share, z) => share - toGround.inZone[z]!));
  }
  return { nodes, shares, zoneShare, lost };
}

/** One unit of light on its way. */
class Trace {
  readonly absorbed: Float64Array;
  readonly inZone: Float64Array;
  readonly diffuse: Float64Array;
  lost = 0;
  readonly #surfaces: readonly (readonly Surface[])[];

  constructor(surfaces: readonly (readonly Surface[])[], nodeCount: number) {
    this.#surfaces = surfaces;
    this.absorbed = new Float64Array(nodeCount);
    this.inZone = new Float64Array(surfaces.length);
    this.diffuse = new Float64Array(surfaces.length);
  }

  /** Beam on the faces so marked, by area; without any, on the floor; without that, spread at once. */
  strike(zone: number, lit: 'floor' | 'back', amount: number): void {
    const all = this.#surfaces[zone]!;
    const struck = all.filter((surface) => surface.lit === lit);
    if (struck.length === 0) {
      if (lit === 'back') this.strike(zone, 'floor', amount);
      else this.diffuse[zone]! += amount;
      return;
    }
    const others = all.filter((surface) => surface.lit !== lit);
    const area = sumOf(struck, (surface) => surface.areaM2);
    for (const surface of struck) {
      const part = (amount * surface.areaM2) / area;
      const left = this.#take(zone, surface, part, true);
      this.#land(zone, others, left);
    }
  }

  /** Beam on one of the faces so marked. */
  strikeOne(zone: number, surface: Surface, amount: number): void {
    const others = this.#surfaces[zone]!.filter(({ lit }) => lit !== surface.lit);
    this.#land(zone, others, this.#take(zone, surface, amount, true));
  }

  /** First reflection: onto the other surfaces by area. */
  #land(zone: number, others: readonly Surface[], amount: number): void {
    const area = sumOf(others, (surface) => surface.areaM2);
    if (area === 0) {
      this.diffuse[zone]! += amount;
      return;
    }
    for (const surface of others) {
      this.diffuse[zone]! += this.#take(zone, surface, (amount * surface.areaM2) / area, false);
    }
  }

  /** What a surface takes from light that strikes it; returns what it throws back. */
  #take(zone: number, surface: Surface, amount: number, asBeam: boolean): number {
    let left = amount;
    for (const { node, share } of surface.absorbs) {
      this.absorbed[node]! += amount * share;
      this.inZone[zone]! += amount * share;
      left -= amount * share;
    }
    const passed = amount * surface.passes;
    left -= passed;
    if (passed > 0) {
      if (surface.passesTo < 0) this.lost += passed;
      else if (asBeam) this.strike(surface.passesTo, 'floor', passed);
      else this.diffuse[surface.passesTo]! += passed;
    }
    return left;
  }

  /** Integrating sphere in every zone, over and over, until all light has landed. */
  settle(): void {
    for (let pass = 0; pass < MOST_PASSES && sumOf([...this.diffuse], (x) => x) > SETTLED; pass++) {
      const waiting = this.diffuse.slice();
      this.diffuse.fill(0);
      waiting.forEach((amount, zone) => {
        if (amount > 0) this.#fill(zone, amount);
      });
    }
    this.lost += sumOf([...this.diffuse], (x) => x);
  }

  #fill(zone: number, amount: number): void {
    const all = this.#surfaces[zone]!;
    const takes = (surface: Surface) => sumOf(surface.absorbs, ({ share }) => share) + surface.passes;
    const total = sumOf(all, (surface) => surface.areaM2 * takes(surface));
    if (total === 0) {
      this.lost += amount;
      return;
    }
    for (const surface of all) {
      const own = takes(surface);
      // With every reflection summed, a surface ends up with area × absorptance; #take then splits that as it
      // would one strike, whose amount is the absorbed amount over the absorptance.
      if (own > 0) this.#take(zone, surface, (amount * surface.areaM2) / total, false);
    }
  }
}

function surfacesOf(model: Model, layout: Layout, first: Int32Array): Surface[][] {
  const zones: Surface[][] = layout.zoneIds.map(() => []);
  const nodeAt = (chain: number, side: 'a' | 'b') =>
    side === 'a' ? nodeA(first, chain) : nodeB(first, chain);
  for (const { element, chain, zoneA, zoneB } of layout.elements) {
    for (const [side, face, zone] of [
      ['a', element.a, zoneA],
      ['b', element.b, zoneB],
    ] as const) {
      if (face.kind !== 'zone') continue;
      const bed = element.isBed === true && side === 'b' ? underLeaves(layout, first, chain) : null;
      const past = bed === null ? 1 : bed[2];
      zones[zone]!.push({
        chain,
        areaM2: element.areaM2,
        lit: face.lit,
        absorbs:
          bed === null
            ? [{ node: nodeAt(chain, side), share: face.absorptance }]
            : [
                { node: bed[0].node, share: (1 - past) * bed[0].share },
                { node: bed[1].node, share: past * bed[1].share },
              ],
        passes: 0,
        passesTo: -1,
      });
    }
  }
  for (const { pane, chain, zoneFrom, zoneTo, glassM2 } of layout.panes) {
    const optics = opticsOf(pane.glass);
    const nodes = optics.diffuseAbsorbed.map((share, i) => ({ node: nodeA(first, chain) + i, share }));
    // Seen from inside, the sheets stand in the other order.
    const fromInside = nodes.map(({ node }, i) => ({ node, share: optics.diffuseAbsorbed.at(-1 - i)! }));
    const common = { chain: -1, areaM2: glassM2, passes: optics.diffuseTransmittance };
    zones[zoneTo]!.push({ ...common, lit: 'none', absorbs: fromInside, passesTo: zoneFrom });
    if (zoneFrom >= 0) zones[zoneFrom]!.push({ ...common, lit: 'back', absorbs: nodes, passesTo: zoneTo });
  }
  for (const opening of model.openings) {
    if (opening.kind !== 'door' || !opening.seeThrough) continue;
    const [from, to] = [layout.zoneIds.indexOf(opening.zone), layout.zoneIds.indexOf(opening.other)];
    const hole = { chain: -1, areaM2: opening.widthM * opening.heightM, absorbs: [], passes: 1 };
    zones[from]!.push({ ...hole, lit: 'back', passesTo: to });
    zones[to]!.push({ ...hole, lit: 'none', passesTo: from });
  }
  return zones;
}

/** What the leaves of a bed take of light that strikes them, what its ground takes, and the share of diffuse light it gets. */
function underLeaves(
  layout: Layout,
  first: Int32Array,
  chain: number,
): [leaves: Surface['absorbs'][number], ground: Surface['absorbs'][number], past: number] {
  const { planting, canopy } = layout.beds.find(({ ground }) => ground === chain)!;
  const { element } = layout.elements.find((one) => one.chain === chain)!;
  const ground = { node: nodeB(first, chain), share: element.b.absorptance };
  if (canopy < 0) return [ground, ground, 1];
  const leaves = { node: nodeB(first, canopy), share: 1 - planting.albedo };
  return [leaves, ground, diffusePast(planting.leafAreaIndex)];
}

function sumOf<T>(items: readonly T[], of: (item: T) => number): number {
  return items.reduce((sum, item) => sum + of(item), 0);
}
