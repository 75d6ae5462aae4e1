// Three of the examples as people heat them: a stove that somebody feeds in place of a thermostat. Each shows one lesson.

import type { Design } from './design.ts';
import { EXAMPLES, type Example } from './examples.ts';
import { type StoveSource, USUAL_STOVE } from './heat-source.ts';

function withStove(
  id: string,
  stove: {
    note: string;
    line: string;
    capacityKW: number;
    source: Partial<StoveSource>;
    people?: Partial<Design['people']>;
  },
): Example {
  const { design } = EXAMPLES.find((example) => example.id === id)!;
  const heated: Design = {
    ...design,
    name: `${design.name}, with a stove`,
    note: `${design.note} ${stove.note}`,
    people: { ...design.people, ...stove.people },
    heating: {
      ...design.heating,
      capacityKW: stove.capacityKW,
      source: { ...USUAL_STOVE, ...stove.source },
    },
  };
  return { id: `${id}-stove`, line: stove.line, design: heated };
}

const STOVE_EXAMPLES: readonly Example[] = [
  withStove('leaning', {
    note: 'A light steel stove takes its air from the room and is out by midnight.',
    line: 'the leaning house with a light steel stove',
    capacityKW: 6,
    source: {},
  }),
  withStove('closed', {
    note: 'A masonry heater is fired morning and evening and gives its heat for most of a day.',
    line: 'the closed-off house with a masonry heater',
    capacityKW: 2,
    source: { stove: 'masonry', air: 'own' },
  }),
  withStove('modest', {
    note: 'A stove clad in soapstone, its air by a pipe of its own, is lit only while somebody is there, which at weekends nobody is.',
    line: 'the modest house with a soapstone stove, unlit at weekends',
    capacityKW: 4,
    source: { stove: 'soapstone', air: 'own' },
    people: { awayWeekends: true },
  }),
];

/** Every design that can be chosen: the examples, then those with a stove. */
export const ALL_EXAMPLES: readonly Example[] = [...EXAMPLES, ...STOVE_EXAMPLES];
