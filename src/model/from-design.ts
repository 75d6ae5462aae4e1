// A design made physical: zones, elements, panes and openings. Design, site and the year's outdoor wave in; a model out
// that requireModel passes. Each part has its own file; nothing is decided here but their order.

import type { Design } from '../design/design.ts';
import type { DeepGround } from '../weather/prepared/prepared-climate.ts';
import type { Site } from '../weather/typical-year.ts';
import { requireModel } from './check-model.ts';
import { commonPane, commonWall } from './common-wall.ts';
import { houseElements } from './envelope-elements.ts';
import { equatorPanes } from './equator-glass.ts';
import { LEAST_AREA_M2 } from './layers.ts';
import type { Element, Model, Pane, Zone } from './model.ts';
import { openingsOf } from './openings-of-design.ts';
import { otherPanes, otherSides } from './other-windows.ts';
import { endPanes, sunspaceElements } from './sunspace-elements.ts';
import { houseZone } from './zone-house.ts';
import { sunspaceZone } from './zone-sunspace.ts';

/**
 * The model of a design.
 *
 * Zones are 'house' and, unless the join is 'none', 'sunspace'. The equator-facing glass has pane ids that begin with
 * 'front'; windows inside are 'common', glazed ends 'end-east' and 'end-west', others carry their side's name.
 *
 * @param design checked by parseDesign
 * @param site latitude chooses the hemisphere
 * @param ground yearly wave of the outdoor air, from the prepared climate
 * @returns a checked model
 */
export function modelOf(design: Design, site: Site, ground: DeepGround): Model {
  const sides = otherSides(design, site);
  const zones: Zone[] = [houseZone(design)];
  const elements: Element[] = houseElements(design, site, sides, ground);
  const panes: Pane[] = [...equatorPanes(design, site), ...otherPanes(design, site, sides)];
  const sunspace = sunspaceZone(design);
  if (sunspace !== null) {
    zones.push(sunspace);
    elements.push(...sunspaceElements(design, site, ground));
    panes.push(...endPanes(design, site));
    const wall = commonWall(design);
    if (wall !== null && wall.areaM2 > LEAST_AREA_M2) elements.push(wall);
    const pane = commonPane(design, site);
    if (pane !== null) panes.push(pane);
  }
  const model: Model = { name: design.name, zones, elements, panes, openings: openingsOf(design, site) };
  requireModel(model);
  return model;
}
