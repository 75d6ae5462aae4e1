// An airing takes the heat and the water of the air it changes and no more: a room of air alone, warmed and wetted at night
// and aired at noon, against the closed form of a well-mixed volume, 1 − e⁻ⁿ of n air changes.
import { describe, expect, test } from 'vitest';
import type { Airing, Model } from '../../../src/model/model.ts';
import { airedHeat, airingLengthened } from '../../../src/network/people/airing.ts';
import { simulate } from '../../../src/network/simulate.ts';
import { GAS_CONSTANT_AIR, ROOM_AIR_K } from '../../../src/physics/constants.ts';
import { humidityRatio, saturationPressure } from '../../../src/physics/moist-air.ts';
import { madeClimate } from '../../outcomes/made-climate.ts';
import { boxModel } from '../box-model.ts';

const NOON = 12;
const OUTDOOR_C = -10;
const VOLUME_M3 = 60;
const DAY = 40;

const atNight = (value: number) => ({
  workday: Array.from({ length: 24 }, (_, hour) => (hour < 3 ? value : 0)),
});

/** Air between walls that take neither heat nor water; the floor is there because a zone needs one, and does next to nothing. */
function room(windowM2: number, airing: Airing, control: 'automatic' | 'attentive' = 'automatic'): Model {
  return boxModel({
    zone: {
      volumeM3: VOLUME_M3,
      gains: [{ id: 'warmth', power: atNight(150), radiantShare: 0 }],
      moisture: [{ cause: 'steam', rate: atNight(60) }],
    },
    floor: {
      areaM2: 1e-3,
      layers: [{ name: 'board', thicknessM: 0.01, conductivity: 0.1, density: 1, specificHeat: 1000 }],
    },
    openings: [
      {
        id: 'window',
        kind: 'vent',
        zone: 'house',
        lowM2: windowM2,
        highM2: 0,
        stackM: 0,
        openingHeightM: 1,
        discharge: 0.61,
        windCoefficient: 0,
        rule: {
          opensAboveC: 90,
          bandK: 3,
          onlyWhileOutside: 'cooler',
          opens: 'by-degrees',
          schedule: { workday: new Array<number>(24).fill(1) },
          shutAboveWind: 15,
          shutInRain: true,
        },
        control,
        airing,
      },
    ],
  });
}

const BY_HABIT: Airing = { minutes: 10, hours: [NOON], byHabit: true };
const climate = madeClimate({ dryBulbC: OUTDOOR_C, dewPointC: -15 });

const ratioOf = (humidity: number, airC: number) =>
  humidityRatio(humidity * saturationPressure(airC), 83_500);
const OUTDOOR_RATIO = ratioOf(1, -15);

function kept(model: Model, stepsPerHour?: number) {
  const year = simulate(model, climate, stepsPerHour === undefined ? {} : { stepsPerHour });
  const { airC, relativeHumidity } = year.zones[0]!;
  const before = DAY * 24 + NOON - 1;
  const after = DAY * 24 + NOON + 1;
  const beyond = (hour: number) => ratioOf(relativeHumidity[hour]!, airC[hour]!) - OUTDOOR_RATIO;
  return {
    year,
    heat: (airC[after]! - OUTDOOR_C) / (airC[before]! - OUTDOOR_C),
    water: beyond(after) / beyond(before),
    // Air changes by mass: outdoor air is the denser.
    changes:
      (year.openings[0]!.flow.subarray(DAY * 24, DAY * 24 + 24).reduce((sum, flow) => sum + flow, 0) *
        3600 *
        climate.airDensity[0]!) /
      (VOLUME_M3 * (climate.year.pressurePa[0]! / (GAS_CONSTANT_AIR * ROOM_AIR_K))),
  };
}

describe('an airing of a room of air', () => {
  // Heat: the step's exponential is a fit, 0.0002 off here, and the floor takes next to nothing. Water: exact but for round-off.
  const HEAT = 5e-4;
  const WATER = 1e-6;

  test('with a large window is over after 1.2 air changes, and leaves e⁻¹·² of heat and water', () => {
    for (const stepsPerHour of [undefined, 4, 60]) {
      const { heat, water, changes } = kept(room(4, BY_HABIT), stepsPerHour);
      expect(changes).toBeCloseTo(1.2, 6);
      expect(Math.abs(heat - Math.exp(-1.2))).toBeLessThan(HEAT);
      expect(Math.abs(water - Math.exp(-1.2))).toBeLessThan(WATER);
    }
  });

  test('with a small one leaves e⁻ⁿ of as many changes as the window lets through in ten minutes', () => {
    const { heat, water, changes } = kept(room(0.4, BY_HABIT));
    expect(changes).toBeGreaterThan(0.2);
    expect(changes).toBeLessThan(1);
    expect(Math.abs(heat - Math.exp(-changes))).toBeLessThan(HEAT);
    expect(Math.abs(water - Math.exp(-changes))).toBeLessThan(WATER);
  });

  test('closes the books of heat and water', () => {
    const { year } = kept(room(4, BY_HABIT));
    expect(year.books.heatResidual).toBeLessThan(1e-9);
    expect(year.books.waterResidual).toBeLessThan(1e-9);
  });

  test('costs a person two moves a day by habit, and none where the air asks for nothing', () => {
    const byHabit = kept(room(4, BY_HABIT, 'attentive')).year.openings[0]!;
    expect(byHabit.airings).toBe(365);
    expect(byHabit.moves).toBe(730);
    expect([...byHabit.open].filter((share) => share > 0)).toHaveLength(365);
    const dry = kept(room(4, { ...BY_HABIT, byHabit: false })).year.openings[0]!;
    expect(dry.airings).toBe(0);
  });

  test('is done for damp alone where outdoors is drier', () => {
    const forDamp: Airing = { ...BY_HABIT, byHabit: false };
    const wet = room(4, forDamp);
    const steaming: Model = {
      ...wet,
      zones: [{ ...wet.zones[0]!, gains: [], moisture: [{ cause: 'steam', rate: atNight(2) }] }],
    };
    const { zones, openings } = kept(steaming).year;
    let aired = 0;
    for (let noon = NOON; noon < 8760; noon += 24) {
      // A zone without people or heater is aired above 85 %, where outdoors holds 0.5 g/kg less; nothing moves before noon.
      const { airC, relativeHumidity } = zones[0]!;
      const humidity = relativeHumidity[noon - 1]!;
      const drier = ratioOf(humidity, airC[noon - 1]!) - OUTDOOR_RATIO;
      expect(openings[0]!.open[noon]! > 0).toBe(humidity > 0.85 && drier > 0.0005);
      if (openings[0]!.open[noon]! > 0) aired++;
    }
    expect(aired).toBeGreaterThan(30);
    expect(aired).toBeLessThan(335);
  });
});

// Air and furniture as two volumes of heat, the furniture warming the air by 9 W/(m²K) of floor: dT/dt = −m T − g (T − F),
// dF/dt = g (T − F)/c above outdoors. Closed form by the two roots of the system.
function keptOfTwo(m: number, g: number, c: number, seconds: number): number {
  const [a, b] = [m + g, g / c];
  const half = (a + b) / 2;
  const root = Math.sqrt(half * half - (a * b - (g * g) / c));
  const [slow, fast] = [half - root, half + root];
  // Both begin at 1; the air's slope is −m.
  const atSlow = (fast - m) / (fast - slow);
  const air = (t: number) => atSlow * Math.exp(-slow * t) + (1 - atSlow) * Math.exp(-fast * t);
  const slope = (t: number) =>
    -atSlow * slow * Math.exp(-slow * t) - (1 - atSlow) * fast * Math.exp(-fast * t);
  // From the air's own equation.
  const furniture = (slope(seconds) + a * air(seconds)) / g;
  return (air(seconds) + c * furniture) / (1 + c);
}

describe('an airing of a furnished room', () => {
  const floorM2 = 20;
  const airJ = VOLUME_M3 * (climate.year.pressurePa[0]! / (GAS_CONSTANT_AIR * ROOM_AIR_K)) * 1006;
  const warmed = (9 * floorM2) / airJ;

  test.each([5_000, 20_000, 80_000])(
    'with %i J/K by m² takes the heat of two volumes, to 3 % of it',
    (jouleByM2) => {
      const bare = room(4, BY_HABIT);
      const furnished: Model = {
        ...bare,
        zones: [{ ...bare.zones[0]!, furnitureCapacity: jouleByM2 * floorM2 }],
      };
      const { heat, changes } = kept(furnished);
      const exact = keptOfTwo(changes / 600, warmed, (jouleByM2 * floorM2) / airJ, 600);
      expect(1 - heat).toBeLessThan(1.03 * (1 - exact));
      expect(1 - heat).toBeGreaterThan(0.97 * (1 - exact));
    },
  );

  test('takes less than as much air at the temperature of the room would, and all of it where there is no furniture', () => {
    expect(airedHeat(0.002, warmed, 0, 600)).toBeCloseTo(1, 12);
    // Without walls or furniture that warm it, 1 − e⁻ⁿ of the air's own heat, over n.
    expect(airedHeat(0.002, 1e-12, 1e9, 600)).toBeCloseTo((1 - Math.exp(-1.2)) / 1.2, 6);
    expect(airedHeat(0.002, 1e3, 7, 600)).toBeCloseTo(1, 4);
  });

  test('goes on for up to three times its minutes where the window is small, by habit by the clock', () => {
    const forDamp = { ...BY_HABIT, byHabit: false };
    expect(airingLengthened(forDamp, 1.2 / 600)).toBeCloseTo(1, 12);
    expect(airingLengthened(forDamp, 1.2 / 1200)).toBeCloseTo(2, 12);
    expect(airingLengthened(forDamp, 1e-9)).toBe(3);
    expect(airingLengthened(BY_HABIT, 1e-9)).toBe(1);
  });
});
