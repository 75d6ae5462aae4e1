// Twelve monthly normals for any place, from the stations around it and the sun of its cell, with height corrected; and
// with them what they rest on and what makes them doubtful. None of it was measured at the place.
//
// Eight stations, each weighted by 1/(d² + 25² km²)/(1 + (Δz/500 m)²), their temperatures brought to the place's height.
// The method was judged by leaving each of 900 stations out in turn (climates/places/README.md).

import { power, square } from '../physics/elementary.ts';
import type { MonthlyNormals } from '../weather/normals.ts';
import { NORMALS_LIMITS, type NormalsKey } from '../weather/synthetic/normals-limits.ts';
import type { Place } from './gazetteer.ts';
import type { NearStation, NormalsTable } from './normals-table.ts';
import { type ExposureId, UNSAID_WIND_MS, WIND_EXPOSURES } from './wind-exposure.ts';

/** Fall of temperature with height [K/m]; fitted to the stations, 6.4 and 5.3; the former is the usual 6.5. */
const HIGH_LAPSE = 0.0065;
const LOW_LAPSE = 0.0053;
const STATIONS = 8;
const NEAR_KM = 25;
const LIKE_HEIGHT_M = 500;
/** Stations of wind are asked within this distance [km], so many of them. */
const WIND_KM = 100;
const WIND_STATIONS = 4;

/** Beyond these a person is warned. */
const FAR_KM = 150;
const STEEP_M = 400;

export interface StationUsed {
  readonly name: string;
  readonly country: string;
  readonly distanceKm: number;
  /** the station's height above the place's [m] */
  readonly aboveM: number;
  /** share of the whole weight, 0…1 */
  readonly share: number;
}

/** What is known of the place besides where it is. */
export interface Surroundings {
  /** how it lies to the wind; null where nobody has said */
  readonly exposure: ExposureId | null;
  /** heights of inhabited places within 25 km [m]; tells a valley */
  readonly heightsAround: readonly number[];
  /** distance to the sea [km]; Infinity where it is not known to be near */
  readonly seaKm: number;
  /** how far off the place lies whose height was taken [km]; absent for a height of its own */
  readonly heightFromKm?: number;
}

export interface LocalNormals {
  readonly normals: MonthlyNormals;
  /** heaviest first */
  readonly stations: readonly StationUsed[];
  /** what is assumed, a sentence each */
  readonly assumed: readonly string[];
  /** what makes it doubtful, a sentence each */
  readonly warnings: readonly string[];
}

/** The credit that goes with every year made of them. */
const LOCAL_NORMALS_CREDIT =
  'Data basis: Deutscher Wetterdienst, single values averaged (CC BY 4.0); sun: NASA Langley Research Center, SSE 6.0; place names: GeoNames (CC BY 4.0)';
const US_WIND_CREDIT = 'wind: USDA Agricultural Research Service';

/** How amounts are said in the sentences; a page in other units passes its own in. */
export interface PlaceWords {
  readonly distance: (km: number) => string;
  readonly height: (m: number) => string;
  readonly degrees: (kelvin: number, digits: 0 | 1) => string;
  readonly speed: (metresPerSecond: number) => string;
}

const METRIC_WORDS: PlaceWords = {
  distance: (km) => `${Math.round(km)} km`,
  height: (m) => `${Math.round(m)} m`,
  degrees: (kelvin, digits) => `${kelvin.toFixed(digits)} K`,
  speed: (metresPerSecond) => `${metresPerSecond} m/s`,
};

/** The normals, with what they rest on. */
export function localNormals(
  place: Place,
  around: Surroundings,
  table: NormalsTable,
  words: PlaceWords = METRIC_WORDS,
): LocalNormals {
  const near = table.stationsNear(place, STATIONS);
  const weights = near.map((station) => weightOf(station, place));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const shares = weights.map((weight) => weight / total);
  const mean = (of: (station: NearStation) => readonly number[], lapse: number) =>
    MONTHS.map((month) =>
      near.reduce(
        (sum, station, i) =>
          sum + shares[i]! * (of(station)[month]! + lapse * (station.elevationM - place.elevationM)),
        0,
      ),
    );
  const high = mean((station) => station.meanDailyHighC, HIGH_LAPSE);
  const low = mean((station) => station.meanDailyLowC, LOW_LAPSE).map((value, month) =>
    Math.min(value, high[month]! - 1.5),
  );
  const wind = windAt(place, around.exposure, table, words);
  const stations = near
    .map((station, i) => ({
      name: station.name,
      country: station.country,
      distanceKm: station.distanceKm,
      aboveM: station.elevationM - place.elevationM,
      share: shares[i]!,
    }))
    .sort((a, b) => b.share - a.share);
  const warnings = warningsAbout(place, around, near, stations, high, low, words);
  const title = titleOf(place);
  const normals: MonthlyNormals = {
    name: title,
    latitudeDeg: place.latitudeDeg,
    longitudeDeg: place.longitudeDeg,
    elevationM: place.elevationM,
    meanDailyHighC: limited('meanDailyHighC', high, 1),
    meanDailyLowC: limited('meanDailyLowC', low, 1),
    humidityPercent: limited(
      'humidityPercent',
      mean((station) => station.humidityPercent, 0).map(
        (percent, month) => percent * hourlyShare(percent / 100, high[month]! - low[month]!),
      ),
      0,
    ),
    dailyGlobalKWh: limited('dailyGlobalKWh', table.radiationAt(place), 2),
    windSpeed: limited('windSpeed', wind.speeds, 1),
  };
  const assumed = [
    `Temperatures and humidity are those of ${STATIONS} stations around, brought to ${words.height(place.elevationM)}; the sun is that of a cell of one degree, hills and fog not seen.`,
    wind.words,
    ...(around.heightFromKm === undefined
      ? []
      : [
          `Its height is not known: ${words.height(place.elevationM)} is that of the nearest place, ${words.distance(around.heightFromKm)} away. Give your own; ${words.height(100)} are ${words.degrees(0.6, 1)}.`,
        ]),
  ];
  return {
    normals: {
      ...normals,
      from: {
        source: `Made from normals looked up for the place, not measured there; nearest station ${stations.reduce((a, b) => (a.distanceKm < b.distanceKm ? a : b)).name}`,
        credit: wind.isMeasured ? `${LOCAL_NORMALS_CREDIT}; ${US_WIND_CREDIT}` : LOCAL_NORMALS_CREDIT,
        notes: [stationWords(stations, place, words), ...assumed, ...warnings, lookedUpError(words)],
      },
    },
    stations,
    assumed,
    warnings,
  };
}

/** How far looked-up normals lead; docs/places.md has the table. */
function lookedUpError({ degrees }: PlaceWords): string {
  const [least, most] = [degrees(1, 0).replace(/\D+$/, ''), degrees(3, 0)];
  return `Looked-up normals are ${least} to ${most} and 10 % of the sun off in the usual case, which comes on top of what a made year is off; correct them by what is known at the place.`;
}

/** Name, region and country in one line. */
export function titleOf({ name, region, country }: Pick<Place, 'name' | 'region' | 'country'>): string {
  return [name, region === name ? '' : region, country].filter((part) => part !== '').join(', ');
}

const MONTHS = Array.from({ length: 12 }, (_, month) => month);

function weightOf(station: NearStation, { elevationM }: Place): number {
  const height = (station.elevationM - elevationM) / LIKE_HEIGHT_M;
  return 1 / (square(station.distanceKm) + square(NEAR_KM)) / (1 + square(height));
}

/** Growth of the saturation pressure of water with temperature [1/K]; Magnus formula, 0.072 at 0 °C and 0.059 at 25 °C. */
const SATURATION_SLOPE = 0.065;

/**
 * Mean relative humidity of the hours over that of the mean vapour pressure at the mean temperature. With vapour pressure
 * e that stays and temperature that swings as a sine of the given range, the mean of e/es(T) is I₀(b · range/2) times
 * e/es(mean T), b the slope of ln es and I₀ the modified Bessel function. Damp air drops dew by night and its vapour
 * pressure swings along, so the gain fades as 1 − share²; the fading is ours, no source.
 */
function hourlyShare(share: number, rangeK: number): number {
  const x = (SATURATION_SLOPE * rangeK) / 2;
  return 1 + (square(x) / 4 + power(x, 4) / 64) * (1 - square(share));
}

/** The twelve values as the maker of years takes them. */
function limited(key: NormalsKey, values: readonly number[], digits: number): readonly number[] {
  const { low, high } = NORMALS_LIMITS.find((limit) => limit.key === key)!;
  return values.map((value) => Number(Math.min(Math.max(value, low), high).toFixed(digits)));
}

function windAt(place: Place, exposure: ExposureId | null, table: NormalsTable, said: PlaceWords) {
  const near = table.windNear(place, WIND_KM, WIND_STATIONS);
  const chosen = WIND_EXPOSURES.find(({ id }) => id === exposure);
  if (chosen) {
    const speeds = MONTHS.map(() => chosen.meanMs);
    const words = `Wind is not measured there: ${said.speed(chosen.meanMs)} at ${said.height(10)} all year, usual for this answer: ${chosen.words}. A local figure is worth more.`;
    return { speeds, words, isMeasured: false };
  }
  if (near.length > 0) {
    const weights = near.map(({ distanceKm }) => 1 / (square(distanceKm) + square(NEAR_KM)));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const speeds = MONTHS.map((month) =>
      near.reduce((sum, { windSpeed }, i) => sum + (weights[i]! / total) * windSpeed[month]!, 0),
    );
    const words = `Wind is that of ${near.length} stations within ${said.distance(WIND_KM)}, most of them airfields in the open; a sheltered place has half of it.`;
    return { speeds, words, isMeasured: true };
  }
  const words = `Wind is not known there: ${said.speed(UNSAID_WIND_MS)} stands in. Say how the place lies (sheltered valley, open plain, ridge, coast) or give a local figure: it moves heating by 10 to 40 %.`;
  return { speeds: MONTHS.map(() => UNSAID_WIND_MS), words, isMeasured: false };
}

function stationWords(
  stations: readonly StationUsed[],
  { elevationM }: Place,
  { distance, height }: PlaceWords,
): string {
  const told = stations
    .slice(0, 3)
    .map(
      ({ name, distanceKm, aboveM }) =>
        `${name} (${distance(distanceKm)}, ${height(elevationM + aboveM)} up)`,
    );
  return `The stations that weigh most: ${told.join('; ')}.`;
}

/** Coasts along which cold water wells up: [south, north, west, east] in degrees. */
const COLD_SEAS = [
  [22, 50, -128, -109],
  [-46, -3, -84, -69],
  [-36, -8, 8, 20],
  [18, 38, -20, -5],
] as const;
const COAST_KM = 60;

function warningsAbout(
  place: Place,
  { heightsAround, seaKm }: Surroundings,
  near: readonly NearStation[],
  stations: readonly StationUsed[],
  high: readonly number[],
  low: readonly number[],
  words: PlaceWords,
): readonly string[] {
  const warnings: string[] = [];
  const nearest = near[0]!;
  if (nearest.distanceKm > FAR_KM)
    warnings.push(
      `The nearest station, ${nearest.name}, is ${words.distance(nearest.distanceKm)} away. That is too far to trust: ask people there, or a weather service.`,
    );
  const inReach = near.filter(({ distanceKm }) => distanceKm <= FAR_KM);
  const least = Math.min(
    ...(inReach.length > 0 ? inReach : near).map(({ elevationM }) => Math.abs(elevationM - place.elevationM)),
  );
  if (least > STEEP_M)
    warnings.push(
      `No station around lies within ${words.height(STEEP_M)} of the place's height; the closest in height is ${words.height(least)} off. Slopes, valley floors and tops differ by several degrees.`,
    );
  const warmest = Math.max(...high);
  const { latitudeDeg, longitudeDeg } = place;
  const isColdSea = COLD_SEAS.some(
    ([south, north, west, east]) =>
      latitudeDeg > south && latitudeDeg < north && longitudeDeg > west && longitudeDeg < east,
  );
  if (seaKm < COAST_KM && (isColdSea || (warmest < 20 && Math.abs(latitudeDeg) > 40)))
    warnings.push(
      `This is the coast of a cold sea. Sea air and fog make single months ${words.degrees(3, 0).replace(/\D+$/, '')} to ${words.degrees(8, 0)} cooler on the shore than a little way inland, and keep the sun out.`,
    );
  const coldest = Math.min(...high.map((value, month) => (value + low[month]!) / 2));
  const above = heightsAround.filter((height) => height > place.elevationM + 250).length;
  const isBelowStations = stations.reduce((sum, { share, aboveM }) => sum + share * aboveM, 0) > 200;
  const isValley = isBelowStations || (heightsAround.length >= 5 && above >= heightsAround.length / 4);
  if (isValley && coldest < 6)
    warnings.push(
      'The place lies lower than much of what is around it. In winter cold air and fog can lie in such a valley for days: colder nights and far less sun than stands here.',
    );
  const spread = disagreement(near.slice(0, 4), place);
  if (spread > 5)
    warnings.push(
      `The four nearest stations, brought to one height, differ by up to ${words.degrees(spread, 0)} in single months. The place may be like any of them.`,
    );
  return warnings;
}

/** Largest difference between stations brought to one height, of all months' mean temperatures [K]. */
function disagreement(near: readonly NearStation[], { elevationM }: Place): number {
  const lapse = (HIGH_LAPSE + LOW_LAPSE) / 2;
  return Math.max(
    ...MONTHS.map((month) => {
      const values = near.map(
        (station) =>
          (station.meanDailyHighC[month]! + station.meanDailyLowC[month]!) / 2 +
          lapse * (station.elevationM - elevationM),
      );
      return Math.max(...values) - Math.min(...values);
    }),
  );
}
