/** Common practice, no source. */
export const TYRE_PRACTICE = {
  earthKg: 180,
  tyresPerDayRange: [6, 10],
  rammedDiameterM: 0.8,
  courseHeightM: 0.22,
} as const;
