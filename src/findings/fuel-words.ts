// Heat sources and their fuel in words: for the list of assumptions, the figures, findings and answers alike.

import type { Design } from '../design/design.ts';
import {
  efficiencyOf,
  type Fuel,
  type HeatSource,
  type StoveKind,
  type StoveSource,
  type StoveTimes,
} from '../design/heat-source.ts';
import type { FuelOutcome } from '../outcomes/fuel.ts';
import { woodById } from '../physics/wood-fuel.ts';
import { percent, plain, type Wording } from './wording.ts';

export const FUEL_WORDS: Readonly<Record<Fuel, string>> = {
  electric: 'electricity',
  gas: 'natural gas',
  propane: 'propane',
  oil: 'heating oil',
  pellets: 'pellets',
};

const HEATER_WORDS = {
  heater: 'a heater of the air',
  floor: 'a heated floor',
  wall: 'a heated wall',
} as const;

export const STOVE_WORDS: Readonly<Record<StoveKind, string>> = {
  steel: 'light steel stove',
  'cast-iron': 'cast-iron stove',
  soapstone: 'stove clad in soapstone',
  masonry: 'masonry heater',
};

/** When a stove is lit. */
export function timesWords(lit: StoveTimes, stove: StoveKind): string {
  if (lit === 'morning') return 'in the morning';
  if (lit === 'noon') return 'at noon';
  if (lit === 'evening') return 'in the evening';
  return stove === 'masonry' ? 'morning and evening' : 'at any waking hour';
}

export const LIT_BY_WORDS: Readonly<Record<StoveSource['litBy'], string>> = {
  need: 'when it is cold',
  habit: 'every cold-season day',
};

/** What adds the heat, in a sentence: a stove is nobody's heater. */
export function heaterWords({ heating }: Pick<Design, 'heating'>): 'stove' | 'heater' {
  return heating.source?.kind === 'stove' ? 'stove' : 'heater';
}

/** A source as a line of its own. */
export function sourceWords(source: HeatSource | undefined): string {
  if (source === undefined) return 'a heater by thermostat, fuel not told';
  const efficiency = percent(efficiencyOf(source));
  if (source.kind !== 'stove') {
    return `${HEATER_WORDS[source.kind]} by thermostat, ${FUEL_WORDS[source.fuel]}, ${efficiency} of its heat used`;
  }
  const { stove, lit, litBy, wood, moisture, air, floorShare, storeL } = source;
  return [
    `${STOVE_WORDS[stove]}, ${efficiency} of its heat used`,
    `lit ${timesWords(lit, stove)}, ${LIT_BY_WORDS[litBy]}`,
    `${woodById(wood).words} at ${percent(moisture)} water`,
    air === 'own' ? 'air by a pipe of its own' : 'air from the room',
    ...(floorShare
      ? [
          `${percent(floorShare)} of its heat into the floor, ${storeL === undefined ? 'with no store: the slab takes it as it comes' : `through ${storeL} litres of water`}`,
        ]
      : []),
  ].join('; ');
}

/** What a year took: "410 kg of beech, 1.0 m³ stacked, in 190 loads on 96 days". */
export function fuelWords(fuel: FuelOutcome, { heating }: Pick<Design, 'heating'>, words: Wording): string {
  const { source } = heating;
  if (fuel.fuel === 'wood' && source?.kind === 'stove') {
    return `${words.weight(fuel.kg!)} of ${woodById(source.wood).words}, ${words.stackedWood(fuel.stackedM3!)}, in ${fuel.loads} loads on ${fuel.daysWithFire} days`;
  }
  const name = FUEL_WORDS[fuel.fuel as Fuel];
  if (fuel.litres !== null) return `${words.water(fuel.litres)} of ${name}`;
  if (fuel.kg !== null) return `${words.weight(fuel.kg)} of ${name}`;
  if (fuel.therms !== null)
    return `${words.energy(fuel.fuelKWh)} of ${name} (${plain(fuel.therms, 0)} therms as billed, by gross heat)`;
  return `${words.energy(fuel.fuelKWh)} of ${name}`;
}
