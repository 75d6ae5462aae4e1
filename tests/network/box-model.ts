// Models of one zone over one slab, for tests of what a zone does by itself: bare unless a test says otherwise.
import type { Element, Model, Zone, ZoneFace } from '../../src/model/model.ts';

/** A zone of 20 m² and 50 m³ in which nothing is: no furniture, no heater, nobody, and no water given off. */
export function bareZone(id: string, unlike: Partial<Zone> = {}): Zone {
  return {
    id,
    floorAreaM2: 20,
    volumeM3: 50,
    furnitureCapacity: 0,
    furnitureMoisture: 0,
    thermostat: null,
    gains: [],
    moisture: [],
    planting: null,
    people: null,
    cornerFactor: 0.8,
    ...unlike,
  };
}

export interface Box {
  readonly zone?: Partial<Zone>;
  /** the slab: by itself 0.1 m of concrete under the whole floor, insulated below */
  readonly floor?: Partial<Element>;
  /** its face to the zone */
  readonly floorFace?: Partial<ZoneFace>;
  readonly panes?: Model['panes'];
  readonly openings?: Model['openings'];
}

/** The zone, named 'house', on its slab; nothing else unless given. */
export function boxModel({
  zone = {},
  floor = {},
  floorFace = {},
  panes = [],
  openings = [],
}: Box = {}): Model {
  const house = bareZone('house', zone);
  return {
    name: 'box',
    zones: [house],
    elements: [
      {
        id: 'floor',
        areaM2: house.floorAreaM2,
        layers: [{ name: 'slab', thicknessM: 0.1, conductivity: 1.5, density: 2000, specificHeat: 1000 }],
        a: { kind: 'adiabatic' },
        b: {
          kind: 'zone',
          zone: house.id,
          absorptance: 0.6,
          emissivity: 0.9,
          film: { kind: 'computed' },
          lit: 'floor',
          faceTiltDeg: 0,
          ...floorFace,
        },
        ...floor,
      },
    ],
    panes,
    openings,
  };
}
