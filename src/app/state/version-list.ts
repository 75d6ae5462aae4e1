// Named states of a design: kept, renamed, gone back to, compared. In: the workspace's design. Out: the list and the
// two to four that are chosen for comparison. A version is a whole design, so going back is one undoable step.

import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Design } from '../../design/design.ts';
import type { KeptVersion } from '../keeping/kept-record.ts';

export const MOST_COMPARED = 4;
/** What compared versions are told apart by, in the order chosen. */
export const VERSION_LETTERS = 'ABCD';

export interface VersionList {
  readonly versions: ReadonlySignal<readonly KeptVersion[]>;
  /** ids compared, in the order chosen */
  readonly compared: Signal<readonly string[]>;
  readonly comparedVersions: ReadonlySignal<readonly KeptVersion[]>;
  keep(name: string, design: Design): KeptVersion;
  rename(id: string, name: string): void;
  remove(id: string): void;
  /** Another list in its place, such as that of two tabs brought together. */
  replace(versions: readonly KeptVersion[]): void;
  /** Put in or take out of the comparison; a fifth pushes nothing out and is refused. */
  toggle(id: string): void;
}

/** A list that starts with what was kept before. */
export function createVersionList(kept: readonly KeptVersion[]): VersionList {
  const versions = signal(kept);
  const compared = signal<readonly string[]>([]);
  const comparedVersions = computed(() =>
    compared.value.flatMap((id) => versions.value.find((version) => version.id === id) ?? []),
  );
  return {
    versions,
    compared,
    comparedVersions,
    keep(name, design) {
      const highest = versions.value.reduce((most, { id }) => Math.max(most, Number(id) || 0), 0);
      const version = { id: String(highest + 1), name: name.trim() || `version ${highest + 1}`, design };
      versions.value = [...versions.value, version];
      return version;
    },
    rename(id, name) {
      const given = name.trim();
      if (given === '') return;
      versions.value = versions.value.map((version) =>
        version.id === id ? { ...version, name: given } : version,
      );
    },
    remove(id) {
      versions.value = versions.value.filter((version) => version.id !== id);
      compared.value = compared.value.filter((other) => other !== id);
    },
    replace(next) {
      versions.value = next;
      compared.value = compared.value.filter((id) => next.some((version) => version.id === id));
    },
    toggle(id) {
      const chosen = compared.value;
      if (chosen.includes(id)) compared.value = chosen.filter((other) => other !== id);
      else if (chosen.length < MOST_COMPARED) compared.value = [...chosen, id];
    },
  };
}
