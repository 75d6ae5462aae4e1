// A measured greenhouse as a model, and days made of the weather of each of its vent classes. Source: Autonomous Greenhouse
// Challenge, first edition 2018, cucumber; Wageningen University & Research, Bleiswijk; 4TU.ResearchData,
// doi 10.4121/uuid:e4987a7b-04dd-4c89-9b18-883aad30ba9a; Sensors 2019, 19(8), 1807. Medians by opening of the vents, of hours
// of daylight with pipes no warmer than the air, lamps off and both screens open: tests/data/greenhouse-vents.json.
//
// Known of it: 96 m² of floor between other compartments, 62.5 m² of bed, single glass that lets about half of the light in,
// roof vents on both sides. Taken from memory, medium confidence: bars, gutters and folded screens take up a tenth of the sun
// outside and give it to the air (greenhouse models since 2011), a leak of 1·10⁻⁴ m/s by floor and m/s of wind, which is 0.4
// changes an hour at 5 m/s (the same), wind outside 2.8 + 1.2 v (Bot 1983), roof vents 0.05 A v. Taken as common practice, no
// source: 4.5 m mean height, roof slope 23°, leaf area 2.25, cloudier skies over darker classes, 20 °C by night, soil in balance
// with the house, crop on wrapped slabs, all light as beam: what comes through a roof meets leaves and floor first, a drawn
// screen as a layer of still air (ISO 6946). Left to be fitted: vent area.

import type { Element, Film, Layer, Model, Opening, Pane, ZoneFace } from '../../src/model/model.ts';
import { byHour } from '../../src/model/schedule.ts';
import { simulate } from '../../src/network/simulate.ts';
import { dewPointFromVapourPressure, saturationPressure } from '../../src/physics/moist-air.ts';
import { type PreparedClimate, prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { HOURS, type TypicalYear } from '../../src/weather/typical-year.ts';

export interface VentClass {
  readonly from: number;
  readonly to: number;
  readonly humidity: number;
  readonly riseK: number;
  readonly sun: number;
  readonly outdoorC: number;
  readonly outdoorHumidity: number;
  readonly wind: number;
  /** share of its sky that is clouded, 0…1; absent: by its sun */
  readonly cloud?: number;
}

/** How its nights go: held warm by pipes with vents as by day, or left to themselves, vents shut, with a screen drawn or none. */
export type Nights = 'heated' | 'shut' | 'shut under a screen';

/** What is not known of it and stands at the values below, so that each can be moved. */
export interface Unknown {
  /** held by night [°C] */
  readonly nightC: number;
  /** a screen drawn by night over a heated house */
  readonly screen: boolean;
  /** at 5 m/s and 10 K [1/h] */
  readonly leakPerH: number;
  /** [m²/m²] */
  readonly leafArea: number;
  /** by night beside what plants and soil give in the dark: crop under lamps, mist, a wet floor [g/h by m² of floor] */
  readonly moreWater: number;
  /** of glass */
  readonly sheets: 1 | 2;
}

const FLOOR_M2 = 96;
const BED_M2 = 62.5;
const HEIGHT_M = 4.5;
const SLOPE_DEG = 23;
/** Of both slopes of the roof. */
const GLASS_M2 = FLOOR_M2 / Math.cos((SLOPE_DEG * Math.PI) / 180);
/** Of what clear glass lets in at these angles, so that half of the light outside comes in [–]. */
const LIGHT = 0.66;
/** Of the sun outside, taken up by bars, gutters and screens and given to the air [–]. */
const STRUCTURE_HEAT = 0.1;
/** Unventilated layer of air, heat flowing up (ISO 6946) [m²K/W]. */
const SCREEN_RESISTANCE = 0.16;
const COMPUTED: Film = { kind: 'computed' };
const CONCRETE: Layer = {
  name: 'concrete',
  thicknessM: 0.1,
  conductivity: 1.5,
  density: 2200,
  specificHeat: 1000,
};
const SOIL: Layer = { name: 'soil', thicknessM: 1, conductivity: 1.3, density: 1500, specificHeat: 1800 };
const SLABS: Layer = { name: 'slabs', thicknessM: 0.1, conductivity: 0.6, density: 700, specificHeat: 3800 };
/** Cucumbers are kept warm by night until the sun is up (common practice, no source) [h]. */
const HEATED_UNTIL_H = 8;
const HEATED_FROM_H = 17;
const TAKEN: Unknown = { nightC: 20, screen: false, leakPerH: 0.4, leafArea: 2.25, moreWater: 0, sheets: 1 };
const isNight = (hour: number) => hour < HEATED_UNTIL_H || hour >= HEATED_FROM_H;
/** A lower sun is taken to stand so high [–]. */
const LOWEST_SINE = 0.1;
/** Days judged, so that the sun stands as it did: the middle of the period, 5 to 20 October. */
const JUDGED = { from: 277, days: 15 };
/** Solar noon there in local standard time, and half a day of light [h]. */
const NOON_H = 12.5;
const HALF_DAY_H = 5.5;
/** Half a sine over the day; the median of its hours in daylight, 0.78 of its top, is 1. */
function sunOfHour(hour: number): number {
  const fromNoon = hour + 0.5 - NOON_H;
  return Math.abs(fromNoon) < HALF_DAY_H ? Math.cos((fromNoon / HALF_DAY_H) * (Math.PI / 2)) / 0.78 : 0;
}
/** Hours of daylight that were counted [W/m²]. */
const DAYLIGHT = 100;

function face(lit: ZoneFace['lit']): ZoneFace {
  return {
    kind: 'zone',
    zone: 'greenhouse',
    absorptance: 0.7,
    emissivity: 0.9,
    film: COMPUTED,
    lit,
    faceTiltDeg: 0,
  };
}

function modelOf(
  { from, to, wind, sun }: VentClass,
  ventShare: number,
  nights: Nights,
  { nightC, screen, leakPerH, leafArea, moreWater, sheets }: Unknown,
): Model {
  const floor = (id: string, areaM2: number, top: Layer): Element => {
    return { id, areaM2, layers: [SOIL, top], a: { kind: 'adiabatic' }, b: face('floor') };
  };
  const roof = (id: string, azimuthDeg: number): Pane => ({
    id,
    areaM2: GLASS_M2 / 2,
    frameShare: 0,
    frameUValue: 0,
    glass: {
      sheets,
      sheetM: 0.004,
      sheetConductivity: 1,
      gapM: 0.01,
      gas: 'air',
      gapEmissivity: 0.84,
      outsideEmissivity: 0.84,
      insideEmissivity: 0.84,
      optics: { kind: 'clear', refractiveIndex: 1.526, extinctionPerM: 19.6 },
    },
    tiltDeg: SLOPE_DEG,
    azimuthDeg,
    from: 'outdoors',
    to: 'greenhouse',
    shading: null,
    filmOutside: { kind: 'fixed', convection: 2.8 + 1.2 * wind, radiation: 'computed' },
    filmInside: COMPUTED,
    nightResistance: screen || nights === 'shut under a screen' ? SCREEN_RESISTANCE : 0,
    lightRoom: null,
    dirt: LIGHT,
  });
  const open = (from + to) / 200;
  // One opening on each side, half of them each way: Q = C_d/3 A √(g h ΔT/T), C_d 0.6, h 1 m (BS 5925:1991), and 0.05 A U of
  // wind (roof vents of glasshouses 0.03 to 0.1, from memory); as cracks have it, Q [L/s] = A [cm²] √(C_s ΔT + C_w U²). Where
  // nights are heated they are cracks, open by night too: no heater runs beside a vent that somebody keeps open.
  const ventM2 = open * ventShare * FLOOR_M2;
  const vents: Opening =
    nights === 'heated'
      ? {
          kind: 'cracks',
          id: 'vents',
          zone: 'greenhouse',
          leakageCm2: 1e4 * ventM2,
          stackCoefficient: (0.2 ** 2 * 9.81) / 290 / 100,
          windCoefficient: 0.05 ** 2 / 100,
        }
      : {
          kind: 'vent',
          id: 'vents',
          zone: 'greenhouse',
          lowM2: 0,
          highM2: ventM2,
          stackM: 0,
          openingHeightM: 1,
          discharge: 0.6,
          windCoefficient: 0.05,
          rule: {
            opensAboveC: -50,
            bandK: 1,
            onlyWhileOutside: 'either',
            opens: 'by-degrees',
            schedule: byHour((hour) => (isNight(hour) ? 0 : 1)),
            shutAboveWind: 100,
            shutInRain: false,
          },
          control: 'automatic',
        };
  const leak: Opening = {
    kind: 'cracks',
    id: 'leak',
    zone: 'greenhouse',
    leakageCm2: (leakPerH * FLOOR_M2 * HEIGHT_M) / 3.6 / Math.sqrt(0.000145 * 10 + 0.000319 * 25),
    stackCoefficient: 0.000145,
    windCoefficient: 0.000319,
  };
  return {
    name: 'measured greenhouse',
    zones: [
      {
        id: 'greenhouse',
        floorAreaM2: FLOOR_M2,
        volumeM3: FLOOR_M2 * HEIGHT_M,
        furnitureCapacity: 0,
        furnitureMoisture: 0,
        thermostat: {
          heatC: byHour((hour) => (nights === 'heated' && isNight(hour) ? nightC : -50)),
          coolC: null,
          heatCapacityW: 50_000,
          coolCapacityW: 0,
        },
        gains: [
          {
            id: 'structure',
            power: byHour((hour) => STRUCTURE_HEAT * FLOOR_M2 * sun * sunOfHour(hour)),
            radiantShare: 0,
          },
        ],
        moisture: [{ cause: 'other', rate: byHour((hour) => (isNight(hour) ? moreWater * FLOOR_M2 : 0)) }],
        planting: {
          bedM2: BED_M2,
          leafAreaIndex: leafArea,
          boundaryResistance: 275,
          albedo: 0.23,
          soil: 'mulched',
        },
        people: null,
        cornerFactor: 0.5,
      },
    ],
    elements: [floor('floor', FLOOR_M2 - BED_M2, CONCRETE), { ...floor('bed', BED_M2, SLABS), isBed: true }],
    panes: [roof('east', 90), roof('west', 270)],
    openings: open > 0 ? [leak, vents] : [leak],
  };
}

/** Days whose daylight has the medians of a class, one after another all year. */
function climateOf({ sun, outdoorC, outdoorHumidity, wind, cloud }: VentClass): PreparedClimate {
  const filled = (value: number) => new Float64Array(HOURS).fill(value);
  const dewPointC = dewPointFromVapourPressure(outdoorHumidity * saturationPressure(outdoorC));
  const global = Float64Array.from({ length: HOURS }, (_, hour) => sun * sunOfHour(hour % 24));
  const dryBulbC = Float64Array.from({ length: HOURS }, (_, hour) => {
    return outdoorC - 2 + 2.5 * Math.cos(((hour % 24) + 0.5 - 14.5) * (Math.PI / 12));
  });
  const year: TypicalYear = {
    site: { name: 'Bleiswijk', latitudeDeg: 52, longitudeDeg: 4.5, elevationM: 0, utcOffsetH: 1 },
    id: 'bleiswijk',
    source: 'made',
    credit: '',
    monthYears: new Array<number>(12).fill(2018),
    sunMinute: 'mean',
    dryBulbC,
    dewPointC: dryBulbC.map((tempC) => Math.min(dewPointC, tempC)),
    pressurePa: filled(101_500),
    windSpeed: filled(wind),
    windFromDeg: filled(225),
    globalHorizontal: global,
    beamNormal: filled(0),
    diffuseHorizontal: filled(0),
    skyCover: filled(cloud ?? Math.min(1, Math.max(0, 1.2 - sun / 600))),
    skyLongwave: null,
    albedo: null,
    rainMm: null,
    notes: [],
  } as unknown as TypicalYear;
  const { cosZenith } = prepareClimate(year);
  const beamNormal = global.map((watt, hour) => watt / Math.max(LOWEST_SINE, cosZenith[hour]!));
  return prepareClimate({ ...year, beamNormal });
}

/**
 * Dew on a greenhouse's cover by its climate models [g/(m² of cover · h)]: vapour goes with the heat that free convection brings
 * under a pitched roof, h = 1.86 |ΔT|^⅓ W/(m²K), by the Lewis relation at 6.4·10⁻⁹ kg/(s·m²·Pa) each W/(m²K). Both published with
 * the models since 2011; from memory, medium confidence.
 *
 * @param humidity of the air, 0…1
 */
export function coverDew(airC: number, humidity: number, paneC: number): number {
  const film = 1.86 * Math.cbrt(Math.abs(airC - paneC));
  const vapour = humidity * saturationPressure(airC) - saturationPressure(paneC);
  return 3.6e6 * 6.4e-9 * film * Math.max(0, vapour);
}

const meanOf = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[values.length >> 1]!;

export interface GreenhouseDay {
  /** medians in daylight and from 22 to 5 h */
  readonly humidity: number;
  readonly riseK: number;
  readonly nightHumidity: number;
  readonly nightRiseK: number;
  /** hours of daylight above 95 %, of so many */
  readonly above95: number;
  readonly daylightHours: number;
  /** by the crop [L/(m² of bed · day)]; light that came in by m² of floor [MJ/day]; latent heat of the one over the other */
  readonly cropLitres: number;
  readonly lightMJ: number;
  readonly latentShare: number;
  /** dew at night [g/(m² of glass · h)] */
  readonly nightDew: number;
  /** the same by `coverDew`, at the house's own air and panes */
  readonly nightDewTold: number;
  readonly residuals: readonly number[];
}

/** A class lived for autumn days, with so much of vents wide open by floor [m²/m²]. */
export function liveClass(
  of: VentClass,
  ventShare: number,
  nights: Nights = 'heated',
  unlike: Partial<Unknown> = {},
): GreenhouseDay {
  const climate = climateOf(of);
  const year = simulate(modelOf(of, ventShare, nights, { ...TAKEN, ...unlike }), climate);
  const zone = year.zones[0]!;
  const hours = Array.from({ length: JUDGED.days * 24 }, (_, i) => JUDGED.from * 24 + i);
  const { globalHorizontal, dryBulbC } = climate.year;
  const day = hours.filter((hour) => globalHorizontal[hour]! > DAYLIGHT);
  const night = hours.filter((hour) => hour % 24 >= 22 || hour % 24 < 5);
  const rise = (hour: number) => zone.airC[hour]! - dryBulbC[hour]!;
  const litres = zone.moistureByCause.find(({ cause }) => cause === 'plants')!.monthKg[9]! / 31 / BED_M2;
  const sunJ =
    hours.reduce(
      (sum, hour) => sum + year.panes.reduce((all, pane) => all + pane.transmittedW[hour]!, 0) * 3600,
      0,
    ) / JUDGED.days;
  return {
    humidity: median(day.map((hour) => zone.relativeHumidity[hour]!)),
    riseK: median(day.map(rise)),
    nightHumidity: median(night.map((hour) => zone.relativeHumidity[hour]!)),
    nightRiseK: median(night.map(rise)),
    above95: day.filter((hour) => zone.relativeHumidity[hour]! > 0.95).length,
    daylightHours: day.length,
    cropLitres: litres,
    lightMJ: sunJ / FLOOR_M2 / 1e6,
    latentShare: (litres * 2.45e6) / (sunJ / FLOOR_M2),
    nightDew:
      night.reduce((sum, hour) => sum + Math.max(0, zone.condensationG[hour]!), 0) / night.length / GLASS_M2,
    nightDewTold: meanOf(
      night.map((hour) => {
        const paneC = meanOf(year.panes.map(({ innerC }) => innerC[hour]!));
        return coverDew(zone.airC[hour]!, zone.relativeHumidity[hour]!, paneC);
      }),
    ),
    residuals: [year.books.heatResidual, year.books.waterResidual],
  };
}
