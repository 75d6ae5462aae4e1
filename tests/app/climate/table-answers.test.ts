import { expect, test } from 'vitest';
import { siteHints, siteTexts } from '../../../src/app/climate/SiteFields.tsx';
import { withRole, withUnit } from '../../../src/app/climate/table-answers.ts';
import type { ColumnGuess } from '../../../src/weather/table/table-columns.ts';
import type { Role } from '../../../src/weather/table/table-roles.ts';

const column = (index: number, header: string, role: Role | null): ColumnGuess => ({
  index,
  header,
  role,
  unit: null,
  reason: '',
});
const COLUMNS = [column(0, 'T1', 'dryBulb'), column(1, 'T2', null), column(2, 'rad', 'global')];

test('a quantity given to another column is taken from the first', () => {
  expect(withRole({}, COLUMNS, 'T2', 'dryBulb').roles).toEqual({ T2: 'dryBulb', T1: null });
  expect(withRole({}, COLUMNS, 'rad', null).roles).toEqual({ rad: null });
});

test('a new role forgets the unit that was chosen for the old one', () => {
  const before = withUnit({ stamp: 'end' }, 'T1', '°F');
  expect(withRole(before, COLUMNS, 'T1', 'dewPoint')).toEqual({
    stamp: 'end',
    roles: { T1: 'dewPoint' },
    units: {},
  });
});

test('a place is sound only within its limits, in the units shown', () => {
  const texts = siteTexts({ latitudeDeg: 40, longitudeDeg: -105, elevationM: 304.8 }, 'us');
  expect(texts.elevation).toBe('1000');
  expect(siteHints(texts, 'us')).toEqual({ latitudeDeg: 40, longitudeDeg: -105, elevationM: 1000 * 0.3048 });
  expect(siteHints({ ...texts, latitude: '91' }, 'us')).toBe(null);
  expect(siteHints({ ...texts, longitude: '' }, 'us')).toBe(null);
  expect(siteHints({ ...texts, utcOffset: '15' }, 'us')).toBe(null);
  expect(siteHints({ ...texts, elevation: 'high' }, 'us')).toBe(null);
  expect(siteHints({ ...texts, utcOffset: '−7', name: ' Hill ' }, 'us')).toMatchObject({
    utcOffsetH: -7,
    name: 'Hill',
  });
});
