// Real against made: the monthly normals of six real typical years (none used in fitting the method) are fed back in
// and the made year is compared with the real one. The allowed differences are the method's stated errors.
import { describe, expect, test } from 'vitest';
import { readBundle } from '../../src/weather/formats/bundle-form.ts';
import { type ClimateSummary, summariseClimate } from '../../src/weather/prepared/climate-summary.ts';
import { prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { madeFrom, NORMALS_SITES } from '../weather/synthetic/made-from-real.ts';
import { climateText, yearOf } from '../weather/weather-files.ts';
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
};

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
    const real = yearOf(readBundle(climateText(id)));
    const seen = summariseClimate(prepareClimate(real));
    const made = summariseClimate(prepareClimate(madeFrom(real)));
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
    row('lowest', seen.year.lowestC, made.year.lowestC, STATED.extreme, '°C', 'abs');
    row('highest', seen.year.highestC, made.year.highestC, STATED.extreme, '°C', 'abs');
  });
});
