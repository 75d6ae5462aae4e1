// The section beside the year's map: small, without handles, at the hour that is pointed at.

import { comfortScale } from '../parts/colour-scale.ts';
import { onScreen } from '../parts/screen-scale.ts';
import { useWorkspace } from '../state/session-context.ts';
import { flowMarks, hourSunMarks, hourWordMarks, roomFills } from './hour-marks.ts';
import { hourState } from './hour-state.ts';
import { MarkLayer } from './MarkLayer.tsx';
import { houseMarks } from './StillSection.tsx';
import { sectionFrame } from './section-frame.ts';
import { sectionShape } from './section-shape.ts';
import { groundMarks, roomMarks } from './shell-marks.ts';

const WIDTH_PX = 260;

export function HourSection() {
  const workspace = useWorkspace();
  const hour = workspace.hour.value;
  const answer = workspace.answer.value;
  const climate = workspace.climate.value;
  if (!answer || climate.state !== 'ready') return null;
  const { design } = answer.job;
  const shape = sectionShape(design);
  const frame = sectionFrame(shape, WIDTH_PX, false);
  const scale = onScreen(
    comfortScale(design.comfort.underheatC, answer.outcome.zones.house.tooHot.lowestLimitC),
  );
  const state = hour === null ? null : hourState(answer.year, climate.year, design, hour);
  const sun = state && hourSunMarks(shape, design, state);
  return (
    <svg
      class="hour-section section-drawing"
      viewBox={`0 0 ${frame.widthPx} ${frame.heightPx}`}
      data-hour-section={hour ?? ''}
      aria-hidden="true"
    >
      <MarkLayer
        frame={frame}
        marks={[
          ...groundMarks(shape, frame),
          ...roomMarks(shape, state ? roomFills(state, scale) : {}),
          ...(sun ? sun.under : []),
          ...houseMarks(shape, design, frame.pxPerM),
          ...(state ? flowMarks(shape, design, state) : []),
          ...(state
            ? hourWordMarks(shape, state, workspace.units.value, frame.pxPerM).filter(
                ({ role }) => !role.includes('outdoors'),
              )
            : []),
        ]}
      />
    </svg>
  );
}
