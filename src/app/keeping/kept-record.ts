// What stands in the browser's store, as text and back: the sheet written last and whose it is, the sheets of other
// tabs, the steps before it, the versions, the units. Text of any origin in; what reads, and what does not, out.

import type { Design } from '../../design/design.ts';
import { UNIT_SYSTEMS, type UnitSystem } from '../parts/display-unit.ts';
import { designFromData } from './design-text.ts';

export interface KeptVersion {
  readonly id: string;
  readonly name: string;
  readonly design: Design;
}

export interface TabSheet {
  readonly tab: string;
  readonly design: Design;
  /** designs before it, the latest last: what undo goes back to */
  readonly earlier: readonly Design[];
}

export interface KeptRecord {
  /** the tab that wrote last; '' when not said */
  readonly tab: string;
  /** new at each writing of a tab's own sheet, so that a doubled tab is told from the one it came of */
  readonly stamp: string;
  readonly design: Design | null;
  readonly earlier: readonly Design[];
  /** sheets of tabs that wrote before, the latest last */
  readonly others: readonly TabSheet[];
  readonly versions: readonly KeptVersion[];
  readonly units: UnitSystem | null;
  /** what could not be read, one sentence each */
  readonly troubles: readonly string[];
}

/** The record in a text, as far as it reads. */
export function recordOf(text: string): KeptRecord {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    const troubles = ['What was kept in this browser could not be read; it is set aside.'];
    return { tab: '', stamp: '', design: null, earlier: [], others: [], versions: [], units: null, troubles };
  }
  const { tab, stamp, design, earlier, others, versions, units } = (data ?? {}) as Record<string, unknown>;
  const troubles: string[] = [];
  const read = designFromData(design);
  if (!read.ok) troubles.push(`The kept design could not be opened and is set aside. ${read.message}`);
  return {
    tab: typeof tab === 'string' ? tab : '',
    stamp: typeof stamp === 'string' ? stamp : '',
    design: read.ok ? read.design : null,
    earlier: stepsOf(earlier),
    others: listOf(others).flatMap((entry) => {
      const sheet = designFromData(entry.design);
      if (sheet.ok) return { tab: String(entry.tab), design: sheet.design, earlier: stepsOf(entry.earlier) };
      troubles.push('The sheet of another tab could not be opened and is set aside.');
      return [];
    }),
    versions: listOf(versions).flatMap((entry) => {
      const name = typeof entry.name === 'string' ? entry.name : 'unnamed';
      const version = designFromData(entry.design);
      if (version.ok) return { id: String(entry.id), name, design: version.design };
      troubles.push(`The kept version "${name}" could not be opened and is set aside.`);
      return [];
    }),
    units: UNIT_SYSTEMS.find((system) => system === units) ?? null,
    troubles,
  };
}

/** Entries of something that should be a list of objects. */
function listOf(data: unknown): readonly Record<string, unknown>[] {
  return Array.isArray(data) ? data.map((entry) => (entry ?? {}) as Record<string, unknown>) : [];
}

/** Steps that do not read are left out: the sheet itself is what was made. */
function stepsOf(data: unknown): readonly Design[] {
  return listOf(data).flatMap((step) => {
    const read = designFromData(step);
    return read.ok ? read.design : [];
  });
}
