// What nobody can know of a house before it stands, one thing at a time, each as a design that can be drawn and run: the
// year's weather, airtightness as built, the hands of its people, the ground. How far each is moved is a house rule,
// written beside it; of a house held against a record of its days, the ends of what the record allows. A design in, the
// same design as it may turn out.

import type { AsFound, FoundNumber, UnknownId } from '../design/as-found.ts';
import type { Design, Habit, Living } from '../design/design.ts';
import { HOTTER_LIMITS, NO_CHANGE, withHotter } from '../design/hotter.ts';
import { withChoiceKept } from '../design/too-hot-criterion.ts';
import { OTHER_DRAWS } from '../weather/synthetic/other-draws.ts';
import type { ClimateChange } from './run-job.ts';
import { varied } from './variation.ts';
import type { Words } from './words.ts';

export interface Unknown {
  readonly id:
    | 'hot-year'
    | 'cold-year'
    | 'leaky'
    | 'tight'
    | 'more-sun'
    | 'less-sun'
    | 'poor-walls'
    | 'good-walls'
    | 'careless'
    | 'careful'
    | 'ground'
    | `draw-${number}`;
  /** as it follows a figure: "in a year 1.5 °C hotter" */
  readonly when: (words: Pick<Words, 'degrees'>) => string;
  /** the design as it then is; the design itself where this unknown does not touch it */
  readonly apply: (design: Design) => Design;
  /** what differs in the year it stands in, where no design can ask for that */
  readonly change?: ClimateChange;
}

/** Means of a whole year lie within about this much of the typical one nine times in ten [K]; common practice, no source. */
const YEAR_K = 1.5;
/** Airtightness as built against as drawn, least and most: the spread of the samples (unknowns.ts). */
const TIGHT_TIMES = 0.7;
const LEAKY_TIMES = 2;
/** Insulation in the ground does this share of what is drawn where it lies wet or badly laid. */
const GROUND_TIMES = 0.5;
/** Hands that look after windows less; openers that fail are worked by hand. That nobody opens anything is a question of its own. */
const LESS_CARE: Readonly<Record<Habit, Habit>> = {
  automatic: 'attentive',
  attentive: 'forgetful',
  away: 'forgetful',
  forgetful: 'forgetful',
  never: 'never',
};
const MORE_CARE: Readonly<Record<Habit, Habit>> = {
  automatic: 'automatic',
  attentive: 'attentive',
  away: 'attentive',
  forgetful: 'attentive',
  never: 'forgetful',
};
const WETTER: Readonly<Record<Living, Living>> = { dry: 'moist', moist: 'wet', wet: 'wet' };
const DRIER: Readonly<Record<Living, Living>> = { dry: 'dry', moist: 'dry', wet: 'moist' };

const YEARS: readonly Unknown[] = [
  {
    id: 'hot-year',
    when: (words) => `in a year ${words.degrees(YEAR_K)} hotter`,
    apply: (design) => inAYear(design, YEAR_K),
  },
  {
    id: 'cold-year',
    when: (words) => `in a year ${words.degrees(YEAR_K)} colder`,
    apply: (design) => inAYear(design, -YEAR_K),
  },
];

const AS_BUILT: readonly Unknown[] = [
  {
    id: 'leaky',
    when: () => 'if it is built twice as leaky',
    apply: (design) => withTightness(design, LEAKY_TIMES),
  },
  {
    id: 'tight',
    when: () => 'if it is built a third tighter',
    apply: (design) => withTightness(design, TIGHT_TIMES),
  },
];

const PEOPLE_AND_GROUND: readonly Unknown[] = [
  {
    id: 'careless',
    when: () => 'if washing dries indoors and windows are forgotten',
    apply: (design) => withHands(design, LESS_CARE, WETTER),
  },
  {
    id: 'careful',
    when: () => 'if washing dries outdoors and windows are minded',
    apply: (design) => withHands(design, MORE_CARE, DRIER),
  },
  {
    id: 'ground',
    when: () => 'if the insulation in the ground does half',
    apply: (design) =>
      varied(design, {
        'floor.resistance': GROUND_TIMES * design.floor.resistance,
        'floor.edgeResistance': GROUND_TIMES * design.floor.edgeResistance,
      }),
  },
];

/** The days of a made year are drawn: other draws of the same normals, in which the house is as drawn. */
const DRAWS: readonly Unknown[] = Array.from({ length: OTHER_DRAWS }, (_, i) => ({
  id: `draw-${i + 1}` as const,
  when: () => 'in another made year',
  apply: (design: Design) => design,
  change: { draw: i + 1 },
}));

/** What a record can leave in doubt about the shell, each with both its ends. */
const ENDS: readonly {
  readonly of: UnknownId;
  readonly least: Pick<Unknown, 'id' | 'when'>;
  readonly most: Pick<Unknown, 'id' | 'when'>;
  readonly with: (design: Design, times: number) => Design;
}[] = [
  {
    of: 'airtightness',
    least: { id: 'tight', when: () => 'if it leaks as little as its record allows' },
    most: { id: 'leaky', when: () => 'if it leaks as much as its record allows' },
    with: withTightness,
  },
  {
    of: 'sun',
    least: { id: 'less-sun', when: () => 'if it lets in as little sun as its record allows' },
    most: { id: 'more-sun', when: () => 'if it lets in as much sun as its record allows' },
    with: withSun,
  },
  {
    of: 'insulation',
    least: { id: 'poor-walls', when: () => 'if walls and roof insulate as little as the record allows' },
    most: { id: 'good-walls', when: () => 'if walls and roof insulate as well as the record allows' },
    with: (design, times) =>
      varied(design, {
        'envelope.wallResistance': times * design.envelope.wallResistance,
        'envelope.roofResistance': times * design.envelope.roofResistance,
      }),
  },
];

function foundOf({ asFound }: Design, id: UnknownId): FoundNumber | undefined {
  return asFound?.unknowns.find((one) => one.id === id);
}

/** How the shell may turn out: by the record's ends where there is one, else by house rules. */
function shellOf(design: Design): readonly Unknown[] {
  const found = ENDS.flatMap(({ of, least, most, with: changed }): Unknown[] => {
    const known = foundOf(design, of);
    if (known === undefined) return [];
    // The one being varied may have been changed since; its doubt is a share of it.
    return [
      { ...most, apply: (one) => changed(one, known.high / known.value) },
      { ...least, apply: (one) => changed(one, known.low / known.value) },
    ];
  });
  return foundOf(design, 'airtightness') === undefined ? [...AS_BUILT, ...found] : found;
}

/**
 * The rule in words, for notes.
 *
 * @param isMade of a year made from monthly normals
 */
export function unknownsRule(words: Pick<Words, 'degrees'>, design: Design, isMade: boolean): string {
  const drawn = isMade
    ? ` The year is made from monthly normals and its days are drawn, so the house is also run in ${OTHER_DRAWS} other years made from the same normals.`
    : '';
  const found = ENDS.filter(({ of }) => foundOf(design, of) !== undefined);
  const built =
    foundOf(design, 'airtightness') === undefined ? 'a house built twice as leaky or a third tighter, ' : '';
  const recorded =
    found.length === 0 ? '' : 'leaks, sun and walls as far as the record of the house allows, ';
  return (
    'The ranges come from runs of the house with one thing changed that nobody can know beforehand: ' +
    `a year ${words.degrees(YEAR_K)} hotter or colder, ${built}${recorded}` +
    'people who dry washing indoors and forget windows, or do better than drawn, and insulation in the ground that does half. ' +
    `How far ${found.length === 0 ? 'each' : 'each of the others'} is moved is a house rule. Two at once can lead further.${drawn}`
  );
}

/**
 * What nobody can know of a design: those that change it, and in a made year other draws of it. All are judged by what the
 * design as drawn counts as too hot.
 */
export function unknownsOf(drawn: Design, isMade: boolean): readonly Unknown[] {
  const design = withChoiceKept(drawn);
  const same = JSON.stringify(design);
  const turned = [...YEARS, ...shellOf(design), ...PEOPLE_AND_GROUND].filter(
    ({ apply }) => JSON.stringify(apply(design)) !== same,
  );
  return isMade ? [...turned, ...DRAWS] : turned;
}

function inAYear(design: Design, shiftK: number): Design {
  const { winterK, summerK, ...wave } = design.hotter ?? NO_CHANGE;
  const { min, max } = HOTTER_LIMITS.find(({ key }) => key === 'summerK')!;
  const held = (kelvin: number) => Math.min(max, Math.max(min, kelvin));
  return withHotter(design, { ...wave, winterK: held(winterK + shiftK), summerK: held(summerK + shiftK) });
}

function withTightness(design: Design, times: number): Design {
  return varied(design, {
    'air.ach50': times * design.air.ach50,
    'air.sunspaceAch50': times * design.air.sunspaceAch50,
  });
}

/** Sun let in has no number of its own; it acts from what was found. */
function withSun(design: Design, times: number): Design {
  const { asFound } = design;
  if (asFound === undefined) return design;
  const changed: AsFound = {
    ...asFound,
    unknowns: asFound.unknowns.map((one) =>
      one.id === 'sun' ? { ...one, value: Math.min(one.high, Math.max(one.low, one.value * times)) } : one,
    ),
  };
  return { ...design, asFound: changed };
}

function withHands(
  design: Design,
  habits: Readonly<Record<Habit, Habit>>,
  living: Readonly<Record<Living, Living>>,
): Design {
  return varied(design, {
    'vents.habit': habits[design.vents.habit],
    'people.living': living[design.people.living],
  });
}
