// What plants in a sunspace stand. In: air temperature and humidity of an hour. Out: which limit is passed. Source:
// growers' handbooks, from memory, medium confidence: ranges between crops are wide, the defaults are middles.
import { requireRange } from './require-range.ts';

export type PlantRisk =
  | 'frost'
  | 'chilling'
  | 'heat at fruit set'
  | 'leaf scorch'
  | 'grey mould'
  | 'dry air'
  | 'damp air';

/** Limit in its unit, the range seen in handbooks, and what happens beyond. */
export interface PlantLimit {
  readonly risk: PlantRisk;
  readonly limit: number;
  readonly range: readonly [number, number];
  readonly unit: '°C' | 'kPa' | '';
  readonly beyond: string;
}

/** Temperatures are of the air; deficits are of vapour pressure. */
export const PLANT_LIMITS: readonly PlantLimit[] = [
  { risk: 'frost', limit: 0, range: [0, 0], unit: '°C', beyond: 'at or below it tender leaves freeze' },
  {
    risk: 'chilling',
    limit: 11,
    range: [10, 12],
    unit: '°C',
    beyond: 'below it tomato, cucumber and banana are damaged',
  },
  {
    risk: 'heat at fruit set',
    limit: 33,
    range: [32, 35],
    unit: '°C',
    beyond: 'above it by day pollen and fruit set suffer',
  },
  { risk: 'leaf scorch', limit: 39, range: [38, 40], unit: '°C', beyond: 'above it leaves may scorch' },
  {
    risk: 'grey mould',
    limit: 0.2,
    range: [0.2, 0.2],
    unit: 'kPa',
    beyond: 'below it for hours grey mould spreads',
  },
  {
    risk: 'damp air',
    limit: 0.4,
    range: [0.4, 0.4],
    unit: 'kPa',
    beyond: 'below it growth is soft and slow',
  },
  { risk: 'dry air', limit: 1.2, range: [1.2, 1.2], unit: 'kPa', beyond: 'above it leaves close and wilt' },
];

/** Hardy leafy crops keep growing, slowly, down to about this [°C]; range 2–5. */
export const LEAFY_CROP_MINIMUM_C = 3;

/** Warmest night air at which tomato still sets fruit [°C]; range 21–24. */
export const TOMATO_NIGHT_MAXIMUM_C = 22;

/**
 * Limits an hour passes, the gravest only of each kind: frost hides chilling, scorch hides heat, grey mould hides damp air.
 *
 * @param airTempC [°C]; −60…80
 * @param vapourDeficitKPa saturation less actual vapour pressure [kPa]; −5…50
 * @returns risks, none when all is well
 */
export function plantRisks(airTempC: number, vapourDeficitKPa: number): readonly PlantRisk[] {
  requireRange('airTempC', airTempC, -60, 80, '°C');
  requireRange('vapourDeficitKPa', vapourDeficitKPa, -5, 50, 'kPa');
  const risks: PlantRisk[] = [];
  if (airTempC <= limitOf('frost')) risks.push('frost');
  else if (airTempC < limitOf('chilling')) risks.push('chilling');
  if (airTempC > limitOf('leaf scorch')) risks.push('leaf scorch');
  else if (airTempC > limitOf('heat at fruit set')) risks.push('heat at fruit set');
  if (vapourDeficitKPa < limitOf('grey mould')) risks.push('grey mould');
  else if (vapourDeficitKPa < limitOf('damp air')) risks.push('damp air');
  else if (vapourDeficitKPa > limitOf('dry air')) risks.push('dry air');
  return risks;
}

function limitOf(risk: PlantRisk): number {
  return PLANT_LIMITS.find((row) => row.risk === risk)!.limit;
}
