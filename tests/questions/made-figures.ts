// Figures of a quiet house, with those that a test is about.
import type { Figures } from '../../src/questions/figures.ts';

export function madeFigures(made: Partial<Figures>): Figures {
  return {
    tooHotHours: 0,
    tooHotLimitHours: 87,
    overheatedHours: 0,
    heatingKWh: 1000,
    heatingPeakW: 4000,
    coldestC: 17,
    warmestC: 25,
    underheatedHours: 0,
    shortHours: 0,
    humidHours: 0,
    mouldIndex: 0,
    worstMouldIndex: 0,
    staleAirHours: 0,
    feltHotHours: 0,
    hotNightHours: 0,
    swingK: 3,
    ventMovesPerDay: 0,
    neglectedShare: 0,
    sunspaceWarmestC: null,
    sunspaceColdestC: null,
    ...made,
  };
}
