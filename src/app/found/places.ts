// Where a logger can hang in a house: its rooms, or the house as one, and the sunspace. A design in; zones of its model with
// the words for them out.

import type { Design } from '../../design/design.ts';
import { roomPlanOf } from '../../design/room-plan.ts';
import { OUTDOORS } from '../../matching/outdoor-logger.ts';

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
const OUT = /out(door|side)|au(ss|ß)en|garden|porch/i;

/** The likeliest place by the names of file and column: a zone, or outdoors; null for a sunspace that the design has not. */
export function likelyPlace(design: Design, fileName: string, header: string): string | null {
  const places = placesIn(design);
  // The column's own name goes before the file's.
  for (const text of [header, fileName]) {
    const isNamed = ({ words }: Place) => text.toLowerCase().includes(words.toLowerCase());
    const named = places.find(isNamed);
    if (named) return named.zone;
    if (OUT.test(text) && !SUNSPACE.test(text)) return OUTDOORS;
    if (SUNSPACE.test(text)) return places.find(({ zone }) => zone === 'sunspace')?.zone ?? null;
  }
  return places[0]!.zone;
}
