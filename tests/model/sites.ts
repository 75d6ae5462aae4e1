// Two invented sites, one each side of the equator, and the yearly wave of a cool continental climate.
import type { DeepGround } from '../../src/weather/prepared/prepared-climate.ts';
import type { Site } from '../../src/weather/typical-year.ts';

export const NORTH: Site = {
  name: 'northern bench',
  latitudeDeg: 40,
  longitudeDeg: -105,
  elevationM: 1600,
  utcOffsetH: -7,
};

export const SOUTH: Site = { ...NORTH, name: 'southern bench', latitudeDeg: -40 };

export const WAVE: DeepGround = { meanC: 10, amplitudeK: 12, coldestDay: 20 };
