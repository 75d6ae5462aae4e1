// A model that holds no more than what comes after a run asks of it: its zones by id, nothing built.
import type { Model, Zone } from '../../src/model/model.ts';

const madeModelZone = (id: string): Zone => ({
  id,
  floorAreaM2: 100,
  volumeM3: 250,
  furnitureCapacity: 0,
  furnitureMoisture: 0,
  thermostat: null,
  gains: [],
  moisture: [],
  planting: null,
  people: null,
  cornerFactor: 0.8,
});

export const MADE_MODEL: Model = {
  name: '',
  zones: [madeModelZone('house'), madeModelZone('sunspace')],
  elements: [],
  panes: [],
  openings: [],
};
