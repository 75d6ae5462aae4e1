// Light on each zone's floor, for what grows there: what its lit faces take up, over their absorptance, per area. A
// laid-out model in; W/m² by zone, from the heat of the hour's sun on the floor's nodes, out.

import type { EngineCapacity } from '../layout/engine-capacity.ts';
import type { Layout } from '../layout/layout.ts';
import { nodeB } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';

/** Floor light with room for so much, added to `floorLight` by zone; load() before use. */
export function createFloorLight(capacity: EngineCapacity, stepper: Stepper, floorLight: Float64Array) {
  /** faces that are a zone's lit floor: what light on the floor a watt on the node means [1/m²] */
  const floors = {
    nodes: new Int32Array(capacity.chains),
    zones: new Int32Array(capacity.chains),
    perWatt: new Float64Array(capacity.chains),
  };
  let count = 0;

  function load(layout: Layout): void {
    count = 0;
    layout.zoneIds.forEach((_, zone) => {
      const faces = layout.elements.filter(
        ({ element: { b }, zoneB }) => zoneB === zone && b.lit === 'floor' && b.absorptance > 0,
      );
      const area = faces.reduce((sum, { element }) => sum + element.areaM2, 0);
      for (const { element, chain } of faces) {
        floors.nodes[count] = nodeB(stepper.first, chain);
        floors.zones[count] = zone;
        floors.perWatt[count++] = 1 / (element.b.absorptance * area);
      }
    });
  }

  /** Once the hour's sun is on the nodes. */
  function renew(): void {
    const { nodes, zones, perWatt } = floors;
    const { nodeW } = stepper;
    for (let f = 0; f < count; f++) floorLight[zones[f]!]! += nodeW[nodes[f]!]! * perWatt[f]!;
  }

  return { load, renew };
}
