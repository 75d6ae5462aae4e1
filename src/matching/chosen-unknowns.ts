// Which unknowns act on a record, and which of them it can say something of, by its weather, its season and what was logged.
// What acts and cannot be told stays as drawn, with its reason in words; that it may be off all the same widens what is said
// of the others, which would else take the blame for it and be sure of it.

import type { UnknownId } from '../design/as-found.ts';
import { type HouseRecord, rowOf, type Windows } from './house-record.ts';

export interface Held {
  readonly id: UnknownId;
  readonly why: string;
}

export interface Chosen {
  readonly fitted: readonly UnknownId[];
  /** that act, stay as drawn and may be off by their priors */
  readonly considered: readonly UnknownId[];
  /** that stay as drawn, and why */
  readonly held: readonly Held[];
}

/** What acts on the record, and what of it the record can tell. */
export function chooseUnknowns(record: HouseRecord, windows: Windows, judged: Uint8Array): Chosen {
  const { design, weather, targets, hours } = record;
  const outdoorC = (hour: number) => weather.year.dryBulbC[rowOf(record, hour)]!;
  const { measured } = targets.find(({ kind }) => kind === 'temperature')!;
  const known = [...judged.keys()].filter((hour) => judged[hour] === 1);
  const mean = (of: (hour: number) => number) =>
    known.reduce((sum, hour) => sum + of(hour), 0) / known.length;
  const difference = mean((hour) => measured[hour]! - outdoorC(hour));
  const heat = record.series.find(({ kind }) => kind === 'heat' || kind === 'wood');
  const isWritten = heat !== undefined && heat.kind !== 'opening';
  /** there are hours of the period of which nobody wrote down what was heated */
  const isUntold = !isWritten || Array.from(heat.values).some(Number.isNaN);
  const isHeated = design.heating.capacityKW > 0 && mean(outdoorC) < design.heating.dayC - 5;
  const fitted: UnknownId[] = [];
  const considered: UnknownId[] = [];
  const held: Held[] = [];
  const act = (id: UnknownId, does: boolean, why: string) => {
    if (does) fitted.push(id);
    else held.push({ id, why });
  };
  const use = (id: UnknownId, can: boolean, why: string) => {
    act(id, can, why);
    if (!can) considered.push(id);
  };
  const hasSun = weather.sun !== 'typical';
  use('airtightness', true, '');
  use('sun', hasSun, 'the sun was not measured');
  use('insulation', Math.abs(difference) >= 5, 'inside and outside were less than 5 K apart');
  use('mass', hasSun, 'the sun was not measured');
  act('stove', isHeated && isUntold, isHeated ? 'what was burnt is written down' : 'nothing was heated');
  if (isWritten) fitted.push('fires');
  use('gains', hasSun, 'the sun was not measured');
  if (windows === 'guessed') {
    const isWarm = known.some((hour) => measured[hour]! > design.vents.opensAboveC - 1);
    act('opensAbove', isWarm, 'it was too cold to open windows');
    act('ventArea', isWarm, 'it was too cold to open windows');
  }
  act(
    'moisture',
    targets.some(({ kind }) => kind === 'humidity'),
    'humidity was not logged',
  );
  use('ground', hours >= 24 * 90, 'less than three months say nothing of it');
  // Whatever the station says, the wind at the house is another. Fitted beside the leaks it takes up what the loggers drift.
  use('wind', false, 'the record cannot tell it from the leaks; it is taken as the station has it');
  return { fitted, considered, held };
}
