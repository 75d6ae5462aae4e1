// What a scan of a house must not show: a cliff, or a sign that nobody who lives in such a house would believe. Points in,
// faults in words out; with none the scan passes.
// Limits: common practice, no source; they are what an adviser would still explain away as chance.
import type { Scan, ScanPoint } from './scan.ts';

/** A step of heat may be this many times the mean step, or this much where that is more [kWh]. */
const STEPS = 4;
const STEP_KWH = 40;
/** A higher set-point may save this much by chance, as a share and at least [kWh]. */
const CHANCE_SHARE = 0.002;
const CHANCE_KWH = 2;
/**
 * Hot hours of a summer without heat may differ by this from one set-point to the next, as a share and at least [h]: the
 * ground under the floor keeps a little of the winter's heat, and hands decide one evening otherwise for a hundredth of a
 * degree. Over all set-points they may differ by four such steps, or by a share a step.
 */
const SAME_HOURS_SHARE = 0.03;
const SAME_HOURS = 10;
const SAME_SHARE_A_STEP = 0.01;
/** Less heat than this is no need of heat [kWh]. */
const NO_HEAT_KWH = 0.5;
/**
 * What fan and vents may add, as shares, and as much again at most for chance and for the ground, which a cooler summer leaves
 * cooler [kWh].
 */
const ADDED_KWH = 10;
const FAN_HEAT_SHARE = 0.01;
const VENTS_HEAT_SHARE = 0.02;
const WINDOWS_HOT_SHARE = 0.02;
/** Two evenings decided otherwise [h]. */
const WINDOWS_HOT_HOURS = 12;
/** A planted sunspace may be less humid than with fewer plants by this, since it is colder or aired a little more [h]. */
const DAMPER_CHANCE_HOURS = 12;

/** Faults of a scan. */
export function faultsOf(scan: Scan, points: readonly ScanPoint[]): string[] {
  return [cliff(points), ...(SIGNS[scan.knob.id] ?? (() => []))(points, scan)].filter(
    (fault) => fault !== null,
  );
}

/** The largest step, and what is allowed [kWh]. */
export function largestStep(all: readonly ScanPoint[]): { at: number; kWh: number; allowedKWh: number } {
  // From none to some is another house, and no step.
  const points = all.filter(({ value }) => value > 0);
  const steps = points.slice(1).map(({ heatKWh }, n) => Math.abs(heatKWh - points[n]!.heatKWh));
  const kWh = Math.max(...steps);
  const mean = steps.reduce((sum, step) => sum + step, 0) / steps.length;
  return { at: points[steps.indexOf(kWh) + 1]!.value, kWh, allowedKWh: Math.max(STEPS * mean, STEP_KWH) };
}

function cliff(points: readonly ScanPoint[]): string | null {
  const { at, kWh, allowedKWh } = largestStep(points);
  if (kWh <= allowedKWh) return null;
  return `heat moves by ${kWh.toFixed(0)} kWh at ${at}; allowed ${allowedKWh.toFixed(0)}`;
}

type Sign = (points: readonly ScanPoint[], scan: Scan) => (string | null)[];

const SIGNS: Readonly<Record<string, Sign>> = {
  'day set-point': (points) => [neverSaves(points), sameSummer(points)],
  'night set-point': (points) => [neverSaves(points), sameSummer(points)],
  windows: (points) => [largerIsNoHotter(points)],
  // Open to the rooms, the vents of a sunspace are the rooms' own windows.
  'sunspace vents': (points, { house }) => (house === 'closed' ? [addsHeat(points, VENTS_HEAT_SHARE)] : []),
  'night fan': (points) => [addsHeat(points, FAN_HEAT_SHARE)],
  bed: (points) => [neverSaves(points), isDamper(points)],
  'leaf area': (points) => [neverSaves(points), isDamper(points)],
};

function neverSaves(points: readonly ScanPoint[]): string | null {
  for (let n = 1; n < points.length; n++) {
    const [before, now] = [points[n - 1]!.heatKWh, points[n]!.heatKWh];
    if (before - now > Math.max(CHANCE_KWH, CHANCE_SHARE * before))
      return `a higher value saves ${(before - now).toFixed(1)} kWh at ${points[n]!.value}`;
  }
  return null;
}

function sameSummer(points: readonly ScanPoint[]): string | null {
  const free = points.filter(({ summerHeatKWh }) => summerHeatKWh < NO_HEAT_KWH);
  if (free.length < 2) return null;
  const hours = free.map(({ summerHotHours }) => summerHotHours);
  const [least, most] = [Math.min(...hours), Math.max(...hours)];
  const allowed = Math.max(SAME_HOURS, SAME_HOURS_SHARE * least);
  const steps = hours.slice(1).map((now, n) => Math.abs(now - hours[n]!));
  if (
    Math.max(...steps) <= allowed &&
    most - least <= Math.max(4 * allowed, SAME_SHARE_A_STEP * steps.length * least)
  )
    return null;
  return `hot hours of a summer without heat go from ${least} to ${most} with the set-point`;
}

/** What is planted gives water, which takes heat. */
function isDamper(points: readonly ScanPoint[]): string | null {
  for (let n = 1; n < points.length; n++) {
    const [before, now] = [points[n - 1]!, points[n]!];
    if (before.sunspaceHumidHours - now.sunspaceHumidHours > DAMPER_CHANCE_HOURS)
      return `${now.value} has ${now.sunspaceHumidHours} humid hours, ${before.value} ${before.sunspaceHumidHours}`;
  }
  return null;
}

/** Against any smaller size. */
function largerIsNoHotter(points: readonly ScanPoint[]): string | null {
  let least = points[0]!;
  for (const point of points) {
    if (point.hotHours > (1 + WINDOWS_HOT_SHARE) * least.hotHours + WINDOWS_HOT_HOURS)
      return `${point.value} m² has ${point.hotHours} hot hours, ${least.value} m² ${least.hotHours}`;
    if (point.hotHours < least.hotHours) least = point;
  }
  return null;
}

/** Against none at all. */
function addsHeat(points: readonly ScanPoint[], share: number): string | null {
  const [none, ...some] = points;
  const allowed = ADDED_KWH + share * none!.heatKWh;
  const worst = some.reduce((most, point) => (point.heatKWh > most.heatKWh ? point : most), none!);
  if (worst.heatKWh - none!.heatKWh <= allowed) return null;
  return `${worst.value} adds ${(worst.heatKWh - none!.heatKWh).toFixed(1)} kWh of ${none!.heatKWh.toFixed(0)}; allowed ${allowed.toFixed(1)}`;
}
