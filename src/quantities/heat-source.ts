// What gives the back-up heat, as bought and set up: a stove with its flue, air pipe, back boiler and store; a heater or
// boiler by thermostat; pipes in floors and walls. A design and its model in; takes out. A boiler's own flue is not drawn.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import type { StoveSource } from '../design/heat-source.ts';
import type { Element, Zone } from '../model/model.ts';
import { masonryKg } from '../physics/masonry-heater.ts';
import { heaterItem, stoveItem } from './items.ts';
import { areaTake, countTake, type Take } from './take.ts';

/** A flue begins so high over the floor, and ends so high over the roof; common practice, no source: local codes decide [m]. */
const FLUE_FROM_M = 1;
const FLUE_OVER_ROOF_M = 1.5;
/** Of one length of flue [m]. */
const FLUE_LENGTH_M = 1;

/** Takes of the source; none of a design that tells none, or has no heat. */
export function heatSourceTakes(
  design: Design,
  { zones, elements }: { readonly zones: readonly Zone[]; readonly elements: readonly Element[] },
): Take[] {
  const { source, capacityKW } = design.heating;
  if (source === undefined || capacityKW <= 0) return [];
  const pipes = elements
    .filter(({ heatedM }) => heatedM !== undefined)
    .map(({ id, areaM2 }) => areaTake('heating-pipes', id, areaM2));
  if (source.kind !== 'stove') {
    const item = heaterItem(source.kind === 'heater' ? 'air' : 'water', source.fuel);
    return [countTake(item, `for ${capacityKW} kW`, 1), ...pipes];
  }
  return [...stoveTakes(design, source, zones), ...pipes];
}

function stoveTakes(design: Design, source: StoveSource, zones: readonly Zone[]): Take[] {
  const stove = zones.find((zone) => zone.stove !== undefined)?.stove;
  if (stove === undefined) return [];
  const { heightM } = geometryOf(design);
  const flueM = Math.max(0, heightM - FLUE_FROM_M) + FLUE_OVER_ROOF_M;
  const heater: Take = countTake(stoveItem(source.stove), `for ${design.heating.capacityKW} kW`, 1);
  const weightKg = masonryKg(stove.loadKg);
  return [
    source.stove === 'masonry' ? { ...heater, weightKg } : heater,
    {
      item: 'flue',
      count: Math.ceil(flueM / FLUE_LENGTH_M - 1e-9),
      how: ({ length }) =>
        `from ${length(FLUE_FROM_M)} over the floor to ${length(FLUE_OVER_ROOF_M)} over ${length(heightM)} of house, a length for each ${length(FLUE_LENGTH_M)}`,
    },
    ...(source.air === 'own' ? [countTake('fire-air-pipe', 'to the stove', 1)] : []),
    ...(stove.floorShare > 0 ? [countTake('back-boiler', 'in the stove', 1)] : []),
    ...(stove.store === undefined ? [] : [countTake('water-store', `${source.storeL} litres`, 1)]),
  ];
}
