// Changes to a stove that are worth a try: its size, its kind, its hours, the air of its fire. A design in, levers out; none
// where no stove gives the heat.

import type { Design } from '../design/design.ts';
import { LEAST_STOVE_KW, type StoveSource } from '../design/heat-source.ts';
import { limitOf } from '../design/limits.ts';
import type { Lever } from './lever.ts';
import type { Words } from './words.ts';

/** Sizes are tried by half as much more, and by a third less, in steps of half a kilowatt. House rules. */
const BIGGER = 1.5;
const SMALLER = 2 / 3;
const STEP_KW = 0.5;
/** A masonry heater gives by day and night what a light stove gives in the hours it is fed: so much of its output. House rule. */
const MASONRY_SHARE = 0.5;

/** Levers of the stove; each is applied to a design that has one. */
export function stoveLevers({ heating }: Design): readonly Lever[] {
  const { source, capacityKW } = heating;
  if (source?.kind !== 'stove' || capacityKW <= 0) return [];
  const isMasonry = source.stove === 'masonry';
  const least = LEAST_STOVE_KW[source.stove];
  const { max } = limitOf('heating.capacityKW');
  const stepped = (kW: number) => STEP_KW * Math.round(kW / STEP_KW);
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

/** Another kind burns as is usual for its kind; all else about the stove stays. */
function withStove(design: Design, change: Partial<StoveSource>, kW: number | null): Design {
  const { source, capacityKW } = design.heating;
  if (source?.kind !== 'stove') return design;
  const { efficiency, ...rest } = source;
  const kept = change.stove === undefined && efficiency !== undefined ? { efficiency } : {};
  return {
    ...design,
    heating: { ...design.heating, capacityKW: kW ?? capacityKW, source: { ...rest, ...kept, ...change } },
  };
}
