// Twelve monthly normals as a JSON file, so that a place without a weather file can be kept and given like one:
//   { "name": "Hill farm", "latitudeDeg": 44, "longitudeDeg": 3, "elevationM": 800, "meanDailyHighC": [12 numbers],
//     "meanDailyLowC": […], "humidityPercent": […], "dailyGlobalKWh": […] or "sunshineHours": […], "windSpeed": […],
//     "seed": 1 }
import * as v from 'valibot';
import type { MonthlyNormals } from '../normals.ts';
import type { ReadResult } from '../read-result.ts';
import { jsonOf } from '../text/json-text.ts';
import { yearFromNormals } from './monthly-normals.ts';

const Twelve = v.pipe(v.array(v.number()), v.length(12, 'twelve numbers, January first'));

const NormalsSchema = v.object({
  name: v.pipe(v.string(), v.minLength(1), v.maxLength(200)),
  latitudeDeg: v.number(),
  longitudeDeg: v.number(),
  elevationM: v.number(),
  utcOffsetH: v.exactOptional(v.number()),
  meanDailyHighC: Twelve,
  meanDailyLowC: Twelve,
  humidityPercent: Twelve,
  dailyGlobalKWh: v.exactOptional(Twelve),
  sunshineHours: v.exactOptional(Twelve),
  windSpeed: Twelve,
  seed: v.exactOptional(v.pipe(v.number(), v.integer())),
  from: v.exactOptional(
    v.object({ source: v.string(), credit: v.string(), notes: v.pipe(v.array(v.string()), v.maxLength(20)) }),
  ),
});

export function looksLikeNormals(text: string): boolean {
  return /^\uFEFF?\s*\{/.test(text.slice(0, 100)) && text.slice(0, 10_000).includes('"meanDailyHighC"');
}

/** Read the normals and make their year. */
export function readNormals(text: string): ReadResult {
  const json = jsonOf(text);
  if ('faults' in json) return { ok: false, faults: json.faults };
  const parsed = v.safeParse(NormalsSchema, json.content);
  if (parsed.success) return yearFromNormals(parsed.output satisfies MonthlyNormals);
  const faults = parsed.issues.slice(0, 20).map((issue) => {
    const expected = issue.type === 'length' ? issue.message : (issue.expected ?? 'another value');
    return { line: null, column: v.getDotPath(issue) ?? '', value: issue.received, expected };
  });
  return { ok: false, faults };
}
