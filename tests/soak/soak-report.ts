// What a soak prints: the figures of docs/soak.md, one a line.
import type { HouseSoak } from './house-soak.ts';
import type { PageSoak } from './page-soak.ts';

export function houseReport(soak: HouseSoak, seed: number): string {
  const drift = soak.heapLastMB - soak.heapFirstMB;
  return rows([
    ['designs', `${soak.runs}, seed ${seed}, in turn in ${soak.climates.join(', ')}`],
    [
      'time',
      `${soak.minutes.toFixed(1)} minutes, ${((soak.minutes * 60_000) / soak.runs).toFixed(0)} ms each`,
    ],
    ['refused with a reason', String(soak.refused)],
    ['crashes', String(soak.crashes)],
    ['years with a fault', String(soak.faulty)],
    ['worst books', `heat ${soak.worstHeat.toExponential(1)}, water ${soak.worstWater.toExponential(1)}`],
    ['air of the rooms', `${soak.coldestC.toFixed(1)} to ${soak.hottestC.toFixed(1)} °C`],
    [
      'heap after collection',
      `${soak.heapFirstMB.toFixed(1)} MB early, ${soak.heapLastMB.toFixed(1)} MB at the end (${drift >= 0 ? '+' : ''}${drift.toFixed(1)})`,
    ],
    ['first design run again', soak.repeats ? 'the same to the last bit' : 'NOT the same'],
    ...soak.told.map((line): [string, string] => ['fault', line]),
  ]);
}

export function pageReport(soak: PageSoak, seed: number): string {
  const [first, most, last] = soak.heapMB.map((mb) => mb.toFixed(1));
  const counts = Object.entries(soak.counts).sort(([, a], [, b]) => b - a);
  return rows([
    ['time', `${soak.minutes.toFixed(1)} minutes, seed ${seed}`],
    ['acts', `${soak.acts}, of which ${soak.missed} could not be done`],
    ['what was done', counts.map(([name, count]) => `${name} ${count}`).join(', ')],
    ['looks at the page', String(soak.looks)],
    ['faults', String(soak.faults.length)],
    ['heap of the page', `${first} MB at first, ${most} MB at most, ${last} MB at the end`],
    ...soak.faults.map((line): [string, string] => ['fault', line]),
  ]);
}

function rows(lines: readonly (readonly [string, string])[]): string {
  return lines.map(([name, value]) => `${name.padEnd(24)}${value}`).join('\n');
}
