// The temperature through an element, node by node, as strips laid into the drawing. In: the element's history, an
// hour, and the line through the element (from its face a to its face b) with its width. Out: filled areas whose
// borders lie halfway between nodes. This is how mass is explained without a graph.

import type { ElementHistory } from '../../network/year.ts';
import { type ColourScale, cssColour } from '../parts/colour-scale.ts';
import { area, type Mark, moved, point } from './mark.ts';
import type { Point } from './section-shape.ts';

export interface ElementPlace {
  /** point on face b (the room's side) at one end of the element */
  readonly inner: Point;
  /** unit direction from face b into the element */
  readonly into: Point;
  /** along the face */
  readonly along: Point;
  readonly lengthM: number;
  /** drawn thickness [m]; deeper nodes are left out */
  readonly depthM: number;
}

/** Temperatures from the room's face inwards. */
export interface Profile {
  /** from the room's face [m] */
  readonly depthM: readonly number[];
  readonly temperatureC: readonly number[];
}

/** The profile of an element at an hour, from face b inwards. */
export function profileAt(element: ElementHistory, hour: number, thicknessM: number): Profile {
  const nodes = element.depthM.length;
  const order = Array.from({ length: nodes }, (_, i) => nodes - 1 - i);
  return {
    depthM: order.map((i) => Math.max(0, thicknessM - element.depthM[i]!)),
    temperatureC: order.map((i) => element.temperatureC[hour * nodes + i]!),
  };
}

export function thermalStrips(profile: Profile, place: ElementPlace, scale: ColourScale): readonly Mark[] {
  const { depthM, temperatureC } = profile;
  return temperatureC.flatMap((celsius, i) => {
    const from = i === 0 ? 0 : (depthM[i - 1]! + depthM[i]!) / 2;
    const last = i === temperatureC.length - 1;
    const to = Math.min(place.depthM, last ? place.depthM : (depthM[i]! + depthM[i + 1]!) / 2);
    if (to <= from + 1e-6) return [];
    const near = moved(place.inner, place.into, from);
    const far = moved(place.inner, place.into, to);
    return [
      area(
        'strip',
        [near, moved(near, place.along, place.lengthM), moved(far, place.along, place.lengthM), far],
        cssColour(celsius, scale),
      ),
    ];
  });
}

export const UP: Point = point(0, 1);
export const ACROSS: Point = point(1, 0);
