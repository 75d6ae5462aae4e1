// The houses whose years are held against finer ones and longer starts: the three examples and a heavy one, each with
// whoever moves its vents; and the climates they stand in.
import { type Design, EXAMPLES, type PreparedClimate, runYear } from '../../src/daystone.ts';
import type { Habit } from '../../src/design/design.ts';
import type { SimulateOptions } from '../../src/network/simulate.ts';
import { bundledClimate } from '../weather/bundled-climates.ts';

export const PLACES = ['madrid', 'denver', 'burlington', 'anchorage', 'santa-fe', 'southern-chile'];
const JANUARY_H = 744;
/** Errors of heat are shares of the heat, or of this where there is less [kWh]. */
const LEAST_KWH = 1000;

const exampleOf = (id: string): Design => EXAMPLES.find((example) => example.id === id)!.design;

/** The leaning example with an earth lining of 1.2 m, 60 m² of added mass 1.5 m thick and a bare slab of 0.3 m. */
function heavyHouse(): Design {
  const leaning = exampleOf('leaning');
  return {
    ...leaning,
    envelope: { ...leaning.envelope, wallLining: leaning.mass.material, wallLiningM: 1.2 },
    mass: { ...leaning.mass, areaM2: 60, thicknessM: 1.5 },
    floor: { ...leaning.floor, thicknessM: 0.3, cover: 'bare' },
  };
}

/** Name and design of each house. */
export function housesWith(habit: Habit): readonly (readonly [string, Design])[] {
  const drawn = [
    ['heavy', heavyHouse()],
    ...['leaning', 'closed', 'modest'].map((id) => [id, exampleOf(id)] as const),
  ] as const;
  return drawn.map(([name, design]) => [name, { ...design, vents: { ...design.vents, habit } }]);
}

/** A bundled climate. */
export function climateAt(place: string): PreparedClimate {
  return bundledClimate(place);
}

export interface Measured {
  readonly heatKWh: number;
  readonly hotHours: number;
  readonly humidHours: number;
  readonly airC: Float64Array;
}

export function measureYear(
  design: Design,
  climate: PreparedClimate,
  options: SimulateOptions = {},
): Measured {
  const { figures, year } = runYear(design, climate, { ...options, lend: true });
  return {
    heatKWh: figures.heating.energyKWh,
    hotHours: figures.zones.house.overheatedHours,
    humidHours: figures.zones.house.humidHours,
    airC: year.zones[0]!.airC.slice(),
  };
}

/** Of heat [%], of January's mean air [K], of hot hours [h]. */
export function differences(ours: Measured, other: Measured) {
  const january = ({ airC }: Measured) =>
    airC.subarray(0, JANUARY_H).reduce((sum, value) => sum + value, 0) / JANUARY_H;
  return {
    heatPercent: (100 * Math.abs(ours.heatKWh - other.heatKWh)) / Math.max(LEAST_KWH, other.heatKWh),
    januaryK: Math.abs(january(ours) - january(other)),
    hotHours: ours.hotHours - other.hotHours,
  };
}
