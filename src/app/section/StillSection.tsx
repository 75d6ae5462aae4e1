// The section of a design without handles, for comparing and printing. All of them have the same width in metres only
// when their houses have; what counts is that each is drawn to one scale in itself.

import type { Design } from '../../design/design.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { furnishingMarks, personMarks, ventMarks } from './inside-marks.ts';
import { MarkLayer } from './MarkLayer.tsx';
import type { Mark } from './mark.ts';
import { cutRooms, partitionMarks, roomNameMarks } from './room-marks.ts';
import { sectionFrame } from './section-frame.ts';
import { type SectionShape, sectionShape } from './section-shape.ts';
import { sectionWords } from './section-words.ts';
import { glassMarks, groundMarks, roomMarks, shellMarks } from './shell-marks.ts';
import { lightMarks, noonLight } from './sun-marks.ts';

const WIDTH_PX = 300;

export function StillSection({
  design,
  latitudeDeg,
  system,
}: {
  design: Design;
  latitudeDeg: number;
  system: UnitSystem;
}) {
  const shape = sectionShape(design);
  const frame = sectionFrame(shape, WIDTH_PX, false);
  const lights = noonLight(shape, design, latitudeDeg);
  return (
    <svg
      class="still-section section-drawing"
      viewBox={`0 0 ${frame.widthPx} ${frame.heightPx}`}
      role="img"
      aria-label={sectionWords(design, lights, latitudeDeg, system)}
    >
      <MarkLayer
        frame={frame}
        marks={[
          ...groundMarks(shape, frame),
          ...roomMarks(shape),
          ...lightMarks(lights),
          ...houseMarks(shape, design),
        ]}
      />
    </svg>
  );
}

/** House, furnishing, glass and vents, in painting order. */
export function houseMarks(shape: SectionShape, design: Design): readonly Mark[] {
  return [
    ...furnishingMarks(shape),
    ...personMarks(shape),
    ...shellMarks(shape, design),
    ...partitionMarks(design, cutRooms(design, null)),
    ...roomNameMarks(cutRooms(design, null), {}),
    ...glassMarks(shape, design),
    ...ventMarks(shape, design),
  ];
}
