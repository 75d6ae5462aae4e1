import { expect, test } from 'vitest';
import { describeFault } from '../../../src/weather/read-result.ts';
import { columnChoicesFrom } from '../../../src/weather/table/table-choices.ts';

const faultOf = (...texts: string[]) => {
  const result = columnChoicesFrom(texts);
  return result.ok ? '' : describeFault(result.faults[0]!);
};

test('roles, units and columns to leave out are read from short texts', () => {
  expect(
    columnChoicesFrom(['dryBulb=T out:°F', 'global=rad, sum:kJ/m2', '-=odd column', 'time=when (hh:mm)']),
  ).toEqual({
    ok: true,
    choices: {
      roles: { 'T out': 'dryBulb', 'rad, sum': 'global', 'odd column': null, 'when (hh:mm)': 'time' },
      units: { 'T out': '°F', 'rad, sum': 'kJ/m2' },
    },
  });
  expect(columnChoicesFrom(['temperature=outdoor:C'])).toEqual({
    ok: true,
    choices: { roles: { outdoor: 'dryBulb' }, units: { outdoor: 'C' } },
  });
  expect(columnChoicesFrom([])).toEqual({ ok: true, choices: { roles: {}, units: {} } });
});

test('what is not understood is named with what is allowed', () => {
  expect(faultOf('warmth=T')).toContain('found "warmth"; expected one of temperature, time, date');
  expect(faultOf('dryBulb=T:mph')).toContain('found "mph"; expected one of °C, °F, K');
  expect(faultOf('dryBulb')).toContain('expected ROLE=HEADER');
  expect(faultOf('temperature=T1', 'dryBulb=T2')).toContain('expected each role for one column');
});
