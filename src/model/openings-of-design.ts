// Every way for air: cracks, vents and windows somebody moves, fans, the door between sunspace and house. A
// design and site in; openings out. Coefficients: ASHRAE basic leakage model, BS 5925 openings, ASHRAE simple wind.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import {
  DEFAULT_LEAKAGE_EXPONENT,
  leakageAreaM2,
  type ShelterClass,
  type Storeys,
  stackCoefficient,
  windCoefficient,
} from '../physics/leakage.ts';
import { SHARP_EDGE_DISCHARGE } from '../physics/openings.ts';
import { windAtHeight } from '../physics/wind-profile.ts';
import type { Site } from '../weather/typical-year.ts';
import { roomAiring, sunspaceAiring } from './airing-of-design.ts';
import { commonDoor, heatGiving, wholeCommonWall } from './common-wall.ts';
import { warmMonths } from './compass.ts';
import { WET_HOURS } from './household.ts';
import { LEAST_AREA_M2 } from './layers.ts';
import type { CrackOpening, FixedOpening, Opening, VentOpening, VentRule } from './model.ts';
import { always, byHour } from './schedule.ts';

const CM2_PER_M2 = 1e4;
/** High vents a third larger than low ones: of their sum, 3/7 low and 4/7 high; from memory, medium confidence. */
const LOW_SHARE = 3 / 7;
/** Width from shut to full [K], and wind in which vents are shut [m/s]; common practice, no source. */
const BAND_K = 3;
const SHUT_ABOVE_WIND = 15;
/** Height of one openable window or vent [m]; common practice, no source. */
const OPENING_HEIGHT_M = 1;
/** Effectiveness of an inlet in wind from the side: ASHRAE Fundamentals 0.25–0.35; from memory, high confidence. */
const INLET_EFFECTIVENESS = 0.3;
/** Wind at the house over wind at open height by shelter class 1…5: Walker and Wilson; from memory, medium confidence. */
const SHELTER_FACTOR: Readonly<Record<ShelterClass, number>> = { 1: 1, 2: 0.9, 3: 0.7, 4: 0.5, 5: 0.3 };
/** Night purge: these hours, and only while the house is above this [°C]; common practice, no source. */
const PURGE_FROM_H = 21;
const PURGE_UNTIL_H = 7;
const PURGE_ABOVE_C = 22;
/** A fan led by humidity begins to run so far below where it runs in full; common practice, no source. */
const HUMIDITY_BAND = 0.1;
/** Electricity of an extract fan [W for each m³/h]: 0.7 W/(L/s), a British building rule; from memory, medium confidence. */
const EXTRACT_W_PER_M3H = 0.7 / 3.6;
/** A unit's bypass opens from so far below where windows do [K], and never less above the set-point [K]: a rule of night cooling. */
const BYPASS_BELOW_K = 2;
const BYPASS_OVER_SETPOINT_K = 2;

/** All openings of a design; those of no area are left out. */
export function openingsOf(design: Design, site: Site): Opening[] {
  const hasSunspace = design.sunspace.join !== 'none';
  const openings: (Opening | null)[] = [
    houseCracks(design),
    hasSunspace ? sunspaceCracks(design) : null,
    houseWindows(design),
    hasSunspace ? sunspaceVents(design) : null,
    nightPurge(design, site),
    extractFan(design),
    ventilationUnit(design),
    hasSunspace ? sunspaceFan(design) : null,
    commonDoor(design, wholeCommonWall(design)),
  ];
  return openings.filter((opening) => opening !== null);
}

/** Those of the whole house, in one zone. */
export function houseCracks(design: Design): CrackOpening {
  return cracks(design, 'house', geometryOf(design).houseVolumeM3, design.air.ach50);
}

export function sunspaceCracks(design: Design): CrackOpening {
  return cracks(design, 'sunspace', geometryOf(design).sunspaceVolumeM3, design.air.sunspaceAch50);
}

function cracks(design: Design, zone: string, volumeM3: number, ach50: number): CrackOpening {
  const storeys = design.house.storeys as Storeys;
  return {
    kind: 'cracks',
    id: `${zone} cracks`,
    zone,
    leakageCm2: CM2_PER_M2 * leakageAreaM2(volumeM3, ach50, DEFAULT_LEAKAGE_EXPONENT),
    stackCoefficient: stackCoefficient(storeys),
    windCoefficient: windCoefficient(storeys, design.air.shelter as ShelterClass),
  };
}

function houseWindows(design: Design): VentOpening | null {
  return windowsOf(design, design.vents.houseM2);
}

/** Windows of so much to open [m²], in the house; null for none. */
export function windowsOf(design: Design, houseM2: number): VentOpening | null {
  if (houseM2 <= LEAST_AREA_M2) return null;
  const airing = roomAiring(design);
  return {
    kind: 'vent',
    id: 'house windows',
    zone: 'house',
    lowM2: houseM2,
    highM2: 0,
    stackM: 0,
    openingHeightM: OPENING_HEIGHT_M,
    discharge: SHARP_EDGE_DISCHARGE,
    // Half of the windows let the wind in, the other half out.
    windCoefficient: 0.5 * ventWind(design),
    rule: ruleOf(design),
    control: design.vents.habit,
    ...(airing && { airing }),
  };
}

export function sunspaceVents(design: Design): VentOpening | null {
  const { sunspaceM2, stackM } = design.vents;
  if (sunspaceM2 <= LEAST_AREA_M2) return null;
  const airing = sunspaceAiring(design);
  return {
    kind: 'vent',
    id: 'sunspace vents',
    zone: 'sunspace',
    lowM2: sunspaceM2 * LOW_SHARE,
    highM2: sunspaceM2 * (1 - LOW_SHARE),
    stackM,
    openingHeightM: OPENING_HEIGHT_M,
    discharge: SHARP_EDGE_DISCHARGE,
    windCoefficient: ventWind(design),
    rule: ruleOf(design),
    control: design.vents.habit,
    ...(airing && { airing }),
  };
}

/** Flow per inlet area and station wind [–]: effectiveness × shelter × open-land profile at half the wall's height. */
function ventWind(design: Design): number {
  const atHouse = windAtHeight(1, geometryOf(design).heightM / 2, 'open');
  return INLET_EFFECTIVENESS * SHELTER_FACTOR[design.air.shelter as ShelterClass] * atHouse;
}

function ruleOf(design: Design): VentRule {
  return {
    opensAboveC: design.vents.opensAboveC,
    bandK: BAND_K,
    onlyWhileOutside: 'cooler',
    opens: 'by-degrees',
    schedule: always(1),
    shutAboveWind: SHUT_ABOVE_WIND,
    shutInRain: true,
  };
}

/**
 * As a kitchen and bath extract with its own inlets runs: all the time, while somebody cooks or washes, or as the rooms grow
 * damp. It adds to what cracks let through.
 */
export function extractFan(design: Design): FixedOpening | null {
  const { extractAch } = design.vents;
  const { extractRuns, extractHumidity } = design.ventilation;
  if (extractAch <= 0) return null;
  const flow = (extractAch * geometryOf(design).houseVolumeM3) / 3600;
  return {
    kind: 'fixed',
    id: 'extract fan',
    zone: 'house',
    flow: extractRuns === 'hours' ? byHour((hour) => (WET_HOURS.includes(hour) ? flow : 0)) : always(flow),
    fan: true,
    fanWPerM3H: EXTRACT_W_PER_M3H,
    ...(extractRuns === 'humidity' && {
      byHumidity: { from: extractHumidity - HUMIDITY_BAND, full: extractHumidity },
    }),
  };
}

/** As much blown in as out, all year; cracks let through what they let through besides. */
export function ventilationUnit(design: Design): FixedOpening | null {
  const { recoveryAch, recoveryEffectiveness, fanWPerM3H, frost } = design.ventilation;
  if (recoveryAch <= 0) return null;
  return {
    kind: 'fixed',
    id: 'ventilation unit',
    zone: 'house',
    flow: always((recoveryAch * geometryOf(design).houseVolumeM3) / 3600),
    fan: true,
    fanWPerM3H,
    recovery: {
      effectiveness: recoveryEffectiveness,
      frost,
      bypassAboveC: Math.max(
        design.vents.opensAboveC - BYPASS_BELOW_K,
        design.heating.dayC + BYPASS_OVER_SETPOINT_K,
      ),
    },
  };
}

/** From a closed-off sunspace to the rooms and back; through an open side the air goes by itself. */
export function sunspaceFan(design: Design): FixedOpening | null {
  const { sunspaceFanAch } = design.vents;
  if (sunspaceFanAch <= 0 || design.sunspace.join !== 'closed') return null;
  const flow = (sunspaceFanAch * geometryOf(design).houseVolumeM3) / 3600;
  return {
    kind: 'fixed',
    id: 'sunspace fan',
    zone: 'sunspace',
    other: 'house',
    flow: always(flow),
    fan: true,
    gives: heatGiving(design),
  };
}

export function nightPurge(design: Design, site: Site): FixedOpening | null {
  const { nightPurgeAch } = design.vents;
  if (nightPurgeAch <= 0) return null;
  const flow = (nightPurgeAch * geometryOf(design).houseVolumeM3) / 3600;
  const byNight = byHour((hour) => (hour >= PURGE_FROM_H || hour < PURGE_UNTIL_H ? flow : 0));
  return {
    kind: 'fixed',
    id: 'night purge',
    zone: 'house',
    flow: { ...byNight, months: warmMonths(site) },
    fan: true,
    onlyAboveC: PURGE_ABOVE_C,
  };
}
