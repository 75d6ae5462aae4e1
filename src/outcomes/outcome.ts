// The outcome of one year: the named figures that the screen, the command line and outside checks read. The
// keys are a contract with other people's scripts; add freely, rename nothing. Unknown is null.

import type { RoomUse } from '../design/room.ts';
import type { DampSpot } from './damp-spots.ts';
import type { FeltHeat } from './felt-heat.ts';
import type { FreshAir } from './fresh-air.ts';
import type { FuelOutcome } from './fuel.ts';
import type { TooHot } from './too-hot.ts';
import type { Ventilation } from './ventilation.ts';

/** A zone's year, of hourly means: temperatures [°C], hours of the year [h], shares 0…1. */
export interface ZoneOutcome {
  readonly meanAirC: number;
  readonly maxAirC: number;
  readonly minAirC: number;
  readonly maxOperativeC: number;
  readonly minOperativeC: number;
  /** operative temperature above `overheatLimitC`, and by how much in all [K·h] */
  readonly overheatedHours: number;
  readonly overheatedDegreeHours: number;
  readonly overheatLimitC: number;
  /** above the adaptive limit of EN 16798-1, category II, held at the ends of its range in winter too */
  readonly adaptiveOverheatedHours: number;
  /** by what the design counts as too hot; what people are told goes by it */
  readonly tooHot: TooHot;
  /** operative temperature below `underheatLimitC` */
  readonly underheatedHours: number;
  readonly underheatLimitC: number;
  /** mean over the days of highest less lowest operative temperature [K] */
  readonly meanDailySwingK: number;
  readonly meanRelativeHumidity: number;
  /** relative humidity above `humidLimit` */
  readonly humidHours: number;
  readonly humidLimit: number;
  /** of its coldest corner, 0…6 */
  readonly mouldIndexMax: number;
  /** formed on the panes in the year; what dried off again is not subtracted */
  readonly condensationKg: number;
  /** vapour given off in the zone, mean of the year */
  readonly moistureLoadKgPerDay: number;
  /** by cause, kg a day over the year */
  readonly moistureByCause: readonly { readonly cause: string; readonly kgPerDay: number }[];
  /** corner, planting, frames: mould index and the monthly check of ISO 13788 */
  readonly dampSpots: readonly DampSpot[];
  /** air changes with outdoors, and hours with too little of them or stale air */
  readonly freshAir: FreshAir;
  /** heat stress: hours in which damp makes warm air feel plainly hotter than it is */
  readonly feltHeat: FeltHeat;
  /** above 26 °C from 22:00 to 07:00, as CIBSE TM59 counts bedrooms */
  readonly hotNightHours: number;
  /** water that ran off glass, or fell out of saturated air */
  readonly drainedKg: number;
  /** hours with frost on the inside of a pane of the zone */
  readonly frostHours: number;
  /** hour of the year of each extreme of the operative temperature, 0…8759 */
  readonly hottestHour: number;
  readonly coldestHour: number;
}

export interface RoomOutcome extends ZoneOutcome {
  readonly id: string;
  readonly name: string;
  readonly use: RoomUse;
  readonly floorAreaM2: number;
  /** in the hours in which its heat and cold count: hours a day, and of the year too hot and too cold by the fixed limits */
  readonly lived: {
    readonly hoursPerDay: number;
    readonly overheatedHours: number;
    readonly underheatedHours: number;
  };
  /** times somebody moves its windows a year; those of the whole house stand among `vents` */
  readonly windowMoves: number;
  /** of a two-storey space, how much warmer its upper part may be than its mean: an estimate, not simulated [K]; absent else */
  readonly upperPartWarmerK?: number;
}

export interface WorstRoom {
  /** id */
  readonly room: string;
  readonly value: number;
}

/** The worst room by each measure; hours too hot by the design's own criterion beside those above one temperature. */
export interface WorstRooms {
  readonly overheated: WorstRoom;
  readonly tooHot: WorstRoom;
  readonly underheated: WorstRoom;
  readonly humid: WorstRoom;
  readonly mould: WorstRoom;
  readonly hotNight: WorstRoom;
}

export interface Finding {
  readonly id: string;
  readonly severity: 'good' | 'note' | 'warning' | 'danger';
  readonly text: string;
  readonly figures: Readonly<Record<string, number | string>>;
}

export interface Outcome {
  readonly daystone: string;
  readonly design: string;
  readonly site: {
    readonly name: string;
    readonly latitudeDeg: number;
    readonly longitudeDeg: number;
    readonly elevationM: number;
  };
  readonly equatorGlass: {
    readonly areaM2: number;
    readonly shareOfWall: number;
    readonly shareOfFloor: number;
    readonly tiltDeg: number;
    /** on the outside of the glass before any shade falls on it */
    readonly incidentKWh: number;
    readonly transmittedKWh: number;
  };
  readonly mass: {
    readonly volumeM3: number;
    readonly heatCapacityKWhPerK: number;
    readonly kgPerM2Glass: number | null;
  };
  /** of a divided house `house` is its rooms taken together, by floor area, with damp spots of the worst room */
  readonly zones: { readonly house: ZoneOutcome; readonly sunspace?: ZoneOutcome };
  /** each room of a divided house, and the worst of them; absent for one room */
  readonly rooms?: readonly RoomOutcome[];
  readonly worst?: WorstRooms;
  readonly heating: {
    /** of all zones together: the year's, and the highest hour's */
    readonly energyKWh: number;
    readonly peakW: number;
    /** hours in which people are up and a heated room is plainly colder than they ask for; null where none is heated */
    readonly shortHours: number | null;
  };
  /** absent where the design tells no source of its heat */
  readonly fuel?: FuelOutcome;
  /** of all zones together: the year's, and the highest hour's */
  readonly cooling: { readonly energyKWh: number; readonly peakW: number };
  readonly vents: {
    readonly moves: number;
    readonly movesPerDayInBusiestMonth: number;
    readonly movesOnBusiestDay: number;
    /** hours in which somebody should have moved a vent and did not, as a share of the year */
    readonly neglectedShare: number;
    /** times somebody, or an opener, opened wide for some minutes to change the air */
    readonly airings: number;
    /** hours in which the heater ran while a window stood open to cool; the heat that went out by it */
    readonly heatedWhileOpenHours: number;
    readonly heatedWhileOpenKWh: number;
  };
  /** fans for fresh air: their electricity, and what a unit with heat recovery gave back */
  readonly ventilation: Ventilation;
  /** the same of shades and covers; absent where there are none */
  readonly covers?: {
    readonly moves: number;
    readonly movesPerDayInBusiestMonth: number;
    readonly movesOnBusiestDay: number;
    /** hours in which the most neglected cover should have been moved and was not, as a share of the year */
    readonly neglectedShare: number;
  };
  /** what is left of heat and water in − out − stored, relative (src/network/year.ts) */
  readonly books: { readonly heatResidual: number; readonly waterResidual: number };
  readonly findings: readonly Finding[];
}

/** All that needs no sentence: what runs that only compare are after. */
export type OutcomeFigures = Omit<Outcome, 'findings'>;
