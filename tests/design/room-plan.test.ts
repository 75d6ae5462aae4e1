import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { openDesign } from '../../src/design/open-design.ts';
import type { Room, Rooms } from '../../src/design/room.ts';
import { roomPlanOf } from '../../src/design/room-plan.ts';
import { builtWindow, withRooms } from '../../src/design/room-rules.ts';
import { SHARED_CAUSES, sharesOf } from '../../src/design/room-uses.ts';
import { describeDesignFault, parseDesign } from '../../src/design/schema.ts';
import { alikeRooms, example, fourRooms, room } from './divided.ts';

const faultsOf = (design: Design): string[] => {
  const result = parseDesign(JSON.parse(JSON.stringify(design)));
  return result.ok ? [] : result.faults.map(describeDesignFault);
};
const withList = (design: Design, change: (list: Room[]) => Room[], block: Partial<Rooms> = {}): Design =>
  withRooms(design, { ...design.rooms!, ...block, list: change([...design.rooms!.list]) });

test('a design with rooms is version 2, opens as it was written, and is version 1 again without them', () => {
  for (const design of [fourRooms(), alikeRooms()]) {
    expect(design.version).toBe(2);
    expect(openDesign(JSON.parse(JSON.stringify(design)))).toEqual({ ok: true, design });
    const { rooms: _, ...plain } = design;
    expect(openDesign(plain)).toEqual({ ok: true, design: withRooms(design, undefined) });
    expect(withRooms(design, undefined).version).toBe(1);
    expect(faultsOf({ ...design, version: 1 })).toEqual(['version is 1; allowed: 2 with rooms']);
  }
  expect(openDesign({ ...example('modest'), version: 3 })).toMatchObject({ ok: false });
});

test('rooms fill the house: floors, walls and volume add up, and every wall inside has two rooms', () => {
  for (const design of [fourRooms(), alikeRooms()]) {
    const plan = roomPlanOf(design)!;
    const sum = (of: (placed: (typeof plan.rooms)[number]) => number) =>
      plan.rooms.reduce((total, placed) => total + of(placed), 0);
    const { house, sunspace } = design;
    const depthM = house.floorAreaM2 / house.storeys / house.equatorWallM;
    const heightM = house.storeys * house.ceilingHeightM;
    expect(sum(({ floorM2 }) => floorM2)).toBeCloseTo(house.floorAreaM2, 9);
    expect(sum(({ volumeM3 }) => volumeM3)).toBeCloseTo(house.floorAreaM2 * house.ceilingHeightM, 9);
    expect(sum(({ roofM2 }) => roofM2)).toBeCloseTo(house.floorAreaM2 / house.storeys, 9);
    expect(sum(({ wallM2 }) => wallM2.pole)).toBeCloseTo(house.equatorWallM * heightM, 9);
    expect(sum(({ wallM2 }) => wallM2.east)).toBeCloseTo(depthM * heightM, 9);
    const behindM = sunspace.join === 'none' ? 0 : sunspace.lengthM;
    expect(sum(({ behindSunspaceM2 }) => behindSunspaceM2)).toBeCloseTo(behindM * heightM, 9);
    expect(plan.ways).toHaveLength(plan.rooms.length - 1);
  }
  const { partitions, floors, ways, sunspaceRoom } = roomPlanOf(fourRooms())!;
  expect(partitions.map(({ areaM2 }) => areaM2)).toEqual([25, 25]);
  expect(floors.map(({ below, above }) => [below, above])).toEqual([
    [0, 2],
    [1, 3],
  ]);
  expect(ways).toEqual([
    { room: 1, to: 0, kind: 'door' },
    { room: 2, to: 0, kind: 'stairs' },
    { room: 3, to: 2, kind: 'door' },
  ]);
  expect(sunspaceRoom).toBe(0);
});

test('a two-storey space takes its place above, and a gallery looks into it', () => {
  const gallery = withList(fourRooms(), () => [
    room({ name: 'Hall', heated: true, reachesUp: true }),
    room({ name: 'Gallery', row: 'back', storey: 1, use: 'bedroom' }),
  ]);
  expect(faultsOf(gallery)).toEqual([]);
  const { rooms, ways, floors } = roomPlanOf(gallery)!;
  expect(rooms[0]!.boxes.map(({ nearM, farM }) => [nearM, farM])).toEqual([
    [0, 5.5],
    [0, 3],
  ]);
  expect(rooms[0]!.floorM2 + rooms[1]!.floorM2).toBeCloseTo(80, 9);
  expect(rooms[0]!.volumeM3 + rooms[1]!.volumeM3).toBeCloseTo(110 * 2.5, 9);
  // One sees down from it over a wall that is a partition here; the stairs stand in the hall.
  expect(ways).toEqual([{ room: 1, to: 0, kind: 'door' }]);
  expect(floors).toEqual([{ below: 0, above: 1, areaM2: 25 }]);
});

test('what cannot stand is refused by name', () => {
  const [first, second] = [0, 1] as const;
  const at = (i: number, own: Partial<Room>) => (list: Room[]) =>
    list.map((each, n) => (n === i ? { ...each, ...own } : each));
  const cases: [Design, string][] = [
    [
      withList(fourRooms(), at(second, { share: 0.6 })),
      'shares that add up to 1 in the back row of storey 0, where they make 0.6',
    ],
    [withList(fourRooms(), (list) => list.slice(0, 2)), 'rooms on every storey'],
    [withList(fourRooms(), at(second, { name: 'Living room' })), 'a name that no other room has'],
    [withList(fourRooms(), at(first, { heated: false })), 'one heated room at least'],
    [withList(fourRooms(), at(first, { storey: 2 })), '0 to 1, the house having 2'],
    [withList(fourRooms(), at(3, { reachesUp: true })), 'false under the roof'],
    [withList(fourRooms(), (list) => list.slice(0, 1)), 'a list of 2 to 5 rooms'],
    [
      withList(fourRooms(), at(second, { windows: [{ side: 'pole', areaM2: 2, openM2: 3 }] })),
      'at most the window, 2 m²',
    ],
  ];
  for (const [design, says] of cases) expect(faultsOf(design).join('\n')).toContain(says);
});

test('a row deeper than the house leaves, and a window larger than its wall, are built as far as they fit', () => {
  const deep = withList(fourRooms(), (list) => list, { frontDepthM: 50 });
  expect(faultsOf(deep)).toEqual([]);
  expect(roomPlanOf(deep)!.rooms[0]!.boxes[0]!.farM).toBeCloseTo(4.5, 9);
  const wide = { side: 'pole', areaM2: 60, openM2: 50 } as const;
  const glazed = withList(fourRooms(), (list) =>
    list.map((each, i) => (i === 1 ? { ...each, windows: [wide] } : each)),
  );
  expect(faultsOf(glazed)).toEqual([]);
  expect(builtWindow(glazed, roomPlanOf(glazed)!.rooms[1]!, wide)).toEqual({ areaM2: 22.5, openM2: 22.5 });
});

test('people, appliances and water are shared out in full, whatever the uses', () => {
  const uses = ['living', 'kitchen', 'bath', 'bedroom', 'spare'] as const;
  for (const one of uses) {
    for (const other of uses) {
      const design = withList(alikeRooms(), (list) =>
        list.map((each, i) => ({ ...each, use: i === 0 ? one : other })),
      );
      const { rooms } = roomPlanOf(design)!;
      for (const cause of SHARED_CAUSES) {
        const shares = sharesOf(rooms, cause);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
      }
    }
  }
});
