// What becomes of a house by who opens its windows: every habit in every house and six climates. Figures of the years out,
// and where their order is not that of common practice: the more care, the fewer hot hours and the less mould; the more moves,
// the more somebody is there and thinks of it.
// Limits: common practice, no source.
import { EXAMPLES, runYear } from '../../src/daystone.ts';
import type { Habit } from '../../src/design/design.ts';
import { climateOf, HOUSES, type House, PLACES } from './scan.ts';

/** From the most care to none. */
export const BY_CARE: readonly Habit[] = ['automatic', 'attentive', 'away', 'forgetful', 'never'];
export const SIX_PLACES: readonly string[] = [...PLACES, 'tucson', 'belfast'];

/** Hours by which less care may do better by chance, and as a share. */
const CHANCE_H = 12;
const CHANCE_SHARE = 0.02;
/** An opener takes twenty minutes where a hand takes one, and makes less of cold nights. */
const OPENER_SHARE = 0.1;
/** The rooms of who airs more may still be the damper by so much where outdoors is as damp [mould index]. */
const CHANCE_MOULD = 0.1;
/** What a household can be asked in its busiest month, by day. */
const MOST_MOVES_A_DAY = 16;

export interface HabitYear {
  readonly habit: Habit;
  readonly heatKWh: number;
  readonly hotHours: number;
  readonly humidHours: number;
  readonly mould: number;
  readonly moves: number;
  readonly busiest: number;
}

export interface HabitRow {
  readonly house: House;
  readonly place: string;
  /** in the order of BY_CARE */
  readonly years: readonly HabitYear[];
}

/** Every house in so many places. */
export function runHabits(
  places: readonly string[] = SIX_PLACES,
  houses: readonly House[] = HOUSES,
): HabitRow[] {
  return houses.flatMap((house) =>
    places.map((place) => ({ house, place, years: BY_CARE.map((habit) => yearOf(house, place, habit)) })),
  );
}

function yearOf(house: House, place: string, habit: Habit): HabitYear {
  const { design } = EXAMPLES.find(({ id }) => id === house)!;
  const { figures } = runYear({ ...design, vents: { ...design.vents, habit } }, climateOf(place), {
    lend: true,
  });
  const { overheatedHours, humidHours, mouldIndexMax } = figures.zones.house;
  return {
    habit,
    heatKWh: figures.heating.energyKWh,
    hotHours: overheatedHours,
    humidHours,
    mould: mouldIndexMax,
    moves: figures.vents.moves,
    busiest: figures.vents.movesPerDayInBusiestMonth,
  };
}

/** Where the order is another. */
export function orderFaults({ house, place, years }: HabitRow): string[] {
  const faults: string[] = [];
  const say = (what: string, a: HabitYear, b: HabitYear, of: (year: HabitYear) => number) =>
    faults.push(`${house}, ${place}: ${what} ${a.habit} ${of(a).toFixed(1)}, ${b.habit} ${of(b).toFixed(1)}`);
  const nobody = years.at(-1)!;
  // Who is away is not there at noon, who forgets acts late: of these two either may be the worse off for heat.
  const before = (n: number) => years[BY_CARE[n] === 'forgetful' ? n - 2 : n - 1]!;
  years.forEach((less, n) => {
    if (n === 0) return;
    const more = before(n);
    const share = more.habit === 'automatic' ? OPENER_SHARE : CHANCE_SHARE;
    if (less.hotHours < (1 - share) * more.hotHours - CHANCE_H)
      say('hot hours', more, less, (y) => y.hotHours);
    const next = years[n - 1]!;
    if (next.habit !== 'automatic' && less.moves >= next.moves) say('moves', next, less, (y) => y.moves);
  });
  for (const year of years) {
    if (year.mould > nobody.mould + CHANCE_MOULD) say('mould', year, nobody, (y) => y.mould);
    if (year.busiest > MOST_MOVES_A_DAY)
      faults.push(`${house}, ${place}: ${year.habit} moves something ${year.busiest.toFixed(1)} times a day`);
  }
  return faults;
}

/** Lines of a page. */
export function habitsPage(rows: readonly HabitRow[]): string[] {
  const faults = rows.flatMap(orderFaults);
  return [
    '',
    '## Who opens, and when',
    '',
    `Heat [kWh] / hot hours / humid hours / moves a day in the busiest month, by who opens windows and vents. The more care, the fewer hot hours and the less mould, and the more moves the more somebody is there and thinks of it; who airs more may heat more, and of who is away at noon and who acts late either may be the hotter. ${faults.length === 0 ? 'It is so in every row.' : 'It is not so here:'}`,
    ...(faults.length === 0 ? [] : ['', ...faults.map((fault) => `- ${fault}`)]),
    '',
    `| house, place | ${BY_CARE.map((habit) => (habit === 'never' ? 'nobody' : habit)).join(' | ')} |`,
    `| --- | ${BY_CARE.map(() => '---').join(' | ')} |`,
    ...rows.map(
      ({ house, place, years }) =>
        `| ${house}, ${place} | ${years.map((y) => `${y.heatKWh.toFixed(0)} / ${y.hotHours} / ${y.humidHours} / ${y.busiest.toFixed(1)}`).join(' | ')} |`,
    ),
  ];
}
