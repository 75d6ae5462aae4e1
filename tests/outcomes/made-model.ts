// A model that holds no more than what comes after a run asks of it: its zones by id, nothing built.
import type { Model } from '../../src/model/model.ts';
import { bareZone } from '../network/box-model.ts';

const madeModelZone = (id: string) => bareZone(id, { floorAreaM2: 100, volumeM3: 250 });

export const MADE_MODEL: Model = {
  name: '',
  zones: [madeModelZone('house'), madeModelZone('sunspace')],
  elements: [],
  panes: [],
  openings: [],
};
