// Years made by hand from formulas, for tests of what comes after the run: every array is given by a function of
// the hour, everything not named is quiet (20 °C, 40 % humidity, no sun, no flows).
import type { CoverYear, OpeningYear, PaneYear, Year, ZoneYear } from '../../src/network/year.ts';
import { HOURS } from '../../src/weather/typical-year.ts';

type ByHour = number | ((hour: number) => number);

export function hourly(value: ByHour): Float64Array {
  const column = new Float64Array(HOURS);
  if (typeof value === 'number') return column.fill(value);
  for (let hour = 0; hour < HOURS; hour++) column[hour] = value(hour);
  return column;
}

export interface MadeZone {
  readonly airC?: ByHour;
  readonly operativeC?: ByHour;
  readonly relativeHumidity?: ByHour;
  readonly solarW?: ByHour;
  readonly heatingW?: ByHour;
  readonly coolingW?: ByHour;
  readonly ventAch?: ByHour;
  readonly moistureG?: ByHour;
  readonly condensationG?: ByHour;
  readonly airHeatW?: ByHour;
  readonly airWaterG?: ByHour;
  readonly cornerC?: ByHour;
  readonly co2Ppm?: ByHour;
  readonly drainedKg?: number;
  readonly moistureByCause?: ZoneYear['moistureByCause'];
}

export function madeZone(id: string, made: MadeZone = {}): ZoneYear {
  const airC = made.airC ?? 20;
  return {
    id,
    airC: hourly(airC),
    operativeC: hourly(made.operativeC ?? airC),
    relativeHumidity: hourly(made.relativeHumidity ?? 0.4),
    solarW: hourly(made.solarW ?? 0),
    heatingW: hourly(made.heatingW ?? 0),
    coolingW: hourly(made.coolingW ?? 0),
    ventAch: hourly(made.ventAch ?? 0.3),
    moistureG: hourly(made.moistureG ?? 0),
    condensationG: hourly(made.condensationG ?? 0),
    airHeatW: hourly(made.airHeatW ?? 0),
    airWaterG: hourly(made.airWaterG ?? 0),
    airWaterFrom: [],
    moistureByCause: made.moistureByCause ?? [],
    cornerC: hourly(made.cornerC ?? airC),
    drainedKg: made.drainedKg ?? 0,
    waterGainKg: 0,
    co2Ppm: hourly(made.co2Ppm ?? 600),
  };
}

export function madePane(id: string, made: Partial<Omit<PaneYear, 'id'>> = {}): PaneYear {
  return {
    id,
    from: 'outdoors',
    to: 'house',
    areaM2: 10,
    incidentW: hourly(0),
    transmittedW: hourly(0),
    innerC: hourly(18),
    wetHours: 0,
    frostHours: 0,
    ...made,
  };
}

export function madeOpening(
  id: string,
  movesByDay: (day: number) => number,
  neglectedHours = 0,
): OpeningYear {
  const byDay = Float64Array.from({ length: 365 }, (_, day) => movesByDay(day));
  return {
    id,
    kind: 'vent',
    open: hourly(0),
    flow: hourly(0),
    moves: byDay.reduce((sum, moves) => sum + moves, 0),
    movesByDay: byDay,
    neglectedHours,
    airings: 0,
    heatedOpenHours: 0,
    heatedOpenJ: 0,
  };
}

export function madeCover(id: string, movesByDay: (day: number) => number, neglectedHours = 0): CoverYear {
  const { moves, movesByDay: byDay } = madeOpening(id, movesByDay);
  return { id, drawn: hourly(0), moves, movesByDay: byDay, neglectedHours };
}

export function madeYear(made: Partial<Year> = {}): Year {
  return {
    zones: [madeZone('house')],
    panes: [],
    openings: [],
    heat: [],
    books: { heatResidual: 0, waterResidual: 0, zoneHeatResidual: [0] },
    history: null,
    nodes: 1,
    ...made,
  };
}
