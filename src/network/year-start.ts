// Where a year starts: walls, ground, air and water as the years before would leave them. They are lived in long steps, a
// part of the day over several days each, in the mean weather and sun of their hours and with the run's own vents, thermostat
// and water. The first year is a coarse one, after which every mode of wall and ground is put where that year over and over
// would leave it, since soil remembers for longer than a year; the next is lived from there, its last weeks day by day.
// Error: against 365 real days before the year, tests/converge and docs/convergence.md.

import type { Model } from '../model/model.ts';
import { always } from '../model/schedule.ts';
import type { PreparedClimate } from '../weather/prepared/prepared-climate.ts';
import type { AirFlow } from './air/air-flow-interface.ts';
import type { Covers } from './covers/covers.ts';
import { addToTable, type Moment, SCHEDULE_LENGTH } from './hour/clock.ts';
import { blankDayPart, type DayPart, middleOf, PARTS_OF_DAY, readDayPart } from './hour/day-part.ts';
import { type HourWeather, readMeanWeather } from './hour/hour-weather.ts';
import { airHub } from './layout/layout.ts';
import type { Stepper } from './solver/stepper-interface.ts';
import type { HourlyGains } from './sun/hourly-gains.ts';

const DAYS = 365;
const DAY_S = 86_400;
const NO_LOWER_BOUND = always(Number.NEGATIVE_INFINITY);
const NO_UPPER_BOUND = always(Number.POSITIVE_INFINITY);
/** Phases up to the start: their days, so many of them to a long step, every so many of those read; the first is a period. */
const PHASES = [
  { days: DAYS, together: 30, every: 8 },
  { days: 305, together: 4, every: 1 },
  { days: 60, together: 1, every: 1 },
] as const;
/** With a bed, whose water follows no mean of many days, so many together in the second. */
const TOGETHER_WITH_BEDS = 2;
const MOST_DAYS_READ = 5;

/** What a year is started with: parts of the engine, and its own beginning and solving of a step. */
export interface StartedParts {
  readonly stepper: Stepper;
  readonly covers: Covers;
  readonly gains: HourlyGains;
  readonly flows: AirFlow;
  readonly moment: Moment;
  readonly weather: HourWeather;
  setStep(seconds: number): void;
  /** temperatures of the zones as the network stands */
  readZones(): void;
  /** conductances of the long step, whose weather and sun are written */
  renewFilms(): void;
  /** water, latent heat and flows of the hour, or of the long step, whose weather and gains are written */
  beginHour(): void;
  solveStep(): void;
}

/** Lives through the years before a day of the year, 0…364, from wherever the engine stands; room for so many zones. */
export function createYearStart(parts: StartedParts, zonesMost: number) {
  const { stepper, covers, gains, flows, moment, weather } = parts;
  const dayPart = blankDayPart(MOST_DAYS_READ);
  /** by zone, bound and schedule index [°C] */
  const bounds = new Float64Array(2 * zonesMost * SCHEDULE_LENGTH);

  function liveUntil(day: number, climate: PreparedClimate, zones: Model['zones']): void {
    loadThermostats(zones);
    flows.beginLongSteps();
    let from = day - PHASES.reduce((sum, { days }) => sum + days, 0);
    const isPlanted = zones.some(({ planting }) => planting !== null);
    PHASES.forEach((phase, index) => {
      if (index === 0) stepper.beginPeriod();
      const together = index === 1 && isPlanted ? TOGETHER_WITH_BEDS : phase.together;
      livePhase(from, { ...phase, together }, climate, zones.length);
      if (index === 0) stepper.endPeriod(DAYS * DAY_S);
      from += phase.days;
    });
    flows.endLongSteps();
  }

  function livePhase(
    day: number,
    { days, together, every }: Record<keyof (typeof PHASES)[number], number>,
    climate: PreparedClimate,
    zones: number,
  ): void {
    const blocks = Math.round(days / together);
    parts.setStep((days * DAY_S) / blocks / PARTS_OF_DAY);
    for (let block = 0; block < blocks; block++) {
      const from = Math.round((days * block) / blocks);
      const until = Math.round((days * (block + 1)) / blocks);
      for (let part = 0; part < PARTS_OF_DAY; part++) {
        readDayPart(day + from, until - from, every, part, dayPart);
        liveDayPart(climate, zones);
      }
    }
  }

  function liveDayPart(climate: PreparedClimate, zones: number): void {
    middleOf(dayPart, moment);
    readMeanWeather(climate, dayPart, weather);
    parts.readZones();
    covers.renewMean(dayPart, climate);
    gains.renewMean(dayPart);
    parts.renewFilms();
    setMeanBands(dayPart, zones);
    parts.beginHour();
    flows.beginLongStep(dayPart, climate.year.dryBulbC);
    parts.solveStep();
  }

  function loadThermostats(zones: Model['zones']): void {
    const { holdMaxW, holdMinW, holdRamps } = stepper;
    bounds.fill(0);
    zones.forEach(({ thermostat }, z) => {
      const { heatC, coolC } = thermostat ?? {};
      const [low, high] = [2 * z, 2 * z + 1].map((row) => row * SCHEDULE_LENGTH) as [number, number];
      addToTable(bounds, low, heatC ?? NO_LOWER_BOUND, 1);
      addToTable(bounds, high, coolC ?? NO_UPPER_BOUND, 1);
      const hub = airHub(z, zones.length);
      holdMaxW[hub] = thermostat?.heatCapacityW ?? 0;
      holdMinW[hub] = -(thermostat?.coolCapacityW ?? 0);
      holdRamps[hub] = 0;
    });
  }

  function setMeanBands({ hours, count }: DayPart, zones: number): void {
    const { holdLowC, holdHighC } = stepper;
    const { monthDayHour } = moment.calendar;
    for (let z = 0; z < zones; z++) {
      let low = 0;
      let high = 0;
      for (let k = 0; k < count; k++) {
        const at = 2 * z * SCHEDULE_LENGTH + monthDayHour[hours[k]!]!;
        low += bounds[at]! / count;
        high += bounds[at + SCHEDULE_LENGTH]! / count;
      }
      holdLowC[airHub(z, zones)] = low;
      holdHighC[airHub(z, zones)] = high;
    }
  }

  return { liveUntil };
}
