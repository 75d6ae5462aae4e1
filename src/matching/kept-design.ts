// A match kept as a design: numbers that the drawing has are set to what was found, within their limits; the rest goes into
// the block that the design carries, with every interval, so that answers know how well each is known. What the record hardly
// told is kept too: the house that was judged is the one kept.

import { type AsFound, type FoundNumber, SHIFTS } from '../design/as-found.ts';
import type { Design } from '../design/design.ts';
import { LIMITS } from '../design/limits.ts';
import type { Match } from './match.ts';

/** Names of designs are no longer than this. */
const MOST_NAME = 120;

/** The drawing as it was found. A block that it carries already is built upon, not replaced. */
export function keptDesign(design: Design, match: Match, period: { from: string; until: string }): Design {
  const earlier = design.asFound?.unknowns ?? [];
  // How much heat a diary's wood gave is of those days, not of the house.
  const ofHouse = match.unknowns.filter(({ id }) => id !== 'fires');
  const found = ofHouse.map(({ id, value, low, high }): FoundNumber => {
    const known = earlier.find((one) => one.id === id);
    if (known === undefined) return { id, value, low, high };
    const on = (one: number) => (SHIFTS.includes(id) ? known.value + one : known.value * one);
    return { id, value: on(value), low: on(low), high: on(high) };
  });
  const kept = earlier.filter(({ id }) => !found.some((one) => one.id === id));
  const asFound: AsFound = {
    from: period.from.slice(0, 10),
    until: period.until.slice(0, 10),
    misfitK: match.misfitK,
    unseenMisfitK: match.unseenMisfitK,
    unknowns: [...kept, ...found],
  };
  const { values } = match;
  const { air, envelope, heating, vents } = design;
  const times = (path: string, value: number, factor = 1) => within(path, value * factor);
  const plus = (path: string, value: number, byK = 0) => within(path, value + byK);
  return {
    ...design,
    name: `${design.name}, as found`.slice(0, MOST_NAME),
    asFound,
    air: {
      ...air,
      ach50: times('air.ach50', air.ach50, values.airtightness),
      sunspaceAch50: times('air.sunspaceAch50', air.sunspaceAch50, values.airtightness),
    },
    envelope: {
      ...envelope,
      wallResistance: times('envelope.wallResistance', envelope.wallResistance, values.insulation),
      roofResistance: times('envelope.roofResistance', envelope.roofResistance, values.insulation),
    },
    heating: {
      ...heating,
      dayC: plus('heating.dayC', heating.dayC, values.stove),
      nightC: plus('heating.nightC', heating.nightC, values.stove),
    },
    vents: {
      ...vents,
      ...(match.habit !== null && { habit: match.habit }),
      opensAboveC: plus('vents.opensAboveC', vents.opensAboveC, values.opensAbove),
      houseM2: times('vents.houseM2', vents.houseM2, values.ventArea),
      sunspaceM2: times('vents.sunspaceM2', vents.sunspaceM2, values.ventArea),
    },
  };
}

function within(path: string, value: number): number {
  const { min, max } = LIMITS.find((limit) => limit.path === path)!;
  return Math.min(max, Math.max(min, value));
}
