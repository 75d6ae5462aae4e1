// Label, unit, limits and step of every number of a design, in one table: the schema refuses by it, the
// screen builds its controls from it, questions vary within it. Limits are what the model can be trusted
// for, or what can be built; they are house rules, not a standard's.

export type Quantity =
  | 'area'
  | 'length'
  | 'angle'
  | 'share'
  | 'count'
  | 'resistance'
  | 'temperature'
  | 'power'
  | 'powerKW'
  | 'airChanges'
  | 'fanPower'
  | 'minutes'
  | 'speed'
  | 'number';

export interface Limit {
  /** dotted path into Design */
  readonly path: string;
  readonly label: string;
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** the range a designer would plausibly move in; questions about what matters most stay inside it */
  readonly plausible: readonly [number, number];
  readonly whole?: true;
  /** what the design means where the key is absent; undefined where it must be there */
  readonly absent?: number;
}

const limit = (
  path: string,
  label: string,
  quantity: Quantity,
  min: number,
  max: number,
  step: number,
  plausible: readonly [number, number],
): Limit => ({ path, label, quantity, min, max, step, plausible });

export const LIMITS: readonly Limit[] = [
  limit('house.floorAreaM2', 'Heated floor area', 'area', 4, 2000, 1, [50, 200]),
  limit('house.ceilingHeightM', 'Ceiling height', 'length', 2, 6, 0.05, [2.3, 3.2]),
  limit('house.equatorWallM', 'Length of the equator-facing wall', 'length', 1, 100, 0.1, [6, 20]),
  limit('house.turnDeg', 'Turned from the equator', 'angle', -60, 60, 1, [-30, 30]),
  { ...limit('house.storeys', 'Storeys', 'count', 1, 3, 1, [1, 2]), whole: true },
  limit('glass.value', 'Equator-facing glass', 'number', 0, 600, 0.01, [0, 40]),
  limit('glass.tiltDeg', 'Tilt of the glass', 'angle', 20, 90, 1, [45, 90]),
  limit('glass.frameShare', 'Frame share', 'share', 0, 0.6, 0.01, [0.1, 0.3]),
  limit('glass.overhangM', 'Overhang', 'length', 0, 4, 0.05, [0, 1.2]),
  limit('glass.overhangGapM', 'Gap above the glass', 'length', 0, 2, 0.05, [0, 0.6]),
  limit('glass.nightResistance', 'Night insulation', 'resistance', 0, 3, 0.05, [0, 1]),
  limit('glass.summerShade', 'Summer shade', 'share', 0, 0.95, 0.05, [0, 0.8]),
  limit('glass.otherShareOfFloor', 'Other windows, share of floor', 'share', 0, 0.3, 0.005, [0.02, 0.08]),
  limit('sunspace.depthM', 'Sunspace depth', 'length', 0.6, 10, 0.1, [1.5, 4]),
  limit('sunspace.lengthM', 'Sunspace length', 'length', 1, 100, 0.1, [4, 15]),
  limit('sunspace.commonWallM', 'Common wall thickness', 'length', 0.05, 1, 0.01, [0.15, 0.45]),
  limit('sunspace.commonGlassM2', 'Windows in the common wall', 'area', 0, 200, 0.1, [0, 6]),
  limit('sunspace.doorM2', 'Door to the sunspace', 'area', 0, 60, 0.1, [1.6, 6]),
  limit('mass.areaM2', 'Extra mass, face area', 'area', 0, 2000, 0.5, [0, 60]),
  limit('mass.thicknessM', 'Extra mass, thickness', 'length', 0.01, 5, 0.01, [0.05, 0.4]),
  limit('floor.thicknessM', 'Floor thickness', 'length', 0.01, 1.5, 0.01, [0.05, 0.3]),
  limit('floor.resistance', 'Insulation under the floor', 'resistance', 0, 12, 0.1, [0, 4]),
  limit('floor.edgeResistance', 'Insulation at the floor edge', 'resistance', 0, 8, 0.1, [0, 3]),
  limit('envelope.wallResistance', 'Wall insulation', 'resistance', 0.05, 15, 0.1, [2, 8]),
  limit('envelope.roofResistance', 'Roof insulation', 'resistance', 0.05, 20, 0.1, [3, 12]),
  limit('envelope.bermShare', 'Earth berm, share of wall height', 'share', 0, 1, 0.05, [0, 1]),
  limit('envelope.wallLiningM', 'Inner leaf thickness', 'length', 0.005, 1.5, 0.005, [0.012, 0.3]),
  limit('air.ach50', 'Airtightness of the house', 'airChanges', 0.1, 40, 0.1, [0.6, 8]),
  limit('air.sunspaceAch50', 'Airtightness of the sunspace', 'airChanges', 0.1, 80, 0.5, [5, 30]),
  { ...limit('air.shelter', 'Shelter class', 'count', 1, 5, 1, [2, 4]), whole: true },
  limit('vents.sunspaceM2', 'Sunspace vents', 'area', 0, 100, 0.1, [0, 6]),
  limit('vents.houseM2', 'Openable house windows', 'area', 0, 60, 0.1, [0.5, 4]),
  limit('vents.stackM', 'Height between vents', 'length', 0.2, 10, 0.1, [1, 3.5]),
  limit('vents.opensAboveC', 'Vents open above', 'temperature', 15, 40, 0.5, [22, 28]),
  limit('vents.nightPurgeAch', 'Night purge fan', 'airChanges', 0, 30, 0.5, [0, 10]),
  limit('vents.extractAch', 'Extract fan', 'airChanges', 0, 5, 0.05, [0, 0.5]),
  limit('vents.sunspaceFanAch', 'Fan from the sunspace to the rooms', 'airChanges', 0, 30, 0.1, [0, 5]),
  {
    ...limit('ventilation.airedMinutes', 'Each airing at most', 'minutes', 3, 30, 1, [5, 15]),
    whole: true,
  },
  { ...limit('ventilation.airedTimes', 'Airings a day at most', 'count', 1, 6, 1, [2, 4]), whole: true },
  limit('ventilation.extractHumidity', 'Extract fan in full above', 'share', 0.4, 0.9, 0.01, [0.5, 0.7]),
  limit('ventilation.recoveryAch', 'Ventilation with heat recovery', 'airChanges', 0, 2, 0.05, [0, 0.5]),
  limit(
    'ventilation.recoveryEffectiveness',
    'Share of heat given back',
    'share',
    0.3,
    0.95,
    0.01,
    [0.6, 0.9],
  ),
  limit('ventilation.fanWPerM3H', 'Power of its fans', 'fanPower', 0.05, 2, 0.01, [0.2, 0.6]),
  limit('people.count', 'People', 'count', 0, 30, 1, [1, 6]),
  limit('people.appliancesW', 'Lights and appliances', 'power', 0, 10000, 10, [100, 500]),
  limit('plants.bedM2', 'Planted bed', 'area', 0, 500, 0.5, [0, 20]),
  limit('plants.leafAreaIndex', 'Leaf area index', 'number', 0, 8, 0.1, [1, 4]),
  limit('heating.dayC', 'Heating set-point by day', 'temperature', 0, 28, 0.5, [18, 21]),
  limit('heating.nightC', 'Heating set-point at night', 'temperature', 0, 28, 0.5, [14, 20]),
  limit('heating.capacityKW', 'Back-up heat available', 'powerKW', 0, 500, 0.5, [2, 12]),
  limit('comfort.overheatC', 'One fixed limit', 'temperature', 22, 35, 0.5, [25, 28]),
  {
    ...limit('comfort.airSpeedMs', 'Air speed of ceiling fans', 'speed', 0, 1.2, 0.1, [0, 0.9]),
    absent: 0,
  },
  limit('comfort.underheatC', 'Too cold below', 'temperature', 5, 22, 0.5, [15, 18]),
  limit('comfort.humidLimit', 'Humid above', 'share', 0.4, 0.95, 0.01, [0.6, 0.8]),
];

const BY_PATH = new Map(LIMITS.map((entry) => [entry.path, entry]));

/**
 * The limit of one number of a design.
 *
 * @param path dotted path, e.g. 'glass.tiltDeg'
 * @returns its row; throws RangeError for a path that is no number of a design
 */
export function limitOf(path: string): Limit {
  const found = BY_PATH.get(path);
  if (!found) throw new RangeError(`path is '${path}'; allowed: a number of the design`);
  return found;
}
