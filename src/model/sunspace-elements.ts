// The sunspace's own shell: floor, ends, the roof strip above leaning glass and the opaque rest of its front. Design,
// site and ground in; elements and end panes of zone 'sunspace' out. Its slab is the house's without insulation
// under it; its opaque parts are insulated as the house's walls and roof are, lined with boards.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { materialById } from '../design/materials.ts';
import type { DeepGround } from '../weather/prepared/prepared-climate.ts';
import type { Site } from '../weather/typical-year.ts';
import { compassOf } from './compass.ts';
import { coversOn, type PanePlace } from './covers.ts';
import { equatorFront } from './equator-front.ts';
import { glassSystem, paneWith } from './glazing.ts';
import { slabOnGround } from './ground-contact.ts';
import { wallThickness } from './house-floor.ts';
import { faceIn, LEAST_AREA_M2, layerOf, outdoorFace, roofLayers, wallLayers } from './layers.ts';
import type { Element, Layer, Pane } from './model.ts';
import { bedIn, bedM2In } from './planting.ts';

const SUNSPACE = 'sunspace';
const LINING = 'plywood';
const LINING_M = 0.012;

/** Outside to inside, of its opaque upright parts. */
export function sunspaceWallLayers(design: Design): Layer[] {
  return wallLayers(design.envelope.wallResistance, LINING, LINING_M);
}

/** Opaque elements of the sunspace, the common wall excepted. */
export function sunspaceElements(design: Design, site: Site, ground: DeepGround): Element[] {
  const { sunspaceRoofM2, sunspaceEndM2 } = geometryOf(design);
  const { equatorDeg, eastDeg, westDeg } = compassOf(site, design.house.turnDeg);
  const front = equatorFront(design);
  const endM2 = design.sunspace.endWalls === 'insulated' ? sunspaceEndM2 : 0;
  const wall = (id: string, areaM2: number, tiltDeg: number, azimuthDeg: number) =>
    shell(design, id, areaM2, tiltDeg, azimuthDeg);
  return [
    ...sunspaceFloor(design, ground),
    {
      ...wall('sunspace roof', sunspaceRoofM2, 0, 0),
      layers: [...roofLayers(design.envelope.roofResistance).slice(0, -1), layerOf(LINING, LINING_M)],
    },
    wall('sunspace front', front.slopeWallM2, design.glass.tiltDeg, equatorDeg),
    wall('sunspace kneewall', front.kneeWallM2, 90, equatorDeg),
    wall('sunspace end east', endM2, 90, eastDeg),
    wall('sunspace end west', endM2, 90, westDeg),
  ].filter((element) => element.areaM2 > LEAST_AREA_M2);
}

/** Glazed ends of the sunspace, upright, of the front's glass; none when insulated. */
export function endPanes(design: Design, site: Site): Pane[] {
  const { sunspaceEndM2 } = geometryOf(design);
  if (design.sunspace.endWalls === 'insulated' || sunspaceEndM2 <= LEAST_AREA_M2) return [];
  const { eastDeg, westDeg } = compassOf(site, design.house.turnDeg);
  const end = (id: PanePlace['side'], azimuthDeg: number) =>
    paneWith({
      id,
      areaM2: sunspaceEndM2,
      wallM2: sunspaceEndM2,
      frameShare: design.glass.frameShare,
      glass: glassSystem(design.glass.type),
      azimuthDeg,
      to: SUNSPACE,
      nightResistance: design.glass.nightResistance,
      covers: coversOn(design, site, { side: id, inSunspace: true }),
    });
  return [end('end-east', eastDeg), end('end-west', westDeg)];
}

/** The slab, and what is planted in its place. */
function sunspaceFloor(design: Design, ground: DeepGround): Element[] {
  const { material, thicknessM, edgeResistance } = design.floor;
  const { depthM, lengthM } = design.sunspace;
  const plan = {
    areaM2: geometryOf(design).sunspaceFloorM2,
    perimeterM: lengthM + 2 * depthM,
    wallThicknessM: wallThickness(design),
  };
  const contactOf = (layers: readonly Layer[]) => slabOnGround(plan, layers, edgeResistance, ground);
  const slab = [layerOf(material, thicknessM)];
  const contact = contactOf(slab);
  const bedM2 = bedM2In(design, SUNSPACE, plan.areaM2);
  return [
    {
      id: 'sunspace floor',
      areaM2: plan.areaM2 - bedM2,
      layers: [...contact.soil, ...slab],
      a: contact.face,
      b: faceIn(SUNSPACE, material, 0, 'floor'),
      moistureBuffer: materialById(material).moistureBuffer,
    },
    ...bedIn(design, SUNSPACE, bedM2, contactOf),
  ];
}

function shell(design: Design, id: string, areaM2: number, tiltDeg: number, azimuthDeg: number): Element {
  return {
    id,
    areaM2,
    layers: sunspaceWallLayers(design),
    a: outdoorFace(tiltDeg, azimuthDeg),
    b: faceIn(SUNSPACE, LINING, 180 - tiltDeg, 'none'),
    moistureBuffer: materialById(LINING).moistureBuffer,
  };
}
