// Glass by kind and by how it stands, and what hangs before and behind it. A design and its model in; takes out.

import type { Design } from '../design/design.ts';
import { GLASS } from '../design/glass-catalogue.ts';
import { coverOf } from '../model/covers.ts';
import { equatorFront } from '../model/equator-front.ts';
import { OVERHANG_REACH_M } from '../model/equator-glass.ts';
import { glassSystem } from '../model/glazing.ts';
import type { Pane } from '../model/model.ts';
import { coverItem, glassItem } from './items.ts';
import { areaTake, type Take } from './take.ts';

/** Glass that leans further than this from upright counts as overhead: model building codes say 15°. */
const UPRIGHT_FROM_DEG = 75;

/** The model keeps a pane's make-up and not its name. */
const GLASS_BY_MAKE_UP = new Map(GLASS.map(({ id }) => [JSON.stringify(glassSystem(id)), id]));

/** Takes of all panes, with their covers, and of the front's overhang. */
export function glazingTakes(design: Design, panes: readonly Pane[]): Take[] {
  return [...panes.flatMap((pane) => paneTakes(design, pane)), ...overhangTakes(design)];
}

function paneTakes(design: Design, pane: Pane): Take[] {
  const { id, areaM2, tiltDeg, nightResistance, shading, covers = [] } = pane;
  const glass = GLASS_BY_MAKE_UP.get(JSON.stringify(pane.glass))!;
  return [
    areaTake(glassItem(glass, tiltDeg < UPRIGHT_FROM_DEG), id, areaM2),
    ...(nightResistance > 0 ? [areaTake('night-cover', id, areaM2)] : []),
    ...(shading?.seasonal ? [areaTake('summer-shade', id, areaM2)] : []),
    ...covers.map((cover) => areaTake(coverItem(coverOf(design, cover).kind), id, areaM2)),
  ];
}

/** One over every row of glass, a little longer than it. */
function overhangTakes(design: Design): Take[] {
  const { overhangM } = design.glass;
  const { lengthM, rows, slopeGlassM2 } = equatorFront(design);
  if (overhangM <= 0 || slopeGlassM2 <= 0) return [];
  const longM = lengthM + 2 * OVERHANG_REACH_M;
  return [
    {
      item: 'overhang',
      areaM2: longM * overhangM * rows,
      how: ({ length }) =>
        `(${length(lengthM)} + 2 × ${length(OVERHANG_REACH_M)}) × ${length(overhangM)}${rows > 1 ? ` × ${rows} rows` : ''}`,
    },
  ];
}
