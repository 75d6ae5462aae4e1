// Sun and night loss of the glass by month, against the run's own books where nothing but the glass can lose heat
// through glass: no sun, no frames, no other windows.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { simulate } from '../../src/network/simulate.ts';
import { frontGlassOf } from '../../src/questions/front-glass.ts';
import { varied } from '../../src/questions/variation.ts';
import { madeClimate } from '../outcomes/made-climate.ts';

/** Between our sum of room to pane and the books' pane to outdoors: the room's shape in the exchange, hourly means. */
const ALLOWED = 0.1;

// The sun never rises: every hour is a dark one.
const night = new Float64Array(8760);
const dark = {
  ...madeClimate({ dryBulbC: (hour) => 2 + 6 * Math.sin(hour / 40) }),
  cosZenith: night,
  sunUp: night,
};

test.each([
  [90, 0],
  [60, 0],
  [90, 0.8],
])(
  'in a year without sun the loss of glass at %i° with night insulation %d is what the books say',
  (tiltDeg, nightResistance) => {
    const design = varied(EXAMPLES[2]!.design, {
      'glass.tiltDeg': tiltDeg,
      'glass.frameShare': 0,
      'glass.otherShareOfFloor': 0,
      'glass.nightResistance': nightResistance,
    });
    const model = modelOf(design, dark.year.site, dark.ground);
    const year = simulate(model, dark);
    const { incidentKWh, transmittedKWh, nightLossKWh } = frontGlassOf(model, dark, year);
    expect(incidentKWh).toEqual(new Array(12).fill(0));
    expect(transmittedKWh).toEqual(new Array(12).fill(0));
    const ofHouse = (name: string) =>
      year.heat.find(({ zone, cause }) => zone === 'house' && cause === name)!;
    const glass = ofHouse('glass');
    // Dew gives the pane its latent heat, which the room never felt.
    const dew = ofHouse('evaporation and dew');
    nightLossKWh.forEach((kWh, month) => {
      const lostKWh = (-glass.monthJ[month]! - dew.monthJ[month]!) / 3.6e6;
      expect(Math.abs(kWh / lostKWh - 1)).toBeLessThan(ALLOWED);
    });
  },
);

test('sun by month adds up to the sun of the year', () => {
  const sunny = madeClimate({
    globalHorizontal: (hour) => Math.max(0, 600 * Math.sin(((hour % 24) - 6) / 3.82)),
  });
  const { design } = EXAMPLES[2]!;
  const model = modelOf(design, sunny.year.site, sunny.ground);
  const year = simulate(model, sunny);
  const { transmittedKWh } = frontGlassOf(model, sunny, year);
  const fronts = year.panes.filter(({ id }) => id.startsWith('front'));
  const all = fronts.reduce((sum, { transmittedW }) => sum + transmittedW.reduce((a, b) => a + b, 0), 0);
  expect(transmittedKWh.reduce((sum, kWh) => sum + kWh, 0)).toBeCloseTo(all / 1000, 6);
  expect(all).toBeGreaterThan(0);
});
