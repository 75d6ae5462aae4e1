// Dangers of living in such a house: heat for the old and the very young, fires in a tight house, mould for
// people with weak lungs. Sources on each rule. A warning, not medical advice; local codes and doctors come first.

import { MOULD_INDEX_LIMIT } from '../../physics/mould-index.ts';
import { roomFigure } from '../room-words.ts';
import { caution, type Rule } from '../rule.ts';
import { hours, percent } from '../wording.ts';
import { feltFigures } from './felt-heat.ts';
import { mayBurn } from './heat-source.ts';

/** Houses tighter than this need air brought in for any fire [air changes an hour at 50 Pa]. House rule. */
const TIGHT_ACH50 = 5;
/** Humidity from which damp makes warm air feel plainly hotter. House rule. */
const DAMP_AIR = 0.5;
/** Least clear opening [m²] and highest sill [m] of a window to escape by: 5.7 ft² and 44 in (IRC R310; from memory, high confidence). */
const ESCAPE = { openM2: 0.53, sillM: 1.1176 } as const;
/** Where a cool room lies. Common practice, no source. */
const COOL_ROOM =
  'Give them one room that stays cool: on the shaded side, against the earth if a wall is, with no sun through its glass. Have someone look in on hot days, and ask a doctor or your health department beforehand what to do.';

export const LIVING_CAUTIONS: readonly Rule[] = [
  caution({
    id: 'caution-heat',
    severity: 'danger',
    applies: ({ house }) => house.feltHeat.hours > 0,
    figures: ({ house, worst }) => {
      const { maxHour } = house.feltHeat;
      const place = worst('felt');
      return {
        ...roomFigure(place),
        ...feltFigures(house.feltHeat),
        airThenC: place.year.airC[maxHour!]!,
        humidityThen: place.year.relativeHumidity[maxHour!]!,
        source:
          'US National Weather Service, heat index, in the shade; the cool room: common practice, no source',
      };
    },
    says: (f, { words, worst }) =>
      `For ${hours(f.hours)} a year ${worst('felt').the} ${worst('felt').verb('feel', 'feels')} like ${words.temperature(f.fromC)} or more, and like ${words.temperature(f.worstC)}${f.beyondChart === 'yes' ? ' or worse' : ''} on ${f.worst}. It is a danger to life for some: the old, babies, and people who are ill or take certain medicines. The US weather service calls it "${f.band}". The air is ${words.temperature(f.airThenC, 1)} then, at ${percent(f.humidityThen)} humidity${f.humidityThen >= DAMP_AIR ? ': sweat dries slowly in air so damp' : ''}. ${COOL_ROOM}`,
  }),
  caution({
    id: 'caution-fire',
    severity: 'warning',
    applies: ({ design }) =>
      design.heating.capacityKW > 0 && mayBurn(design.heating.source) && design.air.ach50 <= TIGHT_ACH50,
    figures: ({ design }) => ({
      ach50: design.air.ach50,
      source: 'usual building practice; local codes decide',
    }),
    says: () =>
      'In a house this tight a stove, boiler or water heater with a flame must bring its own air in by a pipe and have its own flue. A kitchen fan can pull smoke and carbon monoxide back into the room. Fit carbon monoxide alarms where people sleep, never burn charcoal or run an engine indoors, and have a licensed fitter do the work.',
  }),
  caution({
    id: 'caution-carbon-monoxide',
    severity: ({ design }) => (design.heating.source === undefined ? 'note' : 'warning'),
    applies: ({ design }) =>
      design.heating.capacityKW > 0 && mayBurn(design.heating.source) && design.air.ach50 > TIGHT_ACH50,
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
  caution({
    id: 'caution-no-heater',
    severity: 'warning',
    applies: ({ design }) => design.heating.capacityKW === 0,
    figures: () => ({
      source:
        'US Centers for Disease Control, carbon monoxide (from memory, high confidence); local codes decide',
    }),
    says: () =>
      'A house with no heater still cooks, heats water and burns something in a cold week. Any flame can give off carbon monoxide, which you cannot smell and which kills people in their sleep. Give each flame a flue and air of its own, fit carbon monoxide alarms where people sleep, and never burn charcoal, a camp stove or an engine indoors. Have a licensed fitter check what burns gas or wood.',
  }),
  caution({
    id: 'caution-bedroom-escape',
    severity: 'warning',
    applies: () => true,
    figures: ({ design, geometry }) => ({
      openM2: ESCAPE.openM2,
      sillM: ESCAPE.sillM,
      buried: design.envelope.bermShare * geometry.heightM > ESCAPE.sillM ? 'yes' : 'no',
      behindGlass: design.sunspace.join === 'none' ? 'no' : 'yes',
      source:
        'International Residential Code, section R310 (from memory, high confidence); local codes decide',
    }),
    says: (f, { words }) =>
      `Each bedroom needs a second way out in a fire: a window or door to the open air that opens from inside with no key or tool. A US model code asks for a clear opening of ${words.area(f.openM2)} with its sill no higher than ${words.length(f.sillM)}.` +
      `${f.buried === 'yes' ? ' Earth against the walls leaves few places for one, so plan the bedrooms round it.' : ''}` +
      `${f.behindGlass === 'yes' ? ' A window into the sunspace does not count in most codes.' : ''}` +
      ' Fit smoke alarms in and outside the bedrooms, and ask your building office before you draw the rooms.',
  }),
];
