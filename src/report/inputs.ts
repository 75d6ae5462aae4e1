// Every input of a design in words, for the list of assumptions: label, value with unit. A design in, rows out,
// grouped as the design is. Numbers take label and kind of unit from design/limits.ts; choices are named here.

import type { Design, Habit } from '../design/design.ts';
import { glassById } from '../design/glass-catalogue.ts';
import { hotterName } from '../design/hotter.ts';
import { LIMITS, type Limit } from '../design/limits.ts';
import { materialById } from '../design/materials.ts';
import { roomPlanOf } from '../design/room-plan.ts';
import { SHARED_CAUSES, type SharedCause, sharesOf } from '../design/room-uses.ts';
import { tooHotChoice } from '../design/too-hot-criterion.ts';
import { coverWords } from '../findings/cover-words.ts';
import { foundWords, UNKNOWN_WORDS } from '../findings/found-words.ts';
import { sourceWords } from '../findings/fuel-words.ts';
import { hotterWords } from '../findings/hotter-words.ts';
import {
  DOOR_WORDS,
  PARTITION_WORDS,
  placeWords,
  USE_WORDS,
  WINDOW_SIDE_WORDS,
} from '../findings/room-words.ts';
import { plain, type Wording } from '../findings/wording.ts';

export interface InputGroup {
  readonly title: string;
  readonly rows: readonly (readonly [label: string, value: string])[];
}

const TITLES: Readonly<Record<string, string>> = {
  house: 'House',
  glass: 'Glass',
  sunspace: 'Sunspace',
  mass: 'Added mass',
  floor: 'Floor',
  envelope: 'Walls, roof and earth',
  air: 'Airtightness',
  vents: 'Vents and windows',
  ventilation: 'Fans for fresh air',
  people: 'People',
  plants: 'Plants',
  heating: 'Back-up heat',
  comfort: 'Limits of comfort',
};

const CHOICES: Readonly<
  Record<string, { readonly label: string; readonly words: Readonly<Record<string, string>> }>
> = {
  'glass.basis': {
    label: 'Glass is given as',
    words: {
      area: 'an area',
      'share-of-wall': 'a share of the equator-facing wall',
      'share-of-floor': 'a share of the heated floor',
    },
  },
  'glass.type': { label: 'Kind of glass', words: {} },
  'sunspace.join': {
    label: 'How it joins the rooms',
    words: { none: 'none', open: 'open to the rooms', closed: 'closed off by a wall' },
  },
  'sunspace.endWalls': { label: 'End walls', words: { insulated: 'insulated', glazed: 'glazed' } },
  'sunspace.commonWallMaterial': { label: 'Common wall of', words: {} },
  'sunspace.doorRule': {
    label: 'The door stands',
    words: { 'by-need': 'open when the rooms want heat', shut: 'always shut', open: 'always open' },
  },
  'mass.material': { label: 'Material', words: {} },
  'mass.place': { label: 'Place', words: { sunlit: 'in the sun', shaded: 'out of the sun' } },
  'floor.material': { label: 'Floor of', words: {} },
  'floor.cover': {
    label: 'Floor covering',
    words: { bare: 'none', tile: 'tiles', carpet: 'carpet', wood: 'wood' },
  },
  'envelope.wallLining': { label: 'Inner leaf of', words: {} },
  'vents.habit': {
    label: 'Who opens them',
    words: {
      automatic: 'an automatic opener',
      attentive: 'attentive people',
      away: 'people away on workdays',
      forgetful: 'people who forget now and then',
      never: 'nobody',
    },
  },
  'ventilation.aired': {
    label: 'Rooms are aired for some minutes',
    words: { 'by-need': 'when they are damp or stale', 'by-habit': 'every day', never: 'never' },
  },
  'ventilation.extractRuns': {
    label: 'The extract fan runs',
    words: {
      always: 'all the time',
      hours: 'in the hours of cooking and washing',
      humidity: 'as the rooms grow damp',
    },
  },
  'ventilation.frost': {
    label: 'Against ice in the unit',
    words: { preheat: 'an electric heater before it', recirculate: 'it turns room air round for a while' },
  },
  'people.living': {
    label: 'Water from living',
    words: { dry: 'little', moist: 'ordinary', wet: 'much' },
  },
  'people.awayWorkdays': { label: 'Away on workdays', words: { true: 'yes', false: 'no' } },
  'people.awayWeekends': { label: 'Away at weekends', words: { true: 'yes' } },
  'comfort.criterion': {
    label: 'Too hot means',
    words: {
      'adaptive-I': 'by the weather, EN 16798-1, category I',
      'adaptive-II': 'by the weather, EN 16798-1, category II',
      'adaptive-III': 'by the weather, EN 16798-1, category III',
      'tm59-open': 'by the weather, CIBSE TM59 for homes whose windows open',
      'tm59-3-percent': 'one limit, CIBSE TM59 for homes whose windows stay shut',
      'practice-10-percent': 'one limit, certification practice for low-energy houses',
      'guide-a-living': 'one limit, CIBSE Guide A (2006) for living rooms',
      fixed: 'one limit',
    },
  },
  'plants.soil': {
    label: 'Soil of the bed',
    words: { mulched: 'mulched', bare: 'bare', 'open-water': 'open water' },
  },
};

/** Who opens the vents, in words. */
export function habitWords(habit: Habit): string {
  return CHOICES['vents.habit']!.words[habit]!;
}

/** Inputs that mean nothing without a wall between sunspace and rooms. */
const NEEDS_WALL = /^(sunspace\.(common|doorRule)|vents\.sunspaceFanAch)/;
/** Inputs that mean nothing without the fan they are of. */
const NEEDS_AIRING = /^ventilation\.aired(Minutes|Times)/;
const NEEDS_EXTRACT = /^ventilation\.extractRuns/;
const NEEDS_HUMIDITY = /^ventilation\.extractHumidity/;
const NEEDS_UNIT = /^ventilation\.(recoveryEffectiveness|fanWPerM3H|frost)/;
/** Inputs that mean nothing without a sunspace. */
const NEEDS_SUNSPACE = /^(sunspace\.(?!join)|air\.sunspaceAch50|vents\.sunspaceM2)/;

/**
 * All inputs of a design.
 *
 * @param design a checked design
 * @param words units to say them in
 */
export function inputsOf(design: Design, words: Wording): readonly InputGroup[] {
  const weather: InputGroup[] =
    design.hotter === undefined
      ? []
      : [
          {
            title: 'Weather',
            rows: [[`Made ${hotterName(design.hotter)}`, hotterWords(design.hotter, words)]],
          },
        ];
  const groups = Object.entries(TITLES).map(([group, title]) => {
    const told = group === 'comfort' ? toldComfort(design) : design[group as keyof Design];
    const fields = Object.entries(told as unknown as Record<string, unknown>);
    const rows = fields
      .map(([field, value]) => [`${group}.${field}`, value] as const)
      .filter(([path]) => design.sunspace.join !== 'none' || !NEEDS_SUNSPACE.test(path))
      .filter(([path]) => design.sunspace.join === 'closed' || !NEEDS_WALL.test(path))
      .filter(([path]) => isAired(design) || !NEEDS_AIRING.test(path))
      .filter(([path]) => design.vents.habit !== 'never' || path !== 'ventilation.aired')
      .filter(([path]) => design.vents.extractAch > 0 || !NEEDS_EXTRACT.test(path))
      .filter(([path]) => isLedByHumidity(design) || !NEEDS_HUMIDITY.test(path))
      .filter(([path]) => design.ventilation.recoveryAch > 0 || !NEEDS_UNIT.test(path))
      .map(([path, value]) => rowOf(path, value, design, words));
    return { title, rows };
  });
  return [...weather, ...asFoundOf(design, words), ...groups, ...roomsOf(design, words), ...coversOf(design)];
}

/** What a record of a standing house showed, where there is one. */
function asFoundOf({ asFound }: Design, wording: Wording): readonly InputGroup[] {
  if (asFound === undefined) return [];
  const rows = asFound.unknowns.map((found): readonly [string, string] => {
    const words = UNKNOWN_WORDS[found.id];
    return [words.charAt(0).toUpperCase() + words.slice(1), foundWords(found, wording)];
  });
  return [{ title: `As found by loggers, ${asFound.from} to ${asFound.until}`, rows }];
}

/** What divides the house, then a line a room with what its use brings; none of one room. */
export function roomsOf(design: Design, words: Wording): readonly InputGroup[] {
  const plan = roomPlanOf(design);
  if (plan === null) return [];
  const { partition, partitionM, frontDepthM, stairM2 } = design.rooms!;
  const shares = SHARED_CAUSES.map((cause) => [cause, sharesOf(plan.rooms, cause)] as const);
  const build = `${PARTITION_WORDS[partition]}${partition === 'light' ? '' : `, ${words.thickness(partitionM)}`}`;
  return [
    {
      title: 'Rooms',
      rows: [
        ['Walls between rooms', build],
        ['Depth of the front row', words.length(frontDepthM)],
        ...(design.house.storeys > 1 ? [['Clear hole of the stairs', words.area(stairM2)] as const] : []),
        ...plan.rooms.map(({ room, floorM2 }, i): readonly [string, string] => {
          const way = plan.ways.some((one) => one.room === i) ? `; door: ${DOOR_WORDS[room.door]}` : '';
          const fan = (room.fanM3H ?? 0) > 0 ? `; fan ${words.airFlow(room.fanM3H!)}` : '';
          const has = shares
            .filter(([, each]) => each[i]! > 0.005)
            .map(([cause, each]) => `${CAUSE_WORDS[cause]} ${plain(100 * each[i]!, 0)} %`);
          const windows = room.windows
            ? `; windows ${room.windows.map(({ side, areaM2 }) => `${WINDOW_SIDE_WORDS[side]} ${words.area(areaM2)}`).join(', ') || 'none'}`
            : '';
          return [
            room.name,
            `${USE_WORDS[room.use]}, ${placeWords(room)}, ${words.area(floorM2)}${room.heated ? ', stove or heater' : ''}${way}${fan}${windows}; of the household's ${has.join(', ') || 'nothing'}`,
          ];
        }),
      ],
    },
  ];
}

const CAUSE_WORDS: Readonly<Record<SharedCause, string>> = {
  awake: 'waking hours',
  asleep: 'sleep',
  appliances: 'appliances',
  cooking: 'cooking',
  washing: 'washing',
  drying: 'drying',
  extract: 'extract fan',
};

/** The list of covers, numbered; none without any. */
function coversOf(design: Design): readonly InputGroup[] {
  const rows = (design.covers ?? []).map((cover, i): readonly [string, string] => [
    `Cover ${i + 1}`,
    coverWords(cover, design),
  ]);
  return rows.length === 0 ? [] : [{ title: 'Shades and covers', rows }];
}

function isAired({ vents, ventilation }: Design): boolean {
  return vents.habit !== 'never' && ventilation.aired !== 'never';
}

function isLedByHumidity({ vents, ventilation }: Design): boolean {
  return vents.extractAch > 0 && ventilation.extractRuns === 'humidity';
}

/** The choice in force, said or not; and the one limit only where it counts. */
function toldComfort({ comfort, ...design }: Design): Record<string, unknown> {
  const criterion = tooHotChoice({ ...design, comfort });
  const { overheatC, ...rest } = comfort;
  return { criterion, ...(criterion === 'fixed' && { overheatC }), ...rest };
}

function rowOf(path: string, value: unknown, design: Design, words: Wording): readonly [string, string] {
  if (path === 'heating.source') return ['It comes from', sourceWords(design.heating.source)];
  const choice = CHOICES[path];
  if (choice !== undefined) return [choice.label, choice.words[String(value)] ?? nameOf(path, String(value))];
  const limit = LIMITS.find((entry) => entry.path === path);
  if (limit === undefined) throw new RangeError(`path is '${path}'; allowed: an input with a label`);
  return [limit.label, numberIn(limit, value as number, design, words)];
}

function nameOf(path: string, id: string): string {
  return path === 'glass.type' ? glassById(id).name : materialById(id).name;
}

function numberIn(limit: Limit, value: number, design: Design, words: Wording): string {
  if (limit.path === 'glass.value') {
    return design.glass.basis === 'area' ? words.area(value) : `${plain(100 * value, 1)} %`;
  }
  if (limit.path.endsWith('hicknessM') || limit.path.endsWith('WallM') || limit.path.endsWith('LiningM')) {
    if (limit.path !== 'house.equatorWallM') return words.thickness(value);
  }
  switch (limit.quantity) {
    case 'area':
      return words.area(value);
    case 'length':
      return words.length(value);
    case 'angle':
      return `${plain(value, 0)}°`;
    case 'share':
      return `${plain(100 * value, 1)} %`;
    case 'resistance':
      return words.resistance(value);
    case 'temperature':
      return words.temperature(value, 1);
    case 'power':
      return `${plain(value, 0)} W`;
    case 'speed':
      return words.speed(value);
    case 'powerKW':
      return words.power(1000 * value);
    case 'airChanges':
      return `${plain(value, 1)} air changes an hour${limit.path.startsWith('air.') ? ' at 50 Pa' : ''}`;
    case 'minutes':
      return `${value} minutes`;
    case 'fanPower':
      return words.fanPower(value);
    default:
      return plain(value, Number.isInteger(value) ? 0 : 1);
  }
}
