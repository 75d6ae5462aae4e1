// What each of the monthly normals may be, in words and numbers, for the maker of years, for forms and for messages; and
// how far a made year can be trusted.

export type NormalsKey =
  | 'meanDailyHighC'
  | 'meanDailyLowC'
  | 'humidityPercent'
  | 'dailyGlobalKWh'
  | 'sunshineHours'
  | 'windSpeed';

export interface NormalsLimit {
  readonly key: NormalsKey;
  readonly words: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

const limit = (key: NormalsKey, words: string, low: number, high: number, unit: string): NormalsLimit => ({
  key,
  words,
  low,
  high,
  unit,
});

export const NORMALS_LIMITS: readonly NormalsLimit[] = [
  limit('meanDailyHighC', 'mean daily high', -60, 50, '°C'),
  limit('meanDailyLowC', 'mean daily low', -70, 40, '°C'),
  limit('humidityPercent', 'relative humidity', 5, 97, '%'),
  limit('dailyGlobalKWh', 'daily global radiation', 0, 12, 'kWh/m²'),
  limit('sunshineHours', 'hours of sunshine a day', 0, 24, 'h'),
  limit('windSpeed', 'wind', 0.2, 20, 'm/s'),
];

/** How far houses in made years are from the same houses in real ones (tests/published/monthly-normals-houses.test.ts). */
export const NORMALS_ERROR =
  'In six places where both are known, heating in the made year came within 12 % of the real one as a rule (single houses 25 % and 200 kWh), overheated hours within 25 % or 60 hours, humid hours within 25 % or 200.';
