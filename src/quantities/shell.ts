// What floors, walls, roof, partitions and masses are made of, layer by layer as the year is run with them. Elements of the
// model in; takes out.

import type { Element, Layer } from '../model/model.ts';
import { floorItem, wallItem } from './items.ts';
import { layerTake, materialOf, type Take } from './take.ts';

/** Takes of all elements. */
export function shellTakes(elements: readonly Element[]): Take[] {
  return elements.flatMap((element) =>
    element.layers.map((layer) => layerTake(itemOf(element, layer), element.id, element.areaM2, layer)),
  );
}

/** Whether it is a floor on the ground, its bed included. */
export function isOnGround({ a, b }: Element): boolean {
  return a.kind === 'ground' && b.faceTiltDeg === 0;
}

function itemOf(element: Element, layer: Layer): string {
  const material = materialOf(layer);
  if (element.isBed && material === 'water') return 'pool';
  if (material === null) return 'bed-soil';
  if (isOnGround(element)) return floorItem(material);
  const isRoof = element.b.faceTiltDeg === 180;
  return isRoof && material === 'cellulose' ? 'loose-fill roof' : wallItem(material);
}
