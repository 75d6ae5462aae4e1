// Walls of one build-up stand in one chain, yet see each other: a cube of six black faces, four of them walls, in which
// each face sees each other one by a fifth (exact, by symmetry), so that against the mean of all six it exchanges 6/5 of its area.
import { expect, test } from 'vitest';
import { layOut } from '../../../src/network/layout/layout.ts';
import { exchangeAreas } from '../../../src/network/surfaces/film-sides.ts';
import { smallHouse } from '../small-house.ts';

const FACE_M2 = 25;

test('walls of one build-up that stand round a cube see each other', () => {
  const house = smallHouse({ glass: false, moved: false });
  const like = house.elements.find(({ a }) => a.kind === 'outdoors')!;
  const face = (id: string, faceTiltDeg: number, azimuthDeg: number) => ({
    ...like,
    id,
    areaM2: FACE_M2,
    a: like.a.kind === 'outdoors' ? { ...like.a, azimuthDeg } : like.a,
    b: { ...like.b, faceTiltDeg, emissivity: 1 },
  });
  const elements = [
    face('floor', 0, 0),
    face('roof', 180, 0),
    ...[0, 90, 180, 270].map((azimuth) => face(`wall ${azimuth}`, 90, azimuth)),
  ];
  const model = { ...house, zones: [house.zones[0]!], elements, openings: [] };
  const areas = [...exchangeAreas(model, layOut(model, 1.2)).faces.values()];
  expect(areas).toHaveLength(3);
  expect(areas[0]).toBeCloseTo((6 / 5) * FACE_M2, 6);
  expect(areas[2]).toBeCloseTo(4 * (6 / 5) * FACE_M2, 6);
});
