// The rooms of a house: a button that divides it, the ways to divide it, and a card a room with few lines, its windows behind
// a fold. What does not fit is drawn back by the same rule as everywhere. Every change is one step of undo.

import type { Design } from '../../design/design.ts';
import { geometryOf } from '../../design/geometry.ts';
import {
  leastRowM,
  PARTITIONS,
  ROOM_DOORS,
  ROOM_LIMITS,
  ROOM_NAME_LENGTH,
  ROOM_USES,
  type Room,
  type Rooms,
  WINDOW_SIDES,
  type WindowSide,
} from '../../design/room.ts';
import { roomsThatFit } from '../../design/room-fit.ts';
import { type PlacedRoom, roomPlanOf } from '../../design/room-plan.ts';
import { dividedBy, ROOM_PRESETS, usualPreset } from '../../design/room-presets.ts';
import { mostWindowM2, withRooms } from '../../design/room-rules.ts';
import {
  DOOR_WORDS,
  PARTITION_WORDS,
  placeWords,
  USE_WORDS,
  WINDOW_SIDE_WORDS,
} from '../../findings/room-words.ts';
import { wordingOf } from '../../findings/wording.ts';
import { useWorkspace } from '../state/session-context.ts';
import { EntryNumber } from './EntryNumber.tsx';
import { LabelledMenu } from './LabelledMenu.tsx';

const YES_NO = [
  ['yes', 'yes'],
  ['no', 'no'],
] as const;
/** Small quiet fans as they are sold [m³/h]. */
const FANS = [0, 30, 60, 120] as const;

export function RoomList() {
  const workspace = useWorkspace();
  const design = workspace.design.value;
  const { rooms } = design;
  const put = (next: Rooms, gesture = '') => {
    const now = workspace.design.value;
    workspace.replace(withRooms(now, roomsThatFit({ ...now, rooms: next })), [], gesture);
  };
  if (rooms === undefined) {
    return (
      <div>
        <p>The house is run as one room.</p>
        <button
          type="button"
          data-action="divide"
          onClick={() => workspace.replace(dividedBy(design, usualPreset(design)))}
        >
          Divide into rooms
        </button>
      </div>
    );
  }
  const plan = roomPlanOf(design)!;
  const { houseDepthM } = geometryOf(design);
  const leastM = leastRowM(houseDepthM);
  const hasTwoRows = new Set(rooms.list.map(({ row }) => row)).size === 2;
  const change = (i: number, own: RoomChange, gesture = '') =>
    put({ ...rooms, list: rooms.list.map((room, n) => (n === i ? changedRoom(room, own) : room)) }, gesture);
  return (
    <div>
      <LabelledMenu
        known={{ 'data-rooms-field': 'preset' }}
        label="Divide it anew"
        value=""
        options={[
          ['', 'as it is'],
          ...ROOM_PRESETS.map(({ id, name, line }) => [id, `${name}: ${line}`] as const),
        ]}
        choose={(id) => {
          const preset = ROOM_PRESETS.find((one) => one.id === id);
          if (preset) workspace.replace(dividedBy(workspace.design.value, preset));
        }}
      />
      {hasTwoRows && (
        <EntryNumber
          name="frontDepthM"
          known={{ 'data-rooms-field': 'frontDepthM' }}
          limit={{ ...ROOM_LIMITS.frontDepthM, min: leastM, max: houseDepthM - leastM }}
          value={rooms.frontDepthM}
          quantity="length"
          required
          change={(frontDepthM, gesture) => put({ ...rooms, frontDepthM: frontDepthM! }, gesture)}
        />
      )}
      <LabelledMenu
        known={{ 'data-rooms-field': 'partition' }}
        label="Walls between rooms"
        value={rooms.partition}
        options={PARTITIONS.map((each) => [each, PARTITION_WORDS[each]])}
        choose={(partition) => put({ ...rooms, partition: partition as Rooms['partition'] })}
      />
      {rooms.partition !== 'light' && (
        <EntryNumber
          name="partitionM"
          known={{ 'data-rooms-field': 'partitionM' }}
          limit={ROOM_LIMITS.partitionM}
          value={rooms.partitionM}
          quantity="thickness"
          required
          change={(partitionM, gesture) => put({ ...rooms, partitionM: partitionM! }, gesture)}
        />
      )}
      {design.house.storeys > 1 && (
        <EntryNumber
          name="stairM2"
          known={{ 'data-rooms-field': 'stairM2' }}
          limit={ROOM_LIMITS.stairM2}
          value={rooms.stairM2}
          quantity="area"
          required
          change={(stairM2, gesture) => put({ ...rooms, stairM2: stairM2! }, gesture)}
        />
      )}
      <ol>
        {plan.rooms.map((placed, i) => (
          <li key={placed.id} data-room={placed.id}>
            <RoomCard
              placed={placed}
              design={design}
              hasDoor={plan.ways.some(({ room }) => room === i)}
              change={(own, gesture) => change(i, own, gesture)}
            />
          </li>
        ))}
      </ol>
      <button
        type="button"
        data-action="undivide"
        onClick={() => workspace.replace(withRooms(workspace.design.value, undefined))}
      >
        One room again
      </button>
    </div>
  );
}

/** The room with changes; without windows of its own where they are taken away. */
function changedRoom(room: Room, own: RoomChange): Room {
  const { windows, ...rest } = own;
  const { windows: had, ...plain } = room;
  if (windows === 'usual') return { ...plain, ...rest };
  const kept = windows ?? had;
  return { ...plain, ...rest, ...(kept && { windows: kept }) };
}

type RoomChange = Partial<Omit<Room, 'windows'>> & { readonly windows?: Room['windows'] | 'usual' };

interface CardProps {
  readonly placed: PlacedRoom;
  readonly design: Design;
  readonly hasDoor: boolean;
  readonly change: (own: RoomChange, gesture?: string) => void;
}

function RoomCard({ placed, design, hasDoor, change }: CardProps) {
  const units = useWorkspace().units.value;
  const { room, id } = placed;
  const isTaken = (name: string) =>
    design.rooms!.list.some((other) => other !== room && other.name.trim() === name.trim());
  return (
    <details>
      <summary>
        {room.name}, {placeWords(room)}
      </summary>
      <div class="input input-choice">
        <label class="input-label" for={`${id}-name`}>
          Name
        </label>
        <input
          id={`${id}-name`}
          type="text"
          data-room-field="name"
          maxLength={ROOM_NAME_LENGTH}
          value={room.name}
          onChange={({ currentTarget }) => {
            const name = currentTarget.value;
            if (name.trim() !== '' && !isTaken(name)) change({ name });
            else currentTarget.value = room.name;
          }}
        />
      </div>
      <LabelledMenu
        known={{ 'data-room-field': 'use' }}
        label="Use"
        value={room.use}
        options={ROOM_USES.map((use) => [use, USE_WORDS[use]])}
        choose={(use) => change({ use: use as Room['use'] })}
      />
      {hasDoor && (
        <LabelledMenu
          known={{ 'data-room-field': 'door' }}
          label="Door towards the stove"
          value={room.door}
          options={ROOM_DOORS.map((door) => [door, DOOR_WORDS[door]])}
          choose={(door) => change({ door: door as Room['door'] })}
        />
      )}
      <LabelledMenu
        known={{ 'data-room-field': 'heated' }}
        label="Stove or heater here"
        value={room.heated ? 'yes' : 'no'}
        options={YES_NO}
        choose={(heated) => change({ heated: heated === 'yes' })}
      />
      <LabelledMenu
        known={{ 'data-room-field': 'mass' }}
        label="Extra mass stands here"
        value={room.mass ? 'yes' : 'no'}
        options={YES_NO}
        choose={(mass) => change({ mass: mass === 'yes' })}
      />
      {hasDoor && (
        <LabelledMenu
          known={{ 'data-room-field': 'fanM3H' }}
          label="Fan from the next room"
          value={String(room.fanM3H ?? 0)}
          options={[...new Set([...FANS, room.fanM3H ?? 0])].map((flow) => [
            String(flow),
            flow === 0 ? 'none' : wordingOf(units).airFlow(flow),
          ])}
          choose={(flow) => change({ fanM3H: Number(flow) })}
        />
      )}
      <RoomWindows placed={placed} design={design} change={change} />
    </details>
  );
}

function RoomWindows({ placed, design, change }: Omit<CardProps, 'hasDoor'>) {
  const { room } = placed;
  const { windows } = room;
  if (windows === undefined) {
    return (
      <button type="button" data-action="own-windows" onClick={() => change({ windows: [] })}>
        Give it windows of its own
      </button>
    );
  }
  const mostM2 = (side: WindowSide) => mostWindowM2(design, placed, { side, areaM2: 0, openM2: 0 });
  const sides = WINDOW_SIDES.filter((side) => mostM2(side) > 0.01);
  const at = (side: WindowSide) => windows.find((window) => window.side === side);
  const set = (side: WindowSide, own: { areaM2?: number; openM2?: number }, gesture: string) => {
    const now = { side, areaM2: 0, openM2: 0, ...at(side), ...own };
    const others = windows.filter((window) => window.side !== side);
    change({ windows: now.areaM2 > 0 ? [...others, now] : others }, gesture);
  };
  return (
    <div>
      {sides.map((side) => (
        <div key={side}>
          <EntryNumber
            name={`${placed.id}-${side}-area`}
            known={{ 'data-room-field': `${side}-area` }}
            limit={{
              ...ROOM_LIMITS.areaM2,
              label: `Window on the ${WINDOW_SIDE_WORDS[side]}`,
              max: mostM2(side),
            }}
            value={at(side)?.areaM2 ?? 0}
            quantity="area"
            required
            change={(areaM2, gesture) => set(side, { areaM2: areaM2! }, gesture)}
          />
          {at(side) && (
            <EntryNumber
              name={`${placed.id}-${side}-open`}
              known={{ 'data-room-field': `${side}-open` }}
              limit={{ ...ROOM_LIMITS.openM2, max: at(side)!.areaM2 }}
              value={at(side)!.openM2}
              quantity="area"
              required
              change={(openM2, gesture) => set(side, { openM2: openM2! }, gesture)}
            />
          )}
        </div>
      ))}
      <button type="button" data-action="usual-windows" onClick={() => change({ windows: 'usual' })}>
        Windows by the house's rule
      </button>
    </div>
  );
}
