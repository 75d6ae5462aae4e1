// A design made physical: zones, elements, panes and openings. Design, site and the year's outdoor wave in; a model out
// that requireModel passes. Each part has its own file; nothing is decided here but their order.

import { WITHOUT_NUMBER } from '../design/as-found.ts';
import type { Design } from '../design/design.ts';
import { roomPlanOf } from '../design/room-plan.ts';
import type { DeepGround } from '../weather/prepared/prepared-climate.ts';
import type { Site } from '../weather/typical-year.ts';
import { requireModel } from './check-model.ts';
import { commonPane, commonWall, wholeCommonWall } from './common-wall.ts';
import { houseElements } from './envelope-elements.ts';
import { equatorPanes } from './equator-glass.ts';
import { withHeatSource } from './heat-source.ts';
import { houseStack } from './house-stack.ts';
import { isAwayAtWeekends } from './household.ts';
import { LEAST_AREA_M2 } from './layers.ts';
import type { Element, Model, Pane, Zone } from './model.ts';
import { openingsOf } from './openings-of-design.ts';
import { roomOpenings } from './openings-of-rooms.ts';
import { otherPanes, otherSides } from './other-windows.ts';
import { roomElements } from './room-elements.ts';
import { roomPanes } from './room-panes.ts';
import { roomZones } from './room-zones.ts';
import { commonParts } from './rooms-of-design.ts';
import { endPanes, sunspaceElements } from './sunspace-elements.ts';
import { modelWith } from './unknowns.ts';
import { houseZone } from './zone-house.ts';
import { sunspaceZone } from './zone-sunspace.ts';

/**
 * The model of a design.
 *
 * Zones are 'house', or 'room-1' and so on where it is divided, and, unless the join is 'none', 'sunspace'. The
 * equator-facing glass has pane ids that begin with 'front'; windows inside with 'common', glazed ends are 'end-east' and
 * 'end-west', others begin with their side's name; in a divided house the room's id follows.
 *
 * @param design checked by parseDesign
 * @param site latitude chooses the hemisphere
 * @param ground yearly wave of the outdoor air, from the prepared climate
 * @returns a checked model
 */
export function modelOf(design: Design, site: Site, ground: DeepGround): Model {
  const plan = roomPlanOf(design);
  const sides = otherSides(design, site);
  const zones: Zone[] = plan ? roomZones(design, plan) : [houseZone(design)];
  const elements: Element[] = plan
    ? roomElements(design, site, plan, sides, ground)
    : houseElements(design, site, sides, ground);
  const panes: Pane[] = plan
    ? roomPanes(design, site, plan, sides)
    : [...equatorPanes(design, site), ...otherPanes(design, site, sides)];
  const sunspace = sunspaceZone(design);
  if (sunspace !== null) {
    zones.push(sunspace);
    elements.push(...sunspaceElements(design, site, ground));
    panes.push(...endPanes(design, site));
    for (const part of plan ? commonParts(plan) : [wholeCommonWall(design)]) {
      const wall = commonWall(design, part);
      if (wall !== null && wall.areaM2 > LEAST_AREA_M2) elements.push(wall);
      const pane = commonPane(design, site, part);
      if (pane !== null) panes.push(pane);
    }
  }
  const openings = plan ? roomOpenings(design, site, plan) : openingsOf(design, site);
  const stack = plan ? houseStack(plan, openings) : null;
  const parts = withHeatSource(design, plan, { zones, elements, openings });
  const model: Model = {
    name: design.name,
    ...parts,
    panes,
    ...(stack && { stack }),
    ...(isAwayAtWeekends(design) && { awayWeekends: true }),
  };
  requireModel(model);
  return asFound(model, design);
}

/** What a record showed of a house that stands and its design has no number for. More sun than the drawing's is let through. */
function asFound(model: Model, { asFound: found }: Design): Model {
  if (found === undefined) return model;
  const lacking = found.unknowns.filter(({ id }) => WITHOUT_NUMBER.includes(id));
  return modelWith(model, Object.fromEntries(lacking.map(({ id, value }) => [id, value])));
}
