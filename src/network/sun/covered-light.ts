// Sun through panes with covers, hour by hour: how far each cover is drawn in; light entering each zone, heat in sheets
// and heat that inside covers give to the rooms, out. Panes without covers are summed before the run (hourly-sun.ts);
// these cannot be, since their covers follow the rooms.
// Several covers of a pane are met from outside in, each by what the one before lets through.

import { type DayPart, meanOver } from '../hour/day-part.ts';
import type { CoveredPane } from '../layout/covered-panes.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { nodeA } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';
import { type CoverOptics, coverOptics } from './cover-optics.ts';
import type { PaneLights } from './hourly-sun.ts';
import { BEAM_ON_BACK, BEAM_ON_FLOOR, DIFFUSE } from './light-distribution.ts';
import type { PaneLight } from './pane-light.ts';

/** A cover as its pane's light meets it. */
interface Met extends CoverOptics {
  readonly hand: number;
  readonly coverage: number;
  readonly scatters: boolean;
  /** outside covers keep the sun from the sheets as well */
  readonly shadesSheets: boolean;
}

interface Lit {
  readonly light: PaneLight;
  readonly covers: readonly Met[];
  readonly dirt: number;
  readonly glassM2: number;
  readonly zone: number;
  readonly firstNode: number;
  readonly nodes: number;
}

/** Light of panes with covers onto a stepper, with room for so much; load() before use. */
export function createCoveredLight(
  capacity: EngineCapacity,
  stepper: Stepper,
  /** by hand, how far drawn, weighed by the sun */
  shading: Float64Array,
) {
  const given = {
    /** light entering by source, 3 · zone + kind [W] */
    sourceW: new Float64Array(3 * capacity.zones),
    /** heat in sheets, and given by inside covers, by zone [W] */
    sheetW: new Float64Array(capacity.zones),
    roomW: new Float64Array(capacity.zones),
    /** by covered pane, passed into the zone [W] */
    passedW: new Float64Array(capacity.panes),
  };
  let panes: readonly Lit[] = [];

  function load(covered: readonly CoveredPane[], lights: PaneLights): void {
    panes = covered.map(({ chain, place, member, glassM2, covers }): Lit => {
      const light = lights[place]![member]!;
      return {
        light,
        covers: covers.map(({ cover, hand }) => ({
          ...coverOptics(chain.pane.glass, cover),
          hand,
          coverage: cover.coverage,
          scatters: cover.scatters,
          shadesSheets: cover.place === 'outside',
        })),
        dirt: chain.pane.dirt,
        glassM2,
        zone: chain.zoneTo,
        firstNode: nodeA(stepper.first, chain.chain),
        nodes: light.absorbedW.length,
      };
    });
    clear();
  }

  function clear(): void {
    for (const array of Object.values(given)) array.fill(0);
  }

  /** Onto nodes, and into the sums, for an hour. */
  function renew(hour: number): void {
    clear();
    for (let p = 0; p < panes.length; p++) {
      const { light } = panes[p]!;
      shine(
        p,
        light.beamFloorW[hour]!,
        light.beamBackW[hour]!,
        light.diffuseW[hour]!,
        (n) => light.absorbedW[n]![hour]!,
      );
    }
  }

  /** The same for the mean of a day part. */
  function renewMean(dayPart: DayPart): void {
    clear();
    panes.forEach(({ light }, p) => {
      const mean = (column: Float64Array) => meanOver(dayPart, column);
      shine(p, mean(light.beamFloorW), mean(light.beamBackW), mean(light.diffuseW), (n) =>
        mean(light.absorbedW[n]!),
      );
    });
  }

  function shine(
    p: number,
    beamFloor: number,
    beamBack: number,
    diffuse: number,
    absorbedAt: (node: number) => number,
  ): void {
    const { covers, dirt, glassM2, zone, firstNode, nodes } = panes[p]!;
    const { sourceW, sheetW, roomW, passedW } = given;
    const { nodeW } = stepper;
    const bare = (beamFloor + beamBack + diffuse) / dirt;
    let passes = 1;
    let asBeam = 1;
    let sheets = 1;
    let toRoom = 0;
    for (let k = 0; k < covers.length; k++) {
      const cover = covers[k]!;
      const drawn = cover.coverage * shading[cover.hand]!;
      const met = passes * bare * drawn;
      toRoom += met * cover.roomHeat;
      for (let n = 0; n < nodes; n++) {
        const watt = glassM2 * met * cover.nodeHeat[n]!;
        nodeW[firstNode + n]! += watt;
        sheetW[zone]! += watt;
      }
      if (cover.shadesSheets) sheets *= 1 - drawn * (1 - cover.absorbed);
      asBeam *= 1 - drawn * (1 - (cover.scatters ? 0 : cover.passed));
      passes *= 1 - drawn * (1 - cover.passed);
    }
    for (let n = 0; n < nodes; n++) {
      const watt = glassM2 * sheets * absorbedAt(n);
      nodeW[firstNode + n]! += watt;
      sheetW[zone]! += watt;
    }
    const row = 3 * zone;
    sourceW[row + BEAM_ON_FLOOR]! += glassM2 * asBeam * beamFloor;
    sourceW[row + BEAM_ON_BACK]! += glassM2 * asBeam * beamBack;
    sourceW[row + DIFFUSE]! += glassM2 * (passes * diffuse + (passes - asBeam) * (beamFloor + beamBack));
    roomW[zone]! += glassM2 * toRoom;
    passedW[p] = glassM2 * passes * bare * dirt;
  }

  return { load, clear, renew, renewMean, ...given };
}
