// Random designs through whole years in six climates. Counts what goes wrong, watches the memory after collection, and
// runs the first design once more at the end: a program that carries nothing from run to run gives the same bits.
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { runYear } from '../../src/daystone.ts';
import type { Design } from '../../src/design/design.ts';
import { ImpossibleYear } from '../../src/outcomes/impossible-year.ts';
import { readBundle } from '../../src/weather/formats/bundle-form.ts';
import { prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { anyDesign } from '../model/any-design.ts';
import { anyDivided } from '../model/any-rooms.ts';
import { anySource } from '../model/any-source.ts';
import { climateText, yearOf } from '../weather/weather-files.ts';
import { faultsOfRun, openBooks } from './sound-year.ts';

/** Cold and dark, cold and sunny, hot and dry, mild and damp, wet, and one of the southern hemisphere. */
export const SOAK_CLIMATES = ['anchorage', 'alamosa', 'tucson', 'belfast', 'quillayute', 'southern-chile'];

/** Memory is looked at this many times over the whole. */
const LOOKS = 20;
const MOST_TOLD = 20;

export interface HouseSoak {
  readonly runs: number;
  readonly climates: readonly string[];
  readonly minutes: number;
  /** designs refused with a reason, because no house can have such a year */
  readonly refused: number;
  /** runs that threw anything else */
  readonly crashes: number;
  /** runs with at least one fault, crashes included */
  readonly faulty: number;
  /** the first faults, each with the place of its design in the sequence and its climate */
  readonly told: readonly string[];
  /** how far the worst books of heat and of water were off, as shares; openBooks says of what */
  readonly worstHeat: number;
  readonly worstWater: number;
  readonly coldestC: number;
  readonly hottestC: number;
  /** heap in use after collection [MB]: after the first twentieth, and at the end */
  readonly heapFirstMB: number;
  readonly heapLastMB: number;
  /** the first design run again at the end gives the same outcome, bit for bit */
  readonly repeats: boolean;
}

/**
 * Run random designs, in the climates by turn.
 *
 * @param count how many designs
 * @param seed the same seed gives the same designs
 * @param onLook told at each look at the memory: runs so far and heap [MB]
 */
export function soakHouses(
  count: number,
  seed: number,
  onLook: (runs: number, heapMB: number) => void = () => {},
): HouseSoak {
  const collect = collector();
  const start = performance.now();
  const climates = SOAK_CLIMATES.map((id) => prepareClimate(yearOf(readBundle(climateText(id)))));
  const told: string[] = [];
  const heaps: number[] = [];
  let [refused, crashes, faulty, worstHeat, worstWater] = [0, 0, 0, 0, 0];
  let [coldestC, hottestC] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let firstDesign: Design | null = null;
  let firstClimate = climates[0]!;
  let firstOutcome = '';
  const lookEvery = Math.max(1, Math.floor(count / LOOKS));

  for (let i = 0; i < count; i++) {
    const design = designAt(seed, i);
    const climate = climates[i % climates.length]!;
    let faults: string[];
    try {
      const { year, outcome } = runYear(design, climate);
      faults = faultsOfRun(year, outcome);
      const { heat, water } = openBooks(year, outcome);
      worstHeat = Math.max(worstHeat, Math.abs(heat));
      worstWater = Math.max(worstWater, Math.abs(water));
      for (const { maxAirC, minAirC } of Object.values(outcome.zones)) {
        coldestC = Math.min(coldestC, minAirC);
        hottestC = Math.max(hottestC, maxAirC);
      }
      if (firstDesign === null) {
        firstDesign = design;
        firstClimate = climate;
        firstOutcome = JSON.stringify(outcome);
      }
    } catch (error) {
      const isRefused = error instanceof ImpossibleYear;
      if (isRefused) refused++;
      else crashes++;
      faults = isRefused ? [] : [`threw ${error instanceof Error ? error.message : String(error)}`];
    }
    if (faults.length > 0) {
      faulty++;
      if (told.length < MOST_TOLD) {
        told.push(`design ${i} of seed ${seed} in ${SOAK_CLIMATES[i % climates.length]}: ${faults[0]}`);
      }
    }
    if ((i + 1) % lookEvery === 0) {
      collect();
      const heapMB = process.memoryUsage().heapUsed / 1e6;
      heaps.push(heapMB);
      onLook(i + 1, heapMB);
    }
  }
  const again = firstDesign === null ? '' : JSON.stringify(runYear(firstDesign, firstClimate).outcome);
  return {
    runs: count,
    climates: SOAK_CLIMATES,
    minutes: (performance.now() - start) / 60_000,
    refused,
    crashes,
    faulty,
    told,
    worstHeat,
    worstWater,
    coldestC,
    hottestC,
    heapFirstMB: heaps[0] ?? Number.NaN,
    heapLastMB: heaps.at(-1) ?? Number.NaN,
    repeats: firstDesign !== null && again === firstOutcome,
  };
}

/**
 * The i-th design of a seed, by itself, so that one faulty design can be made again alone; every third is divided, and
 * every second has a source of heat of its own, of those every second is left at weekends.
 */
export function designAt(seed: number, i: number): Design {
  const alone = { seed: seed + i, numRuns: 1 };
  const design = fc.sample(i % 3 === 2 ? anyDivided : anyDesign, alone)[0]!;
  if (i % 2 === 0) return design;
  const source = fc.sample(anySource, alone)[0]!;
  const people = i % 4 === 1 ? { ...design.people, awayWeekends: true as const } : design.people;
  return { ...design, people, heating: { ...design.heating, source } };
}

/** Collects garbage now, without a flag on the command line. */
function collector(): () => void {
  setFlagsFromString('--expose_gc');
  return runInNewContext('gc') as () => void;
}
