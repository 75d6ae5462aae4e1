// The same place, warmer: a shift by month, and a heat wave put into the hottest week, so that a design can be tried
// in the climate its owner will grow old in. The result is a typical year like any other, with its change in its
// name, source and notes.
//
// Humidity. A lasting shift keeps the RELATIVE humidity: warmer air has so far carried more water in step with its
// saturation (Held and Soden 2006; IPCC AR6 WG1, chapter 8), so the dew point rises nearly as much as the air. A heat
// wave keeps the DEW POINT: such a spell is dry air heated over dry ground, no new water comes with it.
// Sun, wind and cloud stay as they are; the sky's long-wave radiation follows the air's temperature and humidity.
import { ZERO_CELSIUS_K } from '../physics/constants.ts';
import { cos, power } from '../physics/elementary.ts';
import { relativeHumidity, saturationPressure } from '../physics/moist-air.ts';
import { requireRange } from '../physics/require-range.ts';
import { skyEmissivity } from '../physics/sky-temperature.ts';
import { MONTH_NAMES } from './assembly/assembled-year.ts';
import { dewPointFromHumidity } from './assembly/humidity.ts';
import { dailyFromMonthly } from './synthetic/monthly-interpolation.ts';
import {
  HOURS,
  type Hotter,
  MONTH_START_HOUR,
  monthOfHour,
  rowOfHour,
  type TypicalYear,
} from './typical-year.ts';

/** Twelve equal shifts [K]. */
export function uniformShift(shiftK: number): readonly number[] {
  return new Array<number>(12).fill(shiftK);
}

/**
 * Shifts that run from winter to summer and back as a cosine [K].
 *
 * @param winterK shift of the coldest month
 * @param summerK of the warmest
 * @param latitudeDeg its sign says when summer is; warmest taken as late July or late January
 */
export function seasonalShift(winterK: number, summerK: number, latitudeDeg: number): readonly number[] {
  const warmest = latitudeDeg >= 0 ? 6.5 : 0.5;
  return Array.from({ length: 12 }, (_, month) => {
    const share = (1 + cos((2 * Math.PI * (month + 0.5 - warmest)) / 12)) / 2;
    return winterK + (summerK - winterK) * share;
  });
}

/**
 * Every month warmer by its shift, relative humidity kept.
 *
 * The shift runs smoothly through the months; each month's mean shift is the one given.
 *
 * @param shiftK twelve values, January first [K]; −10…10 each
 */
export function shiftedYear(year: TypicalYear, shiftK: readonly number[]): TypicalYear {
  return changed(year, shift(year, shiftK));
}

export interface HeatWave {
  /** length [d]; 3…30 */
  readonly days: number;
  /** added at its height [K]; 0…15 */
  readonly extraK: number;
}

/**
 * A heat wave over the hottest spell of the year, dew point kept.
 *
 * Its strength rises over the first quarter, stays, and falls over the last; nights are as much warmer as days.
 */
export function withHeatWave(year: TypicalYear, wave: HeatWave): TypicalYear {
  return changed(year, heatWave(year, wave));
}

/**
 * A year made hotter as a design asks for it: shifted by season, then the heat wave; both in one name.
 *
 * A year that was made hotter by the same numbers comes back as it is, so that nothing is added twice.
 */
export function hotterYear(year: TypicalYear, hotter: Hotter): TypicalYear {
  if (year.hotter !== undefined && sameChange(year.hotter, hotter)) return year;
  const { winterK, summerK, waveDays, waveK } = hotter;
  const words: string[] = [];
  let made = year;
  const make = (change: Change) => {
    made = changed(made, change);
    words.push(change.words);
  };
  if (winterK !== 0 || summerK !== 0)
    make(shift(made, seasonalShift(winterK, summerK, year.site.latitudeDeg)));
  if (waveK > 0) make(heatWave(made, { days: waveDays, extraK: waveK }));
  return words.length === 0 ? year : { ...made, ...named(year, words.join('; ')), hotter };
}

function sameChange(one: Hotter, other: Hotter): boolean {
  const waves = one.waveK === other.waveK && (one.waveK === 0 || one.waveDays === other.waveDays);
  return one.winterK === other.winterK && one.summerK === other.summerK && waves;
}

interface Change {
  readonly air: Pick<TypicalYear, 'dryBulbC' | 'dewPointC'>;
  /** what was done, in a few words */
  readonly words: string;
  readonly idSuffix: string;
  readonly note: string;
}

function shift(year: TypicalYear, shiftK: readonly number[]): Change {
  if (shiftK.length !== 12) throw new RangeError(`shiftK has ${shiftK.length} values; allowed 12`);
  for (const value of shiftK) requireRange('shiftK', value, -10, 10, 'K');
  const days = dailyFromMonthly(shiftK);
  const dryBulbC = year.dryBulbC.map((dryC, hour) => dryC + days[Math.floor(hour / 24)]!);
  const dewPointC = year.dewPointC.map((dewC, hour) => {
    const share = relativeHumidity(saturationPressure(dewC), year.dryBulbC[hour]!);
    return dewPointFromHumidity(dryBulbC[hour]!, 100 * share);
  });
  const words = shiftWords(shiftK);
  return {
    air: { dryBulbC, dewPointC },
    words,
    idSuffix: idPart(shiftK),
    note: `Made ${Math.max(...shiftK) > 0 ? 'hotter' : 'colder'}: ${words}; relative humidity kept, so the dew point moves too; sun, wind and cloud unchanged.`,
  };
}

function heatWave(year: TypicalYear, wave: HeatWave): Change {
  requireRange('days', wave.days, 3, 30, 'd');
  requireRange('extraK', wave.extraK, 0, 15, 'K');
  const hours = Math.round(wave.days) * 24;
  const start = hottestSpell(year.dryBulbC, hours);
  const dryBulbC = Float64Array.from(year.dryBulbC);
  for (let i = 0; i < hours; i++) {
    const edge = Math.min(i + 0.5, hours - i - 0.5) / (hours / 4);
    dryBulbC[rowOfHour(start, i)]! += wave.extraK * Math.min(edge, 1);
  }
  const day = Math.floor((start - MONTH_START_HOUR[monthOfHour(start)]!) / 24) + 1;
  const when = `from ${day} ${MONTH_NAMES[monthOfHour(start)]}`;
  const words = `heat wave of ${Math.round(wave.days)} days, +${wave.extraK} K, ${when}`;
  return {
    air: { dryBulbC, dewPointC: year.dewPointC },
    words,
    idSuffix: `wave-${Math.round(wave.days)}d`,
    note: `A ${words} was put in; its dew point is that of the file, sun and wind unchanged.`,
  };
}

function changed(year: TypicalYear, { air, words, idSuffix, note }: Change): TypicalYear {
  return {
    ...year,
    ...air,
    ...named(year, words),
    id: `${year.id}-${idSuffix}`,
    skyLongwave: year.skyLongwave === null ? null : followedLongwave(year, air),
    notes: [...year.notes, note],
  };
}

function named(year: TypicalYear, words: string): Pick<TypicalYear, 'site' | 'source'> {
  return {
    site: {
      ...year.site,
      name: `${year.site.name}, ${/^−(?!.*\+)/.test(words) ? 'colder' : 'hotter'} (${words})`,
    },
    source: `${year.source}, changed: ${words}`,
  };
}

/** Measured long-wave radiation times the ratio of the sky model after and before. */
function followedLongwave(year: TypicalYear, air: Pick<TypicalYear, 'dryBulbC' | 'dewPointC'>): Float64Array {
  return year.skyLongwave!.map((measured, hour) => {
    const model = (dryC: number, dewC: number) =>
      skyEmissivity(dewC, (hour % 24) + 0.5, year.pressurePa[hour]!, year.skyCover[hour]!) *
      power(dryC + ZERO_CELSIUS_K, 4);
    const before = model(year.dryBulbC[hour]!, year.dewPointC[hour]!);
    return measured * (model(air.dryBulbC[hour]!, air.dewPointC[hour]!) / before);
  });
}

/** First hour, a midnight, of the warmest stretch of that many hours. */
function hottestSpell(dryBulbC: Float64Array, hours: number): number {
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let start = 0; start < HOURS; start += 24) {
    let sum = 0;
    for (let i = 0; i < hours; i++) sum += dryBulbC[rowOfHour(start, i)]!;
    if (sum > most) [most, best] = [sum, start];
  }
  return best;
}

function shiftWords(shiftK: readonly number[]): string {
  const [low, high] = [Math.min(...shiftK), Math.max(...shiftK)];
  const signed = (value: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(1)} K`;
  return high - low < 0.05 ? `${signed(high)} all year` : `${signed(low)} to ${signed(high)} by month`;
}

function idPart(shiftK: readonly number[]): string {
  const mean = shiftK.reduce((a, b) => a + b, 0) / 12;
  return `${mean < 0 ? 'minus' : 'plus'}-${Math.abs(mean).toFixed(1).replace('.', '-')}`;
}
