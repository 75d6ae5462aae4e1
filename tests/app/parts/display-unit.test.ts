import fc from 'fast-check';
import { expect, test } from 'vitest';
import { quantityOfLimit, toShown, toSi, UNIT_SYSTEMS, unitOf } from '../../../src/app/parts/display-unit.ts';
import {
  changeText,
  fieldText,
  numberText,
  quantityText,
  typedFeet,
  typedNumber,
} from '../../../src/app/parts/number-text.ts';
import { LIMITS } from '../../../src/design/limits.ts';
import { wordingOf } from '../../../src/findings/wording.ts';

test('factors agree with NIST SP 811', () => {
  // NIST SP 811 (2008), appendix B.8, printed to seven figures; exact ones in bold there. From memory, high confidence.
  expect(toShown(1, 'area', 'us')).toBeCloseTo(10.76391, 5);
  expect(toShown(0.3048, 'length', 'us')).toBeCloseTo(1, 12);
  expect(toShown(0.0254, 'thickness', 'us')).toBeCloseTo(1, 12);
  expect(toShown(-40, 'temperature', 'us')).toBeCloseTo(-40, 12);
  expect(toShown(100, 'temperature', 'us')).toBeCloseTo(212, 12);
  expect(toShown(1, 'temperatureStep', 'us')).toBeCloseTo(1.8, 12);
  expect(1 / toShown(1, 'uValue', 'us')).toBeCloseTo(5.678263, 5);
  expect(toSi(1, 'resistance', 'us')).toBeCloseTo(0.1761102, 6);
  expect(toShown(1, 'heatCapacity', 'us')).toBeCloseTo(1.895634, 5);
  expect(toSi(1, 'mass', 'us')).toBeCloseTo(907.1847, 4);
  expect(toSi(1, 'waterMass', 'us')).toBeCloseTo(3.785411784, 8);
  expect(toSi(1, 'speed', 'us')).toBeCloseTo(0.44704, 9);
  expect(toSi(1, 'flow', 'us')).toBeCloseTo(4.719474e-4, 9);
  expect(toSi(1, 'massPerArea', 'us')).toBeCloseTo(4.882428, 5);
  expect(1 / toShown(1, 'irradiance', 'us')).toBeCloseTo(3.154591, 5);
});

test('every quantity comes back from the screen as it went there, in every system', () => {
  const quantities = [...new Set(LIMITS.map(quantityOfLimit))];
  expect(quantities.length).toBeGreaterThan(8);
  fc.assert(
    fc.property(
      fc.constantFrom(...quantities),
      fc.constantFrom(...UNIT_SYSTEMS),
      fc.double({ min: -100, max: 2000, noNaN: true }),
      (quantity, system, value) => {
        expect(toSi(toShown(value, quantity, system), quantity, system)).toBeCloseTo(value, 8);
      },
    ),
  );
});

test('every number of a design has a unit in every system', () => {
  for (const limit of LIMITS) {
    for (const system of UNIT_SYSTEMS) expect(unitOf(quantityOfLimit(limit), system)).toBeDefined();
  }
});

test('lengths in feet are told to the inch, those of a design to a quarter of it, elevations in feet alone', () => {
  expect(quantityText(2.54, 'length', 'us')).toBe('8\u202fft\u202f4\u202fin');
  expect(quantityText(3.048, 'length', 'us')).toBe('10\u202fft');
  // 11.96 in is a foot, not 12 in.
  expect(quantityText(0.3038, 'length', 'us')).toBe('1\u202fft');
  expect(quantityText(0.1, 'length', 'us')).toBe('4\u202fin');
  expect(quantityText(0, 'length', 'us')).toBe('0\u202fft');
  expect(quantityText(1650, 'elevation', 'us')).toBe('5,413\u202fft');
  expect(quantityText(-2.54, 'length', 'us')).toBe('−8\u202fft\u202f4\u202fin');
  // 2.4 m are 94.488 in
  expect(quantityText(2.4, 'length', 'us', 2)).toBe('7\u202fft\u202f10½\u202fin');
  expect(fieldText(2.4, 'length', 'us', 2)).toBe('7 ft 10½ in');
  expect(fieldText(0.0127, 'length', 'us', 2)).toBe('½ in');
  expect(fieldText(400, 'length', 'us', 2)).toBe('1,312 ft 4 in');
  expect(fieldText(2.4, 'length', 'metric', 2)).toBe('2.40');
  expect(typedFeet('8 ft 4 in')).toBeCloseTo(2.54 / 0.3048, 9);
});

test('heat is told in kilowatt hours or as gas is billed, electricity never', () => {
  // NIST SP 811, appendix B: therm (US) 1.054 804 E+08 J; Btu (IT) 1.055 056 E+03 J.
  expect(toSi(1, 'energy', 'us-therms')).toBeCloseTo(29.30011, 5);
  expect(toSi(1, 'powerKW', 'us-therms')).toBeCloseTo(0.293071, 6);
  expect(quantityText(1593, 'energy', 'us')).toBe('1,593\u202fkWh');
  expect(wordingOf('us-therms').energy(1593)).toBe('54 therms');
  expect(wordingOf('us-therms').power(5000)).toBe('17.1 kBtu/h');
  expect(wordingOf('us-therms').electricity(200)).toBe('200 kWh');
});

test('thin layers are spoken of in centimetres or inches', () => {
  expect(quantityText(0.25, 'thickness', 'metric')).toBe('25\u202fcm');
  expect(quantityText(0.254, 'thickness', 'us')).toBe('10.0\u202fin');
});

test('numbers have a real minus sign, grouped thousands and no negative zero', () => {
  expect(numberText(-12.34, 1)).toBe('−12.3');
  expect(numberText(12345, 0)).toBe('12,345');
  expect(numberText(-0.04, 1)).toBe('0.0');
  expect(quantityText(4, 'resistance', 'us', 0)).toBe('R-23');
  expect(changeText(3, 'temperature', 'us', 0)).toBe('+5\u202f°F');
});

test('a typed number is read with comma or point, any dash, and nothing else', () => {
  expect(typedNumber('2,5')).toBe(2.5);
  expect(typedNumber(' 1 250.5 ')).toBe(1250.5);
  expect(typedNumber('1,250')).toBe(1250);
  expect(typedNumber('−3')).toBe(-3);
  for (const text of ['', '-', '2.5.1', 'two', '1e9', '0x10']) expect(typedNumber(text)).toBe(null);
});

test('feet and inches are taken as builders write them', () => {
  for (const text of [
    '7\' 10"',
    '7\'-10"',
    "7' 10",
    '7 10',
    '7 ft 10 in',
    '7ft10in',
    '7′10″',
    '94"',
    '7.8333333 ft',
    '94 inches',
  ])
    expect(typedFeet(text), text).toBeCloseTo(94 / 12, 5);
  for (const text of ['7 ft 10½ in', '7\' 10 1/2"', "7' 10.5''", '94 1/2 in', '94½"'])
    expect(typedFeet(text), text).toBeCloseTo(94.5 / 12, 5);
  expect(typedFeet('½"')).toBeCloseTo(0.5 / 12, 9);
  expect(typedFeet('7.87'), 'a bare number is read as one').toBeNull();
  for (const text of ['', '7 m', 'ft', '7 ft 10 ft', "7''10'", '7 14', '1 250', '7\' 10 11"'])
    expect(typedFeet(text), text).toBeNull();
});

test('what stands in a field in feet is read as the same length, to an eighth of an inch', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (metres) => {
      const feet = typedFeet(fieldText(metres, 'length', 'us', 2))!;
      expect(Math.abs(feet * 0.3048 - metres)).toBeLessThanOrEqual(0.0254 / 8 + 1e-9);
    }),
  );
});
