// The flags that say what the columns and the clock of a weather table are. Arguments in, choices for the reader out, or
// one line a fault.

import type { TableChoices } from '../weather/table/hourly-table.ts';
import { columnChoicesFrom } from '../weather/table/table-choices.ts';
import { ROLES } from '../weather/table/table-roles.ts';
import type { ParsedArguments } from './arguments.ts';

export const TABLE_FLAGS: readonly string[] = ['column', 'stamp', 'clock'];

/** Of the flags about weather, the one that comes once for each column. */
export const REPEATED_WEATHER_FLAGS: readonly string[] = ['column'];

/** How the flags about a weather file look, for the help of a command. */
export const WEATHER_USAGE = [
  '--latitude N --longitude N --elevation M --utc-offset H --site-name NAME: what the file does not say of its place',
  '--column ROLE=HEADER[:UNIT]: what a column of a table is, once for each; -=HEADER leaves one out',
  `  roles: temperature, ${ROLES.filter((role) => role !== 'dryBulb').join(', ')}`,
  '--stamp start | end | instant: what a time in the table stands for',
  '--clock local | utc: which clock its times are by',
] as const;

const STAMPS = ['start', 'end', 'instant'] as const;
const CLOCKS = ['local', 'utc'] as const;

export type TableFlags =
  | { readonly ok: true; readonly choices: TableChoices }
  | { readonly ok: false; readonly faults: readonly string[] };

/** What the flags say about a table; nothing when none is given. */
export function tableChoices({ values, lists }: ParsedArguments): TableFlags {
  const texts = lists.get('column') ?? [];
  const columns = columnChoicesFrom(texts);
  const faults = columns.ok
    ? []
    : columns.faults.map(({ value, expected }) => `--column: ${value}; allowed: ${expected}`);
  const stamp = STAMPS.find((word) => word === values.get('stamp'));
  const clock = CLOCKS.find((word) => word === values.get('clock'));
  if (values.has('stamp') && stamp === undefined)
    faults.push(`--stamp: ${values.get('stamp')}; allowed: ${STAMPS.join(', ')}`);
  if (values.has('clock') && clock === undefined)
    faults.push(`--clock: ${values.get('clock')}; allowed: ${CLOCKS.join(', ')}`);
  if (!columns.ok || faults.length > 0) return { ok: false, faults };
  const choices = {
    ...(texts.length === 0 ? {} : columns.choices),
    ...(stamp === undefined ? {} : { stamp }),
    ...(clock === undefined ? {} : { utc: clock === 'utc' }),
  };
  return { ok: true, choices };
}

/** A fault for each of these flags given where no weather file is. */
export function tableFlagsWithoutFile({ values, lists }: ParsedArguments): readonly string[] {
  return TABLE_FLAGS.filter((flag) => values.has(flag) || lists.has(flag)).map(
    (flag) => `--${flag}: given beside a bundled climate; allowed: beside a weather file`,
  );
}
