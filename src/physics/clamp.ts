/** A number held to 0…1. */
export function clamp01(value: number): number {
  return value < 0 ? 0 : Math.min(value, 1);
}
