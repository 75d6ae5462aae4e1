// What a person says about the columns of a table, each in a short text, for a flag that may come several times:
//   temperature=T out:°F    global=rad:kJ/m²    -=odd column
// Each is role=header, with a unit after a colon where the header's own is missing or wrong; a role of - leaves the
// column out. A header is everything between, commas and colons of its own included.

import type { Fault } from '../read-result.ts';
import type { ColumnChoices } from './table-columns.ts';
import { ROLES, type Role, UNITS } from './table-roles.ts';

/** Other names people give a role. */
const ALSO: Readonly<Record<string, Role>> = { temperature: 'dryBulb', wind: 'windSpeed' };

/** Choices from their texts, or what is wrong with them. */
export function columnChoicesFrom(
  texts: readonly string[],
):
  | { readonly ok: true; readonly choices: ColumnChoices }
  | { readonly ok: false; readonly faults: readonly Fault[] } {
  const roles: Record<string, Role | null> = {};
  const units: Record<string, string> = {};
  const faults: Fault[] = [];
  const fault = (value: string, expected: string) =>
    faults.push({ line: null, column: 'columns', value, expected });
  for (const text of texts) {
    const equals = text.indexOf('=');
    const named = text.slice(0, Math.max(equals, 0)).trim();
    const rest = text.slice(equals + 1).trim();
    const role = named === '-' ? null : roleOf(named);
    if (equals < 1 || rest === '') fault(text, 'ROLE=HEADER or ROLE=HEADER:UNIT');
    else if (role === undefined) {
      fault(named, `one of temperature, ${ROLES.join(', ')}, or - to leave the column out`);
    } else if (role !== null && Object.values(roles).includes(role)) fault(text, 'each role for one column');
    else {
      const { header, unit } = headerAndUnit(rest, role);
      if (Object.hasOwn(roles, header)) fault(text, 'each column once');
      roles[header] = role;
      if (unit === null) continue;
      const known = role === null ? undefined : UNITS[role]?.filter(({ name }) => name !== '');
      if (known?.some((one) => one.name === unit || one.written.test(unit))) units[header] = unit;
      else
        fault(
          unit,
          known === undefined
            ? 'no unit for this role'
            : `one of ${known.map(({ name }) => name).join(', ')}`,
        );
    }
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, choices: { roles, units } };
}

function roleOf(text: string): Role | undefined {
  return ALSO[text] ?? ROLES.find((role) => role === text);
}

/** A header may hold colons itself; only one followed by something short is a unit's, and only where a unit can be. */
function headerAndUnit(text: string, role: Role | null): { header: string; unit: string | null } {
  const colon = text.lastIndexOf(':');
  if (colon < 1 || text.length - colon > 12 || role === null || UNITS[role] === undefined)
    return { header: text, unit: null };
  return { header: text.slice(0, colon).trim(), unit: text.slice(colon + 1).trim() };
}
