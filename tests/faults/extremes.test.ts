// Designs at the ends of what is allowed, in weather at the ends of what there is: each year is finite, bounded and
// closes its books. What no house can have is refused with a reason. Designs past the ends are refused by name before any run.
import { describe, expect, test } from 'vitest';
import { fittedDesign } from '../../src/app/state/design-fit.ts';
import { runYear } from '../../src/daystone.ts';
import type { Design } from '../../src/design/design.ts';
import { withValueAt } from '../../src/design/design-path.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { geometryOf } from '../../src/design/geometry.ts';
import { GLASS } from '../../src/design/glass-catalogue.ts';
import { describeDesignFault, parseDesign } from '../../src/design/schema.ts';
import { ImpossibleYear } from '../../src/outcomes/impossible-year.ts';
import { type PreparedClimate, prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { HOURS, type TypicalYear } from '../../src/weather/typical-year.ts';
import { faultsOfRun } from '../soak/sound-year.ts';

const closed = EXAMPLES.find(({ id }) => id === 'closed')!.design;

function changed(design: Design, values: Readonly<Record<string, unknown>>): Design {
  const entries = Object.entries(values);
  const next = entries.reduce((so, [path, value]) => withValueAt(so, path, value) as Design, design);
  return fittedDesign(next).design;
}

const DESIGNS: Readonly<Record<string, Design>> = {
  'as drawn': closed,
  'planted and open to the rooms': EXAMPLES.find(({ id }) => id === 'leaning')!.design,
  'no glass': changed(closed, {
    'glass.value': 0,
    'glass.otherShareOfFloor': 0,
    'sunspace.commonGlassM2': 0,
  }),
  'all glass': changed(closed, {
    'sunspace.lengthM': closed.house.equatorWallM,
    'glass.value': geometryOf(changed(closed, { 'sunspace.lengthM': closed.house.equatorWallM }))
      .largestGlassM2,
    'glass.type': GLASS[0]!.id,
    'glass.otherShareOfFloor': 0.3,
    'sunspace.endWalls': 'glazed',
    'sunspace.commonGlassM2': 30,
  }),
  'the least floor, 4 m²': changed(closed, {
    'house.equatorWallM': 2,
    'sunspace.lengthM': 2,
    'house.floorAreaM2': 4,
  }),
  'the largest floor, 2000 m²': changed(closed, { 'house.equatorWallM': 100, 'house.floorAreaM2': 2000 }),
  '5 m of rammed earth': changed(closed, {
    'mass.material': 'rammed-earth',
    'mass.thicknessM': 5,
    'mass.areaM2': 200,
    'envelope.wallLining': 'rammed-earth',
    'envelope.wallLiningM': 1.5,
    'sunspace.commonWallMaterial': 'rammed-earth',
    'sunspace.commonWallM': 1,
    'floor.material': 'rammed-earth',
    'floor.thicknessM': 1.5,
  }),
  'no insulation': changed(closed, {
    'envelope.wallResistance': 0.05,
    'envelope.roofResistance': 0.05,
    'floor.resistance': 0,
    'floor.edgeResistance': 0,
  }),
  'hundreds of air changes an hour': changed(closed, {
    'air.ach50': 40,
    'air.sunspaceAch50': 80,
    'air.shelter': 1,
    'vents.sunspaceM2': 100,
    'vents.houseM2': 60,
    'vents.stackM': 10,
    'vents.habit': 'automatic',
    'vents.opensAboveC': 15,
    'vents.nightPurgeAch': 30,
    'sunspace.doorM2': 23,
    'sunspace.doorRule': 'open',
  }),
};

/** Weather by hand: air as given, a clear sky that knows only where the sun stands. */
function weather(
  name: string,
  latitudeDeg: number,
  meanC: number,
  yearlyK: number,
  dailyK: number,
): PreparedClimate {
  const column = (of: (hour: number) => number) =>
    Float64Array.from({ length: HOURS }, (_, hour) => of(hour));
  const radians = Math.PI / 180;
  const sine = (hour: number) => {
    const declination = -23.44 * radians * Math.cos((2 * Math.PI * (hour / 24 + 10)) / 365);
    const angle = ((hour % 24) + 0.5 - 12) * 15 * radians;
    const latitude = latitudeDeg * radians;
    return (
      Math.sin(latitude) * Math.sin(declination) +
      Math.cos(latitude) * Math.cos(declination) * Math.cos(angle)
    );
  };
  const beam = (hour: number) => (sine(hour) > 0.02 ? 1000 * Math.exp(-0.12 / sine(hour)) : 0);
  const diffuse = (hour: number) => (sine(hour) > 0.02 ? 90 * Math.sqrt(sine(hour)) : 0);
  const air = (hour: number) =>
    meanC -
    Math.sign(latitudeDeg || 1) * yearlyK * Math.cos((2 * Math.PI * (hour / 24 - 20)) / 365) -
    dailyK * Math.cos((2 * Math.PI * ((hour % 24) - 3)) / 24);
  const year: TypicalYear = {
    site: { name, latitudeDeg, longitudeDeg: 0, elevationM: 0, utcOffsetH: 0 },
    id: 'made-up',
    source: 'made by hand',
    credit: 'nobody',
    monthYears: Array<number>(12).fill(2025),
    sunMinute: 'mean',
    dryBulbC: column(air),
    dewPointC: column((hour) => air(hour) - 6),
    pressurePa: column(() => 101_325),
    windSpeed: column((hour) => 3 + 12 * Math.max(0, Math.sin(hour / 37))),
    windFromDeg: column((hour) => (hour * 7) % 360),
    globalHorizontal: column((hour) => beam(hour) * Math.max(0, sine(hour)) + diffuse(hour)),
    beamNormal: column(beam),
    diffuseHorizontal: column(diffuse),
    skyCover: column(() => 0.1),
    skyLongwave: null,
    albedo: null,
    rainMm: null,
    notes: [],
  };
  return prepareClimate(year);
}

const CLIMATES = [
  weather('polar night, −50 °C in winter', 82, -22, 26, 2),
  weather('the equator at noon', 0, 27, 1, 6),
  weather('−50 °C all year', -75, -50, 0, 0),
  weather('50 °C all year', 25, 44, 4, 2),
  weather('50 °C and damp, south', -25, 46, 3, 1),
];

describe.each(Object.entries(DESIGNS))('%s', (_, design) => {
  test('is a design', () => {
    expect(parseDesign(design)).toEqual({ ok: true, design });
  });

  test.each(CLIMATES.map((climate) => [climate.year.site.name, climate] as const))(
    'in %s',
    (_name, climate) => {
      const { year, outcome } = runYear(design, climate);
      expect(faultsOfRun(year, outcome)).toEqual([]);
    },
  );
});

test('a cupboard with ten kilowatts in it is refused, with what it would reach', () => {
  const oven = changed(DESIGNS['the least floor, 4 m²']!, {
    'sunspace.join': 'none',
    'glass.value': 0,
    'glass.otherShareOfFloor': 0,
    'people.appliancesW': 10_000,
    'envelope.wallResistance': 15,
    'envelope.roofResistance': 20,
    'vents.houseM2': 0,
    'air.ach50': 0.1,
  });
  expect(() => runYear(oven, CLIMATES[3]!).outcome).toThrow(ImpossibleYear);
  expect(() => runYear(oven, CLIMATES[3]!).outcome).toThrow(
    /air of the house would reach \d+ °C; allowed: -90 to 150 °C/,
  );
});

test('past the ends a design is refused with the number, its value and what is allowed', () => {
  for (const [path, value, allowed] of [
    ['house.floorAreaM2', 1, '4 to 2000'],
    ['house.floorAreaM2', 10_000, '4 to 2000'],
    ['air.ach50', 200, '0.1 to 40'],
    ['vents.nightPurgeAch', 200, '0 to 30'],
    ['mass.thicknessM', 5.01, '0.01 to 5'],
    ['envelope.wallResistance', 0, '0.05 to 15'],
    ['glass.value', 601, '0 to 600'],
  ] as const) {
    const result = parseDesign(withValueAt(closed, path, value));
    if (result.ok) throw new Error(`${path} ${value} was accepted`);
    expect(describeDesignFault(result.faults[0]!)).toContain(`${path} is ${value}; allowed: `);
    expect(describeDesignFault(result.faults[0]!)).toContain(allowed);
  }
});
