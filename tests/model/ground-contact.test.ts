// Series resistance of floors and bermed walls against ISO 13370 (formulas from memory, high confidence; its table of
// uninsulated slabs as CIBSE Guide A prints it), the soil that stands for it, and the yearly wave behind. How near both
// come to the ground: tests/published/ground-section.test.ts.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { slabOnGround, wallInGround } from '../../src/model/ground-contact.ts';
import { insulationOf, layerOf, resistanceOf } from '../../src/model/layers.ts';
import type { GroundFace } from '../../src/model/model.ts';
import { GROUNDS, periodicDepth, slabUValue } from '../../src/physics/ground-floor.ts';
import { contactResponse, UNIT_YEAR } from '../reference/contact-response.ts';
import { YEAR_S } from '../reference/ground-stored.ts';
import { NORTH, SOUTH, WAVE } from './sites.ts';

const FLOOR_FILM = 0.17;
const WALL_FILM = 0.13;

/** U of film, construction, soil and rest in series [W/(m²K)]. */
function seriesUValue(film: number, layers: Parameters<typeof resistanceOf>[0], face: GroundFace): number {
  return 1 / (film + resistanceOf(layers) + face.resistance);
}

/** Perimeter ÷ area → U of an uninsulated slab on clay, wall 0.3 m, as printed; a digit of rounding allowed. */
const PRINTED = [
  [0.1, 0.22],
  [0.2, 0.37],
  [0.3, 0.49],
  [0.5, 0.7],
  [1.0, 1.05],
] as const;

test('an uninsulated slab in series, soil and all, has the printed U-value', () => {
  for (const [ratio, printed] of PRINTED) {
    const plan = { areaM2: 100, perimeterM: 100 * ratio, wallThicknessM: 0.3 };
    const { soil, face, uValue } = slabOnGround(plan, [], 0, WAVE);
    const series = seriesUValue(FLOOR_FILM, soil, face);
    expect(soil.length).toBeGreaterThan(3);
    expect(Math.abs(series - printed), `P/A ${ratio}`).toBeLessThan(0.006);
    expect(series).toBeCloseTo(uValue, 12);
  }
});

test('an insulated slab in series has the worked U-value', () => {
  // A 100, P 40, w 0.3, clay, R 3: 0.203, worked by hand from the formula
  const layers = insulationOf(3, 'xps');
  const { soil, face } = slabOnGround({ areaM2: 100, perimeterM: 40, wallThicknessM: 0.3 }, layers, 0, WAVE);
  expect(Math.abs(seriesUValue(FLOOR_FILM, [...soil, ...layers], face) - 0.203)).toBeLessThan(0.001);
});

test('the floor element of every undivided example is that series: soil, construction and a rest without mass', () => {
  const undivided = EXAMPLES.filter(({ design }) => design.rooms === undefined);
  expect(undivided).toHaveLength(3);
  for (const { design } of undivided) {
    const bareEdge = { ...design, floor: { ...design.floor, edgeResistance: 0 } };
    const { elements } = modelOf(bareEdge, NORTH, WAVE);
    const floor = elements.find(({ id }) => id === 'floor')!;
    const wall = elements.find(({ id }) => /^pole wall/.test(id))!;
    const built = floor.layers.filter(({ name }) => !/soil/i.test(name));
    expect(floor.layers.slice(0, -built.length).every(({ name }) => /soil/i.test(name))).toBe(true);
    const isOpen = design.sunspace.join === 'open';
    const plan = {
      areaM2: 110,
      perimeterM: 2 * (13.5 + 110 / 13.5) - (isOpen ? 13.5 : 0),
      wallThicknessM: wall.layers
        .filter(({ name }) => !/soil/i.test(name))
        .reduce((sum, { thicknessM }) => sum + thicknessM, 0),
      floorResistance: resistanceOf(built),
      // Only the leaning example has earth, all of its other three walls high.
      ...(design.envelope.bermShare > 0 ? { berm: { heightM: 2.6, share: 1 } } : {}),
    };
    const iso = slabUValue(plan, GROUNDS.clay);
    expect(seriesUValue(FLOOR_FILM, floor.layers, floor.a as GroundFace)).toBeCloseTo(iso, 12);
  }
});

test('a wall against earth in series has the basement wall U-value', () => {
  // z 2.5, λ 1.5, d 0.615 (w 0.3, bare floor), Rw 2.5: dw = 1.5 (0.13 + 2.5 + 0.04) = 4.005;
  // U = 3/(2.5 π) · (1 + 0.5 · 0.615/3.115) · ln(2.5/4.005 + 1) = 0.2036, worked by hand
  const layers = insulationOf(2.5);
  const plan = { areaM2: 100, perimeterM: 40, wallThicknessM: 0.3, floorResistance: 0 };
  const { soil, face, uValue } = wallInGround(plan, layers, 2.5, WAVE);
  expect(Math.abs(uValue - 0.2036)).toBeLessThan(0.0002);
  expect(seriesUValue(WALL_FILM, [...soil, ...layers], face)).toBeCloseTo(uValue, 12);
});

test('soil next to the construction is soil, and widens away from it with its diffusivity', () => {
  const plan = { areaM2: 100, perimeterM: 40, wallThicknessM: 0.3 };
  const { soil } = slabOnGround(plan, [layerOf('concrete', 0.1)], 0, WAVE);
  const conducting = soil.toReversed().map(({ conductivity }) => conductivity / GROUNDS.clay.conductivity);
  const storing = soil
    .toReversed()
    .map(({ density, specificHeat }) => (density * specificHeat) / GROUNDS.clay.heatCapacity);
  expect(Math.abs(conducting[0]! - 1)).toBeLessThan(0.1);
  for (let n = 1; n < soil.length; n++) expect(conducting[n]!).toBeGreaterThan(conducting[n - 1]!);
  for (const [n, share] of conducting.entries()) expect(Math.abs(storing[n]! / share - 1)).toBeLessThan(0.03);
});

test('soil reaches a yearly depth and a third under a bare slab, less under insulation, little beyond a small need', () => {
  const plan = { areaM2: 100, perimeterM: 40, wallThicknessM: 0.3 };
  const depth = (resistance: number) =>
    slabOnGround(plan, [...insulationOf(resistance, 'xps'), layerOf('concrete', 0.1)], 0, WAVE).soil.reduce(
      (sum, { thicknessM }) => sum + thicknessM,
      0,
    );
  const yearly = periodicDepth(GROUNDS.clay);
  expect(depth(0) / yearly).toBeGreaterThan(1.2);
  expect(depth(0) / yearly).toBeLessThan(1.5);
  expect(depth(3)).toBeLessThan(depth(0) / 2);
  expect(depth(3)).toBeGreaterThan(0.5);
});

test('no soil where the construction leaves none to be told, and no wave wilder than the air’s can be', () => {
  for (const resistance of [0, 0.5, 2, 6, 15]) {
    for (const heightM of [0.05, 0.3, 1, 2.6, 5]) {
      for (const floorResistance of [0, 3]) {
        const plan = { areaM2: 100, perimeterM: 40, wallThicknessM: 0.3, floorResistance };
        const { face, soil, uValue } = wallInGround(
          plan,
          [...insulationOf(resistance), layerOf('adobe', 0.2)],
          heightM,
          WAVE,
        );
        expect(face.resistance).toBeGreaterThanOrEqual(0);
        expect(face.wave.amplitudeK).toBeLessThan(2.3 * WAVE.amplitudeK);
        for (const { density } of soil) expect(density).toBeLessThan(30_000);
        expect(uValue).toBeGreaterThan(0);
      }
    }
  }
});

test('the wave through a slab is weaker than outdoors, about a month late, and weaker still with edge insulation', () => {
  const plan = { areaM2: 100, perimeterM: 40, wallThicknessM: 0.3 };
  const slab = [layerOf('concrete', 0.1)];
  const answer = (edgeResistance: number) => {
    const contact = slabOnGround(plan, slab, edgeResistance, UNIT_YEAR);
    const { outside } = contactResponse(contact, slab, FLOOR_FILM, YEAR_S);
    return {
      uValue: contact.uValue,
      heat: Math.hypot(outside.re, outside.im),
      lagDays: (-Math.atan2(outside.im, outside.re) * 365) / (2 * Math.PI),
    };
  };
  const [bare, edged] = [answer(0), answer(2)];
  expect(bare.heat).toBeLessThan(bare.uValue);
  expect(bare.lagDays).toBeGreaterThan(20);
  expect(bare.lagDays).toBeLessThan(45);
  expect(edged.uValue).toBeLessThan(bare.uValue);
  expect(edged.heat).toBeLessThan(bare.heat);
});

test('the wave scales with the climate’s and moves with it, about the same mean', () => {
  const plan = { areaM2: 100, perimeterM: 40, wallThicknessM: 0.3, floorResistance: 0 };
  const of = (climate: typeof WAVE) => wallInGround(plan, insulationOf(2.5), 2.5, climate).face.wave;
  const [usual, other] = [of(WAVE), of({ meanC: 3, amplitudeK: 2 * WAVE.amplitudeK, coldestDay: 60 })];
  expect(usual.meanC).toBe(WAVE.meanC);
  expect(other.meanC).toBe(3);
  expect(other.amplitudeK).toBeCloseTo(2 * usual.amplitudeK, 9);
  expect((other.coldestDay - usual.coldestDay + 365) % 365).toBeCloseTo(60 - WAVE.coldestDay, 9);
});

test('edge insulation does no more than as much under the whole floor, however small the floor', () => {
  const plan = { areaM2: 0.6, perimeterM: 2.2, wallThicknessM: 0.05 };
  const edged = slabOnGround(plan, [], 8, WAVE);
  const everywhere = slabOnGround(plan, insulationOf(8), 0, WAVE);
  expect(edged.uValue).toBeGreaterThanOrEqual(everywhere.uValue);
  expect(edged.face.resistance).toBeGreaterThanOrEqual(0);
});

test('the coldest ground comes half a year later in the south, when its climate does', () => {
  const shifted = { ...WAVE, coldestDay: WAVE.coldestDay + 182.5 };
  const day = (site: typeof NORTH, wave: typeof WAVE) => {
    const model = modelOf(EXAMPLES[0]!.design, site, wave);
    return (model.elements.find(({ id }) => id === 'floor')!.a as GroundFace).wave.coldestDay;
  };
  expect((day(SOUTH, shifted) - day(NORTH, WAVE) + 365) % 365).toBeCloseTo(182.5, 9);
});
