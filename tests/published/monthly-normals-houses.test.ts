// Houses in real and in made years: the example designs through six real typical years, and through the years made
// from the same years' monthly normals. Both are runs of our own, so the table is no outside check: it says how far a
// made year may lead from a real one, and its limits are the error we state. Draws differ, so the median of three is judged;
// `npm run made-years` prints the median and the spread of more.
import { beforeAll, describe, expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { simulate } from '../../src/network/simulate.ts';
import { summarise } from '../../src/outcomes/summarise.ts';
import { type PreparedClimate, prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { bundledClimate, bundledYear } from '../weather/bundled-climates.ts';
import { madeFrom, NORMALS_SITES } from '../weather/synthetic/made-from-real.ts';
import { compareOwn } from './ledger.ts';

/** Heating: a share of the real figure plus a floor for houses that need little. Hours: a share, or a floor for few. */
const STATED = {
  heatingShare: 0.25,
  heatingKWh: 200,
  hoursShare: 0.25,
  overheatedHours: 60,
  humidHours: 200,
  /** mean of |made/real − 1| over the houses that need more than 1000 kWh */
  meanHeatingShare: 0.12,
};

const SOURCE = 'Houses in years from monthly normals, real against made';
const DRAWS = 3;

/**
 * Beyond what is stated in three draws, and known: so many hours. Of fifteen draws the medians are within it (7 for 67, 77 for
 * 132, 332 for 434) by little, and the real figures are within what the draws give (0 to 89, 36 to 176, 248 to 499).
 */
const MISSED: Record<string, number> = {
  'burlington, closed, overheated hours': 70,
  'burlington, modest, overheated hours': 90,
  'north-italy, closed, overheated hours': 150,
};

function outcomeIn(climate: PreparedClimate, design: (typeof EXAMPLES)[number]['design']) {
  const model = modelOf(design, climate.year.site, climate.ground);
  const { heating, zones } = summarise(design, model, climate, simulate(model, climate));
  const { overheatedHours, humidHours } = zones.house;
  return { heatingKWh: heating.energyKWh, overheatedHours, humidHours };
}

const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[values.length >> 1]!;

const offBy: number[] = [];

describe.each(NORMALS_SITES)('%s', (id) => {
  let climates: { readonly real: PreparedClimate; readonly made: readonly PreparedClimate[] };
  beforeAll(() => {
    const year = bundledYear(id);
    const made = Array.from({ length: DRAWS }, (_, draw) => prepareClimate(madeFrom(year, draw + 1)));
    climates = { real: bundledClimate(id), made };
  });
  test.each(EXAMPLES.filter(({ design }) => design.rooms === undefined).map(({ id }) => id))(
    '%s',
    (exampleId) => {
      const { design } = EXAMPLES.find((example) => example.id === exampleId)!;
      const real = outcomeIn(climates.real, design);
      const draws = climates.made.map((climate) => outcomeIn(climate, design));
      const made = {
        heatingKWh: median(draws.map(({ heatingKWh }) => heatingKWh)),
        overheatedHours: median(draws.map(({ overheatedHours }) => overheatedHours)),
        humidHours: median(draws.map(({ humidHours }) => humidHours)),
      };
      if (real.heatingKWh > 1000) offBy.push(Math.abs(made.heatingKWh / real.heatingKWh - 1));
      compareOwn({
        source: SOURCE,
        case: `${id}, ${exampleId}`,
        quantity: 'heating energy',
        reference: real.heatingKWh,
        ours: made.heatingKWh,
        allowed: STATED.heatingShare * real.heatingKWh + STATED.heatingKWh,
        unit: 'kWh',
        mark: 'computed',
      });
      for (const [quantity, key] of [
        ['overheated hours', 'overheatedHours'],
        ['humid hours', 'humidHours'],
      ] as const) {
        const missed = MISSED[`${id}, ${exampleId}, ${quantity}`];
        compareOwn({
          source: SOURCE,
          case: `${id}, ${exampleId}`,
          quantity,
          ...(missed !== undefined && { noteAllowed: missed }),
          reference: real[key],
          ours: made[key],
          allowed: Math.max(STATED.hoursShare * real[key], STATED[key]),
          unit: 'h',
          mark: 'computed',
        });
      }
    },
  );
});

test('as a rule the heating of a made year is within 12 % of the real one', () => {
  expect(offBy.length).toBeGreaterThanOrEqual(8);
  compareOwn({
    source: SOURCE,
    case: 'all houses that need more than 1000 kWh',
    quantity: 'mean difference of heating energy',
    reference: 0,
    ours: offBy.reduce((a, b) => a + b, 0) / offBy.length,
    allowed: STATED.meanHeatingShare,
    unit: 'share',
    mark: 'computed',
  });
});
