// Refuses models that have no physical meaning before any of them is run: a model in, nothing or a RangeError out that
// names the part, the value and what is allowed. Rules of each kind of part stand in the files named in the imports.

import { requireElement } from './check-element.ts';
import { requireOpening, requireStack } from './check-opening.ts';
import { requirePane } from './check-pane.ts';
import { requireZone } from './check-zone.ts';
import type { Model, Zone } from './model.ts';

/**
 * Check a model.
 *
 * @param model any; its zones, elements, panes and openings
 * Error: RangeError for no zone, a name used twice, a zone that is not there, a thickness, conductivity or area of
 *   zero or below, panes larger than their wall, an opening to nowhere, a share outside 0…1, a schedule of the wrong
 *   length, a zone none of whose surfaces radiates, and for NaN or infinity anywhere but a long overhang.
 */
export function requireModel(model: Model): void {
  if (model.zones.length === 0) throw new RangeError('zones is empty; allowed: at least one zone');
  const kinds = { zone: model.zones, element: model.elements, pane: model.panes, opening: model.openings };
  for (const [kind, parts] of Object.entries(kinds)) requireOwnNames(kind, parts);
  const zoneIds = new Set(model.zones.map((zone) => zone.id));
  if (zoneIds.has('outdoors')) throw new RangeError("zone is named 'outdoors'; allowed: any other name");
  for (const zone of model.zones) requireZone(zone);
  for (const element of model.elements) requireElement(element, zoneIds);
  for (const pane of model.panes) requirePane(pane, zoneIds);
  for (const opening of model.openings) requireOpening(opening, zoneIds);
  if (model.stack) requireStack(model.stack, model.openings, zoneIds);
  for (const id of zoneIds) requireRadiation(model, id);
  for (const zone of model.zones) requireBed(model, zone);
}

/** What grows stands on one bed of its area, and nothing else is a bed. */
function requireBed({ elements }: Model, { id, planting }: Zone): void {
  const beds = elements.filter(({ isBed, b }) => isBed === true && b.zone === id);
  const areaM2 = beds.reduce((sum, bed) => sum + bed.areaM2, 0);
  const plantedM2 = planting?.bedM2 ?? 0;
  if (beds.length > 1 || Math.abs(areaM2 - plantedM2) > 1e-9 * plantedM2) {
    throw new RangeError(
      `zone '${id}' has ${plantedM2} m² planted and ${beds.length} beds of ${areaM2} m² among its elements; allowed: one bed of the planted area`,
    );
  }
}

/** A zone whose every surface is prescribed to radiate nothing has no mean radiant temperature, and its year no numbers. */
function requireRadiation({ elements, panes }: Model, zone: string): void {
  const films = [
    ...elements.flatMap(({ a, b }) =>
      [a, b].flatMap((face) => (face.kind === 'zone' && face.zone === zone ? [face.film] : [])),
    ),
    ...panes.flatMap(({ from, to, filmOutside, filmInside }) => [
      ...(to === zone ? [filmInside] : []),
      ...(from === zone ? [filmOutside] : []),
    ]),
  ];
  if (films.length > 0 && films.every((film) => film.kind === 'fixed' && film.radiation === 0)) {
    throw new RangeError(
      `zone '${zone}', radiation of its films is 0 everywhere; allowed: above 0 at one surface at least`,
    );
  }
}

function requireOwnNames(kind: string, parts: readonly { readonly id: string }[]): void {
  const seen = new Set<string>();
  for (const { id } of parts) {
    if (id === '') throw new RangeError(`${kind} has an empty name; allowed: any text`);
    if (seen.has(id)) throw new RangeError(`${kind} '${id}' stands twice; allowed: each name once`);
    seen.add(id);
  }
}
