import { expect, test } from 'vitest';
import { cellWords, drawMap, MAP_FRAME, nearest } from '../../../src/app/questions/answer-map.ts';
import { type GlassMassMap, linesOf } from '../../../src/questions/glass-mass-grid.ts';

const SIDE = 21;
const axis = (most: number) => Array.from({ length: SIDE }, (_, i) => (most * i) / (SIDE - 1));
const GLASS = axis(40);
const MASS = axis(60);

function mapOf(hours: (glass: number, mass: number) => number, drawn = { glassM2: 38, massM2: 20 }) {
  const filled = MASS.flatMap((mass) => GLASS.map((glass) => hours(glass, mass)));
  const lines = linesOf(filled, GLASS, MASS, 262);
  const map: GlassMassMap = {
    glassM2: GLASS,
    massM2: MASS,
    tooHotHours: filled,
    overheatedHours: filled,
    filled,
    filledErrorHours: null,
    lines,
    drawn,
  };
  return map;
}

/** Steep: seven lines within a fifth of the map. */
const STEEP = mapOf((glass) => 20 * Math.max(0, glass - 4) ** 2);

test('labels of crowded lines keep clear of each other, of the design and inside the map; the limit has one', () => {
  for (const map of [STEEP, mapOf((glass, mass) => 60 * glass - 20 * mass)]) {
    const { labels, drawn, key } = drawMap(map, 'metric');
    expect(labels.some(({ kind }) => kind === 'limit')).toBe(true);
    // At 390 px the map is drawn at 0.65 of its size in letters of 19: about 9 wide and 14 high.
    const box = ({ x, y, text }: { x: number; y: number; text: string }) => ({
      left: x - 4.5 * text.length,
      right: x + 4.5 * text.length,
      top: y - 14,
      bottom: y + 2,
    });
    for (const [i, one] of labels.entries()) {
      const a = box(one);
      expect(a.left).toBeGreaterThanOrEqual(MAP_FRAME.left);
      expect(a.right).toBeLessThanOrEqual(MAP_FRAME.right);
      for (const other of labels.slice(i + 1)) {
        const b = box(other);
        const clear = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
        expect(clear, `${one.text} and ${other.text}`).toBe(true);
      }
      const onDesign = drawn.x > a.left && drawn.x < a.right && drawn.y > a.top && drawn.y < a.bottom;
      expect(onDesign).toBe(false);
    }
    for (const { hours } of map.lines) expect(key).toContain(`${hours} h`);
  }
});

test('shades cover every cell that has hours, the more the darker, in a handful of shapes', () => {
  const { shades } = drawMap(STEEP, 'metric');
  expect(shades.length).toBeLessThanOrEqual(14);
  expect(shades.length).toBeGreaterThan(5);
  expect(shades.at(-1)!.depth).toBe(1);
  // Area of all shapes together: all columns but those up to 4 m², which have none.
  const area = shades
    .flatMap(({ path }) => [...path.matchAll(/M([\d.]+) ([\d.]+)H([\d.]+)V([\d.]+)H/g)])
    .reduce((sum, [, x, y, to, up]) => sum + (Number(to) - Number(x)) * (Number(y) - Number(up)), 0);
  const width = MAP_FRAME.right - MAP_FRAME.left;
  const firstShade = STEEP.filled!.findIndex((hours) => Math.round(14 * Math.sqrt(hours / 25_920)) > 0);
  const whole = (width - (width * (GLASS[firstShade]! - 1)) / 40) * (MAP_FRAME.bottom - MAP_FRAME.top);
  expect(area / whole).toBeCloseTo(1, 2);
});

test('a design drawn beyond the map since stands at its edge', () => {
  const { drawn, drawnLabel } = drawMap(
    mapOf((glass) => glass, { glassM2: 99, massM2: 99 }),
    'metric',
  );
  expect(drawn).toEqual({ x: MAP_FRAME.right, y: MAP_FRAME.top });
  expect(drawnLabel.anchor).toBe('end');
});

test('a cell is told in words and in the units on screen; the nearest cell is found', () => {
  const map = mapOf((glass) => 10 * glass);
  expect(cellWords(map, 5, 10, 'metric')).toBe(
    '10 m² of glass, 30 m² of extra mass: 100 hours too hot a year',
  );
  // 10 m² = 107.6 ft², 30 m² = 322.9 ft²
  expect(cellWords(map, 5, 10, 'us')).toContain('108 ft² of glass, 323 ft² of extra mass');
  expect(cellWords({ ...map, filled: null }, 0, 0, 'metric')).toContain('not run yet');
  expect([nearest(GLASS, -5), nearest(GLASS, 10.9), nearest(GLASS, 99)]).toEqual([0, 5, 20]);
});
