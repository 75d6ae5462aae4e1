// The sun through one pane for a year: plane, glass, shading and room in; hourly watts passed as beam on the
// floor, as beam on the wall behind, as diffuse light, and absorbed in each sheet, out. Computed before the run,
// since nothing in it depends on temperatures.
// Beam on the wall behind: light entering at height z falls to the floor within the room's depth unless
// z > depth · tan(profile angle); closed form over the height of the glass.

import type { Pane } from '../../model/model.ts';
import { cos, sin, tan } from '../../physics/elementary.ts';
import { type PlaneIrradiance, planeIrradiance } from '../../weather/prepared/plane-irradiance.ts';
import type { PreparedClimate } from '../../weather/prepared/prepared-climate.ts';
import { HOURS } from '../../weather/typical-year.ts';
import { atCosine, opticsOf } from './pane-optics.ts';
import { type ShadeFactors, shadeOf } from './pane-shade.ts';

const DEG = Math.PI / 180;

/** Watts per m² of glass, by hour. */
export interface PaneLight {
  /** on the glass, before any shading */
  readonly incidentW: Float64Array;
  readonly beamFloorW: Float64Array;
  readonly beamBackW: Float64Array;
  readonly diffuseW: Float64Array;
  /** by node, outer first */
  readonly absorbedW: readonly Float64Array[];
}

const MOST_REMEMBERED = 48;
const remembered = new WeakMap<PreparedClimate, Map<string, PaneLight>>();
const rememberedPassed = new WeakMap<PreparedClimate, Map<string, PassedLight>>();

/** Light through clean glass, whatever stands behind it. */
type PassedLight = Omit<PaneLight, 'beamFloorW' | 'beamBackW'> & { readonly beamW: Float64Array };

/** Hourly light through a square metre of a pane from outdoors; remembered per climate. */
export function paneLight(pane: Pane, climate: PreparedClimate): PaneLight {
  const { glass, tiltDeg, azimuthDeg, shading, lightRoom, dirt } = pane;
  const isLong = shading?.overhang?.extendM === Infinity;
  const key = JSON.stringify([glass, tiltDeg, azimuthDeg, shading, isLong]);
  const withRoom = JSON.stringify([key, dirt, lightRoom]);
  return recall(remembered, climate, withRoom, () => {
    const passed = recall(rememberedPassed, climate, key, () => lightThrough(pane, climate));
    return fallen(dimmed(passed, dirt), pane, climate);
  });
}

function recall<T>(
  all: WeakMap<PreparedClimate, Map<string, T>>,
  climate: PreparedClimate,
  key: string,
  make: () => T,
): T {
  const lights = all.get(climate) ?? new Map<string, T>();
  all.set(climate, lights);
  const known = lights.get(key);
  if (known !== undefined) return known;
  if (lights.size >= MOST_REMEMBERED) lights.delete(lights.keys().next().value!);
  const made = make();
  lights.set(key, made);
  return made;
}

/** Behind dirt, bars and curtains. */
function dimmed(light: PassedLight, dirt: number): PassedLight {
  const { beamW, diffuseW } = light;
  return { ...light, beamW: beamW.map((watt) => watt * dirt), diffuseW: diffuseW.map((watt) => watt * dirt) };
}

/** The beam that has passed, on the floor or on the wall behind. */
function fallen({ beamW, ...light }: PassedLight, pane: Pane, climate: PreparedClimate): PaneLight {
  if (pane.lightRoom === null) return { ...light, beamFloorW: beamW, beamBackW: new Float64Array(HOURS) };
  const beamFloorW = new Float64Array(HOURS);
  const beamBackW = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) {
    const passed = beamW[hour]!;
    if (passed === 0) continue;
    const back = shareOnBack(pane, climate, hour);
    beamFloorW[hour] = passed * (1 - back);
    beamBackW[hour] = passed * back;
  }
  return { ...light, beamFloorW, beamBackW };
}

function lightThrough(pane: Pane, climate: PreparedClimate): PassedLight {
  const plane = planeIrradiance(climate, pane.tiltDeg, pane.azimuthDeg);
  const optics = opticsOf(pane.glass);
  const shade = shadeOf(pane, climate);
  const column = () => new Float64Array(HOURS);
  const light = {
    incidentW: column(),
    beamW: column(),
    diffuseW: column(),
    absorbedW: optics.absorbed.map(column),
  };
  for (let hour = 0; hour < HOURS; hour++) {
    if (climate.cosZenith[hour]! <= 0) continue;
    light.incidentW[hour] = totalOn(plane, hour);
    const open = seasonalOpening(pane, climate.calendar.month[hour]!);
    const direct = (plane.beam[hour]! + plane.circumsolar[hour]!) * shade.beam[hour]! * open;
    const scattered = open * scatteredOn(plane, shade, hour);
    const cosine = Math.min(1, Math.max(0, plane.cosIncidence[hour]!));
    light.beamW[hour] = direct * atCosine(optics.transmittance, cosine);
    light.diffuseW[hour] = scattered * optics.diffuseTransmittance;
    optics.absorbed.forEach((table, node) => {
      light.absorbedW[node]![hour] =
        direct * atCosine(table, cosine) + scattered * optics.diffuseAbsorbed[node]!;
    });
  }
  return light;
}

function totalOn(plane: PlaneIrradiance, hour: number): number {
  return (
    plane.beam[hour]! +
    plane.circumsolar[hour]! +
    plane.isotropic[hour]! +
    plane.horizon[hour]! +
    plane.ground[hour]!
  );
}

function scatteredOn(plane: PlaneIrradiance, shade: ShadeFactors, hour: number): number {
  const sky = (plane.isotropic[hour]! + plane.horizon[hour]!) * shade.sky;
  return Math.max(0, sky + plane.ground[hour]! * shade.ground);
}

function seasonalOpening(pane: Pane, month: number): number {
  const months = pane.shading?.seasonal;
  return months ? 1 - months[month]! : 1;
}

/** Share of the beam that reaches the wall behind the room, 0…1. */
function shareOnBack(pane: Pane, climate: PreparedClimate, hour: number): number {
  const { depthM, sillM, headM } = pane.lightRoom!;
  const inward =
    climate.sunEast[hour]! * sin(pane.azimuthDeg * DEG) +
    climate.sunNorth[hour]! * cos(pane.azimuthDeg * DEG);
  if (inward <= 0) return 0;
  const slope = climate.cosZenith[hour]! / inward;
  const riseM = headM - sillM;
  const leanM = pane.tiltDeg >= 90 ? 0 : riseM / tan(pane.tiltDeg * DEG);
  // At share s up the glass: height sill + s·rise, distance to the wall depth − s·lean.
  const meets = (depthM * slope - sillM) / (riseM + leanM * slope);
  return 1 - Math.min(1, Math.max(0, meets));
}
