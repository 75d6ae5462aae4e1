// The section at one hour: rooms tinted by their temperature, temperature through the mass strip by strip, the sun in
// its place with the light it throws, air through the vents, water on the glass. In: shape, design, the hour's state
// and the node histories. Out: marks by layer, painted under or over the walls.

import type { Design } from '../../design/design.ts';
import type { ElementHistory } from '../../network/year.ts';
import { type ColourScale, cssColour } from '../parts/colour-scale.ts';
import { toShown, type UnitSystem } from '../parts/display-unit.ts';
import { numberText, quantityText } from '../parts/number-text.ts';
import type { HourState } from './hour-state.ts';
import { ventPlace } from './inside-marks.ts';
import { lightPatch } from './light-patch.ts';
import { area, dot, line, type Mark, moved, point, word } from './mark.ts';
import type { Point, SectionShape } from './section-shape.ts';
import { lightBackX, sunPlace } from './sun-marks.ts';
import { ACROSS, type ElementPlace, profileAt, thermalStrips, UP } from './thermal-strips.ts';

/** Beam weaker than this throws no light worth drawing [W/m²]. */
const LEAST_BEAM = 20;
const LEAST_FLOW = 0.005;
const LEAST_DEW_G = 0.5;
const SOIL_DRAWN_M = 0.5;

interface Places {
  readonly id: string;
  readonly place: ElementPlace;
}

/** Fills of the rooms. */
export function roomFills(state: HourState, scale: ColourScale): Readonly<Record<string, string>> {
  return Object.fromEntries(state.zones.map(({ id, operativeC }) => [id, cssColour(operativeC, scale)]));
}

/** Temperature strips of floor, pole wall, common wall and extra mass. */
export function massMarks(
  shape: SectionShape,
  design: Design,
  history: readonly ElementHistory[],
  hour: number,
  scale: ColourScale,
): readonly Mark[] {
  return elementPlaces(shape, design).flatMap(({ id, place }) => {
    const element = history.find((entry) => entry.id === id);
    if (!element) return [];
    // The last node lies on face b, so its distance from face a is the whole thickness, soil included.
    const whole = element.depthM.at(-1)!;
    return [...thermalStrips(profileAt(element, hour, whole), place, scale)];
  });
}

/** Where each element that is drawn lies, from the room's face inwards. */
function elementPlaces(shape: SectionShape, design: Design): readonly Places[] {
  const { floor } = design;
  const floorM = shape.slabM + shape.slabInsulationM;
  const places: Places[] = [
    {
      id: 'floor',
      place: {
        inner: point(0, 0),
        into: point(0, -1),
        along: ACROSS,
        lengthM: shape.wallInnerX,
        depthM: floorM + SOIL_DRAWN_M,
      },
    },
    {
      id: design.envelope.bermShare > 0.02 ? 'pole wall, bermed' : 'pole wall',
      place: {
        inner: point(0, 0),
        into: point(-1, 0),
        along: UP,
        lengthM: shape.heightM,
        depthM: shape.poleWallM + (shape.bermTopY > 0.02 ? SOIL_DRAWN_M : 0),
      },
    },
  ];
  if (shape.hasSunspace) {
    places.push({
      id: 'sunspace floor',
      place: {
        inner: point(shape.wallOuterX, 0),
        into: point(0, -1),
        along: ACROSS,
        lengthM: shape.foot.x - shape.wallOuterX,
        depthM: floor.thicknessM + SOIL_DRAWN_M,
      },
    });
  }
  if (design.sunspace.join === 'closed') {
    places.push({
      id: 'common wall',
      place: {
        inner: point(shape.wallInnerX, 0),
        into: ACROSS,
        along: UP,
        lengthM: shape.heightM,
        depthM: design.sunspace.commonWallM,
      },
    });
  }
  if (shape.mass) {
    const { x0, x1, topY } = shape.mass;
    places.push({
      id: 'extra mass',
      place: { inner: point(x1, 0), into: point(-1, 0), along: UP, lengthM: topY, depthM: x1 - x0 },
    });
  }
  return places;
}

/** The sun of the hour and its light. */
export function hourSunMarks(
  shape: SectionShape,
  design: Design,
  state: HourState,
): { readonly under: readonly Mark[]; readonly over: readonly Mark[] } {
  const arc: Point[] = [];
  for (let angle = 0; angle <= 90; angle += 5) arc.push(sunPlace(shape, angle));
  const over: Mark[] = [line('sun-arc', arc)];
  if (state.profileDeg === null) return { under: [], over };
  // A sun behind the house stands beyond the zenith in section.
  const at = sunPlace(shape, Math.min(state.profileDeg, 130));
  const bright = state.beamNormal >= LEAST_BEAM;
  const patch = bright ? lightPatch(shape, state.profileDeg, lightBackX(shape, design)) : null;
  over.push(dot(bright ? 'sun' : 'sun sun-veiled', at, 8));
  if (!patch) return { under: [], over };
  over.push(line('ray', [at, patch.glassTo]), line('ray', [at, patch.glassFrom]));
  const strength = Math.min(3, 1 + Math.floor(state.beamNormal / 300));
  const under: Mark[] = [area(`light light-strength-${strength}`, patch.outline)];
  if (patch.floor) under.push(line('patch', [point(patch.floor.x0, 0.03), point(patch.floor.x1, 0.03)]));
  return { under, over };
}

/** Arrows for air, drops for water on the glass. */
export function flowMarks(shape: SectionShape, design: Design, state: HourState): readonly Mark[] {
  const marks: Mark[] = [];
  const vents = ventPlace(shape, design);
  const moving = (test: (id: string, kind: string) => boolean) =>
    state.flows.filter(({ id, kind, flow, open }) => test(id, kind) && flow > LEAST_FLOW && open > 0.01);
  if (shape.hasSunspace && moving((id, kind) => kind === 'vent' && /sunspace/.test(id)).length > 0) {
    marks.push(...arrow(moved(vents.hinge, point(0.25, -0.35), 1), moved(vents.hinge, point(0.35, 0.55), 1)));
    marks.push(
      ...arrow(point(vents.low.x + 0.85, vents.low.y + 0.1), point(vents.low.x + 0.12, vents.low.y + 0.05)),
    );
  }
  if (moving((id, kind) => kind === 'vent' && !/sunspace/.test(id)).length > 0) {
    const y = shape.heightM - 0.45;
    const x = shape.hasSunspace ? 0.35 : shape.wallInnerX - 0.5;
    marks.push(...arrow(point(x + 0.35, y - 0.3), point(x - 0.2, y + 0.15)));
  }
  const between = moving((_, kind) => kind === 'door');
  if (shape.hasSunspace && between.length > 0) {
    const x = (shape.wallInnerX + shape.wallOuterX) / 2;
    const high = Math.min(2, shape.heightM - 0.3);
    marks.push(...arrow(point(x + 0.45, high), point(x - 0.45, high)));
    marks.push(...arrow(point(x - 0.45, 0.3), point(x + 0.45, 0.3)));
  }
  marks.push(...dewMarks(shape, state));
  return marks;
}

/** Drops on the inner face, more when more water is forming. */
function dewMarks(shape: SectionShape, state: HourState): readonly Mark[] {
  const zone = state.zones.find(({ id }) => id === (shape.hasSunspace ? 'sunspace' : 'house'));
  if (!zone || zone.condensationG < LEAST_DEW_G) return [];
  const inward = { x: -shape.slope.y, y: shape.slope.x };
  const count = Math.min(9, 3 + Math.floor(Math.log2(1 + zone.condensationG / 20)));
  return Array.from({ length: count }, (_, i) => {
    const share = (i + 0.5) / count;
    const on = point(
      shape.sill.x + (shape.head.x - shape.sill.x) * share,
      shape.sill.y + (shape.head.y - shape.sill.y) * share,
    );
    return dot('drop', moved(on, inward, 0.1), 2.4);
  });
}

function arrow(from: Point, to: Point): readonly Mark[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const back = { x: (from.x - to.x) / length, y: (from.y - to.y) / length };
  const side = { x: -back.y, y: back.x };
  const barb = (sign: number) => moved(moved(to, back, 0.16), side, 0.09 * sign);
  return [line('flow', [from, to]), line('flow', [barb(1), to, barb(-1)])];
}

/** What is measured in a zone, from the longest way to say it to the shortest. */
export type ZoneText = readonly string[];

/** Temperature of every zone, for the drawing; with its humidity where there is room for it. */
export function zoneTexts(state: HourState, system: UnitSystem): Readonly<Record<string, ZoneText>> {
  return Object.fromEntries(
    state.zones.map(({ id, operativeC, relativeHumidity }) => {
      const t = quantityText(operativeC, 'temperature', system);
      const bare = `${numberText(toShown(operativeC, 'temperature', system), 0)}°`;
      return [id, [`${t}  ${quantityText(relativeHumidity, 'share', system, 0)}`, t, bare]];
    }),
  );
}

/** A letter of a zone's word [px]. */
const LETTER_PX = 8.4;

/** The longest way to say it that is no wider than its place; undefined where none is. */
export function fittingText(text: ZoneText, widePx: number): string | undefined {
  return text.find((way) => way.length * LETTER_PX <= widePx);
}

/**
 * Figures written into the drawing; those of the rooms of a divided house stand with their names. A sunspace too narrow for
 * its own stands outside with the outdoors, so that nothing lies on the glass.
 */
export function hourWordMarks(
  shape: SectionShape,
  state: HourState,
  system: UnitSystem,
  pxPerM: number,
): readonly Mark[] {
  const texts = zoneTexts(state, system);
  const isDivided = texts['room-1'] !== undefined;
  const house = fittingText(texts.house ?? [], shape.wallInnerX * pxPerM);
  const outside = (y: number, text: string) =>
    word('zone-word zone-outdoors', point(shape.foot.x + 0.7, y), text, 'start');
  const outdoorsY = shape.heightM * 0.36;
  const marks: Mark[] = [
    ...(isDivided || house === undefined
      ? []
      : [word('zone-word', point(shape.wallInnerX * 0.55, shape.heightM * 0.74), house)]),
    outside(outdoorsY, `outdoors ${quantityText(state.outdoorC, 'temperature', system)}`),
  ];
  const sunspace = texts.sunspace?.slice(1);
  if (shape.hasSunspace && sunspace) {
    const y = shape.heightM * 0.5;
    // The word is as high as a line, and the front leans: what counts is its room at the upper edge.
    const glassX = frontX(shape, y + CAP_PX / pxPerM);
    const text = fittingText(sunspace, (glassX - shape.wallOuterX) * pxPerM - 2 * CAP_PX);
    marks.push(
      text === undefined
        ? outside(outdoorsY + LINE_PX / pxPerM, `sunspace ${sunspace[0]}`)
        : word('zone-word', point((shape.wallOuterX + glassX) / 2, y), text),
    );
  }
  return marks;
}

const CAP_PX = 12;
const LINE_PX = 20;

/** Where the front stands at a height. */
function frontX({ foot, knee, top }: SectionShape, y: number): number {
  if (y <= knee.y) return foot.x;
  const share = Math.min(1, (y - knee.y) / Math.max(1e-9, top.y - knee.y));
  return knee.x + (top.x - knee.x) * share;
}
