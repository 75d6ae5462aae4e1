// What a soak prints: the figures of docs/soak.md, one a line.
import { type HouseSoak, SOAK_CLIMATES } from './house-soak.ts';

export function houseReport(soak: HouseSoak, seed: number): string {
  const drift = soak.heapLastMB - soak.heapFirstMB;
  return rows([
    ['designs', `${soak.runs}, seed ${seed}, in turn in ${SOAK_CLIMATES.join(', ')}`],
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

function rows(lines: readonly (readonly [string, string])[]): string {
  return lines.map(([name, value]) => `${name.padEnd(24)}${value}`).join('\n');
}
