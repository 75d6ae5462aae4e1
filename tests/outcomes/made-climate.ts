// A climate made by hand, for tests of what comes after the run: constant weather unless a function of the hour is
// given. Not a climate anything should be simulated in.

import type { PreparedClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import type { TypicalYear } from '../../src/weather/typical-year.ts';
import { hourly } from './made-year.ts';

export interface MadeClimate {
  readonly latitudeDeg?: number;
  readonly longitudeDeg?: number;
  readonly dryBulbC?: number | ((hour: number) => number);
  readonly dewPointC?: number;
  readonly globalHorizontal?: number | ((hour: number) => number);
  readonly beamNormal?: number | ((hour: number) => number);
}

const NOTHING: MadeClimate = {};
/** Preparing takes tens of milliseconds, and many tests ask for the same climate. */
const prepared = new WeakMap<MadeClimate, PreparedClimate>();

export function madeClimate(made: MadeClimate = NOTHING): PreparedClimate {
  const known = prepared.get(made) ?? prepareClimate(yearOf(made));
  prepared.set(made, known);
  return known;
}

function yearOf(made: MadeClimate): TypicalYear {
  const global = hourly(made.globalHorizontal ?? 0);
  return {
    site: {
      name: 'Made-up meadow',
      latitudeDeg: made.latitudeDeg ?? 40,
      longitudeDeg: made.longitudeDeg ?? -105,
      elevationM: 1600,
      utcOffsetH: -7,
    },
    id: 'made-up',
    source: 'made by hand',
    credit: 'nobody',
    monthYears: Array(12).fill(2025),
    sunMinute: 'mean',
    dryBulbC: hourly(made.dryBulbC ?? 10),
    dewPointC: hourly(made.dewPointC ?? 0),
    pressurePa: hourly(83_500),
    windSpeed: hourly(3),
    windFromDeg: hourly(270),
    globalHorizontal: global,
    beamNormal: hourly(made.beamNormal ?? 0),
    diffuseHorizontal: global,
    skyCover: hourly(0.4),
    skyLongwave: null,
    albedo: null,
    rainMm: null,
    notes: [],
  };
}
