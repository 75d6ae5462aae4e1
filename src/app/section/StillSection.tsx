// The section of a design without handles, for comparing and printing. Those that stand side by side are drawn to one
// scale: the largest fills its place.

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
  among = [design],
}: {
  design: Design;
  latitudeDeg: number;
  system: UnitSystem;
  /** the designs it is drawn to one scale with, itself among them */
  among?: readonly Design[];
}) {
  const shape = sectionShape(design);
  const share = sharesOfWidth(among)[among.indexOf(design)] ?? 1;
  const frame = sectionFrame(shape, WIDTH_PX * share, false);
  const lights = noonLight(shape, design, latitudeDeg);
  return (
    <svg
      class="still-section section-drawing"
      data-px-per-m={frame.pxPerM.toFixed(2)}
      style={{ width: `${100 * share}%` }}
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
          ...houseMarks(shape, design, frame.pxPerM),
        ]}
      />
    </svg>
  );
}

/** How much of its place each section takes when all have one scale, 0…1; the largest takes all. */
export function sharesOfWidth(designs: readonly Design[]): readonly number[] {
  const scales = designs.map((design) => sectionFrame(sectionShape(design), WIDTH_PX, false).pxPerM);
  const least = Math.min(...scales);
  return scales.map((scale) => least / scale);
}

/** House, furnishing, glass and vents, in painting order. */
export function houseMarks(shape: SectionShape, design: Design, pxPerM: number): readonly Mark[] {
  return [
    ...furnishingMarks(shape),
    ...personMarks(shape),
    ...shellMarks(shape, design),
    ...partitionMarks(design, cutRooms(design, null)),
    ...roomNameMarks(cutRooms(design, null), {}, pxPerM),
    ...glassMarks(shape, design),
    ...ventMarks(shape, design),
  ];
}
