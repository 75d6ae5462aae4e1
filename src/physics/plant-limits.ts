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
