// The plans of a divided house beside its section, a storey each, tinted as the section is. The buttons under
// them pick the room that the section cuts, where it cannot cut all.

import type { ComponentChildren } from 'preact';
import { roomPlanOf } from '../../design/room-plan.ts';
import { storeyTitle } from '../../findings/room-words.ts';
import { quantityText } from '../parts/number-text.ts';
import { useWorkspace } from '../state/session-context.ts';
import { MarkLayer } from './MarkLayer.tsx';
import { planField, planMarks, planWords } from './plan-marks.ts';
import { cutRooms } from './room-marks.ts';
import type { Point } from './section-shape.ts';

const WIDTH_PX = 260;
const EDGE_PX = 8;

interface PlanProps {
  readonly fills: Readonly<Record<string, string>>;
  readonly picked: string | null;
  readonly pick: (id: string) => void;
  /** beside the plans */
  readonly children: ComponentChildren;
}

export function PlanDrawing({ fills, picked, pick, children }: PlanProps) {
  const workspace = useWorkspace();
  const design = workspace.design.value;
  const climate = workspace.climate.value;
  const plan = roomPlanOf(design);
  if (plan === null) return null;
  const isNorth = climate.state !== 'ready' || climate.year.site.latitudeDeg >= 0;
  const { lengthM, depthM, frontM } = planField(design, plan);
  const scale = (WIDTH_PX - 2 * EDGE_PX) / lengthM;
  const heightPx = Math.round((depthM + frontM) * scale + 2 * EDGE_PX);
  const toPx = ({ x, y }: Point) => ({ x: EDGE_PX + x * scale, y: EDGE_PX + (depthM - y) * scale });
  // Rooms that stand behind one another are all in the section as it is.
  const inSection = cutRooms(design, null);
  const isAllCut = plan.rooms.every(({ id }) => inSection.some((cut) => cut.id === id));
  const areaText = (m2: number) => quantityText(m2, 'area', workspace.units.value);
  const storeys = Array.from({ length: design.house.storeys }, (_, storey) => storey);
  return (
    <div class="plan-drawing">
      {storeys.map((storey) => (
        <figure key={storey}>
          <svg
            viewBox={`0 0 ${WIDTH_PX} ${heightPx}`}
            role="img"
            aria-label={
              storey === 0 ? `Plan. ${planWords(design, areaText)}` : `Plan of ${storeyTitle(storey)}`
            }
          >
            <MarkLayer frame={{ toPx }} marks={planMarks(design, storey, isNorth, fills, picked)} />
          </svg>
          {storeys.length > 1 && <figcaption>{storeyTitle(storey)}</figcaption>}
        </figure>
      ))}
      {children}
      {!isAllCut && (
        <p class="plan-rooms">
          {plan.rooms.map(({ id, room }) => (
            <button
              key={id}
              type="button"
              data-pick-room={id}
              aria-pressed={(picked ?? plan.rooms[0]!.id) === id}
              onClick={() => pick(id)}
            >
              {room.name}
            </button>
          ))}
        </p>
      )}
    </div>
  );
}
