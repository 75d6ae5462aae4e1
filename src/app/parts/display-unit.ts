// Units on screen. Inside everything is SI; here each kind of quantity gets its sign, factor, offset and digits in
// metric and in US customary units, these with heat in kilowatt hours or as gas is billed, both directions. Factors: NIST SP 811, appendix B (exact where marked there).

import type { Limit, Quantity } from '../../design/limits.ts';
import { BTU_PER_KWH, KWH_PER_THERM } from '../../physics/constants.ts';

export const UNIT_SYSTEMS = ['metric', 'us', 'us-therms'] as const;
export type UnitSystem = (typeof UNIT_SYSTEMS)[number];

/** Feet and degrees Fahrenheit, whatever heat is told in. */
export function isUs(system: UnitSystem): boolean {
  return system !== 'metric';
}

/** The kinds of number a design has, and those only results have. */
export type ShownQuantity =
  | Quantity
  | 'thickness'
  | 'elevation'
  | 'temperatureStep'
  | 'energy'
  | 'energyPerArea'
  | 'power'
  | 'mass'
  | 'waterMass'
  | 'litres'
  | 'waterPerDay'
  | 'volume'
  | 'hours'
  | 'irradiance'
  | 'speed'
  | 'flow'
  | 'heatCapacity'
  | 'massPerArea'
  | 'uValue'
  | 'degreeDays'
  | 'distance'
  | 'dailySun';

export interface DisplayUnit {
  /** sign after the number, '' for none */
  readonly sign: string;
  /** the sign in words, for text read aloud */
  readonly words: string;
  /** shown = si · factor + offset */
  readonly factor: number;
  readonly offset: number;
  /** decimals shown */
  readonly digits: number;
}

const unit = (sign: string, words: string, factor: number, digits: number, offset = 0): DisplayUnit => ({
  sign,
  words,
  factor,
  offset,
  digits,
});

const FT = 1 / 0.3048;
const BTU_H = 3.412142;
/** a US gallon of water at 1 kg a litre */
const GALLON_KG = 3.785411784;
const SAME: Readonly<Partial<Record<ShownQuantity, DisplayUnit>>> = {
  angle: unit('°', 'degrees', 1, 0),
  share: unit('%', 'percent', 100, 1),
  count: unit('', '', 1, 0),
  airChanges: unit('/h', 'air changes an hour', 1, 1),
  number: unit('', '', 1, 1),
  hours: unit('h', 'hours', 1, 0),
  // Appliances are rated in watts everywhere.
  power: unit('W', 'watts', 1, 0),
};

const METRIC: Readonly<Record<ShownQuantity, DisplayUnit>> = {
  ...(SAME as Record<ShownQuantity, DisplayUnit>),
  area: unit('m²', 'square metres', 1, 1),
  length: unit('m', 'metres', 1, 2),
  elevation: unit('m', 'metres', 1, 0),
  thickness: unit('cm', 'centimetres', 100, 0),
  resistance: unit('m²K/W', 'square metre kelvin per watt', 1, 1),
  temperature: unit('°C', 'degrees Celsius', 1, 1),
  temperatureStep: unit('K', 'kelvin', 1, 1),
  powerKW: unit('kW', 'kilowatts', 1, 1),
  minutes: unit('min', 'minutes', 1, 0),
  fanPower: unit('W per m³/h', 'watts for each cubic metre an hour', 1, 2),
  energy: unit('kWh', 'kilowatt hours', 1, 0),
  energyPerArea: unit('kWh/m²', 'kilowatt hours per square metre', 1, 0),
  mass: unit('t', 'tonnes', 0.001, 1),
  waterMass: unit('kg', 'kilograms', 1, 1),
  litres: unit('litres', 'litres', 1, 0),
  waterPerDay: unit('litres a day', 'litres a day', 1, 1),
  volume: unit('m³', 'cubic metres', 1, 1),
  irradiance: unit('W/m²', 'watts per square metre', 1, 0),
  speed: unit('m/s', 'metres per second', 1, 1),
  flow: unit('m³/h', 'cubic metres an hour', 3600, 0),
  heatCapacity: unit('kWh/K', 'kilowatt hours per kelvin', 1, 1),
  massPerArea: unit('kg/m²', 'kilograms per square metre', 1, 0),
  uValue: unit('W/(m²K)', 'watts per square metre kelvin', 1, 2),
  distance: unit('km', 'kilometres', 1, 0),
  degreeDays: unit('K·d', 'kelvin days', 1, 0),
  dailySun: unit('kWh/m²', 'kilowatt hours per square metre', 1, 1),
};

const US: Readonly<Record<ShownQuantity, DisplayUnit>> = {
  ...(SAME as Record<ShownQuantity, DisplayUnit>),
  area: unit('ft²', 'square feet', FT * FT, 0),
  // Told in feet and inches (number-text.ts).
  length: unit('ft', 'feet and inches', FT, 1),
  elevation: unit('ft', 'feet', FT, 0),
  thickness: unit('in', 'inches', 1 / 0.0254, 1),
  resistance: unit('R', 'R, hour square foot degree Fahrenheit per Btu', 5.678263, 1),
  temperature: unit('°F', 'degrees Fahrenheit', 1.8, 0, 32),
  temperatureStep: unit('°F', 'degrees Fahrenheit', 1.8, 1),
  powerKW: unit('kW', 'kilowatts', 1, 1),
  minutes: unit('min', 'minutes', 1, 0),
  fanPower: unit('W per cfm', 'watts for each cubic foot a minute', 60 / (FT * FT * FT), 2),
  // Heat is billed in kilowatt hours there too when it is electric, and the findings say it so.
  energy: unit('kWh', 'kilowatt hours', 1, 0),
  energyPerArea: unit('kWh/ft²', 'kilowatt hours per square foot', 1 / (FT * FT), 1),
  mass: unit('tons', 'short tons', 1 / 907.18474, 1),
  waterMass: unit('gal', 'US gallons', 1 / GALLON_KG, 1),
  litres: unit('gal', 'US gallons', 1 / GALLON_KG, 0),
  waterPerDay: unit('gal a day', 'US gallons a day', 1 / GALLON_KG, 1),
  volume: unit('ft³', 'cubic feet', FT * FT * FT, 0),
  irradiance: unit('Btu/(h·ft²)', 'Btu per hour and square foot', 0.3169983, 0),
  speed: unit('mph', 'miles an hour', 1 / 0.44704, 1),
  flow: unit('cfm', 'cubic feet a minute', FT * FT * FT * 60, 0),
  heatCapacity: unit('kBtu/°F', 'thousand Btu per degree Fahrenheit', BTU_H / 1.8, 1),
  massPerArea: unit('lb/ft²', 'pounds per square foot', 1 / (0.45359237 * FT * FT), 0),
  uValue: unit('Btu/(h·ft²·°F)', 'Btu per hour, square foot and degree Fahrenheit', 0.1761102, 2),
  distance: unit('miles', 'miles', 1 / 1.609344, 0),
  degreeDays: unit('°F·d', 'degree Fahrenheit days', 1.8, 0),
  dailySun: unit('kBtu/ft²', 'thousand Btu per square foot', 0.3169983, 2),
};

/** Heat as it is billed where it is gas: therms of 100,000 Btu, and thousands of Btu an hour. */
const US_THERMS: Readonly<Record<ShownQuantity, DisplayUnit>> = {
  ...US,
  energy: unit('therms', 'therms', 1 / KWH_PER_THERM, 1),
  energyPerArea: unit('kBtu/ft²', 'thousand Btu per square foot', BTU_PER_KWH / 1000 / (FT * FT), 1),
  powerKW: unit('kBtu/h', 'thousand Btu an hour', BTU_PER_KWH / 1000, 1),
};

const BY_SYSTEM: Readonly<Record<UnitSystem, typeof US>> = { metric: METRIC, us: US, 'us-therms': US_THERMS };

/** The unit of a kind of quantity in a system. */
export function unitOf(quantity: ShownQuantity, system: UnitSystem): DisplayUnit {
  return BY_SYSTEM[system][quantity];
}

export function toShown(si: number, quantity: ShownQuantity, system: UnitSystem): number {
  const { factor, offset } = unitOf(quantity, system);
  return si * factor + offset;
}

export function toSi(shown: number, quantity: ShownQuantity, system: UnitSystem): number {
  const { factor, offset } = unitOf(quantity, system);
  return (shown - offset) / factor;
}

/** Whether a quantity is told in feet and inches, as it stands on a tape. */
export function isOnTape(quantity: ShownQuantity, system: UnitSystem): boolean {
  return quantity === 'length' && isUs(system);
}

/** Thin layers are spoken of in centimetres or inches though the design keeps metres. */
export function quantityOfLimit(limit: Limit): ShownQuantity {
  return limit.quantity === 'length' && /(thicknessM|WallM|LiningM)$/.test(limit.path) && limit.max <= 5
    ? 'thickness'
    : limit.quantity;
}
