// The work of a change, once, in days of one person: what it adds to building the house so from the start. All of it is
// common practice, no source, and only good for telling a day from a month; it is to be shown as such.

import type { Design } from '../design/design.ts';
import { buildingWork, WAYS_TO_BUILD } from './building-work.ts';

/** By the lever's id; what is bought or left out instead of built takes none. */
const DAYS: Readonly<Record<string, number>> = {
  overhang: 4,
  shade: 2,
  'side-blinds': 2,
  'shade-cloth': 1,
  leaves: 3,
  'night-cover': 4,
  'close-off': 8,
  'bare-floor': 1,
  'floor-insulation': 4,
  'wall-insulation': 10,
  'roof-insulation': 5,
  tighter: 6,
  openers: 1,
  windows: 1,
  'sunspace-vents': 2,
  purge: 1,
  'ceiling-fans': 1,
  'fresh-air-fan': 1,
  'heat-recovery': 5,
};

/**
 * Work of a change [days].
 *
 * @param id of the lever
 * @param before the design without it
 * @param after the design with it
 */
export function leverDays(id: string, before: Design, after: Design): number {
  if (id !== 'more-mass') return DAYS[id] ?? 0;
  const usual = WAYS_TO_BUILD[0]!;
  const way = {
    ...(WAYS_TO_BUILD.find(({ material }) => material === after.mass.material) ?? usual),
    thicknessM: after.mass.thicknessM,
  };
  const [low, high] = buildingWork(way, Math.max(0, after.mass.areaM2 - before.mass.areaM2)).days;
  return (low + high) / 2;
}
