// For every rule a run in which it must speak and one in which it must keep silent. Kept as data so that the tests
// can also weigh the words of each rule.

import type { Cover } from '../../src/design/design.ts';
import { USUAL_STOVE } from '../../src/design/heat-source.ts';
import { hourly, madeCover, madeOpening, madePane } from '../outcomes/made-year.ts';
import { CALM, type MadeRun } from './made-run.ts';

export interface RuleCase {
  readonly speaks: MadeRun;
  readonly silent: MadeRun;
}

const covered = (kind: string, on: Cover['on'], drawnBy: Cover['drawnBy']) => ({
  covers: [{ kind, on, drawnBy, season: 'year' as const }],
});
const CLOSED = { sunspace: { join: 'closed' as const } };
const OPEN = { sunspace: { join: 'open' as const } };
const UNIT = { ventilation: { recoveryAch: 0.4 } };
const LEANING = { glass: { tiltDeg: 60 } };

/** 1200 hours of September and October at 31 °C, outdoors at 10 °C. */
const HOT_AUTUMN: MadeRun['house'] = { airC: (hour) => (hour >= 6000 && hour < 7200 ? 31 : 21) };
/** Summer nights at 28 °C. */
const HOT_NIGHTS: MadeRun['house'] = {
  airC: (hour) => (hour >= 4344 && hour < 5088 && (hour % 24 >= 22 || hour % 24 < 7) ? 28 : 21),
};
/** Summer afternoons at 28 °C. */
const HOT_DAYS: MadeRun['house'] = {
  airC: (hour) => (hour >= 4344 && hour < 5088 && hour % 24 >= 12 && hour % 24 < 18 ? 28 : 21),
};
const DAMP: MadeRun['house'] = { relativeHumidity: (hour) => (hour < 2000 ? 0.85 : 0.5) };
const SEASONS: MadeRun['climate'] = {
  dryBulbC: (hour) =>
    12 - 12 * Math.cos((2 * Math.PI * (hour - 400)) / 8760) + 7 * Math.sin((Math.PI * (hour - 9)) / 12),
};
const plants = (kg: number) => [{ cause: 'plants', monthKg: Array(12).fill((kg * 365) / 12) }];
const twelve = (joule: number) => Array<number>(12).fill(joule);
const KWH = 3.6e6;
const given = (kWhAMonth: number) => [
  { zone: 'house', cause: 'other zones', monthJ: twelve(kWhAMonth * KWH) },
];
const lost = (kWhAMonth: number) => [{ zone: 'house', cause: 'glass', monthJ: twelve(-kWhAMonth * KWH) }];

const STOVE = { heating: { source: USUAL_STOVE } };
const room = (use: 'living' | 'bedroom', row: 'front' | 'back', heated: boolean) => ({
  name: use,
  storey: 0,
  row,
  share: 1,
  reachesUp: false,
  use,
  heated,
  door: 'open' as const,
  mass: true,
});
/** The stove stands in the bedroom. */
const BEDROOM = {
  rooms: {
    frontDepthM: 4,
    partition: 'light' as const,
    partitionM: 0.1,
    stairM2: 0,
    list: [room('living', 'front', false), room('bedroom', 'back', true)],
  },
};
/** The living room reaches up to the roof beside a bedroom upstairs. */
const TALL = {
  house: { storeys: 2 },
  rooms: {
    frontDepthM: 4,
    partition: 'light' as const,
    partitionM: 0.1,
    stairM2: 3,
    list: [
      { ...room('living', 'front', true), reachesUp: true },
      { ...room('bedroom', 'back', false), storey: 1 },
    ],
  },
};
/** It burns through the first hours of the year, in which the rooms are hot. */
const burning = (loads: number) => ({
  stoves: [
    {
      zone: 'house',
      woodJPerKg: 1.45e7,
      loadKg: hourly((hour) => (hour < loads ? 1.5 : 0)),
      burntW: hourly((hour) => (hour < loads ? 6000 : 0)),
      roomW: hourly((hour) => (hour < loads ? 4700 : 0)),
      floorW: hourly(0),
      flueW: hourly((hour) => (hour < loads ? 1300 : 0)),
      heldJ: hourly(0),
    },
  ],
});

export const RULE_CASES: Readonly<Record<string, RuleCase>> = {
  'hotter-year': {
    speaks: { design: { hotter: { winterK: 1.5, summerK: 3, waveDays: 10, waveK: 5 } } },
    silent: CALM,
  },
  'too-hot': { speaks: { house: HOT_AUTUMN }, silent: CALM },
  'hot-out-of-season': {
    speaks: { house: HOT_AUTUMN, climate: SEASONS },
    silent: { house: HOT_NIGHTS, climate: SEASONS },
  },
  'hot-nights': { speaks: { house: HOT_NIGHTS }, silent: { house: HOT_DAYS } },
  'fails-tm52': {
    speaks: { design: { comfort: { criterion: 'tm59-open' } }, house: { airC: 33 } },
    silent: { house: { airC: 33 } },
  },
  'ceiling-fans': {
    speaks: { design: { comfort: { airSpeedMs: 0.8 } }, house: HOT_DAYS },
    silent: { house: HOT_DAYS },
  },
  'tall-room': { speaks: { design: TALL }, silent: { design: BEDROOM } },
  'cool-enough': { speaks: CALM, silent: { house: HOT_AUTUMN } },
  'too-cold': { speaks: { house: { airC: (hour) => (hour < 500 ? 11 : 20) } }, silent: CALM },
  'cool-rooms': { speaks: { design: { heating: { dayC: 16 } } }, silent: CALM },
  'heat-needed': { speaks: { house: { heatingW: 900 } }, silent: CALM },
  'little-heat-needed': { speaks: { house: { ventAch: 0.5 } }, silent: { house: { heatingW: 900 } } },
  'fuel-of-a-year': { speaks: { design: STOVE, year: burning(300) }, silent: CALM },
  'stove-overheats': {
    speaks: {
      design: STOVE,
      year: burning(300),
      house: { airC: (hour) => (hour < 300 ? 26 : 20) },
    },
    silent: { design: STOVE, year: burning(300) },
  },
  'stove-unfed': {
    speaks: { design: STOVE, year: burning(0), house: { airC: (hour) => (hour < 500 ? 11 : 20) } },
    silent: { design: STOVE, year: burning(300), house: { airC: (hour) => (hour < 500 ? 11 : 20) } },
  },
  'weekend-away': {
    speaks: { design: { people: { awayWeekends: true } } },
    silent: { design: STOVE },
  },
  'wet-wood': {
    speaks: { design: { heating: { source: { ...USUAL_STOVE, moisture: 0.3 } } } },
    silent: { design: STOVE },
  },
  'heated-face-missing': {
    speaks: {
      design: { mass: { areaM2: 0 }, heating: { capacityKW: 4, source: { kind: 'wall', fuel: 'gas' } } },
    },
    silent: {
      design: { mass: { areaM2: 20 }, heating: { capacityKW: 4, source: { kind: 'wall', fuel: 'gas' } } },
    },
  },
  'floor-asked-too-much': {
    speaks: { design: { heating: { capacityKW: 20, source: { kind: 'floor', fuel: 'gas' } } } },
    silent: { design: { heating: { capacityKW: 20 } } },
  },
  'too-damp': { speaks: { house: { ...DAMP, moistureByCause: plants(4) } }, silent: CALM },
  'damp-from-plants': {
    speaks: { design: OPEN, house: DAMP, sunspace: { moistureByCause: plants(6) } },
    silent: { design: CLOSED, house: DAMP, sunspace: { moistureByCause: plants(6) } },
  },
  'dry-enough': { speaks: CALM, silent: { house: DAMP } },
  'dry-air': { speaks: { house: { relativeHumidity: 0.22 } }, silent: CALM },
  'stale-air': { speaks: { house: { co2Ppm: 2200 } }, silent: CALM },
  'little-fresh-air': { speaks: { house: { ventAch: 0.2 } }, silent: { house: { ventAch: 0.5 } } },
  'mould-in-rooms': { speaks: { houseOutcome: { mouldIndexMax: 3.6 } }, silent: CALM },
  'mould-in-sunspace': {
    speaks: { design: CLOSED, sunspace: { airC: 18, cornerC: 16, relativeHumidity: 0.95 } },
    silent: { design: CLOSED },
  },
  'wet-glass': {
    speaks: { year: { panes: [madePane('front', { wetHours: 900 })] }, house: { condensationG: 5 } },
    silent: CALM,
  },
  'clean-corners': { speaks: CALM, silent: { houseOutcome: { mouldIndexMax: 1.4 } } },
  'glass-share': { speaks: CALM, silent: { design: { glass: { value: 0 } } } },
  'glass-leans': { speaks: { design: LEANING, climate: { globalHorizontal: sunny } }, silent: CALM },
  'glass-loses': {
    speaks: { year: { heat: lost(100) } },
    silent: { year: { heat: lost(100) }, house: { solarW: 400 } },
  },
  'glass-pays': {
    speaks: { year: { heat: lost(100) }, house: { solarW: 400 } },
    silent: { year: { heat: lost(100) } },
  },
  'glass-upright': { speaks: CALM, silent: { design: LEANING } },
  'no-overhang': {
    speaks: { design: { glass: { overhangM: 0 } }, house: HOT_AUTUMN },
    silent: { house: HOT_AUTUMN },
  },
  'turned-away': {
    speaks: { design: { house: { turnDeg: 60 } }, climate: { beamNormal: sunny } },
    silent: CALM,
  },
  'dark-glass-for-plants': {
    speaks: { design: { plants: { bedM2: 5 }, glass: { type: 'double-selective' } } },
    silent: { design: { plants: { bedM2: 5 } } },
  },
  'mass-enough': { speaks: CALM, silent: { outcome: mass(300) } },
  'mass-too-little': { speaks: { house: HOT_AUTUMN, outcome: mass(300) }, silent: { outcome: mass(300) } },
  'wide-swing': {
    speaks: { house: { airC: (hour) => 20 + 5 * Math.sin((hour * Math.PI) / 12) } },
    silent: CALM,
  },
  'mass-in-shade': { speaks: { design: { mass: { place: 'shaded' } } }, silent: CALM },
  'mass-idle': {
    speaks: { design: { mass: { thicknessM: 0.6 } } },
    silent: { design: { mass: { thicknessM: 0.1 } } },
  },
  'floor-idle': {
    speaks: { design: { floor: { material: 'rammed-earth', thicknessM: 0.3 } } },
    silent: { design: { floor: { material: 'rammed-earth', thicknessM: 0.15 } } },
  },
  'floor-covered': { speaks: { design: { floor: { cover: 'carpet' } } }, silent: CALM },
  'tyre-work': { speaks: { design: { mass: { material: 'earth-tyres' } } }, silent: CALM },
  'plants-freeze': {
    speaks: {
      design: { ...CLOSED, plants: { bedM2: 5 } },
      sunspace: { airC: (hour) => (hour < 40 ? -4 : 18) },
    },
    silent: { design: CLOSED, sunspace: { airC: (hour) => (hour < 40 ? -4 : 18) } },
  },
  'plants-chill': {
    speaks: {
      design: { ...CLOSED, plants: { bedM2: 5 } },
      sunspace: { airC: (hour) => (hour < 400 ? 6 : 18) },
    },
    silent: { design: { ...CLOSED, plants: { bedM2: 5 } }, sunspace: { airC: 15 } },
  },
  'plants-scorch': {
    speaks: {
      design: { ...CLOSED, plants: { bedM2: 5 } },
      sunspace: { airC: (hour) => (hour > 5000 && hour < 5100 ? 44 : 18) },
    },
    silent: { design: { ...CLOSED, plants: { bedM2: 5 } }, sunspace: { airC: 18 } },
  },
  'plants-damp': {
    speaks: {
      design: { ...CLOSED, plants: { bedM2: 5 } },
      sunspace: { relativeHumidity: (hour) => (hour < 700 ? 0.97 : 0.7) },
    },
    silent: { design: { ...CLOSED, plants: { bedM2: 5 } }, sunspace: { relativeHumidity: 0.9 } },
  },
  'bed-does-not-fit': {
    speaks: { design: { ...CLOSED, plants: { bedM2: 200 } } },
    silent: { design: { ...CLOSED, plants: { bedM2: 5 } } },
  },
  'sunspace-extreme': {
    speaks: { design: CLOSED, sunspace: { airC: (hour) => (hour % 2 ? 4 : 42) } },
    silent: { design: CLOSED, sunspace: { airC: 22 } },
  },
  'sunspace-pleasant': {
    speaks: { design: CLOSED, sunspace: { airC: 22 } },
    silent: { design: CLOSED, sunspace: { airC: 42 } },
  },
  'sunspace-gives': {
    speaks: { design: CLOSED, house: { heatingW: 100 }, year: { heat: given(80) } },
    silent: { design: CLOSED, house: { heatingW: 100 } },
  },
  'sunspace-takes': {
    speaks: { design: CLOSED, house: { heatingW: 100 }, year: { heat: given(-80) } },
    silent: { design: CLOSED },
  },
  'sunspace-open': {
    speaks: { design: OPEN, house: HOT_AUTUMN },
    silent: { design: CLOSED, house: HOT_AUTUMN },
  },
  'vents-ask-much': {
    speaks: { year: { openings: [madeOpening('vents', (day) => (day < 200 ? 1 : 4))] } },
    silent: { year: { openings: [madeOpening('vents', () => 1)] } },
  },
  'vents-easy': {
    speaks: { year: { openings: [madeOpening('vents', () => 1)] } },
    silent: { year: { openings: [madeOpening('vents', () => 5)] } },
  },
  'vents-neglected': {
    speaks: {
      design: { vents: { habit: 'forgetful' } },
      year: { openings: [madeOpening('vents', () => 1, 700)] },
    },
    silent: { year: { openings: [madeOpening('vents', () => 1, 20)] } },
  },
  'heated-with-window-open': {
    speaks: {
      design: { vents: { habit: 'forgetful' } },
      house: { heatingW: 500 },
      year: {
        openings: [{ ...madeOpening('windows', () => 1), heatedOpenHours: 40, heatedOpenJ: 20 * 3.6e6 }],
      },
    },
    silent: {
      design: { vents: { habit: 'forgetful' } },
      house: { heatingW: 500 },
      year: {
        openings: [{ ...madeOpening('windows', () => 1), heatedOpenHours: 1, heatedOpenJ: 20 * 3.6e6 }],
      },
    },
  },
  'vents-small': {
    speaks: {
      design: { ...CLOSED, vents: { sunspaceM2: 0.8 } },
      sunspace: { airC: (hour) => (hour === 5000 ? 46 : 20) },
    },
    silent: {
      design: { ...CLOSED, vents: { sunspaceM2: 5 } },
      sunspace: { airC: (hour) => (hour === 5000 ? 46 : 20) },
    },
  },
  'windows-few': {
    speaks: { design: { vents: { houseM2: 0.5 } }, house: HOT_AUTUMN },
    silent: { house: HOT_AUTUMN },
  },
  'purge-helps': {
    speaks: { climate: SEASONS, house: HOT_AUTUMN },
    silent: { climate: SEASONS, house: HOT_AUTUMN, design: { vents: { nightPurgeAch: 5 } } },
  },
  'recovery-gives': { speaks: { design: UNIT }, silent: CALM },
  'recovery-leaky': {
    speaks: { design: { ...UNIT, air: { ach50: 8 } } },
    silent: { design: { ...UNIT, air: { ach50: 1 } } },
  },
  'caution-extract-fan': { speaks: { design: { vents: { nightPurgeAch: 5 } } }, silent: CALM },
  'caution-ventilation-unit': {
    speaks: {
      design: { ventilation: { ...UNIT.ventilation, frost: 'recirculate' } },
      climate: { dryBulbC: -9, dewPointC: -12 },
    },
    silent: { design: { vents: { extractAch: 0.3 } } },
  },
  'covers-ask-much': {
    speaks: { year: { covers: [madeCover('blinds', (day) => (day < 200 ? 1 : 6))] } },
    silent: { year: { covers: [madeCover('blinds', () => 2)] } },
  },
  'covers-neglected': {
    speaks: { year: { covers: [madeCover('blinds', () => 1, 900)] } },
    silent: { year: { covers: [madeCover('blinds', () => 1, 90)] } },
  },
  'leaves-in-winter': {
    speaks: { design: covered('leaves', 'front', 'season') },
    silent: { design: covered('leaves', 'east', 'season') },
  },
  'how-sure': { speaks: CALM, silent: CALM },
  'caution-heat': {
    speaks: { house: { airC: (hour) => (hour > 5000 && hour < 5040 ? 36 : 21), relativeHumidity: 0.6 } },
    silent: CALM,
  },
  'caution-hot-sunspace': {
    speaks: {
      design: CLOSED,
      sunspace: { airC: (hour) => (hour > 5000 && hour < 5040 ? 44 : 21), relativeHumidity: 0.4 },
    },
    silent: { design: CLOSED, sunspace: { airC: 26 } },
  },
  'caution-fire': { speaks: CALM, silent: { design: { air: { ach50: 8 } } } },
  'caution-carbon-monoxide': { speaks: { design: { air: { ach50: 8 } } }, silent: CALM },
  'caution-no-heater': { speaks: { design: { heating: { capacityKW: 0 } } }, silent: CALM },
  'caution-bedroom-escape': {
    speaks: { design: { ...CLOSED, envelope: { bermShare: 1 } } },
    silent: CALM,
  },
  'caution-stove-fan': {
    speaks: { design: { ...STOVE, vents: { extractAch: 0.3 } } },
    silent: { design: { ...STOVE, heating: { source: { ...USUAL_STOVE, air: 'own' } } } },
  },
  'caution-back-boiler': {
    speaks: { design: { heating: { source: { ...USUAL_STOVE, floorShare: 0.5 } } } },
    silent: { design: STOVE },
  },
  'caution-stove-clearance': { speaks: { design: STOVE }, silent: CALM },
  'caution-stove-bedroom': { speaks: { design: { ...STOVE, ...BEDROOM } }, silent: { design: STOVE } },
  'caution-hot-stove': { speaks: { design: STOVE }, silent: CALM },
  'caution-wood-stack': { speaks: { design: STOVE }, silent: CALM },
  'caution-chimney': { speaks: { design: STOVE }, silent: CALM },
  'caution-mould-health': { speaks: { houseOutcome: { mouldIndexMax: 4 } }, silent: CALM },
  'caution-codes-first': { speaks: CALM, silent: CALM },
  'caution-retaining': {
    speaks: { design: { envelope: { bermShare: 1 } } },
    // 0.91 m of earth: little against a framed wall, much against one of tyres.
    silent: { design: { envelope: { bermShare: 0.35 } } },
  },
  'caution-berm-damp': { speaks: { design: { envelope: { bermShare: 0.5 } } }, silent: CALM },
  'caution-foundation-damp': { speaks: CALM, silent: { design: { envelope: { bermShare: 0.5 } } } },
  'caution-roof-load': { speaks: { design: { envelope: { bermShare: 1 } } }, silent: CALM },
  'caution-beams': { speaks: CALM, silent: { design: { envelope: { bermShare: 1 } } } },
  'caution-water-weight': { speaks: { design: { mass: { material: 'water' } } }, silent: CALM },
  'caution-pounding': { speaks: { design: { mass: { material: 'rammed-earth' } } }, silent: CALM },
  'caution-heavy-walls': {
    speaks: { design: { mass: { material: 'adobe', areaM2: 20 } } },
    silent: { design: { mass: { areaM2: 0 } } },
  },
  'caution-tyres': {
    speaks: { design: { envelope: { wallLining: 'earth-tyres' } } },
    silent: { design: { mass: { material: 'earth-tyres', areaM2: 0 } } },
  },
  'caution-overhead-glass': { speaks: { design: LEANING }, silent: { design: { glass: { tiltDeg: 76 } } } },
  'caution-leaks': { speaks: { design: LEANING }, silent: CALM },
  'caution-snow': {
    speaks: { design: LEANING, climate: { dryBulbC: (hour) => (hour < 900 ? -6 : 12), dewPointC: -8 } },
    silent: { design: LEANING },
  },
  'caution-large-panes': { speaks: { design: LEANING }, silent: { design: { glass: { value: 0 } } } },
  'caution-escape-window': {
    speaks: { design: covered('shutter', 'all', 'night') },
    silent: { design: covered('curtain', 'all', 'night') },
  },
  'caution-cords': {
    speaks: { design: covered('inside-blind', 'east', 'heat') },
    silent: { design: covered('awning', 'east', 'heat') },
  },
  'caution-awning-wind': {
    speaks: { design: covered('awning', 'front', 'heat') },
    silent: { design: covered('curtain', 'front', 'heat') },
  },
  'caution-hot-glass': {
    speaks: { design: covered('inside-blind', 'front', 'heat') },
    silent: { design: covered('inside-blind', 'front', 'night') },
  },
  'caution-radon': { speaks: CALM, silent: CALM },
};

/** Rules that every design deserves; they have no silent case. */
export const ALWAYS: readonly string[] = [
  'how-sure',
  'caution-codes-first',
  'caution-radon',
  'caution-bedroom-escape',
];

function sunny(hour: number): number {
  return Math.max(0, 600 * Math.sin((Math.PI * ((hour % 24) - 6)) / 12));
}
function mass(kgPerM2Glass: number): NonNullable<MadeRun['outcome']> {
  return { mass: { volumeM3: 5, heatCapacityKWhPerK: 3, kgPerM2Glass } };
}
