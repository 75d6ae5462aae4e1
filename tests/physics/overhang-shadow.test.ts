import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sunlitFraction, type WindowShading } from '../../src/physics/overhang-shadow.ts';
import { sunVector } from '../../src/physics/sun-position.ts';

const DEG = Math.PI / 180;
const WINDOW = { widthM: 3, heightM: 2 };

/** Slow reference: points of the glass in east, north, up; a ray to the sun against each board. */
function slowFraction(
  s: WindowShading,
  tilt: number,
  facing: number,
  elevation: number,
  azimuth: number,
): number {
  const sun = sunVector(elevation, azimuth);
  const out = [Math.sin(facing * DEG), Math.cos(facing * DEG), 0];
  const right = [Math.cos(facing * DEG), -Math.sin(facing * DEG), 0];
  const slope = out.map((v, i) => -Math.cos(tilt * DEG) * v + (i === 2 ? Math.sin(tilt * DEG) : 0));
  const normal = out.map((v, i) => Math.sin(tilt * DEG) * v + (i === 2 ? Math.cos(tilt * DEG) : 0));
  const ray = [sun.east, sun.north, sun.up];
  const dot = (a: readonly number[], b: readonly number[]) => a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]!;
  /** Whether the ray from p meets the board of corner c and sides u, v. */
  const meets = (p: readonly number[], c: readonly number[], u: readonly number[], v: readonly number[]) => {
    const across = [
      u[1]! * v[2]! - u[2]! * v[1]!,
      u[2]! * v[0]! - u[0]! * v[2]!,
      u[0]! * v[1]! - u[1]! * v[0]!,
    ];
    const facingRay = dot(across, ray);
    if (Math.abs(facingRay) < 1e-12) return false;
    const along =
      dot(
        across,
        c.map((x, i) => x - p[i]!),
      ) / facingRay;
    if (along <= 0) return false;
    const hit = p.map((x, i) => x + along * ray[i]! - c[i]!);
    const [uu, vv] = [dot(hit, u) / dot(u, u), dot(hit, v) / dot(v, v)];
    return uu >= 0 && uu <= 1 && vv >= 0 && vv <= 1;
  };
  const at = (x: number, y: number) => right.map((r, i) => x * r + y * slope[i]!);
  const scaled = (a: readonly number[], k: number) => a.map((x) => x * k);
  const N = 60;
  let lit = 0;
  for (let i = 0; i < N * N; i++) {
    const p = at((((i % N) + 0.5) / N) * s.widthM, ((Math.floor(i / N) + 0.5) / N) * s.heightM);
    let shaded = false;
    if (s.overhang) {
      const e = Math.min(s.overhang.extendM, 1000);
      const corner = at(-e, s.heightM + s.overhang.gapM);
      shaded = meets(p, corner, scaled(right, s.widthM + 2 * e), scaled(out, s.overhang.depthM));
    }
    if (s.fins) {
      const bottom = -(s.fins.belowM ?? 0);
      const top = s.heightM + (s.fins.aboveM ?? s.overhang?.gapM ?? 0);
      for (const x of [-s.fins.gapM, s.widthM + s.fins.gapM]) {
        shaded ||= meets(p, at(x, bottom), scaled(slope, top - bottom), scaled(normal, s.fins.depthM));
      }
    }
    if (!shaded) lit++;
  }
  return lit / (N * N);
}

test('under a long overhang the shadow falls depth times the tangent of the profile angle', () => {
  // 1 m overhang 0.5 m above a 2 m window, sun at 45° straight ahead: the top 0.5 m is in shade.
  const overhang = { depthM: 1, gapM: 0.5, extendM: Number.POSITIVE_INFINITY };
  expect(sunlitFraction({ ...WINDOW, overhang }, 90, 180, 45, 180)).toBeCloseTo(0.75, 12);
  // 60° off to the side the profile is steeper: tan = tan 45°/cos 60° = 2, shadow 1.5 m of 2.
  expect(sunlitFraction({ ...WINDOW, overhang }, 90, 180, 45, 240)).toBeCloseTo(0.25, 12);
});

test('a fin throws depth times the tangent of the sideways angle onto the glass', () => {
  const fins = { depthM: 1, gapM: 0, aboveM: 1000 };
  expect(sunlitFraction({ ...WINDOW, fins }, 90, 90, 20, 135)).toBeCloseTo(1 - 1 / 3, 12);
  expect(sunlitFraction({ ...WINDOW, fins }, 90, 90, 20, 45)).toBeCloseTo(1 - 1 / 3, 12);
  expect(sunlitFraction({ ...WINDOW, fins }, 90, 90, 20, 90)).toBe(1);
});

test('no shades, full sun; sun behind the glass or down, none', () => {
  expect(sunlitFraction(WINDOW, 90, 180, 30, 150)).toBe(1);
  expect(sunlitFraction(WINDOW, 90, 180, 30, 10)).toBe(0);
  expect(sunlitFraction(WINDOW, 60, 180, -1, 180)).toBe(0);
});

test('any boards, tilt and sun agree with rays cast one by one', () => {
  const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const sizes = fc.record({
    depth: real(0.1, 2),
    gap: real(0, 1),
    extend: real(0, 2),
    finDepth: real(0.1, 1.5),
    finGap: real(0, 0.5),
  });
  let compared = 0;
  fc.assert(
    fc.property(
      sizes,
      real(20, 90),
      real(0, 360),
      real(2, 80),
      real(-80, 80),
      fc.integer({ min: 1, max: 3 }),
      (...drawn) => {
        const [size, tilt, facing, elevation, turned, which] = drawn;
        const shading: WindowShading = {
          ...WINDOW,
          ...(which !== 2 && { overhang: { depthM: size.depth, gapM: size.gap, extendM: size.extend } }),
          ...(which !== 1 && { fins: { depthM: size.finDepth, gapM: size.finGap } }),
        };
        const slow = slowFraction(shading, tilt, facing, elevation, facing + turned);
        // A grid of 60 × 60 points knows an area to about the share of points along one edge of the shadow.
        expect(
          Math.abs(sunlitFraction(shading, tilt, facing, elevation, facing + turned) - slow),
        ).toBeLessThan(0.03);
        if (slow > 0.02 && slow < 0.98) compared++;
      },
    ),
    { numRuns: 60 },
  );
  expect(compared).toBeGreaterThan(10);
});

test('east and west mirror each other, and a southern-hemisphere window its northern twin', () => {
  const shading: WindowShading = {
    ...WINDOW,
    overhang: { depthM: 0.8, gapM: 0.3, extendM: 0.2 },
    fins: { depthM: 0.5, gapM: 0.1 },
  };
  const a = sunlitFraction(shading, 70, 180, 35, 140);
  expect(a).toBeGreaterThan(0);
  expect(a).toBeLessThan(1);
  expect(sunlitFraction(shading, 70, 180, 35, 220)).toBeCloseTo(a, 12);
  expect(sunlitFraction(shading, 70, 0, 35, 40)).toBeCloseTo(a, 12);
});

test('an overhang shades leaning glass less than upright glass at the same sun', () => {
  const overhang = { depthM: 1, gapM: 0.2, extendM: Number.POSITIVE_INFINITY };
  const upright = sunlitFraction({ ...WINDOW, overhang }, 90, 180, 60, 180);
  const leaning = sunlitFraction({ ...WINDOW, overhang }, 60, 180, 60, 180);
  expect(leaning).toBeGreaterThan(upright);
});
