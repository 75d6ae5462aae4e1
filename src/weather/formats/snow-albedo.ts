// Ground reflectance from the depth and age of snow, for files that give these and no reflectance.

/** Bare ground, grass or soil. */
const BARE = 0.2;
/** Fresh snow and old, dirty snow; handbook values (FAO-56 and meteorological tables give 0.75–0.95 and 0.4). */
const FRESH = 0.8;
const OLD = 0.4;
/** Snow this old counts as old [days]: common practice, no source. */
const OLD_AFTER_DAYS = 10;
/** Snow this deep hides the ground [cm]: common practice, no source. */
const HIDING_DEPTH_CM = 5;

/**
 * Reflectance of ground under snow.
 *
 * Falls in a straight line from fresh to old over ten days, and mixes with bare ground below 5 cm.
 *
 * @param depthCm ≥ 0; NaN counts as none
 * @param daysSinceSnowfall ≥ 0; NaN counts as old
 * @returns 0.2…0.8
 */
export function snowAlbedo(depthCm: number, daysSinceSnowfall: number): number {
  if (!(depthCm > 0)) return BARE;
  const age = Number.isNaN(daysSinceSnowfall) ? 1 : Math.min(daysSinceSnowfall / OLD_AFTER_DAYS, 1);
  const snow = FRESH + age * (OLD - FRESH);
  const cover = Math.min(depthCm / HIDING_DEPTH_CM, 1);
  return BARE + cover * (snow - BARE);
}
