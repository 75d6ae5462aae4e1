// The sun in the section: its height at noon on the three days that matter, the strip of light each sends through
// the glass and the patch on the floor. In: shape, latitude, turn. Out: marks, and the same in numbers for the text.

import type { Design } from '../../design/design.ts';
import { type LightPatch, lightPatch } from './light-patch.ts';
import { area, dot, line, type Mark, point, word } from './mark.ts';
import { type NoonSun, noonSuns } from './noon-sun.ts';
import { SUN_ARC_M } from './section-frame.ts';
import type { Point, SectionShape } from './section-shape.ts';

const DEG = Math.PI / 180;

export interface SunLight {
  readonly sun: NoonSun;
  readonly patch: LightPatch | null;
}

/** How far light can go: through an open join to the back, otherwise to the common wall. */
export function lightBackX(shape: SectionShape, design: Design): number {
  return shape.hasSunspace && design.sunspace.join === 'closed' ? shape.wallOuterX : 0;
}

/** Noon light of the three days. */
export function noonLight(shape: SectionShape, design: Design, latitudeDeg: number): readonly SunLight[] {
  const backX = lightBackX(shape, design);
  return noonSuns(latitudeDeg, design.house.turnDeg).map((sun) => ({
    sun,
    patch: sun.elevationDeg > 0 ? lightPatch(shape, sun.profileDeg, backX) : null,
  }));
}

/** Place of a sun on its arc around the middle of the glass. */
export function sunPlace(shape: SectionShape, profileDeg: number): Point {
  const middle = point((shape.sill.x + shape.head.x) / 2, (shape.sill.y + shape.head.y) / 2);
  return point(
    middle.x + SUN_ARC_M * Math.cos(profileDeg * DEG),
    middle.y + SUN_ARC_M * Math.sin(profileDeg * DEG),
  );
}

/** Strips of light and floor patches, to be painted under the walls. */
export function lightMarks(lights: readonly SunLight[]): readonly Mark[] {
  return lights.flatMap(({ sun, patch }, order) => {
    if (!patch) return [];
    const marks: Mark[] = [area(`light light-${sun.id}`, patch.outline)];
    if (patch.floor) {
      const y = -0.05 - order * 0.07;
      marks.push(line(`patch patch-${sun.id}`, [point(patch.floor.x0, y), point(patch.floor.x1, y)]));
    }
    return marks;
  });
}

/** Words of two suns closer than this would lie on each other [px]. */
const WORDS_APART_PX = 14;

/**
 * Suns on their arc with day and height; months cut to three letters when brief. Words stand right of their sun, or left of
 * it where those of the next lower sun are too close under them.
 */
export function sunMarks(
  shape: SectionShape,
  lights: readonly SunLight[],
  brief: boolean,
  pxPerM: number,
): readonly Mark[] {
  const arc: Point[] = [];
  for (let angle = 0; angle <= 90; angle += 5) arc.push(sunPlace(shape, angle));
  const marks: Mark[] = [line('sun-arc', arc)];
  const risen = lights.filter(({ sun }) => sun.elevationDeg > 0);
  let isLeft = false;
  for (const [i, { sun, patch }] of risen.entries()) {
    const at = sunPlace(shape, sun.profileDeg);
    const next = risen[i + 1] && sunPlace(shape, risen[i + 1]!.sun.profileDeg);
    isLeft = !isLeft && next !== undefined && (at.y - next.y) * pxPerM < WORDS_APART_PX;
    if (patch) {
      marks.push(line(`ray ray-${sun.id}`, [at, patch.glassTo]));
      marks.push(line(`ray ray-${sun.id}`, [at, patch.glassFrom]));
    }
    marks.push(dot(`sun sun-${sun.id}`, at, 6));
    marks.push(
      word(
        `sun-word`,
        point(at.x + (isLeft ? -0.22 : 0.22), at.y + 0.12),
        `${brief ? sun.label.replace(/(\d+ \w{3})\w*/, '$1') : sun.label} ${Math.round(sun.elevationDeg)}°`,
        isLeft ? 'end' : 'start',
      ),
    );
  }
  return marks;
}
