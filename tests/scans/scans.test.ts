// A few of the fine scans, one of each knob and each over part of its range, and a few of the random houses; `npm run scans`
// runs them all. What is judged and why: scan-faults.ts, no-fight.ts. The sum of a scan's judge is checked on made-up points.
import { describe, expect, test } from 'vitest';
import { reasonFor } from './explained.ts';
import { orderFaults, runHabits } from './habits.ts';
import { findFights } from './no-fight.ts';
import { allScans, nameOf, runScan, type ScanPoint } from './scan.ts';
import { faultsOf } from './scan-faults.ts';

const IN_THE_SUITE = [
  ['day set-point, modest, denver, attentive', 17, 22],
  // About the limit of what is comfortable, and what people open at.
  ['opens above, leaning, denver, automatic', 23, 26],
  ['windows, modest, denver, forgetful', 2, 11],
  // One warm evening, looked at once, with outdoors as warm as the room to a twentieth of a kelvin.
  ['windows, closed, denver, forgetful', 6, 8],
  ['sunspace vents, closed, madrid, automatic', 0, 4],
  ['night fan, closed, denver, away', 0, 4],
  ['door, closed, quillayute, attentive', 0.5, 4],
  ['leaf area, leaning, burlington, attentive', 0, 1.5],
] as const;
const RANDOM_HOUSES = 16;

test.each(IN_THE_SUITE)('no cliff and no wrong sign: %s, from %d to %d', (name, from, to) => {
  const whole = allScans().find((each) => nameOf(each) === name)!;
  const scan = { ...whole, knob: { ...whole.knob, from, to } };
  expect(faultsOf(scan, runScan(scan))).toEqual([]);
});

test('a scan that is left failing has its reason, and no other has', () => {
  const explained = allScans().filter((scan) => reasonFor(scan) !== null);
  expect(explained.map(nameOf)).toEqual([
    ...['attentive', 'automatic', 'away', 'forgetful'].map(
      (habit) => `night set-point, leaning, madrid, ${habit}`,
    ),
    'night fan, leaning, denver, away',
    'leaf area, closed, quillayute, attentive',
  ]);
});

test('the closed house fares by who opens as common practice has it', () => {
  expect(runHabits(['burlington', 'tucson'], ['closed']).flatMap(orderFaults)).toEqual([]);
});

test('heater and windows never work against each other in houses drawn at random', () => {
  const { runs, heatedAtAll, openedAtAll, faults } = findFights(RANDOM_HOUSES, 7);
  expect(faults).toEqual([]);
  expect(heatedAtAll).toBeGreaterThan(0.8 * runs);
  expect(openedAtAll).toBeGreaterThan(0.8 * runs);
});

describe('the judge of a scan', () => {
  const scanOf = (knob: string) => allScans().find((scan) => scan.knob.id === knob)!;
  const points = (
    change: Partial<
      Record<'heatKWh' | 'hotHours' | 'summerHotHours' | 'sunspaceHumidHours', readonly number[]>
    >,
  ) =>
    Array.from({ length: 13 }, (_, n) => n).map(
      (value): ScanPoint => ({
        value,
        heatKWh: change.heatKWh?.[value] ?? change.heatKWh?.at(-1) ?? 500 + 20 * value,
        hotHours: change.hotHours?.[value] ?? change.hotHours?.at(-1) ?? 100,
        summerHotHours: change.summerHotHours?.[value] ?? change.summerHotHours?.at(-1) ?? 80,
        summerHeatKWh: 0,
        humidHours: 0,
        sunspaceHumidHours: change.sunspaceHumidHours?.[value] ?? change.sunspaceHumidHours?.at(-1) ?? 100,
        moves: 0,
        heatedWhileOpenHours: 0,
      }),
    );

  test('lets a smooth scan pass', () => {
    expect(faultsOf(scanOf('day set-point'), points({}))).toEqual([]);
  });

  test.each([
    ['opens above', { heatKWh: [500, 500, 500, 545, 545] }, 'moves by 45 kWh at 3'],
    ['day set-point', { heatKWh: [500, 520, 515, 530, 540] }, 'saves 5.0 kWh at 2'],
    ['day set-point', { summerHotHours: [80, 80, 92, 92, 92] }, 'from 80 to 92'],
    ['windows', { hotHours: [100, 90, 80, 97, 80] }, '3 m² has 97 hot hours'],
    ['sunspace vents', { heatKWh: [500, 501, 525, 515, 515] }, '2 adds 25.0 kWh'],
    ['bed', { sunspaceHumidHours: [100, 90, 77, 90] }, '2 has 77 humid hours'],
    ['leaf area', { heatKWh: [500, 520, 515, 530, 540] }, 'saves 5.0 kWh at 2'],
    ['night fan', { heatKWh: [500, 501, 519, 514, 514] }, '2 adds 19.0 kWh'],
  ] as const)('finds what is wrong with %s', (knob, change, words) => {
    const faults = faultsOf(scanOf(knob), points(change));
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(words);
  });
});
