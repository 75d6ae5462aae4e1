// What a person says about the columns of a table, in one line of text, for a command's flag or a field on a page:
//   dryBulb=T out:°F, global=rad:kJ/m², -=odd column
// Each part is role=header, with a unit after a colon where the header's own is missing or wrong; a role of - leaves
// the column out.

import type { Fault } from './read-result.ts';
import type { ColumnChoices } from './table-columns.ts';
import { ROLES, type Role, UNITS } from './table-roles.ts';

/** Choices from their text, or what is wrong with it. */
export function columnChoicesFrom(
  text: string,
):
  | { readonly ok: true; readonly choices: ColumnChoices }
  | { readonly ok: false; readonly faults: readonly Fault[] } {
  const roles: Record<string, Role | null> = {};
  const units: Record<string, string> = {};
  const faults: Fault[] = [];
  const fault = (value: string, expected: string) =>
    faults.push({ line: null, column: 'columns', value, expected });
  for (const part of text
    .split(',')
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '')) {
    const equals = part.indexOf('=');
    const role = part.slice(0, Math.max(equals, 0)).trim();
    const [header, unit] = headerAndUnit(part.slice(equals + 1).trim());
    if (equals < 1 || header === '') fault(part, 'role=header or role=header:unit');
    else if (role !== '-' && !isRole(role))
      fault(role, `one of ${ROLES.join(', ')}, or - to leave the column out`);
    else {
      roles[header] = role === '-' ? null : (role as Role);
      const known = role === '-' ? undefined : UNITS[role as Role];
      if (unit !== null && !known?.some((one) => one.name === unit || one.written.test(unit))) {
        fault(
          unit,
          known === undefined
            ? 'no unit for this role'
            : `one of ${known.map(({ name }) => name).join(', ')}`,
        );
      } else if (unit !== null) units[header] = unit;
    }
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, choices: { roles, units } };
}

function isRole(text: string): text is Role {
  return (ROLES as readonly string[]).includes(text);
}

/** A header may hold colons itself; only one followed by something short is a unit's. */
function headerAndUnit(text: string): [string, string | null] {
  const colon = text.lastIndexOf(':');
  if (colon < 1 || text.length - colon > 12) return [text, null];
  return [text.slice(0, colon).trim(), text.slice(colon + 1).trim()];
}
