// Earth that is moved: dug for floors, beds and edges, dug to build walls of, and heaped against the house. Volumes as earth
// lies; once dug it takes up CLAY_BULKING times the room. A design and its model in; takes out. Footings, drains and
// roads are not drawn, and so not counted.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { materialById } from '../design/materials.ts';
import { EDGE_DEPTH_M, EDGE_MATERIAL } from '../model/ground-contact.ts';
import { housePlan } from '../model/house-floor.ts';
import { insulationOf } from '../model/layers.ts';
import type { Element } from '../model/model.ts';
import { floorItem } from './items.ts';
import { isOnGround } from './shell.ts';
import { layerTake, materialOf, type Take } from './take.ts';

/** Width of the trench for insulation at the edge [m]; common practice, no source. */
const TRENCH_M = 0.4;
/** A berm falls away from the wall by one in so many; common practice, no source. */
const BERM_RUN = 2;
/** Earth lower than this counts as none, as in the model [m]. */
const LEAST_BERM_M = 0.05;
/** What is built of earth from the ground. */
const EARTHS: readonly string[] = ['rammed-earth', 'adobe', 'cob', 'earth-tyres', 'soil', 'earth-plaster'];

/** Takes of all earth, and of the insulation that stands in it. */
export function earthTakes(design: Design, elements: readonly Element[]): Take[] {
  return [
    ...elements.filter(isOnGround).map(dugUnder),
    ...edgeTakes(design),
    ...elements.flatMap(earthFor),
    ...bermTakes(design),
  ].filter(({ volumeM3 }) => (volumeM3 ?? 0) > 0);
}

function dugUnder({ id, areaM2, layers }: Element): Take {
  const depthM = layers.reduce((sum, { thicknessM }) => sum + thicknessM, 0);
  return {
    item: 'digging',
    areaM2,
    volumeM3: areaM2 * depthM,
    how: ({ area, thickness }) => `under ${id} ${area(areaM2)} × ${thickness(depthM)}`,
  };
}

/** The exposed edges of house and sunspace, insulated to one depth, and the trench for it. */
function edgeTakes(design: Design): Take[] {
  const { edgeResistance } = design.floor;
  const { depthM, lengthM, join } = design.sunspace;
  const perimeterM = housePlan(design).perimeterM + (join === 'none' ? 0 : lengthM + 2 * depthM);
  return insulationOf(edgeResistance, EDGE_MATERIAL).flatMap((layer): Take[] => [
    {
      ...layerTake(floorItem(EDGE_MATERIAL), 'edge', perimeterM * EDGE_DEPTH_M, layer),
      how: ({ length, thickness }) =>
        `edge ${length(perimeterM)} × ${length(EDGE_DEPTH_M)} × ${thickness(layer.thicknessM)}`,
    },
    {
      item: 'digging',
      volumeM3: perimeterM * EDGE_DEPTH_M * TRENCH_M,
      how: ({ length }) =>
        `trench at the edge ${length(perimeterM)} × ${length(EDGE_DEPTH_M)} × ${length(TRENCH_M)}`,
    },
  ]);
}

/** Earth walls by weight, since earth lies looser than it is rammed. */
function earthFor({ id, areaM2, layers }: Element): Take[] {
  return layers.flatMap((layer): Take[] => {
    const material = materialOf(layer);
    if (material === null || !EARTHS.includes(material)) return [];
    const ratio = layer.density / materialById('soil').density;
    return [
      {
        item: 'digging',
        volumeM3: areaM2 * layer.thicknessM * ratio,
        how: ({ area, thickness }) =>
          `for ${id} ${area(areaM2)} × ${thickness(layer.thicknessM)} × ${layer.density} ÷ ${materialById('soil').density} by weight`,
      },
    ];
  });
}

/** Against pole, east and west walls: a wedge along each, a quarter of a cone at the two corners between them. */
function bermTakes(design: Design): Take[] {
  const { houseDepthM, heightM } = geometryOf(design);
  const highM = design.envelope.bermShare * heightM;
  if (highM < LEAST_BERM_M) return [];
  const longM = design.house.equatorWallM + 2 * houseDepthM;
  const wedgeM3 = (longM * BERM_RUN * highM ** 2) / 2;
  const cornersM3 = (2 * Math.PI * BERM_RUN ** 2 * highM ** 3) / 12;
  return [
    {
      item: 'berm',
      volumeM3: wedgeM3 + cornersM3,
      how: ({ length, volume }) =>
        `walls ${length(longM)} × ${length(highM)} × ${length(BERM_RUN * highM)} ÷ 2, and two corners of ${volume(cornersM3 / 2)} (a quarter of a cone each)`,
    },
  ];
}
