// Doors, windows that open, vents and their openers, fans, stairs, and the sealing of the shell. A design and its model in;
// takes out. How much one fan moves is common practice, no source.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { roomPlanOf } from '../design/room-plan.ts';
import type { FixedOpening, Opening } from '../model/model.ts';
import { valuesOf } from '../model/schedule.ts';
import { areaTake, countTake, type Take } from './take.ts';

/** Of a leaf; wider openings have several [m]. */
const LEAF_M = 1.2;
/** One automatic opener moves so much [m²]. */
const OPENER_M2 = 1;
/** One ceiling fan for so much floor [m²]. */
const CEILING_FAN_M2 = 20;
/** A shell of this leakage is built without thinking of it [air changes an hour at 50 Pa]. */
const MOST_LEAKY_ACH50 = 12;

/** Fans by the beginning of their opening's id, and how much one of them moves [m³/h]. */
const FANS = [
  { id: 'night purge', item: 'purge-fan', m3H: 2000 },
  { id: 'extract', item: 'extract-fan', m3H: 200 },
  { id: 'ventilation unit', item: 'ventilation-unit', m3H: 400 },
  { id: 'sunspace fan', item: 'sunspace-fan', m3H: 600 },
  { id: 'fan ', item: 'room-fan', m3H: 600 },
] as const;

/** Takes of all openings. */
export function airTakes(design: Design, openings: readonly Opening[]): Take[] {
  return [
    ...doorTakes(openings),
    ...innerTakes(design),
    ...ventTakes(design, openings),
    ...fanTakes(openings),
    ...ceilingFans(design),
    ...sealing(design),
  ].filter(({ areaM2, count }) => (areaM2 ?? count ?? 0) > 0);
}

function doorTakes(openings: readonly Opening[]): Take[] {
  return openings.flatMap((opening) => {
    if (opening.kind !== 'door' || opening.seeThrough || !opening.id.startsWith('door')) return [];
    const { widthM } = opening;
    return [
      {
        item: 'sunspace-door',
        count: Math.ceil(widthM / LEAF_M),
        how: ({ length }) => `${length(widthM)} wide, a leaf for each ${length(LEAF_M)}`,
      },
    ];
  });
}

/** Doors and stairs of a divided house; a wide opening has no door. */
function innerTakes(design: Design): Take[] {
  const plan = roomPlanOf(design);
  if (plan === null) return [];
  return plan.ways.flatMap(({ room, kind }): Take[] => {
    const { name, door } = plan.rooms[room]!.room;
    if (kind === 'stairs') return [countTake('stairs', `to “${name}”`, 1)];
    if (door === 'wide') return [];
    return [
      countTake('inner-door', `of “${name}”`, 1),
      ...(door === 'grille' ? [countTake('grilles', `of “${name}”`, 1)] : []),
    ];
  });
}

function ventTakes({ vents }: Design, openings: readonly Opening[]): Take[] {
  return openings.flatMap((opening): Take[] => {
    if (opening.kind !== 'vent') return [];
    const areaM2 = opening.lowM2 + opening.highM2;
    return [
      areaTake(opening.zone === 'sunspace' ? 'sunspace-vent' : 'sash', opening.id, areaM2),
      ...(vents.habit === 'automatic'
        ? [
            {
              item: 'opener',
              count: Math.ceil(areaM2 / OPENER_M2 - 1e-9),
              how: ({ area }) => `${opening.id} ${area(areaM2)}, one for each ${area(OPENER_M2)}`,
            } satisfies Take,
          ]
        : []),
    ];
  });
}

/** Rooms share a fan of the house. */
function fanTakes(openings: readonly Opening[]): Take[] {
  const fans = openings.filter((opening): opening is FixedOpening => opening.kind === 'fixed' && opening.fan);
  return FANS.map(({ id, item, m3H: each }): Take => {
    const m3H = fans
      .filter((fan) => fan.id.startsWith(id))
      .reduce((sum, { flow }) => sum + 3600 * Math.max(...valuesOf(flow)), 0);
    return {
      item,
      count: Math.ceil(m3H / each - 1e-9),
      how: ({ flow }) => `${flow(m3H)} in all, at most ${flow(each)} each`,
    };
  });
}

function ceilingFans({ comfort, people, house }: Design): Take[] {
  if ((comfort.airSpeedMs ?? 0) <= 0 || people.count === 0) return [];
  return [
    {
      item: 'ceiling-fan',
      count: Math.ceil(house.floorAreaM2 / CEILING_FAN_M2 - 1e-9),
      how: ({ area }) => `floor ${area(house.floorAreaM2)}, one for each ${area(CEILING_FAN_M2)}`,
    },
  ];
}

/** Area of the house's shell, once for each halving of its leakage. */
function sealing(design: Design): Take[] {
  const { equatorWallM2, poleWallM2, sideWallM2, roofM2, groundFloorM2 } = geometryOf(design);
  const shellM2 = equatorWallM2 + poleWallM2 + 2 * sideWallM2 + roofM2 + groundFloorM2;
  const halvings = Math.log2(MOST_LEAKY_ACH50 / design.air.ach50);
  if (halvings <= 0) return [];
  return [
    {
      item: 'sealing',
      areaM2: shellM2 * halvings,
      how: ({ area }) =>
        `walls, roof and floor ${area(shellM2)} × ${halvings.toFixed(2)} halvings from ${MOST_LEAKY_ACH50} to ${design.air.ach50} air changes an hour at 50 Pa`,
    },
  ];
}
