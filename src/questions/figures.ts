// The figures that answers compare, picked from an outcome, and what each is called. Rooms are the house, of several the
// worst in each respect; the sunspace has its own few. Unknown is null.

import { judgedHouse } from '../outcomes/judged-house.ts';
import type { OutcomeFigures } from '../outcomes/outcome.ts';
import { worstDampSpot } from '../outcomes/worst-damp-spot.ts';

export interface Figures {
  /** by what the design counts as too hot, and how many of them that allows */
  readonly tooHotHours: number;
  readonly tooHotLimitHours: number;
  /** above the design's one temperature, whatever it counts by */
  readonly overheatedHours: number;
  readonly heatingKWh: number;
  readonly heatingPeakW: number;
  readonly coldestC: number;
  readonly warmestC: number;
  readonly underheatedHours: number;
  /** in which the heat does not do; null where no room is heated */
  readonly shortHours: number | null;
  readonly humidHours: number;
  readonly mouldIndex: number;
  /** of the worst place of the rooms, corner or not */
  readonly worstMouldIndex: number;
  readonly staleAirHours: number;
  /** hours that feel like the US weather service's "extreme caution" or more */
  readonly feltHotHours: number;
  readonly hotNightHours: number;
  readonly swingK: number;
  readonly ventMovesPerDay: number;
  readonly neglectedShare: number;
  readonly sunspaceWarmestC: number | null;
  readonly sunspaceColdestC: number | null;
}

export type FigureKey = keyof Figures;

export interface FigureName {
  readonly label: string;
  readonly unit: string;
  /** decimals that the figure deserves */
  readonly digits: number;
}

export const FIGURE_NAMES: Readonly<Record<FigureKey, FigureName>> = {
  tooHotHours: { label: 'hours too hot', unit: 'h/year', digits: 0 },
  tooHotLimitHours: { label: 'hours too hot that are allowed', unit: 'h/year', digits: 0 },
  overheatedHours: { label: 'hours above one temperature', unit: 'h/year', digits: 0 },
  heatingKWh: { label: 'back-up heat', unit: 'kWh/year', digits: 0 },
  heatingPeakW: { label: 'largest heating load', unit: 'W', digits: 0 },
  coldestC: { label: 'coldest hour', unit: '°C', digits: 1 },
  warmestC: { label: 'warmest hour', unit: '°C', digits: 1 },
  underheatedHours: { label: 'hours too cold', unit: 'h/year', digits: 0 },
  shortHours: { label: 'hours short of warmth', unit: 'h/year', digits: 0 },
  humidHours: { label: 'humid hours', unit: 'h/year', digits: 0 },
  mouldIndex: { label: 'mould index', unit: '0–6', digits: 1 },
  worstMouldIndex: { label: 'mould index of the worst place', unit: '0–6', digits: 1 },
  staleAirHours: { label: 'hours of stale air', unit: 'h/year', digits: 0 },
  feltHotHours: { label: 'hours of heat stress', unit: 'h/year', digits: 0 },
  hotNightHours: { label: 'hot night hours', unit: 'h/year', digits: 0 },
  swingK: { label: 'mean daily swing', unit: 'K', digits: 1 },
  ventMovesPerDay: { label: 'vent moves in the busiest month', unit: 'per day', digits: 1 },
  neglectedShare: { label: 'share of the year with a vent forgotten', unit: '', digits: 2 },
  sunspaceWarmestC: { label: 'sunspace, warmest hour', unit: '°C', digits: 1 },
  sunspaceColdestC: { label: 'sunspace, coldest hour', unit: '°C', digits: 1 },
};

/** The figures of one outcome. */
export function figuresOf(outcome: OutcomeFigures): Figures {
  const { heating, vents } = outcome;
  const { sunspace } = outcome.zones;
  const house = judgedHouse(outcome);
  return {
    tooHotHours: house.tooHot.hours,
    tooHotLimitHours: house.tooHot.limitHours,
    overheatedHours: house.overheatedHours,
    heatingKWh: heating.energyKWh,
    heatingPeakW: heating.peakW,
    coldestC: house.minOperativeC,
    warmestC: house.maxOperativeC,
    underheatedHours: house.underheatedHours,
    shortHours: heating.shortHours,
    humidHours: house.humidHours,
    mouldIndex: house.mouldIndexMax,
    worstMouldIndex: worstDampSpot(house).index,
    staleAirHours: house.freshAir.staleAirHours,
    feltHotHours: house.feltHeat.hours,
    hotNightHours: house.hotNightHours,
    swingK: house.meanDailySwingK,
    ventMovesPerDay: vents.movesPerDayInBusiestMonth,
    neglectedShare: vents.neglectedShare,
    sunspaceWarmestC: sunspace?.maxOperativeC ?? null,
    sunspaceColdestC: sunspace?.minOperativeC ?? null,
  };
}
