// Whole runs of a small house: what must hold whatever the numbers are. No sun gives no solar gain, no glass gives no
// light, a finer step changes little, the other hemisphere is the mirror image, an even world stays even.
import { describe, expect, test } from 'vitest';
import { requireModel } from '../../src/model/check-model.ts';
import type { Model } from '../../src/model/model.ts';
import { USUAL_CAPACITY } from '../../src/network/layout/engine-capacity.ts';
import { simulate } from '../../src/network/simulate.ts';
import type { Year } from '../../src/network/year.ts';
import { type PreparedClimate, prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { HOURS, type TypicalYear } from '../../src/weather/typical-year.ts';
import { madeClimate } from '../outcomes/made-climate.ts';
import { bundledClimate, bundledYear } from '../weather/bundled-climates.ts';
import { smallHouse } from './small-house.ts';

const north = bundledYear('santa-fe');
const climate = bundledClimate('santa-fe');
const dark = prepareClimate({
  ...north,
  globalHorizontal: new Float64Array(HOURS),
  beamNormal: new Float64Array(HOURS),
  diffuseHorizontal: new Float64Array(HOURS),
});

/** The small house's year, run once for all tests. */
let known: Year | null = null;
function smallYear(): Year {
  known ??= simulate(smallHouse(), climate);
  return known;
}

const mean = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0) / values.length;
const largest = (a: Float64Array, b: Float64Array) =>
  a.reduce((worst, value, i) => Math.max(worst, Math.abs(value - b[i]!)), 0);
const causeJ = (year: Year, cause: string) =>
  year.heat
    .filter((entry) => entry.cause === cause)
    .reduce((sum, { monthJ }) => sum + monthJ.reduce((a, b) => a + b, 0), 0);

test('the small house is a model the checks accept', () => {
  expect(() => requireModel(smallHouse())).not.toThrow();
});

describe('no light', () => {
  test('a year without sun has no solar gain, and its books close', () => {
    const year = simulate(smallHouse(), dark);
    for (const zone of year.zones) expect(Math.max(...zone.solarW)).toBe(0);
    for (const pane of year.panes) expect(Math.max(...pane.transmittedW)).toBe(0);
    expect(Math.abs(year.books.heatResidual)).toBeLessThan(1e-9);
    expect(Math.abs(year.books.waterResidual)).toBeLessThan(1e-9);
  });

  test('a house without glass gets no light inside, and its books close', () => {
    const year = simulate(smallHouse({ glass: false }), climate);
    expect(year.panes).toHaveLength(0);
    for (const zone of year.zones) expect(Math.max(...zone.solarW)).toBe(0);
    expect(Math.abs(causeJ(year, 'sun'))).toBeLessThan(1);
    expect(Math.abs(year.books.heatResidual)).toBeLessThan(1e-9);
    expect(Math.abs(year.books.waterResidual)).toBeLessThan(1e-9);
  });

  test('the sun of a year is what the panes pass and absorb: more glass, more of it, in proportion', () => {
    const year = smallYear();
    const passed = year.panes.reduce((sum, pane) => sum + mean(pane.transmittedW), 0);
    const gained = year.zones.reduce((sum, zone) => sum + mean(zone.solarW), 0);
    // Some leaves again through the glass; some is absorbed in the glass itself.
    expect(gained).toBeGreaterThan(0.9 * passed);
    expect(gained).toBeLessThan(1.35 * passed);
    expect(causeJ(year, 'sun') / 3600 / HOURS).toBeLessThan(gained * 1.001);
  });
});

describe('steps', () => {
  test.each([
    // What the water leaves: its latent heat reaches the air one step late.
    ['with plants', true, 0.04],
    ['without plants', false, 0.01],
  ] as const)(
    'halving the step changes mean temperatures little and back-up heat by under 0.5 %%, %s',
    (_, planted, allowedK) => {
      const [four, eight] = [4, 8].map((stepsPerHour) =>
        simulate(smallHouse({ moved: false, planted }), climate, { stepsPerHour }),
      ) as [Year, Year];
      four.zones.forEach((zone, z) => {
        expect(Math.abs(mean(zone.airC) - mean(eight.zones[z]!.airC))).toBeLessThan(allowedK);
      });
      const heating = (year: Year) => mean(year.zones[0]!.heatingW);
      expect(Math.abs(heating(four) / heating(eight) - 1)).toBeLessThan(0.005);
    },
  );

  test('with vents and a door that people move, halving changes hours above 26 °C and back-up heat by under 1 %', () => {
    const [four, eight] = [4, 8].map((stepsPerHour) => simulate(smallHouse(), climate, { stepsPerHour })) as [
      Year,
      Year,
    ];
    four.zones.forEach((zone, z) => {
      const finer = eight.zones[z]!;
      expect(Math.abs(mean(zone.airC) - mean(finer.airC))).toBeLessThan(0.03);
      const hot = (values: Float64Array) => values.filter((value) => value > 26).length;
      expect(hot(finer.operativeC)).toBeGreaterThan(1000);
      expect(Math.abs(hot(zone.operativeC) / hot(finer.operativeC) - 1)).toBeLessThan(0.01);
    });
    const heating = (year: Year) => mean(year.zones[0]!.heatingW);
    expect(Math.abs(heating(four) / heating(eight) - 1)).toBeLessThan(0.01);
  });

  test('two runs of one model are the same to the last digit', () => {
    const [a, b] = [smallYear(), simulate(smallHouse(), climate)];
    a.zones.forEach((zone, z) => {
      expect(zone.airC).toEqual(b.zones[z]!.airC);
      expect(zone.relativeHumidity).toEqual(b.zones[z]!.relativeHumidity);
    });
  });
});

describe('the engine', () => {
  const bare = (model: Model): Model => ({
    ...model,
    zones: model.zones.slice(0, 1),
    elements: inHouse(model),
    panes: [],
    openings: [],
  });
  const inHouse = (model: Model) =>
    model.elements.filter(({ a, b }) => b.zone === 'house' && a.kind !== 'zone');

  test('a run leaves nothing behind that the next one could feel', () => {
    simulate(bare(smallHouse({ equatorDeg: 0 })), climate, { stepsPerHour: 7, history: true });
    simulate(smallHouse({ planted: false, heated: false }), climate, { water: false });
    expect(simulate(smallHouse(), climate)).toEqual(smallYear());
  });

  test('a model with more of everything than the engine holds runs the same year', () => {
    const house = smallHouse({ moved: false });
    // The house's floor in slices, few or many, each too different in its ground to share a chain with its neighbours. Films
    // of its own, since computed ones depend on the size of a face.
    const whole = house.elements.find(({ id }) => id === 'house floor')!;
    const floor = {
      ...whole,
      b: { ...whole.b, film: { kind: 'fixed', convection: 2, radiation: 5 } as const },
    };
    const others = house.elements.filter((element) => element !== whole);
    const slicedIn = (count: number) => ({
      ...house,
      elements: [
        ...others,
        ...Array.from({ length: count }, (_, i) => ({
          ...floor,
          id: `slice ${i}`,
          areaM2: floor.areaM2 / count,
          a: floor.a.kind === 'ground' ? { ...floor.a, resistance: floor.a.resistance + i * 1e-12 } : floor.a,
        })),
      ],
    });
    const [model, many] = [slicedIn(16), slicedIn(USUAL_CAPACITY.chains + 1)];
    const [one, other] = [simulate(model, climate), simulate(many, climate)];
    // Not to the last digit: slices have exchange areas with each other, a few with fewer than many.
    for (const [z, zone] of one.zones.entries()) {
      expect(largest(zone.airC, other.zones[z]!.airC)).toBeLessThan(0.02);
    }
    expect(other.books.heatResidual).toBeLessThan(1e-9);
    expect(simulate(model, climate)).toEqual(one);
  });

  test('walls that share a chain give the air they gave with a chain each, within 0.03 K', () => {
    const model = smallHouse({ moved: false });
    const apart = {
      ...model,
      elements: model.elements.map((element) => ({
        ...element,
        layers: element.layers.map((layer) => ({ ...layer, name: `${layer.name} of ${element.id}` })),
      })),
    };
    const [together, each] = [simulate(model, climate), simulate(apart, climate)];
    expect(together.nodes).toBeLessThan(each.nodes);
    together.zones.forEach((zone, z) => {
      expect(Math.abs(mean(zone.airC) - mean(each.zones[z]!.airC))).toBeLessThan(0.03);
    });
    const heating = (year: Year) => mean(year.zones[0]!.heatingW);
    expect(Math.abs(heating(together) / heating(each) - 1)).toBeLessThan(0.005);
  });
});

describe('the other hemisphere', () => {
  test('a house turned to the other pole under a sun turned with it lives the same year', () => {
    const turned: PreparedClimate = {
      ...climate,
      sunNorth: climate.sunNorth.map((value) => -value),
      sunAzimuthDeg: climate.sunAzimuthDeg.map((value) => (540 - value) % 360),
    };
    // East stays east: the morning wall of a house that faces north lies on the other hand.
    const model = smallHouse({ equatorDeg: 0, moved: false, planted: false });
    const mirrored = {
      ...model,
      elements: model.elements.map((element) =>
        element.a.kind === 'outdoors'
          ? { ...element, a: { ...element.a, azimuthDeg: (360 - element.a.azimuthDeg) % 360 } }
          : element,
      ),
    };
    const here = simulate(smallHouse({ moved: false, planted: false }), climate);
    const there = simulate(mirrored, turned);
    here.zones.forEach((zone, z) => {
      expect(largest(zone.airC, there.zones[z]!.airC)).toBeLessThan(1e-6);
      expect(largest(zone.solarW, there.zones[z]!.solarW)).toBeLessThan(1e-6);
    });
  });

  test('the same weather half a year later at the southern latitude gives nearly the same year', () => {
    const south = prepareClimate(mirroredYear(north));
    const here = simulate(smallHouse({ equatorDeg: 180, moved: false }), climate);
    const there = simulate(smallHouse({ equatorDeg: 0, moved: false }), south);
    // The sun is not its own mirror image: the southern summer half is a week shorter, so the sun stands up to 2° lower
    // about the equinoxes and upright glass gets 2 % more of it, 4 % through the glass; the test above is the exact one.
    here.zones.forEach((zone, z) => {
      const other = there.zones[z]!;
      expect(Math.abs(mean(zone.airC) - mean(other.airC))).toBeLessThan(0.5);
      expect(Math.abs(mean(zone.solarW) / mean(other.solarW) - 1)).toBeLessThan(0.05);
    });
    const heating = (year: Year) => mean(year.zones[0]!.heatingW);
    expect(Math.abs(heating(here) / heating(there) - 1)).toBeLessThan(0.1);
    // Seasons change places.
    const january = (year: Year) => mean(year.zones[1]!.airC.subarray(0, 744));
    const july = (year: Year) => mean(year.zones[1]!.airC.subarray(4344, 5088));
    expect(Math.abs(january(here) - july(there))).toBeLessThan(1);
  });
});

test('an even world stays even: 15 °C in, around and under a house without sun or gains', () => {
  const still = madeClimate({ dryBulbC: 15, dewPointC: 5 });
  const even = { ...still, skyTempC: new Float64Array(HOURS).fill(15) };
  const model = smallHouse({ heated: false, planted: false });
  const year = simulate(
    {
      ...model,
      zones: model.zones.map((zone) => ({ ...zone, gains: [], moisture: [] })),
      elements: model.elements.map((element) =>
        element.a.kind === 'ground'
          ? { ...element, a: { ...element.a, wave: { meanC: 15, amplitudeK: 0, coldestDay: 0 } } }
          : element,
      ),
    },
    even,
    { warmUpDays: 365 },
  );
  for (const zone of year.zones) {
    expect(Math.max(...zone.airC)).toBeLessThan(15.01);
    expect(Math.min(...zone.airC)).toBeGreaterThan(14.99);
  }
});

/** Whole days, so that hours of the day stay; 184 brings both equinoxes nearest. */
const SHIFT_DAYS = 184;

/** The year at the southern latitude: every column 184 days later. */
function mirroredYear(year: TypicalYear): TypicalYear {
  const later = (values: Float64Array) =>
    Float64Array.from({ length: HOURS }, (_, hour) => values[(hour + SHIFT_DAYS * 24) % HOURS]!);
  return {
    ...year,
    site: { ...year.site, latitudeDeg: -year.site.latitudeDeg },
    id: 'mirrored',
    monthYears: new Array<number>(12).fill(2001),
    dryBulbC: later(year.dryBulbC),
    dewPointC: later(year.dewPointC),
    pressurePa: later(year.pressurePa),
    windSpeed: later(year.windSpeed),
    windFromDeg: later(year.windFromDeg),
    globalHorizontal: later(year.globalHorizontal),
    beamNormal: later(year.beamNormal),
    diffuseHorizontal: later(year.diffuseHorizontal),
    skyCover: later(year.skyCover),
    skyLongwave: year.skyLongwave && later(year.skyLongwave),
    albedo: year.albedo && later(year.albedo),
  };
}
