import { expect, test } from 'vitest';
import { describeFault } from '../../src/weather/read-result.ts';
import { columnChoicesFrom } from '../../src/weather/table-choices.ts';

const faultOf = (text: string) => {
  const result = columnChoicesFrom(text);
  return result.ok ? '' : describeFault(result.faults[0]!);
};

test('roles, units and columns to leave out are read from one line', () => {
  expect(columnChoicesFrom('dryBulb=T out:°F, global=rad:kJ/m2, -=odd column,time=when')).toEqual({
    ok: true,
    choices: {
      roles: { 'T out': 'dryBulb', rad: 'global', 'odd column': null, when: 'time' },
      units: { 'T out': '°F', rad: 'kJ/m2' },
    },
  });
  expect(columnChoicesFrom('')).toEqual({ ok: true, choices: { roles: {}, units: {} } });
});

test('what is not understood is named with what is allowed', () => {
  expect(faultOf('warmth=T')).toContain('found "warmth"; expected one of time, date');
  expect(faultOf('dryBulb=T:mph')).toContain('found "mph"; expected one of °C, °F, K');
  expect(faultOf('dryBulb')).toContain('expected role=header');
});
