// Random divided houses: any design, divided by a preset or with a second room beside each, its rooms changed at random. What
// does not fill the house, as rows of a house a metre deep, is left undivided.
import fc from 'fast-check';
import type { Design } from '../../src/design/design.ts';
import { PARTITIONS, ROOM_DOORS, ROOM_LIMITS, ROOM_USES } from '../../src/design/room.ts';
import { dividedBy, ROOM_PRESETS } from '../../src/design/room-presets.ts';
import { withRooms } from '../../src/design/room-rules.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { anyDesign } from './any-design.ts';

const { min: thin, max: thick } = ROOM_LIMITS.partitionM;

/** Nobody divides a house less deep than this [m]. */
const LEAST_DEPTH_M = 1;

/** What changes of each room. */
const anyChange = fc.record({
  use: fc.constantFrom(...ROOM_USES),
  door: fc.constantFrom(...ROOM_DOORS),
  heated: fc.boolean(),
  mass: fc.boolean(),
  fanM3H: fc.constantFrom(0, 60, 500),
  windowShare: fc.option(fc.double({ min: 0, max: 1, noNaN: true }), { nil: undefined }),
});

/** Valid designs with rooms, wherever the house can hold them. */
export const anyDivided: fc.Arbitrary<Design> = fc
  .record({
    design: anyDesign,
    preset: fc.constantFrom(...ROOM_PRESETS),
    partition: fc.constantFrom(...PARTITIONS),
    partitionM: fc.double({ min: thin, max: thick, noNaN: true }),
    stairM2: fc.constantFrom(0, 0.1, 3, 12),
    frontShare: fc.double({ min: 0, max: 1, noNaN: true }),
    changes: fc.array(anyChange, { minLength: 5, maxLength: 5 }),
  })
  .map(({ design, preset, partition, partitionM, stairM2, frontShare, changes }) => {
    const divided = dividedBy(design, preset);
    const rooms = divided.rooms!;
    const { house } = divided;
    const depthM = house.floorAreaM2 / house.storeys / house.equatorWallM;
    const list = rooms.list.map((room, i) => {
      const { windowShare, ...change } = changes[i]!;
      const wallM2 = room.share * house.equatorWallM * house.ceilingHeightM;
      const areaM2 = Math.min(60, 0.89 * (windowShare ?? 0) * wallM2);
      const hasPoleWall = room.row === 'back' || preset.list.every(({ row }) => row === 'front');
      return {
        ...room,
        ...change,
        heated: i === 0 || change.heated,
        ...(windowShare !== undefined &&
          hasPoleWall && { windows: [{ side: 'pole' as const, areaM2, openM2: areaM2 / 2 }] }),
      };
    });
    const frontDepthM = depthM * (0.25 + 0.5 * frontShare);
    const made = withRooms(divided, { frontDepthM, partition, partitionM, stairM2, list });
    return depthM >= LEAST_DEPTH_M && parseDesign(made).ok ? made : design;
  });
