// Versions of two tabs brought together: what the list was when both last agreed, what it is here, what it is there.
// Whatever either added or changed stays; what either removed goes, unless the other changed it meanwhile; what both
// changed differently is kept twice.

import type { KeptVersion } from './kept-record.ts';

/** One list out of two; versions that did not change here are the very objects of `ours`. */
export function mergedVersions(
  base: readonly KeptVersion[],
  ours: readonly KeptVersion[],
  theirs: readonly KeptVersion[],
): readonly KeptVersion[] {
  const inBase = byId(base);
  const inOurs = byId(ours);
  const inTheirs = byId(theirs);
  const merged: KeptVersion[] = [];
  const twice: KeptVersion[] = [];
  for (const their of theirs) {
    const our = inOurs.get(their.id);
    const before = inBase.get(their.id);
    if (our === undefined) {
      if (before === undefined || !same(before, their)) merged.push(their);
    } else if (same(our, their) || (before && same(before, their))) merged.push(our);
    else {
      merged.push(their);
      if (!before || !same(before, our)) twice.push(our);
    }
  }
  for (const our of ours) {
    if (inTheirs.has(our.id)) continue;
    const before = inBase.get(our.id);
    if (before === undefined || !same(before, our)) merged.push(our);
  }
  let highest = [...merged, ...twice].reduce((most, { id }) => Math.max(most, Number(id) || 0), 0);
  for (const version of twice) merged.push({ ...version, id: String(++highest) });
  return merged;
}

function byId(versions: readonly KeptVersion[]): ReadonlyMap<string, KeptVersion> {
  return new Map(versions.map((version) => [version.id, version]));
}

function same(one: KeptVersion, other: KeptVersion): boolean {
  return one.name === other.name && JSON.stringify(one.design) === JSON.stringify(other.design);
}
