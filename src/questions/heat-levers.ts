// Changes to what gives the heat that are worth a try: of a stove its size, its kind, its hours, the air of its fire; of a house
// without any, a heater. A design in, levers out; none where a thermostat gives the heat.

import type { Design } from '../design/design.ts';
import { LEAST_STOVE_KW, ofKind, type StoveSource } from '../design/heat-source.ts';
import { limitOf } from '../design/limits.ts';
import type { Lever } from './lever.ts';
import type { Words } from './words.ts';

/** Sizes are tried by half as much more, and by a third less, in steps of half a kilowatt. House rules. */
const BIGGER = 1.5;
const SMALLER = 2 / 3;
const STEP_KW = 0.5;
/** A masonry heater gives by day and night what a light stove gives in the hours it is fed: so much of its output. House rule. */
const MASONRY_SHARE = 0.5;

/** A heater for a house that has none: by floor [W/m²], and the least [kW]. House rules. */
const HEATER_W_PER_M2 = 50;
const LEAST_HEATER_KW = 1;

/** Levers of the heat; those of a stove are applied to a design that has one. */
export function heatLevers(design: Design): readonly Lever[] {
  const { source, capacityKW } = design.heating;
  if (capacityKW <= 0) return design.people.count > 0 ? [heaterLever(design)] : [];
  if (source?.kind !== 'stove') return [];
  const isMasonry = source.stove === 'masonry';
  const least = LEAST_STOVE_KW[source.stove];
  const { max } = limitOf('heating.capacityKW');
  const bigger = Math.min(max, stepped(BIGGER * capacityKW));
  const smaller = Math.max(least, stepped(SMALLER * capacityKW));
  const masonryKW = Math.max(LEAST_STOVE_KW.masonry, stepped(MASONRY_SHARE * capacityKW));
  const name = isMasonry ? 'masonry heater' : 'stove';
  const lever = (
    id: string,
    when: boolean,
    words: string,
    stove: Partial<StoveSource>,
    kW: number | null = null,
  ): Lever[] =>
    when
      ? [
          {
            id,
            words,
            ...(kW !== null && { size: ({ power }: Words) => power(1000 * kW) }),
            apply: (to) => withStove(to, stove, kW),
          },
        ]
      : [];
  return [
    ...lever('bigger-stove', bigger > capacityKW, `set up a bigger ${name}`, {}, bigger),
    ...lever('smaller-stove', smaller < capacityKW, `set up a smaller ${name}`, {}, smaller),
    ...lever(
      'masonry-heater',
      !isMasonry,
      'build a masonry heater in place of the stove',
      { stove: 'masonry' },
      masonryKW,
    ),
    ...lever('lit-by-need', source.litBy === 'habit', `light the ${name} only when the rooms are cold`, {
      litBy: 'need',
    }),
    ...lever('lit-in-the-evening', source.lit !== 'evening', `light the ${name} in the evening alone`, {
      lit: 'evening',
    }),
    ...lever(
      'lit-at-usual-hours',
      source.lit !== 'usual',
      isMasonry ? 'fire the masonry heater morning and evening' : 'feed the stove whenever it is cold',
      { lit: 'usual' },
    ),
    ...lever('fire-air', source.air === 'room', `give the fire air by a pipe of its own`, { air: 'own' }),
  ];
}

function heaterLever({ house }: Design): Lever {
  const usualKW = stepped((HEATER_W_PER_M2 * house.floorAreaM2) / 1000);
  const kW = Math.min(limitOf('heating.capacityKW').max, Math.max(LEAST_HEATER_KW, usualKW));
  return {
    id: 'heater',
    words: 'give the house a heater',
    size: ({ power }) => power(1000 * kW),
    apply: (to) => ({ ...withHeatedRoom(to), heating: { ...to.heating, capacityKW: kW } }),
  };
}

/** Of a divided house at least the first room is heated. */
export function withHeatedRoom(design: Design): Design {
  const { rooms } = design;
  if (rooms === undefined || rooms.list.some(({ heated }) => heated)) return design;
  return {
    ...design,
    rooms: { ...rooms, list: rooms.list.map((room, i) => ({ ...room, heated: i === 0 })) },
  };
}

function withStove(design: Design, change: Partial<StoveSource>, kW: number | null): Design {
  const { source, capacityKW } = design.heating;
  if (source?.kind !== 'stove') return design;
  const stove = { ...ofKind(source, change.stove ?? source.stove), ...change };
  return { ...design, heating: { ...design.heating, capacityKW: kW ?? capacityKW, source: stove } };
}

function stepped(kW: number): number {
  return STEP_KW * Math.round(kW / STEP_KW);
}
