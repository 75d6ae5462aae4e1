// Which unknowns a record can say something of, by its weather, its season and what was logged; the rest is held at the
// drawing, each with its reason in words.

import type { UnknownId } from '../design/as-found.ts';
import { type HouseRecord, rowOf, type Windows } from './house-record.ts';

export interface Held {
  readonly id: UnknownId;
  readonly why: string;
}

/** What the record can tell, at most seven at once; the rest is held at the drawing, and why. */
export function chooseUnknowns(
  record: HouseRecord,
  windows: Windows,
  judged: Uint8Array,
): { chosen: UnknownId[]; held: Held[] } {
  const { design, weather, targets, hours } = record;
  const outdoorC = (hour: number) => weather.year.dryBulbC[rowOf(record, hour)]!;
  const { measured } = targets.find(({ kind }) => kind === 'temperature')!;
  const known = [...judged.keys()].filter((hour) => judged[hour] === 1);
  const mean = (of: (hour: number) => number) =>
    known.reduce((sum, hour) => sum + of(hour), 0) / known.length;
  const difference = mean((hour) => measured[hour]! - outdoorC(hour));
  const isHeated = design.heating.capacityKW > 0 && mean(outdoorC) < design.heating.dayC - 5;
  const swing = meanDailySwing(measured);
  const chosen: UnknownId[] = [];
  const held: Held[] = [];
  const use = (id: UnknownId, can: boolean, why: string) => (can ? chosen.push(id) : held.push({ id, why }));
  const hasSun = weather.sun !== 'typical';
  use('airtightness', true, '');
  use('sun', hasSun, 'the sun was not measured');
  use('insulation', Math.abs(difference) >= 5, 'inside and outside were less than 5 K apart');
  use(
    'mass',
    hasSun && swing >= 2,
    hasSun ? 'the room’s warmth moved by less than 2 K a day' : 'the sun was not measured',
  );
  use('stove', isHeated, 'nothing was heated');
  use(
    'gains',
    hasSun && !isHeated,
    isHeated ? 'a stove that nobody metered hides them' : 'the sun was not measured',
  );
  if (windows === 'guessed') {
    const isWarm = known.some((hour) => measured[hour]! > design.vents.opensAboveC - 1);
    use('opensAbove', isWarm, 'it was too cold to open windows');
    use('ventArea', isWarm, 'it was too cold to open windows');
  }
  use(
    'moisture',
    targets.some(({ kind }) => kind === 'humidity'),
    'humidity was not logged',
  );
  use('ground', hours >= 24 * 90, 'less than three months say nothing of it');
  // Whatever the station says, the wind at the house is another; it shares the blame with the cracks.
  chosen.push('wind');
  return { chosen, held };
}

function meanDailySwing(measured: Float64Array): number {
  let [sum, days] = [0, 0];
  for (let from = 0; from + 24 <= measured.length; from += 24) {
    const day = [...measured.subarray(from, from + 24)].filter((value) => !Number.isNaN(value));
    if (day.length < 20) continue;
    sum += Math.max(...day) - Math.min(...day);
    days++;
  }
  return days === 0 ? 0 : sum / days;
}
