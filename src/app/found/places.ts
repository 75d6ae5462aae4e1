// Where a logger can hang in a house: its rooms, or the house as one, and the sunspace. A design in; zones of its model with
// the words for them out.

import type { Design } from '../../design/design.ts';
import { roomPlanOf } from '../../design/room-plan.ts';

export interface Place {
  /** id of a zone of the model */
  readonly zone: string;
  readonly words: string;
}

/** All of them, the rooms first. */
export function placesIn(design: Design): readonly Place[] {
  const rooms = roomPlanOf(design)?.rooms.map(({ id, room }) => ({ zone: id, words: room.name }));
  const sunspace = design.sunspace.join === 'none' ? [] : [{ zone: 'sunspace', words: 'the sunspace' }];
  return [...(rooms ?? [{ zone: 'house', words: 'the rooms' }]), ...sunspace];
}

const SUNSPACE = /sun ?(space|room)|winter ?garden|green ?house|conservatory|atrium|wintergarten/i;
const OUTDOORS = /out(door|side)|au(ss|ß)en|garden shed|porch|north wall/i;

/** The likeliest place by the names of file and column; null for one that hung outdoors or nobody can tell. */
export function likelyPlace(design: Design, fileName: string, header: string): string | null {
  const places = placesIn(design);
  // The column's own name goes before the file's.
  for (const text of [header, fileName]) {
    const isNamed = ({ words }: Place) => text.toLowerCase().includes(words.toLowerCase());
    const named = places.find(isNamed);
    if (named) return named.zone;
    if (OUTDOORS.test(text)) return null;
    if (SUNSPACE.test(text)) return places.find(({ zone }) => zone === 'sunspace')?.zone ?? null;
  }
  return places[0]!.zone;
}
