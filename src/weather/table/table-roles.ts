// What a column of a weather table can be, and the units it can be in: plain data for the reader of tables, for the
// page's menus and for the flags of the command line.

import { ZERO_CELSIUS_K } from '../../physics/constants.ts';

export const ROLES = [
  'time',
  'date',
  'clock',
  'year',
  'month',
  'day',
  'hour',
  'minute',
  'dryBulb',
  'dewPoint',
  'humidity',
  'pressure',
  'windSpeed',
  'windFrom',
  'global',
  'beam',
  'diffuse',
  'skyCover',
  'skyLongwave',
  'albedo',
  'rain',
] as const;
export type Role = (typeof ROLES)[number];

/** A unit: what the header may call it, and value · factor + offset in our own unit. */
export interface Unit {
  readonly name: string;
  readonly written: RegExp;
  readonly factor: number;
  readonly offset: number;
}

const unit = (name: string, written: RegExp, factor = 1, offset = 0): Unit => ({
  name,
  written,
  factor,
  offset,
});

const CELSIUS = unit('°C', /^(°|deg\.? ?)?c(elsius)?$/i);
const TEMPERATURES = [
  CELSIUS,
  unit('°F', /^(°|deg\.? ?)?f(ahrenheit)?$/i, 5 / 9, -160 / 9),
  unit('K', /^k(elvin)?$/i, 1, -ZERO_CELSIUS_K),
];
/** Energies are those of one row and become W/m² with the length of the row. */
const RADIATIONS = [
  unit('W/m²', /^w ?(\/|per|·)? ?m(\^?2|²|-2|⁻²)$/i),
  unit('Wh/m²', /^wh ?(\/|per|·)? ?m(\^?2|²|-2|⁻²)$/i),
  unit('kWh/m²', /^kwh ?(\/|per|·)? ?m(\^?2|²|-2|⁻²)$/i, 1000),
  unit('kJ/m²', /^kj ?(\/|per|·)? ?m(\^?2|²|-2|⁻²)$/i, 1 / 3.6),
  unit('MJ/m²', /^mj ?(\/|per|·)? ?m(\^?2|²|-2|⁻²)$/i, 1000 / 3.6),
  unit('J/m²', /^j ?(\/|per|·)? ?m(\^?2|²|-2|⁻²)$/i, 1 / 3600),
  unit('J/cm²', /^j ?(\/|per|·)? ?cm(\^?2|²|-2|⁻²)$/i, 1 / 0.36),
];

export const UNITS: Readonly<Partial<Record<Role, readonly Unit[]>>> = {
  dryBulb: TEMPERATURES,
  dewPoint: TEMPERATURES,
  humidity: [unit('%', /^%|percent|pct$/i), unit('share', /^(0-1|share|fraction|-|1)$/i, 100)],
  pressure: [
    unit('Pa', /^pa$/i),
    unit('hPa', /^(hpa|mb(ar)?)$/i, 100),
    unit('kPa', /^kpa$/i, 1000),
    unit('mmHg', /^mm ?hg$/i, 133.322),
    unit('inHg', /^in(ch)? ?hg$/i, 3386.39),
  ],
  windSpeed: [
    unit('m/s', /^m ?(\/|per|·)? ?s(-1|⁻¹)?$|^mps$/i),
    unit('km/h', /^km ?\/? ?h$|^kmh$|^kph$/i, 1 / 3.6),
    unit('mph', /^mph$|^mi ?\/ ?h$/i, 0.44704),
    unit('kn', /^kn(ots?)?$|^kts?$/i, 0.514444),
  ],
  windFrom: [unit('°', /^(°|deg(rees?)?)$/i)],
  global: RADIATIONS,
  beam: RADIATIONS,
  diffuse: RADIATIONS,
  skyLongwave: RADIATIONS,
  skyCover: [
    unit('share', /^(0-1|share|fraction|1)$/i),
    unit('%', /^%|percent|pct$/i, 0.01),
    unit('tenths', /^tenths?$/i, 0.1),
    unit('oktas', /^(oktas?|octas?|eighths?)$/i, 0.125),
  ],
  albedo: [unit('share', /^(0-1|share|fraction|unitless|-|1)$/i), unit('%', /^%$/, 0.01)],
  // Depths are those of one row and become mm in the hour with the length of the row.
  rain: [unit('mm', /^mm$/i), unit('in', /^in(ch(es)?)?$/i, 25.4)],
};

/** Each role as a person calls it. */
export const ROLE_WORDS: Readonly<Record<Role, string>> = {
  time: 'date and time',
  date: 'date',
  clock: 'time of day',
  year: 'year',
  month: 'month',
  day: 'day',
  hour: 'hour',
  minute: 'minute',
  dryBulb: 'air temperature',
  dewPoint: 'dew point',
  humidity: 'relative humidity',
  pressure: 'pressure',
  windSpeed: 'wind speed',
  windFrom: 'wind direction',
  global: 'global radiation on the horizontal',
  beam: 'beam radiation normal to the rays',
  diffuse: 'diffuse radiation on the horizontal',
  skyCover: 'sky cover',
  skyLongwave: 'long-wave radiation of the sky',
  albedo: 'ground reflectance',
  rain: 'rain',
};
