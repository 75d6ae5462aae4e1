// A design from outside, of this or an older version: files, links, kept sheets, versions and batch lines all pass here.
// Unknown data in, a checked design or its faults out.

import { DESIGN_VERSION } from './design.ts';
import { type DesignResult, parseDesign } from './schema.ts';

/** Steps from version n to n + 1, in order. Version 2 is version 1 with rooms, which may be absent. */
const UPGRADES: readonly ((data: Record<string, unknown>) => Record<string, unknown>)[] = [(data) => data];

/** A key of the stove for a while; it is the people who are away, whatever heats the house. */
function withWeekendsOfPeople(data: unknown): unknown {
  const { heating, people } = (data ?? {}) as Partial<Record<string, Record<string, unknown>>>;
  const source = heating?.source as Record<string, unknown> | undefined;
  if (source?.unlitWeekends !== true || typeof people !== 'object') return data;
  const { unlitWeekends, ...rest } = source;
  return {
    ...(data as object),
    people: { ...people, awayWeekends: unlitWeekends },
    heating: { ...heating, source: rest },
  };
}

/** Bring data up to the present version and check it. */
export function openDesign(data: unknown): DesignResult {
  let upgraded = withWeekendsOfPeople(data);
  const version = versionOf(data);
  if (version !== null && Number.isInteger(version) && version >= 1) {
    for (const step of UPGRADES.slice(version - 1)) upgraded = step(upgraded as Record<string, unknown>);
  }
  return parseDesign(upgraded);
}

/** The version of data that is newer than these files know; null for any other. */
export function newerVersion(data: unknown): number | null {
  const version = versionOf(data);
  return version !== null && version > DESIGN_VERSION ? version : null;
}

function versionOf(data: unknown): number | null {
  const version = typeof data === 'object' && data !== null ? (data as { version?: unknown }).version : null;
  return typeof version === 'number' ? version : null;
}
