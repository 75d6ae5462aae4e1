// What the vents ask of the people living there, and whether they suffice. The sixth of the glass is a rule of
// greenhouse handbooks (from memory, low confidence): about 7 K over outdoors without wind and 2.5 m of height.

import type { Design, Habit } from '../../design/design.ts';
import { materialById } from '../../design/materials.ts';
import { MONTH_NAMES } from '../../outcomes/calendar.ts';
import { isTooHot } from '../../outcomes/too-hot.ts';
import { ventMoves } from '../../outcomes/vent-moves.ts';
import { SIZING_RULES } from '../../physics/sizing-rules.ts';
import { HOURS } from '../../weather/typical-year.ts';
import type { Context } from '../context.ts';
import { oncePer } from '../once-per.ts';
import { finding, type Rule } from '../rule.ts';
import { during, hours, listed, percent, plain } from '../wording.ts';

/** Moves a day that fit a household's day: once in the morning, once in the evening. House rule. */
const EASY_MOVES_PER_DAY = 2;
/** Share of the year a vent may stand wrong before it is worth a word. House rule. */
const LITTLE_NEGLECT = 0.02;
const MUCH_NEGLECT = 0.1;
/** Heat let out by a window left open is worth a word from these hours, and from this share of the heat; and is much. House rule. */
const NOTICED_HOURS = 3;
const NOTICED_SHARE = 0.002;
const MUCH_LOST = 0.05;
const VENT_RULE = SIZING_RULES.find(({ id }) => id === 'sunspace-vents')!;
/** Air in a sunspace above which nobody stays in it [°C]. House rule. */
const UNBEARABLE_C = 38;

const HABIT_WORDS: Readonly<Record<Habit, string>> = {
  automatic: 'an automatic opener',
  attentive: 'attentive people at home, who sleep at night and cannot look all the time',
  away: 'people away on workdays',
  forgetful: 'people who forget now and then',
  never: 'nobody to open them',
};

const isHanded = (habit: Habit) => habit !== 'automatic';

export const VENT_RULES: readonly Rule[] = [
  finding({
    id: 'vents-ask-much',
    severity: 'warning',
    applies: ({ outcome, design }) =>
      isHanded(design.vents.habit) && outcome.vents.movesPerDayInBusiestMonth > EASY_MOVES_PER_DAY,
    figures: ({ outcome, year }) => ({
      moves: outcome.vents.moves,
      movesPerDay: outcome.vents.movesPerDayInBusiestMonth,
      movesOnBusiestDay: outcome.vents.movesOnBusiestDay,
      busiestMonth: MONTH_NAMES[ventMoves(year.openings).busiestMonth]!,
    }),
    says: (f) =>
      `The vents and doors need a hand ${f.moves} times a year. In ${f.busiestMonth} that is ${plain(f.movesPerDay, 1)} times a day, and ${f.movesOnBusiestDay} on the busiest day. ` +
      'Few people keep that up. Openers driven by wax or a motor would do it for you.',
  }),
  finding({
    id: 'vents-easy',
    severity: 'good',
    applies: ({ outcome, design }) =>
      isHanded(design.vents.habit) &&
      outcome.vents.moves > 0 &&
      outcome.vents.movesPerDayInBusiestMonth <= EASY_MOVES_PER_DAY &&
      outcome.vents.neglectedShare <= LITTLE_NEGLECT,
    figures: ({ outcome }) => ({
      moves: outcome.vents.moves,
      movesPerDay: outcome.vents.movesPerDayInBusiestMonth,
    }),
    says: (f) =>
      `The vents ask little: ${f.moves} moves a year, and ${plain(f.movesPerDay, 1)} a day in the busiest month.`,
  }),
  finding({
    id: 'vents-neglected',
    severity: ({ outcome }) => (outcome.vents.neglectedShare > MUCH_NEGLECT ? 'warning' : 'note'),
    applies: ({ outcome }) => outcome.vents.neglectedShare > LITTLE_NEGLECT,
    figures: ({ outcome, design, house }) => ({
      neglectedHours: outcome.vents.neglectedShare * HOURS,
      habit: HABIT_WORDS[design.vents.habit],
      tooHotHours: house.tooHot.hours,
    }),
    says: (f) =>
      `With ${f.habit}, a vent is open or shut at the wrong time for ${hours(f.neglectedHours)} a year. Openers would not forget.`,
  }),
  finding({
    id: 'heated-with-window-open',
    severity: ({ outcome }) =>
      outcome.vents.heatedWhileOpenKWh > MUCH_LOST * outcome.heating.energyKWh ? 'warning' : 'note',
    applies: ({ outcome }) =>
      outcome.vents.heatedWhileOpenHours >= NOTICED_HOURS &&
      outcome.vents.heatedWhileOpenKWh >= NOTICED_SHARE * outcome.heating.energyKWh,
    figures: ({ outcome, design }) => ({
      hours: outcome.vents.heatedWhileOpenHours,
      kWh: outcome.vents.heatedWhileOpenKWh,
      share: outcome.vents.heatedWhileOpenKWh / outcome.heating.energyKWh,
      habit: HABIT_WORDS[design.vents.habit],
      stove: design.heating.source?.kind === 'stove' ? 'yes' : 'no',
    }),
    says: (f, { words }) =>
      f.stove === 'yes'
        ? `The stove makes the rooms so warm that windows are opened: ${words.energy(f.kWh)} of its heat goes out by them a year, in ${hours(f.hours)}. Lay smaller fires, or light it later.`
        : `With ${f.habit}, a window left open lets out ${words.energy(f.kWh)} of the heater's heat a year, in ${hours(f.hours)}. Shut the windows when the heater comes on.`,
  }),
  finding({
    id: 'vents-small',
    severity: 'warning',
    applies: ({ design, geometry, sunspace }) =>
      sunspace !== null &&
      design.vents.sunspaceM2 < VENT_RULE.low * geometry.glassM2 &&
      sunspace.maxAirC > UNBEARABLE_C,
    figures: ({ design, geometry, sunspace }) => ({
      ventsM2: design.vents.sunspaceM2,
      ventsShare: design.vents.sunspaceM2 / geometry.glassM2,
      ruleM2: VENT_RULE.low * geometry.glassM2,
      maxAirC: sunspace!.maxAirC,
      source: 'one sixth of the glass: greenhouse handbooks (from memory, low confidence)',
    }),
    says: (f, { words }) =>
      `The air in the sunspace reaches ${words.temperature(f.maxAirC)}. Its vents are ${words.area(f.ventsM2)}, or ${percent(f.ventsShare)} of its glass; growers' handbooks ask for a sixth, ${words.area(f.ruleM2)} here, half of it low and half high.`,
  }),
  finding({
    id: 'windows-few',
    severity: 'note',
    applies: ({ design, house }) => isTooHot(house) && design.vents.houseM2 < 0.02 * design.house.floorAreaM2,
    figures: ({ design }) => ({
      windowsM2: design.vents.houseM2,
      windowsShare: design.vents.houseM2 / design.house.floorAreaM2,
      source: 'windows that open, about a twentieth of the floor: common practice, no source',
    }),
    says: (f, { words }) =>
      `Only ${words.area(f.windowsM2)} of the house's own windows open, ${percent(f.windowsShare)} of the floor. Common practice is about a twentieth of the floor, on two sides, one low and one high. Check what your code asks for escape and for fresh air.`,
  }),
  finding({
    id: 'purge-helps',
    severity: 'note',
    applies: ({ design, house, climate }) =>
      design.vents.nightPurgeAch === 0 && isTooHot(house) && coolNights(climate).some(Boolean),
    figures: ({ climate, design }) => ({
      months: during(coolNights(climate)),
      coolC: COOL_NIGHT_C,
      holders: heatHolders(design),
    }),
    says: (f, { words }) =>
      `Nights fall below ${words.temperature(f.coolC)} outside ${f.months}, when the days are warm. Night air through the house, by a fan or by high and low windows safe to leave open, would take the day's heat out of ${f.holders}.`,
  }),
];

/** Lining this thick holds a day's heat [m]. House rule. */
const HEAVY_LINING_M = 0.04;

/** What stores the day's heat in the rooms, as far as the design has it. */
function heatHolders({ floor, envelope, mass }: Design): string {
  const isOpen = floor.cover === 'bare' || floor.cover === 'tile';
  const found = [
    ...(materialById(floor.material).mass && isOpen ? ['the floor'] : []),
    ...(materialById(envelope.wallLining).mass && envelope.wallLiningM >= HEAVY_LINING_M
      ? ['the walls']
      : []),
    ...(mass.areaM2 > 0 ? ['the added mass'] : []),
  ];
  return found.length === 0 ? 'the rooms' : listed(found);
}

/** Night air cool enough to cool a house [°C]. House rule. */
const COOL_NIGHT_C = 18;

/**
 * Months whose mean day is warm (above 18 °C by its mean high) and whose nights are cool; the same for every run in a
 * climate.
 */
const coolNights = oncePer((climate: Context['climate']): readonly boolean[] =>
  MONTH_NAMES.map((_, month) => {
    const [low, high] = meanLowAndHigh(climate.year.dryBulbC, month);
    return low < COOL_NIGHT_C && high > COOL_NIGHT_C + 4;
  }),
);

function meanLowAndHigh(dryBulbC: Float64Array, month: number): readonly [number, number] {
  const days: Float64Array[] = [];
  for (let day = FIRST_DAY[month]!; day < FIRST_DAY[month + 1]!; day++) {
    days.push(dryBulbC.subarray(24 * day, 24 * day + 24));
  }
  const mean = (of: (day: Float64Array) => number) =>
    days.reduce((sum, day) => sum + of(day), 0) / days.length;
  return [mean((day) => Math.min(...day)), mean((day) => Math.max(...day))];
}

const FIRST_DAY: readonly number[] = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];
