// A room that reaches up two storeys: what its one temperature hides between floor and ceiling.

import { type PlacedRoom, roomPlanOf } from '../../design/room-plan.ts';
import { upperPartWarmerK } from '../../outcomes/room-outcomes.ts';
import type { Context } from '../context.ts';
import { finding, type Rule } from '../rule.ts';

/** Beside a stove alight, or under glass in the sun, layers are told to be this many times as far apart. Common practice, no source. */
const STEEPER_TIMES = 3;

function tallRoom({ design }: Context): PlacedRoom | undefined {
  return roomPlanOf(design)?.rooms.find((placed) => upperPartWarmerK(placed) !== null);
}

export const TALL_ROOM_RULES: readonly Rule[] = [
  finding({
    id: 'tall-room',
    severity: 'note',
    applies: (context) => tallRoom(context) !== undefined,
    figures: (context) => {
      const placed = tallRoom(context)!;
      return {
        room: placed.room.name,
        upperPartWarmerK: upperPartWarmerK(placed)!,
        steeperTimes: STEEPER_TIMES,
        source: 'common practice, no source',
      };
    },
    says: (f, { words }) =>
      `The room "${f.room}" reaches up two storeys, and its temperature is told for the middle of its air. ` +
      `Warm air gathers above: reckon on ${words.degrees(f.upperPartWarmerK)} more in the upper half, and as much less near the floor. ` +
      `With a stove alight, or sun on the glass, it can be ${f.steeperTimes} times that. ` +
      `A slow fan under the ceiling evens it out, and an opening high up lets the heat go in summer.`,
  }),
];
