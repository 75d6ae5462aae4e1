// Of changes to a divided house, the one that helps its worst room most for what it costs elsewhere: hours in the other rooms,
// heat and work are weighed in one sum with those of the room (weights.ts). Runs in, a change out.

import { ACCEPTABLE_DAMP_HOURS, FEW_COLD_HOURS } from '../outcomes/acceptable-hours.ts';
import { worstIn } from '../outcomes/judged-house.ts';
import type { RoomOutcome } from '../outcomes/outcome.ts';
import { MOULD_INDEX_LIMIT } from '../physics/mould-index.ts';
import { changeBetween } from '../quantities/change.ts';
import type { Run } from './question.ts';
import { burden, type Weighed, type Weights, weightsBetween } from './weights.ts';

export type Trouble = 'hot' | 'cold' | 'damp';
export const TROUBLES: readonly Trouble[] = ['hot', 'cold', 'damp'];

/** A change must take off this share of the hours, and a day of them, to be told. House rule. */
export const WORTH_SHARE = 0.1;
const WORTH_HOURS = 24;

/** Hours a year of a trouble: too hot by the design’s criterion, too cold in the hours that the room is lived in, too damp. */
export function hoursOf(room: RoomOutcome, trouble: Trouble): number {
  if (trouble === 'hot') return room.tooHot.hours;
  return trouble === 'cold' ? room.lived.underheatedHours : room.humidHours;
}

/** So many hours more that a person would notice. */
export function isMore(hours: number, than: number): boolean {
  return hours - than >= Math.max(WORTH_HOURS, WORTH_SHARE * hours);
}

/** Whether there are more of such hours than are allowed or than people mind. */
export function isTrouble(room: RoomOutcome, trouble: Trouble): boolean {
  if (trouble === 'hot') return room.tooHot.hours > room.tooHot.limitHours;
  if (trouble === 'cold') return room.lived.underheatedHours > FEW_COLD_HOURS;
  return room.humidHours > ACCEPTABLE_DAMP_HOURS || room.mouldIndexMax >= MOULD_INDEX_LIMIT;
}

/** A room that is worst in some respect, and the change to make. */
export interface Help {
  readonly room: RoomOutcome;
  readonly before: number;
  /** whether any change takes hours off that a person would notice */
  readonly helps: boolean;
  /** of those the one that weighs least, where that is less than as drawn */
  readonly best: { readonly run: Run; readonly hours: number } | null;
}

/** The worst room in a respect and the change to make; null where nobody minds. */
export function helpAgainst(
  trouble: Trouble,
  drawn: Run,
  changes: readonly Run[],
  weights: Weights,
): Help | null {
  const room = worstIn(drawn.result.outcome, trouble);
  if (room === null || !isTrouble(room, trouble)) return null;
  const before = hoursOf(room, trouble);
  const helping = changes
    .filter(({ job }) => job.at.room === room.id)
    .flatMap((run) => {
      const after = run.result.outcome.rooms?.find(({ id }) => id === room.id);
      const hours = after === undefined ? before : hoursOf(after, trouble);
      return isMore(before, hours)
        ? [{ run, hours, lighter: lighterBy(trouble, drawn, before, run, hours, weights) }]
        : [];
    });
  const best = helping.reduce<(typeof helping)[0] | null>(
    (found, one) => (one.lighter > (found?.lighter ?? 0) ? one : found),
    null,
  );
  return { room, before, helps: helping.length > 0, best };
}

const KEYS = { hot: 'tooHotHours', cold: 'underheatedHours', damp: 'humidHours' } as const;

/**
 * What a change takes off the weight of the house [hours]: of the trouble the hours of the room, of the others those of the room
 * that is worst; damp that a change against heat or cold finds and leaves is left out.
 */
function lighterBy(
  trouble: Trouble,
  drawn: Run,
  before: number,
  changed: Run,
  after: number,
  weights: Weights,
): number {
  // Cold counts in every room that is lived in, and not only in those that are heated.
  const weighed = ({ figures }: Run, hours: number): Weighed => ({
    ...figures,
    shortHours: null,
    [KEYS[trouble]]: hours,
  });
  const [was, is] = [weighed(drawn, before), weighed(changed, after)];
  const fair = trouble === 'damp' ? weights : weightsBetween([was, is], weights);
  const { days } = changeBetween(drawn.job.design, changed.job.design);
  return burden(was, 0, fair) - burden(is, days, fair);
}
