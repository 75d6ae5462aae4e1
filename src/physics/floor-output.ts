// Limits of a heated floor.

/** Warmest that the face of a floor people live on should be [°C]. EN 1264. */
export const FLOOR_LIMIT_C = 29;
