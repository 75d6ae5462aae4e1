// What a person brings to the desk: files, and what they tell of days.

import type { FileChoices, TakenFile } from '../../matching/taken-file.ts';

export interface BroughtFile {
  readonly id: number;
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly as: FileChoices['as'];
  readonly clock: FileChoices['clock'];
  /** of weather, the column that a sun meter on a plane wrote */
  readonly plane?: FileChoices['plane'];
  /** why nothing of it came in, where that is so; it is not read again */
  readonly why?: string;
  /** null while it is read */
  readonly taken: TakenFile | null;
  /** by column: a zone, outdoors, or null for one that is left out */
  readonly places: readonly (string | null)[];
}

/** What was told of a day; absent for nothing. */
export type ToldDay = 'shut' | 'away';
