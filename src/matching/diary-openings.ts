// What a diary says was opened, as openings of the house: "kitchen windows", "sunspace vents", "door". The words of a line and
// a design in; a place and a kind, or null for what the house has not; with the model, ids of its openings.

import type { Design } from '../design/design.ts';
import { roomPlanOf } from '../design/room-plan.ts';
import type { DiaryLine } from '../loggers/diary-file.ts';
import type { Model } from '../model/model.ts';
import type { OpenedStretch } from './told-days.ts';

/** A kind of opening, of one zone or of all that a word means. */
export interface Opened {
  readonly kind: 'window' | 'vent' | 'door';
  readonly zone: string | null;
}

const SUNSPACE = /sun ?(space|room)|winter ?garden|green ?house|conservatory/i;
const FIRE = /stove|fire|ofen|wood/i;
const KINDS = [
  ['door', /door|t(ü|ue)r/i],
  ['window', /window|fenster/i],
  ['vent', /vent|flap/i],
] as const;

/** What a line's words mean in this house; null for nothing it has. */
export function openedBy(design: Design, what: string): Opened | null {
  const hasSunspace = design.sunspace.join !== 'none';
  const room = roomPlanOf(design)?.rooms.find(({ room: { name } }) =>
    what.toLowerCase().includes(name.toLowerCase()),
  );
  const isSunspace = SUNSPACE.test(what);
  if (isSunspace && !hasSunspace) return null;
  const zone = room?.id ?? (isSunspace ? 'sunspace' : null);
  if (FIRE.test(what)) return null;
  const kind = KINDS.find(([, word]) => word.test(what))?.[0] ?? (zone === null ? null : 'window');
  if (kind === null) return null;
  // Without a room a door is that of the sunspace; one to the yard is no opening of the model.
  if (kind === 'door' && room === undefined)
    return design.sunspace.join === 'closed' ? { kind, zone: 'sunspace' } : null;
  return { kind, zone };
}

/** Why words of a diary are not used: a sentence. */
export function notUsedWords(what: string): string {
  return FIRE.test(what)
    ? `The diary’s “${what}” is not used, for it does not say how much was burnt: write an amount, as 8 kg, 6 logs or 5 kW, in a column “amount”.`
    : `The diary’s “${what}” is no window, vent or sunspace door of this house; it is not used. Write windows or vents, with the room’s name before them, or door.`;
}

/** Stretches by opening, and the words that this house has nothing for. */
export function openedStretches(
  design: Design,
  model: Model,
  lines: readonly DiaryLine[],
): { readonly opened: readonly OpenedStretch[]; readonly strange: readonly string[] } {
  const opened: OpenedStretch[] = [];
  const strange = new Set<string>();
  for (const { what, ...stretch } of lines) {
    const meant = openedBy(design, what);
    const ids = meant === null ? [] : idsOf(model, meant);
    if (ids.length === 0) strange.add(what);
    opened.push(...ids.map((opening) => ({ ...stretch, opening })));
  }
  return { opened, strange: [...strange] };
}

function idsOf({ openings }: Model, { kind, zone }: Opened): string[] {
  if (kind === 'door')
    return openings
      .filter((one) => one.kind === 'door' && !one.seeThrough && (one.zone === zone || one.other === zone))
      .map(({ id }) => id);
  const vents = openings.filter((one) => one.kind === 'vent');
  const inSunspace = vents.filter((one) => one.zone === 'sunspace');
  if (zone !== null) return vents.filter((one) => one.zone === zone).map(({ id }) => id);
  const meant =
    kind === 'vent' && inSunspace.length > 0 ? inSunspace : vents.filter((one) => !inSunspace.includes(one));
  return meant.map(({ id }) => id);
}
