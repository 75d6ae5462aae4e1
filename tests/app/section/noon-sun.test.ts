import { expect, test } from 'vitest';
import { noonSuns, profileAngleDeg } from '../../../src/app/section/noon-sun.ts';
import { sunPosition } from '../../../src/physics/sun-position.ts';

test('noon elevations agree with the sun itself on the three days, north and south', () => {
  // The sun's own position (checked against SPA in tests/published) at the minute of the day it stands highest;
  // 0.1° covers the equinox falling hours from noon and the solstice plateau.
  for (const latitude of [39.8, 60, -38.3, -55]) {
    for (const { label, elevationDeg } of noonSuns(latitude, 0)) {
      const [month, day] = label === 'equinox' ? [2, 20] : label === '21 June' ? [5, 21] : [11, 21];
      let highest = -90;
      for (let minute = 0; minute < 1440; minute += 2) {
        const instant = Date.UTC(2025, month, day, 0, minute);
        highest = Math.max(highest, sunPosition(instant, latitude, 0).elevationDeg);
      }
      expect(Math.abs(highest - elevationDeg), `${latitude} ${label}`).toBeLessThan(
        label === 'equinox' ? 0.25 : 0.1,
      );
    }
  }
});

test('the high sun is June in the north and December in the south', () => {
  expect(noonSuns(40, 0)[0]).toMatchObject({ label: '21 June' });
  expect(noonSuns(-40, 0)[0]).toMatchObject({ label: '21 December' });
  expect(noonSuns(-40, 0)[0]!.elevationDeg).toBeCloseTo(noonSuns(40, 0)[0]!.elevationDeg, 12);
});

test('turning the front steepens the profile angle by 1/cos of the turn', () => {
  expect(profileAngleDeg(30, 0)).toBeCloseTo(30, 10);
  expect(Math.tan((profileAngleDeg(30, 40) * Math.PI) / 180)).toBeCloseTo(
    Math.tan(Math.PI / 6) / Math.cos((40 * Math.PI) / 180),
    10,
  );
  expect(profileAngleDeg(100, 0)).toBeCloseTo(100, 10);
});
