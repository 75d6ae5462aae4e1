// Headline figures as rows of text: one run by zone, or several runs side by side. Units as the run asks.

import { type Context, contextOf, type Run } from '../findings/context.ts';
import { fuelWords } from '../findings/fuel-words.ts';
import { hotLabel } from '../findings/hot-words.ts';
import { hours, percent, plain } from '../findings/wording.ts';
import type { ZoneOutcome } from '../outcomes/outcome.ts';
import { worstDampSpot } from '../outcomes/worst-damp-spot.ts';
import { passesTm59Night, TM59_NIGHT } from '../physics/overheating-criteria.ts';
import { fuelCost } from '../quantities/fuel-cost.ts';
import { NO_PRICES, type PriceList } from '../quantities/prices.ts';
import { moneyInWords } from '../quantities/words.ts';
import type { Block } from './block.ts';

interface Row {
  readonly label: (context: Context) => string;
  readonly of: (zone: ZoneOutcome, context: Context) => string;
  /** the row stands only where this holds for some zone of the table */
  readonly matters?: (zone: ZoneOutcome) => boolean;
}

const tooHotLabel = ({ house, words }: Context) => hotLabel(house.tooHot, words);

const ZONE_ROWS: readonly Row[] = [
  {
    label: tooHotLabel,
    of: (zone) => hours(zone.tooHot.hours),
  },
  {
    label: () => 'Hottest hour, air and walls',
    of: (zone, { words }) => words.temperature(zone.maxOperativeC, 1),
  },
  {
    label: ({ house, words }) => `Feels like ${words.temperature(house.feltHeat.limitC)} or more`,
    of: (zone) => hours(zone.feltHeat.hours),
    matters: (zone) => zone.feltHeat.hours > 0,
  },
  {
    label: ({ words }) => `Above ${words.temperature(TM59_NIGHT.limitC)} at night`,
    of: (zone) => hours(zone.hotNightHours),
    matters: (zone) => !passesTm59Night(zone.hotNightHours),
  },
  {
    label: ({ house, words }) => `Below ${words.temperature(house.underheatLimitC)}`,
    of: (zone) => hours(zone.underheatedHours),
  },
  {
    label: () => 'Coldest hour, air and walls',
    of: (zone, { words }) => words.temperature(zone.minOperativeC, 1),
  },
  { label: () => 'Swing of an average day', of: (zone, { words }) => words.degrees(zone.meanDailySwingK) },
  { label: () => 'Humidity on average', of: (zone) => percent(zone.meanRelativeHumidity) },
  {
    label: ({ house }) => `Above ${percent(house.humidLimit)} humidity`,
    of: (zone) => hours(zone.humidHours),
  },
  { label: () => 'Water given off a day', of: (zone, { words }) => words.water(zone.moistureLoadKgPerDay) },
  { label: () => 'Condensed on glass a year', of: (zone, { words }) => words.water(zone.condensationKg) },
  {
    label: () => 'Mould index of the worst place, 0 to 6, limit 3',
    of: (zone) => plain(worstDampSpot(zone).index, 1),
  },
];

/** What the house as a whole needs. */
const HOUSE_ROWS: readonly {
  readonly label: string;
  readonly of: (context: Context, prices: PriceList) => string;
  /** the row stands only where this holds for some run of the table */
  readonly matters?: (context: Context, prices: PriceList) => boolean;
}[] = [
  { label: 'Back-up heat a year', of: ({ outcome, words }) => words.energy(outcome.heating.energyKWh) },
  {
    label: 'Fuel a year',
    of: ({ outcome, design, words }) => (outcome.fuel ? fuelWords(outcome.fuel, design, words) : ''),
    matters: ({ outcome }) => outcome.fuel !== undefined,
  },
  {
    label: 'Fuel a year in money, by your price',
    of: ({ outcome }, prices) => {
      const cost = outcome.fuel ? fuelCost(outcome.fuel, prices) : null;
      return cost === null ? '' : moneyInWords(cost, prices.currency);
    },
    matters: ({ outcome }, prices) => outcome.fuel !== undefined && fuelCost(outcome.fuel, prices) !== null,
  },
  { label: 'Back-up heat at its peak', of: ({ outcome, words }) => words.power(outcome.heating.peakW) },
  {
    label: 'Power of fans for fresh air a year',
    of: ({ outcome, words }) =>
      words.electricity(outcome.ventilation.fansKWh + outcome.ventilation.frostHeaterKWh),
    matters: ({ outcome }) => outcome.ventilation.fansKWh > 0,
  },
  { label: 'Vents and doors moved a year', of: ({ outcome }) => `${outcome.vents.moves} times` },
  {
    label: 'Shades and covers moved a year',
    of: ({ outcome }) => `${outcome.covers?.moves ?? 0} times`,
    matters: ({ outcome }) => outcome.covers !== undefined,
  },
];

function houseRowsFor(contexts: readonly Context[], prices: PriceList): typeof HOUSE_ROWS {
  return HOUSE_ROWS.filter(
    ({ matters }) => matters === undefined || contexts.some((context) => matters(context, prices)),
  );
}

function rowsFor(zones: readonly ZoneOutcome[]): readonly Row[] {
  return ZONE_ROWS.filter(({ matters }) => matters === undefined || zones.some(matters));
}

/** The table of one run: label, house, and the sunspace where there is one. */
export function headlineOf(context: Context, prices: PriceList = NO_PRICES): readonly (readonly string[])[] {
  const zones = headlineZones(context).map(({ zone }) => zone);
  return [
    ...rowsFor(zones).map(({ label, of }) => [label(context), ...zones.map((zone) => of(zone, context))]),
    ...houseRowsFor([context], prices).map(({ label, of }) => [
      label,
      of(context, prices),
      ...zones.slice(1).map(() => ''),
    ]),
  ];
}

/** Whose columns they are: the house, or each room of a divided one, and the sunspace. */
export function headlineZones({ house, sunspace, outcome }: Context): readonly HeadlineZone[] {
  const rooms = outcome.rooms?.map((room) => ({
    name: room.name,
    zone: { ...room, underheatedHours: room.lived.underheatedHours },
  }));
  return [
    ...(rooms ?? [{ name: 'House', zone: house }]),
    ...(sunspace === null ? [] : [{ name: 'Sunspace', zone: sunspace }]),
  ];
}

interface HeadlineZone {
  readonly name: string;
  readonly zone: ZoneOutcome;
}

/** What too hot means in each, where versions are not judged by the same limit. */
function unlikeLimits(contexts: readonly Context[]): readonly (readonly string[])[] {
  const labels = contexts.map(tooHotLabel);
  return labels.every((label) => label === labels[0]) ? [] : [['Too hot means', ...labels]];
}

/** Several runs side by side, the rooms only. */
export function comparisonOf(runs: readonly Run[], prices: PriceList = NO_PRICES): Block {
  const contexts = runs.map(contextOf);
  const [first] = contexts;
  if (first === undefined) throw new RangeError('runs are none; allowed: at least one');
  return {
    kind: 'table',
    head: ['', ...contexts.map(({ design }) => design.name)],
    rows: [
      [
        'Equator-facing glass',
        ...contexts.map(
          ({ geometry, words, design }) => `${words.area(geometry.glassM2)} at ${design.glass.tiltDeg}°`,
        ),
      ],
      ['Share of the floor', ...contexts.map(({ geometry }) => percent(geometry.shareOfFloor))],
      ...unlikeLimits(contexts),
      ...rowsFor(contexts.map(({ house }) => house)).map(({ label, of }) => [
        label === tooHotLabel && unlikeLimits(contexts).length > 0 ? 'Too hot' : label(first),
        ...contexts.map((context) => of(context.house, context)),
      ]),
      ...houseRowsFor(contexts, prices).map(({ label, of }) => [
        label,
        ...contexts.map((context) => of(context, prices)),
      ]),
    ],
  };
}
