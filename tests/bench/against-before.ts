// Today's engine beside that of commit d823da3, in one process: what a year costs, round by round in turn, and how far
// it is from sixty steps an hour after 365 days of warm-up, for each number of steps that a run can have.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Design } from '../../src/design/design.ts';
import { type BenchEngine, engineBefore, engineToday, type Options, type Ran } from './engines.ts';

const PLACE = 'denver';
const HOUSES = ['closed', 'leaning', 'modest'];
const FINE: Options = { stepsPerHour: 60, warmUpDays: 365 };
/** Errors of heat are shares of the heat, or of this where there is less [kWh]. */
const LEAST_KWH = 1000;
const BATCH = 200;
const BATCH_ROUNDS = 5;

interface Scheme {
  readonly name: string;
  readonly engine: BenchEngine;
  readonly climate: unknown;
  readonly options: Options;
}

/** Print both tables. */
export async function benchAgainstBefore(rounds: number, warmUps: number): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'daystone-engine-'));
  try {
    const [before, today] = [await engineBefore(), await engineToday(folder)];
    const [climateBefore, climateToday] = [await before.prepare(PLACE), await today.prepare(PLACE)];
    const of = (name: string, options: Options): Scheme => ({
      name,
      engine: today,
      climate: climateToday,
      options,
    });
    const schemes: readonly Scheme[] = [
      { name: 'd823da3, four steps', engine: before, climate: climateBefore, options: {} },
      of('as the hour needs', {}),
      of('one step an hour', { stepsPerHour: 1 }),
      of('two', { stepsPerHour: 2 }),
      of('four', { stepsPerHour: 4 }),
      of('eight', { stepsPerHour: 8 }),
    ];
    console.log(
      `\nSteps: time beside the engine of d823da3, and error against sixty steps an hour and 365 days, in ${PLACE}`,
    );
    console.log(
      `${'house, steps'.padEnd(32)}${'median'.padStart(10)}${'ratio'.padStart(8)}${'heat off'.padStart(11)}${'house air rms'.padStart(15)}`,
    );
    for (const house of HOUSES) printHouse(house, schemes, rounds, warmUps);
    printBatch([schemes[0]!, schemes[1]!]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Times are of the example as it is drawn; errors of the same house with openers, or hands' chance would hide them. */
function printHouse(house: string, schemes: readonly Scheme[], rounds: number, warmUps: number): void {
  const times = inTurn(
    schemes.map(({ engine, climate, options }) => {
      const design = drawnFor(engine, house);
      return () => void engine.run(design, climate, { ...options, lend: true });
    }),
    rounds,
    warmUps,
  );
  schemes.forEach(({ name, engine, climate, options }, i) => {
    const opened = withOpeners(drawnFor(engine, house));
    const { heatPercent, rmsK } = errorOf(
      engine.run(opened, climate, options),
      engine.run(opened, climate, FINE),
    );
    const ratio = median(times[i]!.map((ms, round) => ms / times[0]![round]!));
    const cells = [
      `${median(times[i]!).toFixed(1)} ms`.padStart(10),
      ratio.toFixed(2).padStart(8),
      `${heatPercent.toFixed(2)} %`.padStart(11),
      `${rmsK.toFixed(3)} K`.padStart(15),
    ];
    console.log(`${`${house}, ${name}`.padEnd(32)}${cells.join('')}`);
  });
}

/** Each engine's own drawing of a house that both know. */
const drawnFor = ({ examples }: BenchEngine, house: string): Design =>
  examples.find(({ id }) => id === house)!.design;

/** Two hundred houses that both engines know, no two alike, in one thread: what a batch costs. */
function printBatch(schemes: readonly Scheme[]): void {
  const times = inTurn(
    schemes.map(({ engine, climate }) => {
      const designs = Array.from({ length: BATCH }, (_, i) =>
        varied(drawnFor(engine, HOUSES[i % HOUSES.length]!), i),
      );
      return () => {
        for (const design of designs) engine.run(design, climate, { lend: true }).heatKWh();
      };
    }),
    BATCH_ROUNDS,
    1,
  );
  const ratios = times[1]!.map((ms, round) => ms / times[0]![round]!);
  console.log(
    `\nA batch of ${BATCH} houses, one thread, in turn: ${times.map((of) => `${(median(of) / 1000).toFixed(1)} s`).join(' before, ')} today, ratio ${median(ratios).toFixed(2)} (wanted: at most 1)`,
  );
}

function varied(design: Design, i: number): Design {
  const { glass, mass, floor } = design;
  return {
    ...design,
    glass: { ...glass, value: glass.value * (0.6 + (0.4 * (i % 7)) / 6) },
    mass: { ...mass, thicknessM: 0.05 + 0.05 * (i % 11) },
    floor: { ...floor, thicknessM: 0.08 + 0.02 * (i % 5) },
  };
}

const withOpeners = (design: Design): Design => ({
  ...design,
  vents: { ...design.vents, habit: 'automatic' },
});

function errorOf(ours: Ran, fine: Ran): { heatPercent: number; rmsK: number } {
  const [heat, exact] = [ours.heatKWh(), fine.heatKWh()];
  const { airC } = ours.zones[0]!;
  const exactC = fine.zones[0]!.airC;
  return {
    heatPercent: (100 * Math.abs(heat - exact)) / Math.max(LEAST_KWH, exact),
    rmsK: Math.sqrt(airC.reduce((sum, value, h) => sum + (value - exactC[h]!) ** 2, 0) / airC.length),
  };
}

/** Times of each piece of work [ms], one of each in turn, round after round. */
function inTurn(works: readonly (() => void)[], rounds: number, warmUps: number): number[][] {
  const times = works.map((): number[] => []);
  for (let round = -warmUps; round < rounds; round++) {
    works.forEach((work, i) => {
      const start = performance.now();
      work();
      if (round >= 0) times[i]!.push(performance.now() - start);
    });
  }
  return times;
}

const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[values.length >> 1]!;
