// The section in words, for people who hear the page. In: design, shape, noon light. Out: two or three sentences
// with the figures a sighted reader takes from the drawing.

import type { Design } from '../../design/design.ts';
import { geometryOf } from '../../design/geometry.ts';
import { glassById } from '../../design/glass-catalogue.ts';
import { materialById } from '../../design/materials.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';
import type { SunLight } from './sun-marks.ts';

const JOINS = {
  none: 'no sunspace',
  open: 'a sunspace open to the rooms',
  closed: 'a sunspace closed off by a common wall',
} as const;

/** What the drawing shows. */
export function sectionWords(
  design: Design,
  lights: readonly SunLight[],
  latitudeDeg: number,
  system: UnitSystem,
): string {
  const { glassM2, houseDepthM, heightM } = geometryOf(design);
  const { sunspace, floor, envelope } = design;
  const side = latitudeDeg >= 0 ? 'south' : 'north';
  const q = (value: number, quantity: 'length' | 'area' | 'thickness' | 'share') =>
    quantityText(value, quantity, system);
  const parts = [
    `Cross-section, ${side} to the right. Rooms ${q(houseDepthM, 'length')} deep and ${q(heightM, 'length')} high, ${JOINS[sunspace.join]}.`,
    `${q(glassM2, 'area')} of ${glassById(design.glass.type).name.toLowerCase()} glass at ${design.glass.tiltDeg}°, floor of ${q(floor.thicknessM, 'thickness')} ${materialById(floor.material).name.toLowerCase()}, earth to ${q(envelope.bermShare, 'share')} of the wall height.`,
  ];
  if (sunspace.join === 'open') parts.push(`The sunspace is ${q(sunspace.depthM, 'length')} deep.`);
  if (sunspace.join === 'closed') {
    parts.push(
      `The sunspace is ${q(sunspace.depthM, 'length')} deep; the common wall is ${q(sunspace.commonWallM, 'thickness')} of ${materialById(sunspace.commonWallMaterial).name.toLowerCase()}.`,
    );
  }
  if (design.rooms) {
    parts.push(`Divided into ${design.rooms.list.map(({ name }) => name).join(', ')}.`);
  }
  for (const { sun, patch } of lights) {
    if (sun.elevationDeg <= 0) parts.push(`On ${sun.label} the sun does not rise at noon.`);
    else if (!patch) parts.push(`At noon on ${sun.label} no sun enters the glass.`);
    else {
      const reach = patch.floor
        ? `lights ${q(patch.floor.x1 - patch.floor.x0, 'length')} of floor`
        : 'falls on the wall behind';
      parts.push(
        `At noon on ${sun.label} the sun stands ${Math.round(sun.elevationDeg)}° high and ${reach}.`,
      );
    }
  }
  return parts.join(' ');
}
