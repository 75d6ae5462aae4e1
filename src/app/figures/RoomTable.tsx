// Beside the plans: how each room of a divided house does, the worst of each column marked, and what to do next: ask what
// helps, or change a room. For an undivided house the offer to divide it.

import { dividedBy, usualPreset } from '../../design/room-presets.ts';
import { fewHotHours } from '../../outcomes/acceptable-hours.ts';
import type { RoomOutcome } from '../../outcomes/outcome.ts';
import { worstDampSpot } from '../../outcomes/worst-damp-spot.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { numberText, quantityText } from '../parts/number-text.ts';
import { ScrollTable } from '../parts/ScrollTable.tsx';
import { useWorkspace } from '../state/session-context.ts';

interface Column {
  readonly head: string;
  readonly of: (room: RoomOutcome) => number;
  readonly text: (value: number, system: UnitSystem) => string;
  /** less than this is no trouble, and marked in no room */
  readonly matters: (room: RoomOutcome) => boolean;
  readonly worstIs: 'most' | 'least';
}

const hours = (value: number) => numberText(value, 0);

const COLUMNS: readonly Column[] = [
  {
    head: 'hours too hot',
    of: ({ tooHot }) => tooHot.hours,
    text: hours,
    matters: ({ tooHot }) => tooHot.hours > fewHotHours(tooHot.limitHours),
    worstIs: 'most',
  },
  {
    head: 'hours too cold',
    of: ({ lived }) => lived.underheatedHours,
    text: hours,
    matters: ({ lived }) => lived.underheatedHours >= 1,
    worstIs: 'most',
  },
  {
    head: 'coldest',
    of: ({ minOperativeC }) => minOperativeC,
    text: (value, system) => quantityText(value, 'temperature', system),
    matters: ({ minOperativeC, underheatLimitC }) => minOperativeC < underheatLimitC,
    worstIs: 'least',
  },
  {
    head: 'humid hours',
    of: ({ humidHours }) => humidHours,
    text: hours,
    matters: ({ humidHours }) => humidHours >= 1,
    worstIs: 'most',
  },
  {
    head: 'mould, worst place',
    of: (room) => worstDampSpot(room).index,
    text: (value) => value.toFixed(1),
    matters: (room) => worstDampSpot(room).index >= 1,
    worstIs: 'most',
  },
];

interface RoomTableProps {
  readonly onAsk: () => void;
  /** opens the inputs of a room */
  readonly onChange: (id: string) => void;
}

export function RoomTable({ onAsk, onChange }: RoomTableProps) {
  const workspace = useWorkspace();
  const rooms = workspace.shown.value?.outcome.rooms;
  if (workspace.design.value.rooms === undefined || rooms === undefined) return null;
  const system = workspace.units.value;
  const worst = COLUMNS.map((column) => worstOf(rooms, column));
  return (
    <div class="room-table" aria-busy={workspace.stale.value}>
      <ScrollTable label="The rooms, one by one">
        <table>
          <thead>
            <tr>
              <th scope="col">room</th>
              {COLUMNS.map(({ head }) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rooms.map((room) => (
              <tr key={room.id} data-room-row={room.id}>
                <th scope="row">
                  <button type="button" aria-label={`Change ${room.name}`} onClick={() => onChange(room.id)}>
                    {room.name}
                  </button>
                </th>
                {COLUMNS.map(({ head, of, text }, i) => (
                  <td key={head}>
                    {worst[i] === room.id ? (
                      <strong>
                        {text(of(room), system)}
                        <span class="visually-hidden">, the worst room</span>
                      </strong>
                    ) : (
                      text(of(room), system)
                    )}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollTable>
      <p>
        <button type="button" data-act="ask-rooms" onClick={onAsk}>
          Which room is worst, and what helps it?
        </button>
      </p>
      <p class="room-table-note">
        Bold is the worst room. Heat and cold count while a room is lived in. Press a name to change its door,
        windows or heat.
      </p>
    </div>
  );
}

/** The room that is worst; null where no room is in trouble. */
function worstOf(rooms: readonly RoomOutcome[], { of, matters, worstIs }: Column): string | null {
  const sign = worstIs === 'most' ? 1 : -1;
  const troubled = rooms.filter(matters);
  if (troubled.length === 0) return null;
  return troubled.reduce((found, room) => (sign * of(room) > sign * of(found) ? room : found)).id;
}

/** Under the section of a house that is drawn as one room. */
export function DivideOffer() {
  const workspace = useWorkspace();
  const design = workspace.design.value;
  if (design.rooms !== undefined) return null;
  return (
    <p class="divide-offer">
      <button
        type="button"
        data-act="divide"
        onClick={() => {
          const now = workspace.design.value;
          workspace.replace(dividedBy(now, usualPreset(now)));
        }}
      >
        Divide into rooms
      </button>{' '}
      It is run as one room. Divided, it tells which room is hot, cold or damp.
    </p>
  );
}
