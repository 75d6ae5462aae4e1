// Fine scans of one number of a house: what is scanned, over which values, in which houses, places and hands. A scan in, its
// years' figures out; scan-faults.ts judges them.
import { type Design, EXAMPLES, runYear } from '../../src/daystone.ts';
import type { Habit } from '../../src/design/design.ts';
import type { PreparedClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { MONTH_START_HOUR } from '../../src/weather/typical-year.ts';
import { bundledClimate } from '../weather/bundled-climates.ts';

export const HOUSES = ['modest', 'closed', 'leaning'] as const;
export const PLACES = ['denver', 'burlington', 'madrid', 'quillayute'] as const;
export const HABITS: readonly Habit[] = ['attentive', 'automatic', 'away', 'forgetful'];

export type House = (typeof HOUSES)[number];
export type Place = (typeof PLACES)[number];

export interface Knob {
  readonly id: string;
  /** what is scanned, for the axis */
  readonly words: string;
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** absent for all houses */
  readonly houses?: readonly House[];
  /** absent for all habits */
  readonly habits?: readonly Habit[];
  readonly set: (design: Design, value: number) => Design;
}

const withPlants = (design: Design, plants: Partial<Design['plants']>): Design => ({
  ...design,
  plants: { ...design.plants, ...plants },
});

const withVents = (design: Design, vents: Partial<Design['vents']>): Design => ({
  ...design,
  vents: { ...design.vents, ...vents },
});

export const KNOBS: readonly Knob[] = [
  {
    id: 'day set-point',
    words: 'set-point by day, °C',
    from: 17,
    to: 22,
    step: 0.25,
    set: (design, dayC) => ({
      ...design,
      heating: { ...design.heating, dayC, nightC: Math.min(dayC, design.heating.nightC) },
    }),
  },
  {
    id: 'night set-point',
    words: 'set-point by night, °C',
    from: 16,
    to: 20,
    step: 0.25,
    set: (design, nightC) => ({ ...design, heating: { ...design.heating, nightC } }),
  },
  {
    id: 'opens above',
    words: 'windows and vents open above, °C',
    from: 21,
    to: 28,
    step: 0.25,
    set: (design, opensAboveC) => withVents(design, { opensAboveC }),
  },
  {
    id: 'windows',
    words: 'windows that open, m²',
    from: 2,
    to: 20,
    step: 0.5,
    set: (design, houseM2) => withVents(design, { houseM2 }),
  },
  {
    id: 'sunspace vents',
    words: 'vents of the sunspace, m²',
    from: 0,
    to: 8,
    step: 0.5,
    houses: ['closed', 'leaning'],
    set: (design, sunspaceM2) => withVents(design, { sunspaceM2 }),
  },
  {
    id: 'night fan',
    words: 'night fan, air changes an hour',
    from: 0,
    to: 8,
    step: 0.5,
    set: (design, nightPurgeAch) => withVents(design, { nightPurgeAch }),
  },
  {
    id: 'door',
    words: 'door to the sunspace, m²',
    from: 0.5,
    to: 6,
    step: 0.5,
    houses: ['closed'],
    set: (design, doorM2) => ({ ...design, sunspace: { ...design.sunspace, doorM2 } }),
  },
  {
    id: 'bed',
    words: 'planted bed, m²',
    from: 0,
    to: 12,
    step: 1,
    houses: ['closed', 'leaning'],
    habits: ['attentive'],
    set: (design, bedM2) => withPlants(design, { bedM2 }),
  },
  {
    id: 'leaf area',
    words: 'leaf area by area of bed',
    from: 0,
    to: 4,
    step: 0.25,
    houses: ['closed', 'leaning'],
    habits: ['attentive'],
    set: (design, leafAreaIndex) => withPlants(design, { leafAreaIndex }),
  },
];

export interface Scan {
  readonly knob: Knob;
  readonly house: House;
  readonly place: Place;
  readonly habit: Habit;
}

/** Every knob in every house that has it, everywhere, with every habit that it is scanned with. */
export function allScans(): Scan[] {
  return KNOBS.flatMap((knob) =>
    (knob.houses ?? HOUSES).flatMap((house) =>
      PLACES.flatMap((place) => (knob.habits ?? HABITS).map((habit) => ({ knob, house, place, habit }))),
    ),
  );
}

export const nameOf = ({ knob, house, place, habit }: Scan): string =>
  `${knob.id}, ${house}, ${place}, ${habit}`;

export interface ScanPoint {
  readonly value: number;
  readonly heatKWh: number;
  readonly hotHours: number;
  /** of July and August */
  readonly summerHotHours: number;
  readonly summerHeatKWh: number;
  readonly humidHours: number;
  /** of the sunspace; without one, of the rooms */
  readonly sunspaceHumidHours: number;
  readonly moves: number;
  readonly heatedWhileOpenHours: number;
}

/** The figures along a scan. */
export function runScan({ knob, house, place, habit }: Scan): ScanPoint[] {
  const drawn = withVents(EXAMPLES.find(({ id }) => id === house)!.design, { habit });
  const climate = climateOf(place);
  const count = Math.round((knob.to - knob.from) / knob.step);
  return Array.from({ length: count + 1 }, (_, n) => {
    const value = knob.from + n * knob.step;
    const { figures, year } = runYear(knob.set(drawn, value), climate, { lend: true });
    const rooms = figures.zones.house;
    const [july, september] = [MONTH_START_HOUR[6]!, MONTH_START_HOUR[8]!];
    const { operativeC, heatingW } = year.zones[0]!;
    return {
      value,
      heatKWh: figures.heating.energyKWh,
      hotHours: rooms.overheatedHours,
      summerHotHours: operativeC.subarray(july, september).filter((c) => c > rooms.overheatLimitC).length,
      summerHeatKWh: heatingW.subarray(july, september).reduce((sum, watt) => sum + watt, 0) / 1000,
      humidHours: rooms.humidHours,
      sunspaceHumidHours: (figures.zones.sunspace ?? rooms).humidHours,
      moves: figures.vents.moves,
      heatedWhileOpenHours: figures.vents.heatedWhileOpenHours,
    };
  });
}

/** A bundled climate, prepared once. */
export function climateOf(id: string): PreparedClimate {
  return bundledClimate(id);
}
