// The stations, the radiation of the earth by cells of one degree, and the wind of stations that report it, as columns. The
// unpacked file in; stations near a place and radiation at it out.

import { distanceKm, type Position } from './earth.ts';
import type { Packed } from './packed.ts';

export interface NearStation {
  readonly name: string;
  readonly country: string;
  readonly elevationM: number;
  readonly distanceKm: number;
  readonly meanDailyHighC: readonly number[];
  readonly meanDailyLowC: readonly number[];
  /** relative humidity of the month's mean vapour pressure at its mean temperature [%] */
  readonly humidityPercent: readonly number[];
}

export interface NearWind {
  readonly elevationM: number;
  readonly distanceKm: number;
  /** [m/s] by month */
  readonly windSpeed: readonly number[];
}

export interface NormalsTable {
  /** Nearest first. */
  stationsNear(at: Position, count: number): readonly NearStation[];
  /** Longitude and latitude of every station [°] in turn. */
  positions(): Float32Array;
  windNear(at: Position, withinKm: number, count: number): readonly NearWind[];
  /** mean daily global radiation on level ground by month [kWh/m²], between the centres of cells */
  radiationAt(at: Position): readonly number[];
}

const MONTHS = Array.from({ length: 12 }, (_, month) => month);
const CELLS = 180 * 360;

export function createNormalsTable({ texts, columns }: Packed): NormalsTable {
  const names = texts.stations!.split('\n').map((line) => line.split('\t'));
  const column = (name: string) => columns[name]!;
  const twelve = (name: string, i: number, scale: number) => {
    const values = column(name);
    return MONTHS.map((month) => values[(month * values.length) / 12 + i]! / scale);
  };
  const nearest = (latitude: Int16Array, longitude: Int16Array, at: Position, count: number) =>
    Array.from(latitude, (value, i) => ({
      i,
      km: distanceKm(at, { latitudeDeg: value / 100, longitudeDeg: longitude[i]! / 100 }),
    }))
      .sort((a, b) => a.km - b.km)
      .slice(0, count);
  return {
    stationsNear: (at, count) =>
      nearest(column('latitude'), column('longitude'), at, count).map(({ i, km }) => ({
        name: names[i]![0]!,
        country: names[i]![1]!,
        elevationM: column('elevation')[i]!,
        distanceKm: km,
        meanDailyHighC: twelve('high', i, 10),
        meanDailyLowC: twelve('low', i, 10),
        humidityPercent: twelve('humidity', i, 1),
      })),
    positions: () =>
      Float32Array.from({ length: 2 * names.length }, (_, i) => {
        const values = i % 2 === 0 ? column('longitude') : column('latitude');
        return values[i >> 1]! / 100;
      }),
    windNear: (at, withinKm, count) =>
      nearest(column('windLatitude'), column('windLongitude'), at, count)
        .filter(({ km }) => km <= withinKm)
        .map(({ i, km }) => ({
          elevationM: column('windElevation')[i]!,
          distanceKm: km,
          windSpeed: twelve('wind', i, 10),
        })),
    radiationAt({ latitudeDeg, longitudeDeg }) {
      const sun = column('sun');
      const y = Math.min(Math.max(latitudeDeg + 89.5, 0), 179);
      const x = longitudeDeg + 179.5;
      const [south, west] = [Math.min(Math.floor(y), 178), Math.floor(x)];
      const cell = (row: number, col: number, month: number) =>
        sun[month * CELLS + row * 360 + ((col + 360) % 360)]! / 20;
      return MONTHS.map((month) => {
        const along = (row: number) =>
          cell(row, west, month) + (x - west) * (cell(row, west + 1, month) - cell(row, west, month));
        return along(south) + (y - south) * (along(south + 1) - along(south));
      });
    },
  };
}
