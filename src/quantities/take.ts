// What one part of a house adds to one item of its bill, with the sum it comes from. Parts of the bill make a list of these.

import { MATERIALS } from '../design/materials.ts';
import type { Layer } from '../model/model.ts';
import type { FormulaWords } from './figures-in-units.ts';
import { itemById } from './items.ts';

export interface Take {
  /** id in items.ts */
  readonly item: string;
  /** face [m²], volume in place [m³], weight [kg]; absent where it has none */
  readonly areaM2?: number;
  readonly volumeM3?: number;
  readonly weightKg?: number;
  /** pieces, where the item is counted and not measured */
  readonly count?: number;
  /** what it is and how it is reckoned: "extra mass 20 m² × 0.2 m" */
  readonly how: (words: FormulaWords) => string;
}

/** A layer of a face area. */
export function layerTake(item: string, what: string, areaM2: number, layer: Layer): Take {
  const volumeM3 = areaM2 * layer.thicknessM;
  return {
    item,
    areaM2,
    volumeM3,
    weightKg: volumeM3 * layer.density,
    how: ({ area, thickness }) =>
      itemById(item).unit === 'm²'
        ? `${what} ${area(areaM2)}`
        : `${what} ${area(areaM2)} × ${thickness(layer.thicknessM)}`,
  };
}

/** An area, bought as such. */
export function areaTake(item: string, what: string, areaM2: number): Take {
  return { item, areaM2, how: ({ area }) => `${what} ${area(areaM2)}` };
}

export function countTake(item: string, what: string, count: number): Take {
  return { item, count, how: () => `${what} ${count}` };
}

/** Material of a layer; null for one that is in no catalogue. */
export function materialOf({ name }: Layer): string | null {
  return MATERIAL_BY_NAME.get(name) ?? null;
}

const MATERIAL_BY_NAME = new Map(MATERIALS.map(({ id, name }) => [name, id]));
