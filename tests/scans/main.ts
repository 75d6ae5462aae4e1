// `npm run scans`: fine scans of set-points, opening temperature, windows, vents, night fan and door, in three houses, four
// places and four pairs of hands, and random houses in which heater and windows must never work against each other. Prints
// what docs/scans.md holds, and leaves with 1 when one fails. `-- --write` writes that page and its pictures; `-- --only
// WORDS` runs the scans whose name holds all of the words; `-- --houses N` so many random houses of each seed, 10 000 unless
// said, `-- --seeds 1,2` of these seeds, `-- --houses-only` nothing else, so that a long run can be done in parts.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { reasonFor } from './explained.ts';
import { type HabitRow, habitsPage, orderFaults, runHabits } from './habits.ts';
import { type Fights, findFights } from './no-fight.ts';
import { allScans, HABITS, KNOBS, nameOf, PLACES, runScan } from './scan.ts';
import { faultsOf, largestStep } from './scan-faults.ts';
import { type RunScan, scanPicture } from './scan-picture.ts';

const DOCS = resolve(import.meta.dirname, '../../docs');
const PICTURES = 'scans';

const words = process.argv.slice(2);
const valueAfter = (flag: string) => {
  const at = words.indexOf(flag);
  return at < 0 ? undefined : words[at + 1];
};
const only = (valueAfter('--only') ?? '').split(' ').filter((word) => word !== '');
const houses = Number(valueAfter('--houses') ?? 10_000);
const seeds = (valueAfter('--seeds') ?? '1').split(',').map(Number);
const housesOnly = words.includes('--houses-only');

const failed: string[] = [];
const reasons: string[] = [];
const run: RunScan[] = [];
for (const scan of housesOnly ? [] : allScans()) {
  const name = nameOf(scan);
  if (!only.every((word) => name.includes(word))) continue;
  const points = runScan(scan);
  run.push({ scan, points });
  const faults = faultsOf(scan, points);
  if (faults.length > 0) {
    failed.push(`${name}: ${faults.join('; ')}`);
    const reason = reasonFor(scan);
    if (reason !== null && !reasons.includes(reason)) reasons.push(reason);
  }
  console.error(`${faults.length === 0 ? 'ok  ' : 'FAIL'} ${name} ${faults.join('; ')}`);
}
const fights = only.length > 0 ? null : fightsOf(seeds);
if (fights) failed.push(...fights.faults);
const habits: readonly HabitRow[] = only.length > 0 || housesOnly ? [] : runHabits();
failed.push(...habits.flatMap(orderFaults));

const page = pageOf();
console.log(page);
if (words.includes('--write')) {
  mkdirSync(join(DOCS, PICTURES), { recursive: true });
  writeFileSync(join(DOCS, 'scans.md'), page);
  for (const knob of KNOBS) {
    const scans = run.filter(({ scan }) => scan.knob === knob);
    if (scans.length > 0)
      writeFileSync(join(DOCS, PICTURES, `${fileOf(knob.id)}.svg`), scanPicture(knob, scans));
  }
}
process.exitCode = failed.length === 0 ? 0 : 1;

function fightsOf(all: readonly number[]): Fights {
  const parts = all.map((seed) => findFights(houses, seed));
  const sum = (of: (part: Fights) => number) => parts.reduce((total, part) => total + of(part), 0);
  return {
    runs: sum(({ runs }) => runs),
    openedAtAll: sum(({ openedAtAll }) => openedAtAll),
    heatedAtAll: sum(({ heatedAtAll }) => heatedAtAll),
    faults: parts.flatMap(({ faults }) => faults),
  };
}

function fileOf(id: string): string {
  return id.replaceAll(' ', '-');
}

function pageOf(): string {
  const lines = [
    '# Scans of the household',
    '',
    'Made by `npm run scans -- --write`. One number of a house is moved in fine steps, all else the same; a cell says the heat of the year at the first and at the last value, the largest step and, in brackets, the step allowed: four times the mean step or 40 kWh, whichever is more [kWh]. Beside cliffs, signs are judged: a higher set-point never saves heat (0.2 % or 2 kWh is chance) and in a July and August without heat moves the hot hours by no more than 3 % or 10 h a step; larger windows never add more than 2 % of hot hours and 12 h; more bed or leaf never saves heat either and never makes the sunspace less humid by more than 12 h; vents of a closed-off sunspace add at most 2 % of heat, a night fan at most 1 %, and 10 kWh for chance and for the ground, which a cooler summer leaves cooler.',
    '',
    `${run.length} scans, ${run.length - run.filter(({ scan, points }) => faultsOf(scan, points).length > 0).length} passed.`,
  ];
  if (fights)
    lines.push(
      '',
      `${fights.runs} random houses (${seeds.length === 1 ? 'seed' : 'seeds'} ${seeds.join(', ')}), attentive hands and openers by turn: ${fights.heatedAtAll} needed heat, in ${fights.openedAtAll} something was opened to cool, and in ${fights.faults.length} the heater ran for an hour or more of the year beside something that stood open to cool for longer than anybody needs to notice.`,
    );
  if (failed.length > 0) lines.push('', 'Failed:', '', ...failed.map((fault) => `- ${fault}`));
  for (const reason of reasons) lines.push('', reason);
  for (const knob of KNOBS) {
    const scans = run.filter(({ scan }) => scan.knob === knob);
    if (scans.length === 0) continue;
    const hands = knob.habits ?? HABITS;
    lines.push(
      '',
      `## ${knob.id[0]!.toUpperCase()}${knob.id.slice(1)}: ${knob.from} to ${knob.to} by ${knob.step}`,
      '',
      `![Heat along ${knob.words}](${PICTURES}/${fileOf(knob.id)}.svg)`,
      '',
      `| house, place | ${hands.join(' | ')} |`,
      `| --- | ${hands.map(() => '---').join(' | ')} |`,
    );
    for (const house of new Set(scans.map(({ scan }) => scan.house))) {
      for (const place of PLACES) {
        const cells = hands.map((habit) => {
          const found = scans.find(
            ({ scan }) => scan.house === house && scan.place === place && scan.habit === habit,
          );
          return found ? cellOf(found) : '';
        });
        if (cells.some((cell) => cell !== '')) lines.push(`| ${house}, ${place} | ${cells.join(' | ')} |`);
      }
    }
  }
  if (habits.length > 0) lines.push(...habitsPage(habits));
  return `${lines.join('\n')}\n`;
}

function cellOf({ scan, points }: RunScan): string {
  const { kWh, allowedKWh } = largestStep(points);
  const verdict = faultsOf(scan, points).length > 0 ? ' FAILS' : '';
  const ends = `${points[0]!.heatKWh.toFixed(0)} → ${points.at(-1)!.heatKWh.toFixed(0)}`;
  return `${ends}; ${kWh.toFixed(0)} (${allowedKWh.toFixed(0)})${verdict}`;
}
