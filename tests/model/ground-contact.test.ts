// Series resistance of floors and bermed walls against ISO 13370 (formulas from memory, high confidence; its table of
// uninsulated slabs as CIBSE Guide A prints it), and the yearly wave behind them.
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { slabOnGround, wallInGround } from '../../src/model/ground-contact.ts';
import { insulationOf, layerOf, resistanceOf } from '../../src/model/layers.ts';
import type { GroundFace } from '../../src/model/model.ts';
import { GROUNDS, slabUValue } from '../../src/physics/ground-floor.ts';
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

test('an uninsulated slab in series has the printed U-value', () => {
  for (const [ratio, printed] of PRINTED) {
    const plan = { areaM2: 100, perimeterM: 100 * ratio, wallThicknessM: 0.3 };
    const { soil, face, uValue } = slabOnGround(plan, [], 0, WAVE);
    const series = seriesUValue(FLOOR_FILM, soil, face);
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

test('the floor element of every example is that series: half a metre of soil and a rest without mass', () => {
  expect(EXAMPLES).toHaveLength(3);
  for (const { design } of EXAMPLES) {
    const bareEdge = { ...design, floor: { ...design.floor, edgeResistance: 0 } };
    const { elements } = modelOf(bareEdge, NORTH, WAVE);
    const floor = elements.find(({ id }) => id === 'floor')!;
    const wall = elements.find(({ id }) => /^pole wall/.test(id))!;
    const built = floor.layers.slice(1);
    expect(floor.layers[0]).toMatchObject({ thicknessM: 0.5, conductivity: 1.5, density: 1500 });
    const isOpen = design.sunspace.join === 'open';
    const plan = {
      areaM2: 110,
      perimeterM: 2 * (13.5 + 110 / 13.5) - (isOpen ? 13.5 : 0),
      wallThicknessM: wall.layers
        .filter(({ name }) => !/soil/i.test(name))
        .reduce((sum, { thicknessM }) => sum + thicknessM, 0),
      floorResistance: resistanceOf(built),
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

test('the wave behind a wall is that of undisturbed soil at half its height', () => {
  // clay, α 0.045 m²/day, 1.25 m: d = √(365 · 0.045/π) = 2.2866 m, damping e^(−0.5467) = 0.579, lag 31.8 days
  const plan = { areaM2: 100, perimeterM: 40, wallThicknessM: 0.3, floorResistance: 0 };
  const { wave } = wallInGround(plan, insulationOf(2.5), 2.5, WAVE).face;
  expect(wave.meanC).toBe(WAVE.meanC);
  expect(wave.amplitudeK).toBeCloseTo(12 * 0.579, 2);
  expect(wave.coldestDay).toBeCloseTo(20 + 31.8, 1);
});

test('the wave under a slab is weaker than outdoors, about a month late, and weaker still with edge insulation', () => {
  const plan = { areaM2: 100, perimeterM: 40, wallThicknessM: 0.3 };
  const slab = [layerOf('concrete', 0.1)];
  const bare = slabOnGround(plan, slab, 0, WAVE);
  const edged = slabOnGround(plan, slab, 2, WAVE);
  expect(bare.face.wave.amplitudeK).toBeLessThan(12);
  expect(bare.face.wave.amplitudeK).toBeGreaterThan(0);
  expect(bare.face.wave.coldestDay - WAVE.coldestDay).toBeGreaterThan(20);
  expect(bare.face.wave.coldestDay - WAVE.coldestDay).toBeLessThan(45);
  expect(edged.uValue).toBeLessThan(bare.uValue);
  expect(edged.uValue * edged.face.wave.amplitudeK).toBeLessThan(bare.uValue * bare.face.wave.amplitudeK);
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
  expect(day(SOUTH, shifted) - day(NORTH, WAVE)).toBeCloseTo(182.5, 9);
});
