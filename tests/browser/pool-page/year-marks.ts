// Whole years as short marks, so that those of two JavaScript engines can be held beside each other bit by bit. The same
// lines run in Node and on the page of the pool.

import { type Design, prepareClimate, runYear, type TypicalYear } from '../../../src/daystone.ts';
import { ALL_EXAMPLES } from '../../../src/design/stove-examples.ts';
import type { MonthlyNormals } from '../../../src/weather/normals.ts';
import { yearFromNormals } from '../../../src/weather/synthetic/monthly-normals.ts';

export interface YearMark {
  readonly name: string;
  /** doubles that went in: of climate, year and outcome */
  readonly numbers: number;
  readonly mark: string;
}

const HOTTER = { winterK: 2, summerK: 3, waveDays: 10, waveK: 4 };
/** Invented. */
const NORMALS: MonthlyNormals = {
  name: 'Made up',
  latitudeDeg: 43,
  longitudeDeg: 2,
  elevationM: 150,
  meanDailyHighC: [9, 11, 14, 17, 21, 25, 28, 28, 24, 19, 13, 10],
  meanDailyLowC: [2, 2, 5, 7, 11, 14, 17, 17, 14, 10, 6, 3],
  windSpeed: new Array<number>(12).fill(4),
  humidityPercent: new Array<number>(12).fill(70),
  sunshineHours: [3, 4, 5, 6, 7, 8, 8, 8, 6, 5, 3, 3],
};

/** Of the three examples two with a stove and one without: a heater is steadier than a fire, which a last bit may light. */
const MARKED: readonly string[] = ['leaning-stove', 'closed', 'modest-stove'];

/** Those, and one with its stove in a year that was made from normals and made hotter. */
export function yearMarks(year: TypicalYear): YearMark[] {
  const made = yearFromNormals(NORMALS);
  if (!made.ok) throw new Error('the normals make no year');
  const stove = ALL_EXAMPLES.find(({ id }) => id === 'leaning-stove')!.design;
  return [
    ...ALL_EXAMPLES.filter(({ id }) => MARKED.includes(id)).map(({ id, design }) => markOf(id, design, year)),
    markOf('leaning-stove, made and hotter', { ...stove, hotter: HOTTER }, made.year),
  ];
}

function markOf(name: string, design: Design, typical: TypicalYear): YearMark {
  const { climate, year, outcome } = runYear(design, prepareClimate(typical));
  const sum = { mark: 0x811c9dc5, numbers: 0 };
  add([climate, year, outcome], sum);
  return { name, numbers: sum.numbers, mark: (sum.mark >>> 0).toString(16) };
}

const ONE = new Float64Array(1);
const HALVES = new Uint32Array(ONE.buffer);

/** Fowler–Noll–Vo over the bits of every double, in the order in which they stand. */
function add(value: unknown, sum: { mark: number; numbers: number }): void {
  if (typeof value === 'number') {
    ONE[0] = Number.isNaN(value) ? 0.123 : value;
    sum.mark = Math.imul(sum.mark ^ HALVES[0]!, 0x01000193);
    sum.mark = Math.imul(sum.mark ^ HALVES[1]!, 0x01000193);
    sum.numbers++;
  } else if (ArrayBuffer.isView(value)) {
    for (const entry of value as Float64Array) add(entry, sum);
  } else if (typeof value === 'string') {
    for (let i = 0; i < value.length; i++) add(value.charCodeAt(i), sum);
  } else if (typeof value === 'object' && value !== null) {
    for (const entry of Object.values(value)) add(entry, sum);
  }
}
