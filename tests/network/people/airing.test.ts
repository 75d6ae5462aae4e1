// An airing takes the heat and the water of the air it changes and no more: a room of air alone, warmed and wetted at night
// and aired at noon, against the closed form of a well-mixed volume, 1 − e⁻ⁿ of n air changes.
import { describe, expect, test } from 'vitest';
import type { Airing, Model } from '../../../src/model/model.ts';
import { simulate } from '../../../src/network/simulate.ts';
import { GAS_CONSTANT_AIR, ROOM_AIR_K } from '../../../src/physics/constants.ts';
import { humidityRatio, saturationPressure } from '../../../src/physics/moist-air.ts';
import { madeClimate } from '../../outcomes/made-climate.ts';

const NOON = 12;
const OUTDOOR_C = -10;
const VOLUME_M3 = 60;
const DAY = 40;

const atNight = (value: number) => ({
  workday: Array.from({ length: 24 }, (_, hour) => (hour < 3 ? value : 0)),
});

/** Air between walls that take neither heat nor water; the floor is there because a zone needs one, and does next to nothing. */
function room(windowM2: number, airing: Airing, control: 'automatic' | 'attentive' = 'automatic'): Model {
  return {
    name: 'a volume of air',
    zones: [
      {
        id: 'room',
        floorAreaM2: 20,
        volumeM3: VOLUME_M3,
        furnitureCapacity: 0,
        furnitureMoisture: 0,
        thermostat: null,
        gains: [{ id: 'warmth', power: atNight(150), radiantShare: 0 }],
        moisture: [{ cause: 'steam', rate: atNight(60) }],
        planting: null,
        people: null,
        cornerFactor: 0.8,
      },
    ],
    elements: [
      {
        id: 'floor',
        areaM2: 1e-3,
        layers: [{ name: 'board', thicknessM: 0.01, conductivity: 0.1, density: 1, specificHeat: 1000 }],
        a: { kind: 'adiabatic' },
        b: {
          kind: 'zone',
          zone: 'room',
          absorptance: 0.6,
          emissivity: 0.9,
          film: { kind: 'computed' },
          lit: 'floor',
          faceTiltDeg: 0,
        },
      },
    ],
    panes: [],
    openings: [
      {
        id: 'window',
        kind: 'vent',
        zone: 'room',
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
  };
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
