// The inputs of a design that are moved, one at a time, to find what matters: every number across its plausible
// range (design/limits.ts) and the choices that a designer makes. Inputs that this design does not use are left out,
// and so are the limits of comfort, which measure the house and do not change it.

import type { Design } from '../design/design.ts';
import { valueAt } from '../design/design-path.ts';
import { LIMITS, type Quantity } from '../design/limits.ts';

export interface MovedInput {
  readonly path: string;
  readonly label: string;
  /** tried besides the drawn value; numbers low first */
  readonly values: readonly (number | string | boolean)[];
  readonly unit: string;
}

const UNITS: Readonly<Record<Quantity, string>> = {
  area: 'm²',
  length: 'm',
  angle: '°',
  share: '',
  count: '',
  resistance: 'm²K/W',
  temperature: '°C',
  power: 'W',
  powerKW: 'kW',
  airChanges: '1/h',
  minutes: 'min',
  fanPower: 'W per m³/h',
  speed: 'm/s',
  number: '',
};

/** Choices worth trying. House rule. */
const CHOICES: readonly Omit<MovedInput, 'unit'>[] = [
  { path: 'glass.type', label: 'Kind of glass', values: ['double-clear', 'double-low-e', 'triple-low-e'] },
  { path: 'sunspace.join', label: 'How the sunspace joins the house', values: ['open', 'closed'] },
  { path: 'sunspace.endWalls', label: 'End walls of the sunspace', values: ['insulated', 'glazed'] },
  { path: 'sunspace.doorRule', label: 'Door to the sunspace', values: ['by-need', 'shut', 'open'] },
  { path: 'mass.material', label: 'Material of the extra mass', values: ['concrete', 'adobe', 'water'] },
  { path: 'mass.place', label: 'Place of the extra mass', values: ['sunlit', 'shaded'] },
  { path: 'floor.cover', label: 'Floor cover', values: ['bare', 'tile', 'wood', 'carpet'] },
  {
    path: 'vents.habit',
    label: 'Who opens the vents',
    values: ['automatic', 'attentive', 'away', 'forgetful', 'never'],
  },
  { path: 'ventilation.aired', label: 'When rooms are aired', values: ['by-need', 'by-habit', 'never'] },
  {
    path: 'ventilation.extractRuns',
    label: 'When the extract fan runs',
    values: ['always', 'hours', 'humidity'],
  },
  { path: 'ventilation.frost', label: 'Guard against ice', values: ['preheat', 'recirculate'] },
  { path: 'people.living', label: 'Moisture of daily life', values: ['dry', 'moist', 'wet'] },
  { path: 'people.awayWorkdays', label: 'Away on workdays', values: [false, true] },
  { path: 'plants.soil', label: 'Soil of the bed', values: ['mulched', 'bare', 'open-water'] },
];

/**
 * Inputs to move for a design.
 *
 * @param design with its glass given as an area
 */
export function movedInputs(design: Design): readonly MovedInput[] {
  const numbers = LIMITS.map(({ path, label, plausible, quantity }) => ({
    path,
    label,
    values: plausible,
    unit: path === 'glass.value' ? 'm²' : UNITS[quantity],
  }));
  return [...numbers, ...CHOICES.map((choice) => ({ ...choice, unit: '' }))]
    .filter(({ path }) => !path.startsWith('comfort.') && isUsed(path, design))
    .map((input) => ({
      ...input,
      values: input.values.filter((value) => value !== valueAt(design, input.path)),
    }));
}

function isUsed(path: string, { sunspace, plants, glass, mass, vents, ventilation, rooms }: Design): boolean {
  // Rooms stand on the storeys they were drawn on.
  if (path === 'house.storeys') return rooms === undefined;
  const hasSunspace = sunspace.join !== 'none';
  if (/^sunspace\.(commonWall|commonGlass|door)/.test(path)) return sunspace.join === 'closed';
  if (path.startsWith('sunspace.')) return hasSunspace;
  if (path === 'vents.sunspaceM2' || path === 'vents.stackM' || path === 'air.sunspaceAch50') {
    return hasSunspace;
  }
  if (path === 'ventilation.aired') return vents.habit !== 'never';
  if (path.startsWith('ventilation.aired')) return vents.habit !== 'never' && ventilation.aired !== 'never';
  if (path === 'ventilation.extractRuns') return vents.extractAch > 0;
  if (path === 'ventilation.extractHumidity')
    return vents.extractAch > 0 && ventilation.extractRuns === 'humidity';
  if (/^ventilation\.(recoveryEff|fan|frost)/.test(path)) return ventilation.recoveryAch > 0;
  if (path === 'plants.leafAreaIndex' || path === 'plants.soil') return plants.bedM2 > 0;
  if (path === 'glass.overhangGapM') return glass.overhangM > 0;
  if (path === 'mass.areaM2') return true;
  return !path.startsWith('mass.') || mass.areaM2 > 0;
}
