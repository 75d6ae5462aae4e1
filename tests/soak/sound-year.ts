// What must hold of any year of any design: numbers that are numbers, air within what a house can reach, humidity a
// share, books closed, an outcome and advice without holes. In: one run. Out: what is wrong, one line each.
import type { Year } from '../../src/network/year.ts';
import type { Outcome } from '../../src/outcomes/outcome.ts';

/** Heat and water that appear or vanish, as a share of what moves; round-off of 35 040 steps is some 1e-12. */
const ROUND_OFF = 1e-9;
/** Air and radiant temperature of what was not refused [°C]; a sunlit face may be somewhat hotter than its air. */
const COLDEST_C = -100;
const HOTTEST_C = 170;

/** What is wrong with a run; empty when all is well. */
export function faultsOfRun(year: Year, outcome: Outcome): string[] {
  const faults: string[] = [];
  for (const [what, share] of Object.entries(openBooks(year, outcome))) {
    if (!(Math.abs(share) < ROUND_OFF)) faults.push(`the books of ${what} are off by ${share}`);
  }
  for (const group of [...year.zones, ...(year.rooms ?? []), ...year.panes, ...year.openings]) {
    for (const [name, values] of Object.entries(group)) {
      if (!(values instanceof Float64Array)) continue;
      const at = values.findIndex((value) => !Number.isFinite(value));
      if (at >= 0) faults.push(`${group.id} ${name} is ${values[at]} at hour ${at}`);
    }
  }
  for (const { id, airC, operativeC, relativeHumidity } of [...year.zones, ...(year.rooms ?? [])]) {
    for (const [name, values, least, most] of [
      ['airC', airC, COLDEST_C, HOTTEST_C],
      ['operativeC', operativeC, COLDEST_C, HOTTEST_C],
      ['relativeHumidity', relativeHumidity, 0, 1 + 1e-12],
    ] as const) {
      const at = values.findIndex((value) => value < least || value > most);
      if (at >= 0) faults.push(`${id} ${name} is ${values[at]} at hour ${at}; allowed: ${least} to ${most}`);
    }
  }
  // JSON turns NaN and infinity into null, so the outcome is searched before it is printed.
  for (const path of badNumbers(outcome, '')) faults.push(`outcome${path} is no number`);
  for (const { id, text } of outcome.findings) {
    if (/undefined|NaN|Infinity|\bnull\b/.test(text)) faults.push(`finding ${id} says "${text}"`);
  }
  return faults;
}

/**
 * How far the books of a run are off, as shares. The year states them beside its sun and its released water; a house
 * with a thumbnail of glass, a breath of moisture, or eight thousand tonnes of water in it divides round-off by almost
 * nothing. Here heat stands beside the largest of sun, half of all heat that moved, and one kelvin of the mass; water
 * beside what was released, and at least a kilogram.
 */
export function openBooks(year: Year, outcome: Outcome): { readonly heat: number; readonly water: number } {
  const { heatResidual, waterResidual, zoneHeatResidual } = year.books;
  const sumOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
  // Rooms of a divided house stand in place of the house, which is all of them.
  const zonesRun = year.rooms
    ? [...year.rooms, ...year.zones.filter(({ id }) => id !== 'house')]
    : year.zones;
  const movedIn = (zone?: string) =>
    sumOf(
      [...year.heat, ...(zone === undefined ? [] : (year.roomHeat ?? []))].flatMap((row) =>
        zone === undefined || row.zone === zone ? row.monthJ.map(Math.abs) : [],
      ),
    ) / 2;
  const sunJ = sumOf(year.heat.flatMap(({ cause, monthJ }) => (cause === 'sun' ? monthJ : [])));
  const massJ = outcome.mass.heatCapacityKWhPerK * 3.6e6;
  const whole = (heatResidual * (sunJ > 0 ? sunJ : movedIn())) / Math.max(sunJ, movedIn(), massJ);
  const zones = zoneHeatResidual.map((residual, z) => {
    const moved = movedIn(zonesRun[z]!.id);
    return (residual * moved) / Math.max(moved, massJ);
  });
  const releasedKg = sumOf(
    year.zones.flatMap(({ moistureByCause }) => moistureByCause.flatMap(({ monthKg }) => monthKg)),
  );
  return {
    heat: [whole, ...zones].reduce((worst, share) => (Math.abs(share) > Math.abs(worst) ? share : worst), 0),
    water: releasedKg > 0 ? (waterResidual * releasedKg) / Math.max(releasedKg, 1) : waterResidual,
  };
}

function badNumbers(value: unknown, path: string): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => badNumbers(inner, `${path}.${key}`));
}
