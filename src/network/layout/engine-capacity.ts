// How much an engine has room for. The arrays of a run are made once, with room to spare, and loaded anew for each
// model: a run then allocates only what it hands out, and the engine's code is compiled for arrays that never change,
// which makes a year half as long again as fast as with arrays of its own. A model that does not fit gets an engine
// with more room.

import type { Model } from '../../model/model.ts';
import type { Layout } from './layout.ts';

/** Counts of what a model, or an engine, holds. */
export interface EngineCapacity {
  readonly zones: number;
  readonly chains: number;
  readonly nodes: number;
  readonly panes: number;
  readonly openings: number;
  /** causes of moisture */
  readonly causes: number;
  /** covers of all panes */
  readonly covers: number;
}

/**
 * Enough for any design; not powers of two, so that arrays used side by side do not share cache lines' places. Nine
 * zones, not eight: arrays of up to 64 bytes may move about in memory, and code cannot be compiled for their place.
 */
export const USUAL_CAPACITY: EngineCapacity = {
  zones: 9,
  chains: 110,
  nodes: 1100,
  panes: 40,
  openings: 40,
  causes: 14,
  covers: 60,
};

/** What a laid-out model needs. */
export function capacityFor(model: Model, layout: Layout, causes: number): EngineCapacity {
  const { chains } = layout.network;
  return {
    zones: model.zones.length,
    chains: chains.length,
    nodes: chains.reduce((sum, { capacity }) => sum + capacity.length, 0),
    panes: model.panes.length,
    openings: model.openings.length,
    causes,
    covers: model.panes.reduce((sum, { covers }) => sum + (covers?.length ?? 0), 0),
  };
}

const PARTS = ['zones', 'chains', 'nodes', 'panes', 'openings', 'causes', 'covers'] as const;

/** Whether all of `needed` fits. */
export function fits(needed: EngineCapacity, capacity: EngineCapacity): boolean {
  return PARTS.every((part) => needed[part] <= capacity[part]);
}

/** The larger of both in every part. */
export function largerCapacity(one: EngineCapacity, other: EngineCapacity): EngineCapacity {
  const larger = PARTS.map((part) => [part, Math.max(one[part], other[part])]);
  return Object.fromEntries(larger) as Record<(typeof PARTS)[number], number>;
}
