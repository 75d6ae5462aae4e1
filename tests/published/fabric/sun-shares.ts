// Where the sun that enters a fabric case ends up over a year: shares by surface, and lost again through the glass, for
// comparison with the fixed shares that the cases offer to models that do not trace light. Information, not a check:
// ours follow the beam from hour to hour (floor, wall behind, diffuse), theirs strike the floor first at all hours.
import { layOut } from '../../../src/network/layout/layout.ts';
import { distributeLight } from '../../../src/network/sun/light-distribution.ts';
import { paneLight } from '../../../src/network/sun/pane-light.ts';
import type { PreparedClimate } from '../../../src/weather/prepared/prepared-climate.ts';
import { compileStepper } from '../../network/compile-stepper.ts';
import type { FabricCase } from './cases.ts';
import { modelOfCase } from './model-of-case.ts';

/**
 * Shares of the light that enters, by element or pane id, and 'lost'; they add to 1.
 *
 * @param of case
 * @param climate of the cases
 */
export function sunShares(of: FabricCase, climate: PreparedClimate): ReadonlyMap<string, number> {
  const model = modelOfCase(of);
  const layout = layOut(model, 1);
  const { first } = compileStepper(layout.network, 900, 18);
  const spread = distributeLight(model, layout, first);
  const chainAt = (node: number) => first.findLastIndex((start) => start <= node);
  const shares = new Map<string, number>();
  const add = (id: string, amount: number) => shares.set(id, (shares.get(id) ?? 0) + amount);
  const lights = layout.panes.flatMap(({ members, zoneTo }) =>
    members.map(({ pane, glassM2 }) => ({ zone: zoneTo, glassM2, light: paneLight(pane, climate) })),
  );
  const amounts = lights.flatMap(({ zone, glassM2, light }) =>
    [light.beamFloorW, light.beamBackW, light.diffuseW].map((watts, kind) => ({
      source: 3 * zone + kind,
      watt: glassM2 * watts.reduce((sum, value) => sum + value, 0),
    })),
  );
  const total = amounts.reduce((sum, { watt }) => sum + watt, 0);
  for (const { source, watt } of amounts) {
    spread.nodes[source]!.forEach((node, i) => {
      add(layout.network.chains[chainAt(node)]!.id, (spread.shares[source]![i]! * watt) / total);
    });
    add('lost', (spread.lost[source]! * watt) / total);
  }
  return shares;
}
