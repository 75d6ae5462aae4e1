// One sentence on a house in its year: heat, damp, cold, and the heat it takes. In: an outcome and its design. Out: the
// sentence. Bounds of heat are those of the design's own criterion; those of damp and cold are the findings'; how much
// heat is little or much is common practice, no source.

import type { Design } from '../design/design.ts';
import { hours, type Wording } from '../findings/wording.ts';
import {
  ACCEPTABLE_DAMP_HOURS,
  COLD_HOURS,
  FEW_COLD_HOURS,
  FEW_DAMP_HOURS,
  fewHotHours,
} from '../outcomes/acceptable-hours.ts';
import { judgedHouse, type Respect, worstIn } from '../outcomes/judged-house.ts';
import type { OutcomeFigures } from '../outcomes/outcome.ts';
import { MOULD_INDEX_LIMIT } from '../physics/mould-index.ts';

/** Back-up heat of a year for each square metre of floor [kWh/m²]: up to this it is little, up to the next some. */
const LITTLE_HEAT = 15;
const SOME_HEAT = 50;

/** The sentence, with its stop. */
export function verdictOf(outcome: OutcomeFigures, design: Design, words: Wording): string {
  const house = judgedHouse(outcome);
  const where = (respect: Respect) => {
    const room = worstIn(outcome, respect);
    return room === null ? '' : ` in "${room.name}"`;
  };
  return `${[
    heatOf(house.tooHot.hours, house.tooHot.limitHours, where('hot')),
    dampOf(house.humidHours, house.mouldIndexMax, where('damp')),
    coldOf(house.underheatedHours, where('cold')),
    heatingOf(outcome.heating.energyKWh, design, words),
  ]
    .filter((part) => part !== '')
    .join(', ')}.`;
}

function heatOf(hot: number, allowed: number, where: string): string {
  if (hot > allowed) return `Too hot${where} for ${hours(hot)}, where ${allowed} are allowed`;
  if (hot > fewHotHours(allowed)) return `Warm at times, but within what is allowed`;
  return 'Cool enough in summer';
}

function dampOf(damp: number, mouldIndex: number, where: string): string {
  const mould = mouldIndex >= MOULD_INDEX_LIMIT ? ' with mould in the corners' : '';
  if (damp > ACCEPTABLE_DAMP_HOURS) return `damp${where} for ${hours(damp)}${mould}`;
  if (mould !== '') return 'mouldy in the corners';
  return damp > FEW_DAMP_HOURS ? 'damp at times' : 'dry enough';
}

function coldOf(cold: number, where: string): string {
  if (cold > COLD_HOURS) return `too cold${where} for ${hours(cold)}`;
  return cold > FEW_COLD_HOURS ? 'cool at times' : '';
}

function heatingOf(energyKWh: number, { heating, house }: Design, words: Wording): string {
  if (heating.capacityKW === 0) return 'with no back-up heat';
  const perM2 = energyKWh / house.floorAreaM2;
  const amount = perM2 <= LITTLE_HEAT ? 'little' : perM2 <= SOME_HEAT ? 'some' : 'much';
  return `${amount} back-up heat (${words.energy(energyKWh)})`;
}
