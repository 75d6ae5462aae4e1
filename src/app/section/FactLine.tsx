// One line under the section: the glass against both things the trade counts it by, and the mass for it, and the way to what
// all of it takes to build. It follows the hand at once, since it needs no year.

import { geometryOf } from '../../design/geometry.ts';
import { quantityText } from '../parts/number-text.ts';
import { useWorkspace } from '../state/session-context.ts';

export function FactLine() {
  const workspace = useWorkspace();
  const system = workspace.units.value;
  const { glassM2, shareOfWall, shareOfFloor } = geometryOf(workspace.design.value);
  const mass = workspace.shown.value?.outcome.mass;
  const q = (value: number, quantity: 'area' | 'share' | 'heatCapacity' | 'massPerArea', digits: number) =>
    quantityText(value, quantity, system, digits);
  const facts = [
    ['equator-facing glass', q(glassM2, 'area', 1)],
    ['of the equator-facing wall', q(shareOfWall, 'share', 0)],
    ['of the heated floor', q(shareOfFloor, 'share', 0)],
    ...(mass ? [['stored by the mass', q(mass.heatCapacityKWhPerK, 'heatCapacity', 1)]] : []),
    ...(mass && mass.kgPerM2Glass !== null
      ? [['of mass, by area of glass', q(mass.kgPerM2Glass, 'massPerArea', 0)]]
      : []),
  ] as const;
  return (
    <ul class="facts">
      {facts.map(([label, value]) => (
        <li key={label}>
          <b>{value}</b> {label}
        </li>
      ))}
      <li>
        <a href="#build">What it takes to build, in your own prices</a>
      </li>
    </ul>
  );
}
