import { expect, test } from 'vitest';
import { radonCountries } from '../../src/findings/radon-country.ts';

// Coordinates of towns from an atlas, to a tenth of a degree.
const SURE = {
  US: [
    ['Denver', 39.7, -105],
    ['Tucson', 32.2, -110.9],
    ['Burlington, Vermont', 44.5, -73.2],
    ['Helena', 46.6, -112],
    ['Anchorage', 61.2, -149.9],
    ['Quillayute', 47.9, -124.6],
    ['Miami', 25.8, -80.2],
    ['Buffalo side of Rochester', 43.1, -77.6],
    ['Honolulu', 21.3, -157.9],
  ],
  Canada: [
    ['Calgary', 51, -114.1],
    ['Winnipeg', 49.9, -97.1],
    ['Halifax', 44.6, -63.6],
    ['Whitehorse', 60.7, -135.1],
    ["St. John's", 47.6, -52.7],
  ],
  'United Kingdom': [
    ['Belfast', 54.6, -5.9],
    ['London', 51.5, -0.1],
    ['Penzance', 50.1, -5.5],
    ['Inverness', 57.5, -4.2],
    ['Cardiff', 51.5, -3.2],
  ],
  Ireland: [
    ['Dublin', 53.3, -6.3],
    ['Cork', 51.9, -8.5],
  ],
  'European Union': [
    ['Madrid', 40.4, -3.7],
    ['Bologna', 44.5, 11.3],
    ['Prague', 50.1, 14.4],
    ['Toulouse', 43.6, 1.4],
  ],
} as const;

/** Towns a box must not claim for the neighbour: only a list that holds their own country, or none, will do. */
const NEAR_BORDERS = [
  ['Windsor, Ontario', 42.3, -83.0, 'Canada'],
  ['Victoria, British Columbia', 48.4, -123.4, 'Canada'],
  ['Toronto', 43.7, -79.4, 'Canada'],
  ['Montreal', 45.5, -73.6, 'Canada'],
  ['Sault Ste. Marie, Ontario', 46.5, -84.3, 'Canada'],
  ['Saint John, New Brunswick', 45.3, -66.1, 'Canada'],
  ['Vancouver', 49.3, -123.1, 'Canada'],
  ['Juneau', 58.3, -134.4, 'US'],
  ['Detroit', 42.3, -83.1, 'US'],
  ['Eastport, Maine', 44.9, -67, 'US'],
  ['El Paso', 31.8, -106.4, 'US'],
  ['Letterkenny', 55, -7.7, 'Ireland'],
  ['Dundalk', 54, -6.4, 'Ireland'],
  ['Newry', 54.2, -6.3, 'United Kingdom'],
  ['Holyhead', 53.3, -4.6, 'United Kingdom'],
  ['Calais', 51, 1.9, 'European Union'],
  ['Helsinki', 60.2, 24.9, 'European Union'],
] as const;

/** No member states, and no level of theirs is kept here: none of the countries may be claimed as sure. */
const NOT_MEMBERS = [
  ['Zurich', 47.4, 8.5],
  ['Geneva', 46.2, 6.1],
  ['Oslo', 59.9, 10.8],
  ['Sarajevo', 43.9, 18.4],
  ['Kaliningrad', 54.7, 20.5],
  ['Lviv', 49.8, 24],
  ['Tangier', 35.8, -5.8],
  ['Tijuana', 32.5, -117],
  ['Ciudad Juarez', 31.7, -106.5],
  ['Nogales, Sonora', 31.3, -110.9],
  ['Nuuk', 64.2, -51.7],
] as const;

test.each(
  Object.entries(SURE).flatMap(([country, towns]) => towns.map((town) => [country, ...town] as const)),
)('%s: %s is told its own level alone', (country, _, latitude, longitude) => {
  expect(radonCountries(latitude, longitude)).toEqual([country]);
});

test.each(NEAR_BORDERS)('%s finds its own country among those told', (_, latitude, longitude, country) => {
  expect(radonCountries(latitude, longitude)).toContain(country);
});

test.each(NOT_MEMBERS)('%s is claimed for nobody', (_, latitude, longitude) => {
  expect(radonCountries(latitude, longitude)).not.toHaveLength(1);
});

/** Beyond the borders of those whose levels are kept, and not told another's. Coordinates from an atlas. */
const OUTSIDE = [
  ['Algiers', 36.8, 3.1],
  ['Oran', 35.7, -0.6],
  ['Annaba', 36.9, 7.8],
  ['Tunis', 36.8, 10.2],
  ['Tangier', 35.8, -5.8],
  ['Tripoli', 32.9, 13.2],
  ['Zurich', 47.4, 8.5],
  ['Oslo', 59.9, 10.7],
  ['Reykjavik', 64.1, -21.9],
  ['Kyiv', 50.4, 30.5],
  ['Minsk', 53.9, 27.6],
  ['Ankara', 39.9, 32.9],
  ['Sarajevo', 43.9, 18.4],
  ['Chihuahua', 28.6, -106.1],
  ['Monterrey', 25.7, -100.3],
  ['Nuuk', 64.2, -51.7],
] as const;

/** Members close to such lands still find their own level. */
const MEMBERS_NEAR_OUTSIDE = [
  ['Tarifa', 36, -5.6],
  ['Valletta', 35.9, 14.5],
  ['Palermo', 38.1, 13.4],
  ['Heraklion', 35.3, 25.1],
  ['Nicosia', 35.2, 33.4],
  ['Las Palmas', 28.1, -15.4],
  ['Constance', 47.7, 9.2],
  ['Bregenz', 47.5, 9.7],
  ['Stromstad', 58.9, 11.2],
  ['Narva', 59.4, 28.2],
  ['Daugavpils', 55.9, 26.5],
  ['Galati', 45.4, 28],
  ['Alexandroupoli', 40.8, 25.9],
  ['Dubrovnik', 42.6, 18.1],
] as const;

test.each(OUTSIDE)('%s, in none of them, is told none of their levels', (_, latitude, longitude) => {
  expect(radonCountries(latitude, longitude)).toEqual([]);
});

test.each(MEMBERS_NEAR_OUTSIDE)('%s still finds the level of the Union', (_, latitude, longitude) => {
  expect(radonCountries(latitude, longitude)).toContain('European Union');
});

test.each([
  ['Brownsville', 25.9, -97.5],
  ['Big Bend', 29.2, -103.3],
  ['Yuma', 32.7, -114.6],
  ['San Diego', 32.7, -117.2],
  ['Laredo', 27.5, -99.5],
])('%s still finds the level of the United States', (_, latitude, longitude) => {
  expect(radonCountries(latitude, longitude)).toContain('US');
});

test('the far side of the world has none', () => {
  expect(radonCountries(-38.3, -72)).toEqual([]);
  expect(radonCountries(-33.9, 151.2)).toEqual([]);
});
