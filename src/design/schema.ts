// The schema of a design (valibot): unknown data in, either a Design or a list of faults in a person's words.
// Every number is held to limits.ts; unknown keys are refused by name, so that a misspelt key is not ignored.

import * as v from 'valibot';
import { FOUND_LIMITS, SHIFTS, UNKNOWN_IDS } from './as-found.ts';
import { COVER_KINDS } from './cover-catalogue.ts';
import { COVER_LIMITS, coverFaults, MOST_COVERS } from './cover-rules.ts';
import type { Design } from './design.ts';
import type { DesignFault } from './design-fault.ts';
import { geometryOf } from './geometry.ts';
import { GLASS } from './glass-catalogue.ts';
import { FUELS, SOURCE_LIMITS, STOVE_KINDS, STOVE_TIMES, WOOD_IDS } from './heat-source.ts';
import { HOTTER_LIMITS } from './hotter.ts';
import { LIMITS } from './limits.ts';
import { MATERIALS } from './materials.ts';
import {
  LEAST_ROOMS,
  MOST_ROOMS,
  MOST_WINDOWS,
  PARTITIONS,
  ROOM_DOORS,
  ROOM_LIMITS,
  ROOM_NAME_LENGTH,
  ROOM_ROWS,
  ROOM_USES,
  WINDOW_SIDES,
} from './room.ts';
import { roomFaults } from './room-rules.ts';
import { TOO_HOT_CHOICES } from './too-hot-criterion.ts';
import { USUAL_VENTILATION } from './usual-ventilation.ts';

export type DesignResult =
  | { readonly ok: true; readonly design: Design }
  | { readonly ok: false; readonly faults: readonly DesignFault[] };

const MAX_FAULTS = 50;
const NAME_LENGTH = 120;
const NOTE_LENGTH = 4000;

function numberAt(path: string) {
  const limit = LIMITS.find((entry) => entry.path === path);
  if (!limit) throw new RangeError(`path is '${path}'; allowed: a number listed in limits.ts`);
  return numberWithin(limit.min, limit.max, limit.whole);
}

function numberWithin(min: number, max: number, whole = false) {
  const allowed = `a${whole ? ' whole' : ''} number from ${min} to ${max}`;
  return v.pipe(
    v.number(allowed),
    v.check((value) => value >= min && value <= max, allowed),
    v.check((value) => !whole || Number.isInteger(value), allowed),
  );
}

/** The four numbers of a hotter year; the whole block may be absent. */
function hotterNumber(key: string) {
  const limit = HOTTER_LIMITS.find((entry) => entry.key === key)!;
  return numberWithin(limit.min, limit.max, limit.whole);
}

function coverNumber(key: 'sunW' | 'aboveC') {
  const { min, max } = COVER_LIMITS[key];
  return v.exactOptional(numberWithin(min, max));
}

const oneOf = <const T extends readonly string[]>(...options: T) =>
  v.picklist(options, `one of ${options.join(', ')}`);

const text = (maxLength: number) =>
  v.pipe(
    v.string('a text'),
    v.check((value) => value.length <= maxLength, `a text of at most ${maxLength} characters`),
  );

const materialIds = MATERIALS.map((material) => material.id);
const massIds = MATERIALS.filter((material) => material.mass).map((material) => material.id);
const anyMaterial = v.picklist(materialIds, `one of ${materialIds.join(', ')}`);
const massMaterial = v.picklist(massIds, `one of ${massIds.join(', ')}`);
const glassIds = GLASS.map((glass) => glass.id);

const coverIds = COVER_KINDS.map((kind) => kind.id);
const habit = oneOf('automatic', 'attentive', 'away', 'forgetful', 'never');

const CoverSchema = v.strictObject({
  kind: v.picklist(coverIds, `one of ${coverIds.join(', ')}`),
  on: oneOf('front', 'sunspace', 'east', 'west', 'east-and-west', 'pole', 'all'),
  drawnBy: oneOf('sun', 'heat', 'night', 'season'),
  season: oneOf('year', 'warm', 'cold'),
  habit: v.exactOptional(habit),
  sunW: coverNumber('sunW'),
  aboveC: coverNumber('aboveC'),
});

function sourceNumber(key: keyof typeof SOURCE_LIMITS) {
  const { min, max } = SOURCE_LIMITS[key];
  return numberWithin(min, max);
}

const HeatSourceSchema = v.variant(
  'kind',
  [
    v.strictObject({
      kind: oneOf('heater', 'floor', 'wall'),
      fuel: oneOf(...FUELS),
      efficiency: v.exactOptional(sourceNumber('efficiency')),
    }),
    v.strictObject({
      kind: oneOf('stove'),
      stove: oneOf(...STOVE_KINDS),
      lit: oneOf(...STOVE_TIMES),
      litBy: oneOf('need', 'habit'),
      wood: v.picklist(WOOD_IDS, `one of ${WOOD_IDS.join(', ')}`),
      moisture: sourceNumber('moisture'),
      air: oneOf('room', 'own'),
      floorShare: v.exactOptional(sourceNumber('floorShare')),
      storeL: v.exactOptional(sourceNumber('storeL')),
      efficiency: v.exactOptional(sourceNumber('efficiency')),
    }),
  ],
  'heater, floor, wall or stove',
);

function roomNumber(key: keyof typeof ROOM_LIMITS, whole = false) {
  const { min, max } = ROOM_LIMITS[key];
  return numberWithin(min, max, whole);
}

const yesOrNo = v.boolean('true or false');

const RoomWindowSchema = v.strictObject({
  side: oneOf(...WINDOW_SIDES),
  areaM2: roomNumber('areaM2'),
  openM2: roomNumber('openM2'),
  type: v.exactOptional(v.picklist(glassIds, `one of ${glassIds.join(', ')}`)),
  summerShade: v.exactOptional(roomNumber('summerShade')),
  curtain: v.exactOptional(roomNumber('curtain')),
});

const windowCount = `a list of at most ${MOST_WINDOWS} windows`;
const roomCount = `a list of ${LEAST_ROOMS} to ${MOST_ROOMS} rooms; rooms of one row and use with open doors may be taken together`;

const RoomsSchema = v.strictObject({
  frontDepthM: roomNumber('frontDepthM'),
  partition: oneOf(...PARTITIONS),
  partitionM: roomNumber('partitionM'),
  stairM2: roomNumber('stairM2'),
  list: v.pipe(
    v.array(
      v.strictObject({
        name: text(ROOM_NAME_LENGTH),
        row: oneOf(...ROOM_ROWS),
        storey: roomNumber('storey', true),
        share: roomNumber('share'),
        reachesUp: yesOrNo,
        use: oneOf(...ROOM_USES),
        heated: yesOrNo,
        door: oneOf(...ROOM_DOORS),
        fanM3H: v.exactOptional(roomNumber('fanM3H')),
        mass: yesOrNo,
        windows: v.exactOptional(
          v.pipe(
            v.array(RoomWindowSchema, windowCount),
            v.check((list) => list.length <= MOST_WINDOWS, windowCount),
          ),
        ),
      }),
      roomCount,
    ),
    v.check((list) => list.length >= LEAST_ROOMS && list.length <= MOST_ROOMS, roomCount),
  ),
});

const foundValue = numberWithin(FOUND_LIMITS.shift[0], FOUND_LIMITS.factor[1]);
const misfit = numberWithin(...FOUND_LIMITS.misfitK);
const dayText = v.pipe(
  v.string('a date as 2026-01-12'),
  v.check((value) => /^\d{4}-\d{2}-\d{2}$/.test(value), 'a date as 2026-01-12'),
);
const factorText = `a factor from ${FOUND_LIMITS.factor[0]} to ${FOUND_LIMITS.factor[1]}`;
const AsFoundSchema = v.strictObject({
  from: dayText,
  until: dayText,
  misfitK: misfit,
  unseenMisfitK: misfit,
  unknowns: v.pipe(
    v.array(
      v.pipe(
        v.strictObject({ id: oneOf(...UNKNOWN_IDS), value: foundValue, low: foundValue, high: foundValue }),
        v.check(({ low, value, high }) => low <= value && value <= high, 'a value from low to high'),
        v.check(
          ({ id, low }) => SHIFTS.includes(id) || low >= FOUND_LIMITS.factor[0],
          `${factorText}, or for ${SHIFTS.join(', ')} a shift in K`,
        ),
      ),
    ),
    v.check((list) => new Set(list.map(({ id }) => id)).size === list.length, 'each unknown once'),
  ),
});

const DesignSchema = v.strictObject({
  version: v.picklist([1, 2], '1 or 2'),
  name: text(NAME_LENGTH),
  note: text(NOTE_LENGTH),
  climate: text(NAME_LENGTH),
  hotter: v.exactOptional(
    v.strictObject({
      winterK: hotterNumber('winterK'),
      summerK: hotterNumber('summerK'),
      waveDays: hotterNumber('waveDays'),
      waveK: hotterNumber('waveK'),
    }),
  ),
  asFound: v.exactOptional(AsFoundSchema),
  house: v.strictObject({
    floorAreaM2: numberAt('house.floorAreaM2'),
    ceilingHeightM: numberAt('house.ceilingHeightM'),
    equatorWallM: numberAt('house.equatorWallM'),
    turnDeg: numberAt('house.turnDeg'),
    storeys: numberAt('house.storeys'),
  }),
  rooms: v.exactOptional(RoomsSchema),
  glass: v.strictObject({
    basis: oneOf('area', 'share-of-wall', 'share-of-floor'),
    value: numberAt('glass.value'),
    type: v.picklist(glassIds, `one of ${glassIds.join(', ')}`),
    tiltDeg: numberAt('glass.tiltDeg'),
    frameShare: numberAt('glass.frameShare'),
    overhangM: numberAt('glass.overhangM'),
    overhangGapM: numberAt('glass.overhangGapM'),
    nightResistance: numberAt('glass.nightResistance'),
    summerShade: numberAt('glass.summerShade'),
    otherShareOfFloor: numberAt('glass.otherShareOfFloor'),
  }),
  // Files from before there were covers have none but the front's two numbers.
  covers: v.exactOptional(
    v.pipe(
      v.array(CoverSchema, `a list of at most ${MOST_COVERS} covers`),
      v.check((list) => list.length <= MOST_COVERS, `a list of at most ${MOST_COVERS} covers`),
    ),
  ),
  sunspace: v.strictObject({
    join: oneOf('none', 'open', 'closed'),
    depthM: numberAt('sunspace.depthM'),
    lengthM: numberAt('sunspace.lengthM'),
    endWalls: oneOf('insulated', 'glazed'),
    commonWallMaterial: massMaterial,
    commonWallM: numberAt('sunspace.commonWallM'),
    commonGlassM2: numberAt('sunspace.commonGlassM2'),
    doorM2: numberAt('sunspace.doorM2'),
    doorRule: oneOf('by-need', 'shut', 'open'),
  }),
  mass: v.strictObject({
    material: massMaterial,
    areaM2: numberAt('mass.areaM2'),
    thicknessM: numberAt('mass.thicknessM'),
    place: oneOf('sunlit', 'shaded'),
  }),
  floor: v.strictObject({
    material: anyMaterial,
    thicknessM: numberAt('floor.thicknessM'),
    cover: oneOf('bare', 'tile', 'carpet', 'wood'),
    resistance: numberAt('floor.resistance'),
    edgeResistance: numberAt('floor.edgeResistance'),
  }),
  envelope: v.strictObject({
    wallResistance: numberAt('envelope.wallResistance'),
    roofResistance: numberAt('envelope.roofResistance'),
    bermShare: numberAt('envelope.bermShare'),
    wallLining: anyMaterial,
    wallLiningM: numberAt('envelope.wallLiningM'),
  }),
  air: v.strictObject({
    ach50: numberAt('air.ach50'),
    sunspaceAch50: numberAt('air.sunspaceAch50'),
    shelter: numberAt('air.shelter'),
  }),
  vents: v.strictObject({
    sunspaceM2: numberAt('vents.sunspaceM2'),
    houseM2: numberAt('vents.houseM2'),
    stackM: numberAt('vents.stackM'),
    opensAboveC: numberAt('vents.opensAboveC'),
    habit,
    nightPurgeAch: numberAt('vents.nightPurgeAch'),
    // Files from before there were these fans have none.
    extractAch: v.optional(numberAt('vents.extractAch'), 0),
    sunspaceFanAch: v.optional(numberAt('vents.sunspaceFanAch'), 0),
  }),
  // Files from before there were such units have none, and an extract fan, if any, that runs all the time.
  ventilation: v.optional(
    v.strictObject({
      aired: v.optional(oneOf('by-need', 'by-habit', 'never'), USUAL_VENTILATION.aired),
      airedMinutes: v.optional(numberAt('ventilation.airedMinutes'), USUAL_VENTILATION.airedMinutes),
      airedTimes: v.optional(numberAt('ventilation.airedTimes'), USUAL_VENTILATION.airedTimes),
      extractRuns: oneOf('always', 'hours', 'humidity'),
      extractHumidity: numberAt('ventilation.extractHumidity'),
      recoveryAch: numberAt('ventilation.recoveryAch'),
      recoveryEffectiveness: numberAt('ventilation.recoveryEffectiveness'),
      fanWPerM3H: numberAt('ventilation.fanWPerM3H'),
      frost: oneOf('preheat', 'recirculate'),
    }),
    USUAL_VENTILATION,
  ),
  people: v.strictObject({
    count: numberAt('people.count'),
    living: oneOf('dry', 'moist', 'wet'),
    awayWorkdays: v.boolean('true or false'),
    awayWeekends: v.exactOptional(v.literal(true, 'true, or no such key')),
    appliancesW: numberAt('people.appliancesW'),
  }),
  plants: v.strictObject({
    bedM2: numberAt('plants.bedM2'),
    leafAreaIndex: numberAt('plants.leafAreaIndex'),
    soil: oneOf('mulched', 'bare', 'open-water'),
  }),
  heating: v.strictObject({
    dayC: numberAt('heating.dayC'),
    nightC: numberAt('heating.nightC'),
    capacityKW: numberAt('heating.capacityKW'),
    source: v.exactOptional(HeatSourceSchema),
  }),
  comfort: v.strictObject({
    criterion: v.exactOptional(oneOf(...TOO_HOT_CHOICES)),
    overheatC: numberAt('comfort.overheatC'),
    underheatC: numberAt('comfort.underheatC'),
    humidLimit: numberAt('comfort.humidLimit'),
    airSpeedMs: v.exactOptional(numberAt('comfort.airSpeedMs')),
  }),
});

/**
 * Check unknown data against the schema and the rules that tie several numbers together.
 *
 * @param data anything, usually parsed JSON
 * @returns the design, or up to 50 faults each with path, value and what is allowed
 */
export function parseDesign(data: unknown): DesignResult {
  if (Array.isArray(data)) {
    return { ok: false, faults: [{ path: '', value: 'a list', allowed: 'one object with all its keys' }] };
  }
  const result = v.safeParse(DesignSchema, data);
  if (result.success) {
    // Without rooms it is version 1, whatever it calls itself, and is written so.
    const { rooms } = result.output;
    const design: Design = rooms ? (result.output as Design) : { ...(result.output as Design), version: 1 };
    const faults = tiedFaults(design);
    return faults.length === 0 ? { ok: true, design } : { ok: false, faults };
  }
  const faults = result.issues.slice(0, MAX_FAULTS).map((issue) => ({
    path: shortened(v.getDotPath(issue) ?? ''),
    value: printed(issue.input),
    allowed: allowedOf(issue),
  }));
  return { ok: false, faults };
}

/** One line a person can act on. */
export function describeDesignFault(fault: DesignFault): string {
  return `${fault.path === '' ? 'the design' : fault.path} is ${fault.value}; allowed: ${fault.allowed}`;
}

/** Rules between numbers; each would otherwise make a house that cannot stand. */
function tiedFaults(design: Design): DesignFault[] {
  const faults: DesignFault[] = [...coverFaults(design)];
  const { house, glass, sunspace } = design;
  if (glass.basis !== 'area' && glass.value > 1) {
    faults.push({ path: 'glass.value', value: String(glass.value), allowed: `0 to 1 as a ${glass.basis}` });
  }
  if (sunspace.join !== 'none' && sunspace.lengthM > house.equatorWallM + 1e-9) {
    faults.push({
      path: 'sunspace.lengthM',
      value: String(sunspace.lengthM),
      allowed: `at most the equator-facing wall, ${house.equatorWallM} m`,
    });
  }
  if (design.rooms !== undefined && design.version !== 2) {
    faults.push({ path: 'version', value: String(design.version), allowed: '2 with rooms' });
  }
  if (faults.length > 0) return faults;
  const { glassM2, largestGlassM2, frontLengthM, heightM } = geometryOf(design);
  if (glassM2 > largestGlassM2 * (1 + 1e-9)) {
    faults.push({
      path: 'glass.value',
      value: `${glass.value} (${glassM2.toFixed(2)} m²)`,
      allowed: `at most ${largestGlassM2.toFixed(2)} m², what a front ${frontLengthM} m long and ${heightM} m high holds at ${glass.tiltDeg}°`,
    });
  }
  return [...faults, ...roomFaults(design)];
}

function allowedOf(issue: v.BaseIssue<unknown>): string {
  if (issue.type !== 'strict_object') return issue.message;
  if (issue.expected === 'never') return 'no such key';
  return issue.input === undefined ? 'this key, with its value' : 'an object with all its keys';
}

function printed(value: unknown): string {
  if (value === undefined) return 'missing';
  if (typeof value === 'number') return String(value);
  try {
    return shortened(JSON.stringify(value) ?? String(value));
  } catch {
    // Lists within lists, deeper than the platform can print.
    return Array.isArray(value) ? 'a list' : 'an object';
  }
}

function shortened(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
