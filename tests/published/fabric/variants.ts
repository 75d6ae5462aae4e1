// What else was tried on the fabric cases, one published or recalled choice changed at a time, so that docs/published-cases.md
// can show what each is worth. None of them is chosen by the ranges; the run that counts is runs.ts.
import type { Film, Model } from '../../../src/model/model.ts';

import { type PreparedClimate, prepareClimate } from '../../../src/weather/prepared/prepared-climate.ts';
import { HOURS } from '../../../src/weather/typical-year.ts';
import { fileYear } from '../../weather/weather-files.ts';
import { CASES, CLEAR_PANE } from './cases.ts';
import { COMPUTED_FILMS, type FilmSet, modelOfCase } from './model-of-case.ts';
import { type CaseOutcome, outcomeOf, WEATHER_FILE } from './runs.ts';

export interface Variant {
  readonly name: string;
  readonly source: string;
  readonly films?: FilmSet;
  readonly change?: (model: Model) => Model;
  readonly weather?: (climate: PreparedClimate) => Promise<PreparedClimate>;
}

const film = (convection: number, radiation: number | 'computed' = 'computed'): Film => ({
  kind: 'fixed',
  convection,
  radiation,
});
const inside = (wall: number, roof: number, floor: number): FilmSet => ({
  ...COMPUTED_FILMS,
  inside: { wall: film(wall), roof: film(roof), floor: film(floor), glass: film(wall) },
});
const RECALLED_OUTSIDE: FilmSet = {
  ...COMPUTED_FILMS,
  outside: { wall: film(11.9), roof: film(14.4), floor: film(0.8, 0), glass: film(8) },
};

export const VARIANTS: readonly Variant[] = [
  { name: 'as reported', source: 'runs.ts' },
  {
    name: 'outside constants of the new edition',
    source: 'recalled, L: walls 11.9, roof 14.4, floor 0.8, glass 8.0',
    films: RECALLED_OUTSIDE,
  },
  {
    name: 'the same, and 2.1 inside',
    source: 'recalled, L: 1.8 to 2.4 inside',
    films: { ...inside(2.1, 2.1, 2.1), outside: RECALLED_OUTSIDE.outside },
  },
  {
    name: 'inside constants of the old edition',
    source: 'recalled, M: 3.16 walls, 4.13 heat upward, 1.00 downward',
    films: inside(3.16, 4.13, 1),
  },
  {
    name: 'inside constants by direction',
    source: 'ISO 6946: 2.5 walls, 5.0 ceiling, 0.7 floor at all hours',
    films: inside(2.5, 5, 0.7),
  },
  {
    name: 'double glass from its panes alone',
    source: 'pane values 0.834 and 0.075 (M), Fresnel and Bouguer',
    change: withClearPanes,
  },
  {
    name: 'air of the file’s own density',
    source: 'weather file; 18.5 W/K on the mean, 19.5 in frost',
    weather: async (climate) => ({
      ...climate,
      airDensity: prepareClimate(await fileYear(WEATHER_FILE)).airDensity,
    }),
  },
  {
    name: 'air temperature of mid-hour',
    source: 'mean of the readings at both ends of the hour',
    weather: async (climate) => midHour(climate),
  },
];

/** All cases under a variant. */
export async function runVariant(
  variant: Variant,
  climate: PreparedClimate,
): Promise<readonly CaseOutcome[]> {
  const weather = variant.weather ? await variant.weather(climate) : climate;
  return CASES.map((of) => {
    const model = modelOfCase(of, variant.films);
    return outcomeOf(of, variant.change ? variant.change(model) : model, weather);
  });
}

function withClearPanes(model: Model): Model {
  const { refractiveIndex, extinctionPerM } = CLEAR_PANE;
  return {
    ...model,
    panes: model.panes.map((pane) =>
      pane.glass.gas === 'air'
        ? { ...pane, glass: { ...pane.glass, optics: { kind: 'clear', refractiveIndex, extinctionPerM } } }
        : pane,
    ),
  };
}

function midHour(climate: PreparedClimate): PreparedClimate {
  const middle = (values: Float64Array) =>
    values.map((value, hour) => (value + values[(hour + HOURS - 1) % HOURS]!) / 2);
  const { year, skyTempC } = climate;
  return {
    ...climate,
    year: { ...year, dryBulbC: middle(year.dryBulbC), windSpeed: middle(year.windSpeed) },
    skyTempC: middle(skyTempC),
  };
}
