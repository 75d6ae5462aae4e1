// Loggers that hung in other rooms than was said: which ways are tried, and that a record speaks for the right one. Rooms here are
// plain waves that one unknown lifts, so that what must come out is known by hand.
import { describe, expect, test } from 'vitest';
import { EXAMPLES } from '../../src/daystone.ts';
import type { UnknownId } from '../../src/design/as-found.ts';
import type { HouseRecord, MatchRunner } from '../../src/matching/house-record.ts';
import { hungElsewhere, hungWords, otherWays } from '../../src/matching/hung-elsewhere.ts';
import { leastSquares } from '../../src/matching/least-squares.ts';
import { randomNumbers } from '../../src/weather/synthetic/random-numbers.ts';

const HOURS = 240;
const designOf = (id: string) => EXAMPLES.find((one) => one.id === id)!.design;
const recordOf = (id: string, zones: readonly string[], measured: readonly Float64Array[] = []) =>
  ({
    design: designOf(id),
    targets: zones.map((zone, t) => ({
      name: zone,
      zone,
      kind: 'temperature',
      radiantShare: 0,
      measured: measured[t] ?? new Float64Array(HOURS),
    })),
  }) as unknown as HouseRecord;

describe('ways', () => {
  test('a house in one has none', () => {
    expect(otherWays(recordOf('modest', ['house']))).toEqual([]);
    expect(otherWays(recordOf('closed', ['house', 'sunspace']))).toEqual([]);
  });

  test('one logger may have hung in each other room, two may be exchanged as well', () => {
    const one = otherWays(recordOf('divided', ['room-1']));
    expect(one.map(({ zones }) => zones)).toEqual([['room-2'], ['room-3'], ['room-4']]);
    expect(one[0]!.words).toBe('the logger of Living room hung in Kitchen');
    const two = otherWays(recordOf('divided', ['room-1', 'room-2']));
    expect(two).toHaveLength(5);
    expect(two.find(({ words }) => words.includes('exchanged'))!.zones).toEqual(['room-2', 'room-1']);
  });
});

describe('a record', () => {
  const ids: readonly UnknownId[] = ['stove'];
  const turns: Readonly<Record<string, number>> = { 'room-1': 10, 'room-2': 11, 'room-3': 12, 'room-4': 13 };
  const wave = (zone: string, lift: number) =>
    Float64Array.from(
      { length: HOURS },
      (_, hour) => 20 + lift + Math.sin((2 * Math.PI * turns[zone]! * hour) / HOURS),
    );
  const said = ['room-1'];
  const runner: MatchRunner = {
    run: async (jobs) =>
      jobs.map(({ values, zones = said }) => zones.map((zone) => wave(zone, values.stove ?? 0))),
  };
  const waysOf = async (hung: string, spread: number) => {
    const noise = randomNumbers(3);
    const measured = wave(hung, 1).map((value) => value + spread * noise.normal());
    const record = recordOf('divided', said, [measured]);
    const fitted = [new Uint8Array(HOURS).fill(1)];
    const jobOf = (values: object) => ({ values });
    const estimate = await leastSquares(runner, { unknowns: ids, targets: record.targets, fitted, jobOf });
    return hungElsewhere(runner, record, {
      unknowns: ids,
      considered: [],
      fitted,
      estimate,
      jobOf,
      isEnough: () => false,
    });
  };

  test('of another room speaks for that room alone', async () => {
    const ways = await waysOf('room-3', 0.3);
    expect(ways.map(({ zones }) => zones)).toEqual([['room-3']]);
    expect(ways[0]!.likely).toBeGreaterThan(0.99);
    expect(hungWords(ways)).toMatch(
      /fits better if the logger of Living room hung in .*nothing should be decided/,
    );
  });

  test('of the room that was said speaks for none', async () => {
    expect(await waysOf('room-1', 0.3)).toEqual([]);
  });

  test('that shows nothing of any room leaves a person’s word as it is', async () => {
    expect(await waysOf('room-3', 60)).toEqual([]);
  });
});
