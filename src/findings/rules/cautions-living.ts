// Dangers of living in such a house: heat for the old and the very young, fires in a tight house, mould for
// people with weak lungs. Sources on each rule. A warning, not medical advice; local codes and doctors come first.

import { HEAT_INDEX_CHART_END_C, heatBand } from '../../physics/heat-index.ts';
import { MOULD_INDEX_LIMIT } from '../../physics/mould-index.ts';
import { caution, type Rule } from '../rule.ts';
import { hours, moment, percent } from '../wording.ts';

/** Houses tighter than this need air brought in for any fire [air changes an hour at 50 Pa]. House rule. */
const TIGHT_ACH50 = 5;
/** Humidity from which damp makes warm air feel plainly hotter. House rule. */
const DAMP_AIR = 0.5;
/** Where a cool room lies. Common practice, no source. */
const COOL_ROOM =
  'Give them one room that stays cool: on the shaded side, against the earth if a wall is, with no sun through its glass. Have someone look in on hot days, and ask a doctor or your health department beforehand what to do.';

export const LIVING_CAUTIONS: readonly Rule[] = [
  caution({
    id: 'caution-heat',
    severity: 'danger',
    applies: ({ house }) => house.feltHeat.hours > 0,
    figures: ({ house, houseYear }) => {
      const { hours: count, limitC, maxC, maxHour } = house.feltHeat;
      return {
        hours: count,
        fromC: limitC,
        worstC: maxC!,
        beyondChart: maxC === HEAT_INDEX_CHART_END_C ? 'yes' : 'no',
        band: heatBand(maxC!),
        worst: moment(maxHour!),
        airThenC: houseYear.airC[maxHour!]!,
        humidityThen: houseYear.relativeHumidity[maxHour!]!,
        source:
          'US National Weather Service, heat index, in the shade; the cool room: common practice, no source',
      };
    },
    says: (f, { words }) =>
      `For ${hours(f.hours)} a year the rooms feel like ${words.temperature(f.fromC)} or more, and like ${words.temperature(f.worstC)}${f.beyondChart === 'yes' ? ' or worse' : ''} on ${f.worst}. The air is ${words.temperature(f.airThenC, 1)} then, at ${percent(f.humidityThen)} humidity${f.humidityThen >= DAMP_AIR ? ': sweat dries slowly in air so damp' : ''}. The US weather service calls that "${f.band}". It is a danger to life for some: the old, babies, and people who are ill or take certain medicines. ${COOL_ROOM}`,
  }),
  caution({
    id: 'caution-fire',
    severity: 'warning',
    applies: ({ design }) => design.heating.capacityKW > 0 && design.air.ach50 <= TIGHT_ACH50,
    figures: ({ design }) => ({
      ach50: design.air.ach50,
      source: 'usual building practice; local codes decide',
    }),
    says: () =>
      'In a house this tight a stove, boiler or water heater with a flame must bring its own air in by a pipe and have its own flue. A kitchen fan can pull smoke and carbon monoxide back into the room. Fit carbon monoxide alarms where people sleep, never burn charcoal or run an engine indoors, and have a licensed fitter do the work.',
  }),
  caution({
    id: 'caution-carbon-monoxide',
    severity: 'note',
    applies: ({ design }) => design.heating.capacityKW > 0 && design.air.ach50 > TIGHT_ACH50,
    figures: ({ design }) => ({
      ach50: design.air.ach50,
      source: 'usual building practice; local codes decide',
    }),
    says: () =>
      'If the back-up heat is a fire, it needs a sound flue, air of its own and a carbon monoxide alarm where people sleep. Have a licensed fitter check it each year.',
  }),
  caution({
    id: 'caution-mould-health',
    severity: 'warning',
    applies: ({ house }) =>
      house.mouldIndexMax >= MOULD_INDEX_LIMIT ||
      house.dampSpots.some(({ mouldIndexMax }) => mouldIndexMax >= MOULD_INDEX_LIMIT),
    figures: ({ house }) => ({
      index: house.mouldIndexMax,
      source:
        'World Health Organization, guidelines on dampness and mould (2009; from memory, high confidence)',
    }),
    says: () =>
      'Mould makes asthma and coughs worse, most of all in children. Do not paint over it: take away the damp, then the mouldy stuff, with gloves and a mask. For a large patch, call a mould remediation firm, or ask your health department.',
  }),
  caution({
    id: 'caution-codes-first',
    severity: 'note',
    applies: () => true,
    figures: () => ({ source: 'our own rule' }),
    says: () =>
      'Your building code and the people licensed to design and build where you live come before anything this tool says. It helps you ask them better questions.',
  }),
];
