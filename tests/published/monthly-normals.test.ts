// Real against made: the monthly normals of six real typical years (none used in fitting the method) are fed back in
// and the made year is compared with the real one. The allowed differences are the method's stated errors.
import { describe, expect, test } from 'vitest';
import { type ClimateSummary, summariseClimate } from '../../src/weather/prepared/climate-summary.ts';
import { prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { MONTH_START_HOUR, type TypicalYear } from '../../src/weather/typical-year.ts';
import { bundledClimate, bundledYear } from '../weather/bundled-climates.ts';
import { madeFrom, NORMALS_SITES } from '../weather/synthetic/made-from-real.ts';
import { compareOwn } from './ledger.ts';

/** Stated errors of the made year, with their reason. */
const STATED = {
  /** [K·d]: the mean of daily high and low is not the mean of the hours, by 0.1 to 0.3 K */
  degreeDays: 130,
  /** [share]: the split of the light into beam and diffuse is an average one */
  beam: 0.15,
  /** [share]: follows the beam; the winter sun is low */
  winterUpright: 0.15,
  leaning: 0.05,
  /** [K]: a single night or afternoon is not in the normals */
  extreme: 7,
  /** [share], [–]: how steady wind is hangs on the land around */
  windOfDays: 0.1,
  windHoursApart: 0.15,
};

/** Wind in the mean of months: standard deviation of daily means over the mean, and correlation six hours apart about the usual day. */
function windHabits({ windSpeed }: TypicalYear) {
  let ofDays = 0;
  let apart = 0;
  for (const [month, start] of MONTH_START_HOUR.slice(0, 12).entries()) {
    const wind = [...windSpeed.subarray(start, MONTH_START_HOUR[month + 1]!)];
    const days = wind.length / 24;
    const mean = meanOf(wind);
    const usual = Array.from({ length: 24 }, (_, hour) => meanOf(wind.filter((_, i) => i % 24 === hour)));
    const daily = Array.from({ length: days }, (_, day) => meanOf(wind.slice(day * 24, day * 24 + 24)));
    const stray = wind.map((speed, i) => speed - usual[i % 24]!);
    const squares = meanOf(stray.map((one) => one * one));
    ofDays += Math.sqrt(meanOf(daily.map((one) => (one - mean) ** 2))) / mean / 12;
    apart += meanOf(stray.slice(6).map((one, i) => one * stray[i]!)) / squares / 12;
  }
  return { ofDays, apart };
}

const meanOf = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

/** Light on an upright equator-facing plane in the three months of least sun. */
function winterUpright({ months }: ClimateSummary, latitudeDeg: number): number {
  return (latitudeDeg >= 0 ? [11, 0, 1] : [5, 6, 7]).reduce(
    (sum, month) => sum + months[month]!.upright90KWh,
    0,
  );
}

test('there are six sites', () => {
  expect(NORMALS_SITES).toHaveLength(6);
});

describe.each(NORMALS_SITES)('%s', (id) => {
  test('the made year is within the stated errors of the real one', () => {
    const real = bundledYear(id);
    const asMade = madeFrom(real);
    const seen = summariseClimate(bundledClimate(id));
    const made = summariseClimate(prepareClimate(asMade));
    const row = (
      quantity: string,
      reference: number,
      ours: number,
      allowed: number,
      unit: string,
      kind: 'abs' | 'rel',
    ) =>
      compareOwn({
        source: 'Year from monthly normals, real against made',
        case: id,
        quantity,
        reference,
        ours,
        allowed,
        unit,
        kind,
        mark: 'computed',
      });
    const { latitudeDeg } = real.site;
    row(
      'heating degree-days',
      seen.year.heatingDegreeDays,
      made.year.heatingDegreeDays,
      STATED.degreeDays,
      'K·d',
      'abs',
    );
    row(
      'cooling degree-days',
      seen.year.coolingDegreeDays,
      made.year.coolingDegreeDays,
      STATED.degreeDays,
      'K·d',
      'abs',
    );
    row('beam radiation', seen.year.beamNormalKWh, made.year.beamNormalKWh, STATED.beam, 'kWh/m²', 'rel');
    row(
      'winter sun, upright',
      winterUpright(seen, latitudeDeg),
      winterUpright(made, latitudeDeg),
      STATED.winterUpright,
      'kWh/m²',
      'rel',
    );
    row('year’s sun at 60°', seen.year.leaning60KWh, made.year.leaning60KWh, STATED.leaning, 'kWh/m²', 'rel');
    const [wind, windMade] = [windHabits(real), windHabits(asMade)];
    row('spread of daily wind by its mean', wind.ofDays, windMade.ofDays, STATED.windOfDays, '–', 'abs');
    row('correlation of wind six hours apart', wind.apart, windMade.apart, STATED.windHoursApart, '–', 'abs');
    row('lowest', seen.year.lowestC, made.year.lowestC, STATED.extreme, '°C', 'abs');
    row('highest', seen.year.highestC, made.year.highestC, STATED.extreme, '°C', 'abs');
  });
});
