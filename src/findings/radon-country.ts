// Whose radon level a site is held to, as far as coordinates honestly tell: boxes that lie wholly in one country, drawn
// well inside its borders. Near a border, or where no box is drawn, every country that may be meant is told and the
// reader takes the own one. Latitude and longitude in, countries out. Borders read off an atlas; nothing rests on a
// tenth of a degree, since a box ends before the border does.

export type RadonCountry = 'US' | 'Canada' | 'United Kingdom' | 'Ireland' | 'European Union';

type Box = readonly [south: number, north: number, west: number, east: number];

const INSIDE: readonly (readonly [RadonCountry, readonly Box[]])[] = [
  [
    'US',
    [
      // between Mexico and the southern tip of Canada, coast to coast
      [33, 41.6, -124.5, -69.9],
      // south of the 49th parallel, west of the Lake of the Woods, east of the Salish Sea
      [41.6, 48.9, -122.7, -95.3],
      [41.6, 48.1, -124.8, -122.7],
      // Minnesota to lower Michigan, short of Ontario
      [41.6, 45.9, -95.3, -83.6],
      // New York and New England, short of the lakes and of Quebec
      [41.6, 43.2, -78.6, -74.6],
      [41.6, 44.9, -74.6, -68],
      // Arizona and New Mexico, Texas, the Gulf, Florida: away from the Mexican border
      [31.9, 33, -111, -106.8],
      [30.2, 33, -102, -94],
      [29, 33, -97, -88],
      [25, 33, -88, -79.9],
      // Alaska west of the 141st meridian, Hawaii
      [54.6, 71.5, -168, -141.3],
      [18.8, 22.4, -160.6, -154.7],
    ],
  ],
  [
    'Canada',
    [
      [49.2, 60, -129.5, -57.5],
      [60, 75, -140.5, -75],
      [47.3, 49.2, -59.5, -52.5],
      [43.3, 46.9, -65.9, -60],
    ],
  ],
  [
    'United Kingdom',
    [
      // Britain, short of the coast of France and of Ireland
      [51.2, 54, -4.2, 1.4],
      [54.5, 59, -3.7, 1.4],
      [50, 51.2, -5.8, 0.6],
      [55.6, 58.7, -6.5, -3.7],
      // the east of Northern Ireland
      [54.4, 55.2, -6.5, -5.4],
    ],
  ],
  ['Ireland', [[51.4, 53.8, -10.5, -6]]],
  [
    'European Union',
    [
      // the Iberian peninsula, France, Italy, the middle of the continent: away from states that are no members, and from Africa
      [36.3, 42.3, -9.5, -1],
      [37.6, 42.3, -1, 3.3],
      [43.5, 48.8, -1.6, 5.7],
      [44.1, 45.6, 8, 13.4],
      [37, 43.7, 8, 15.5],
      [49.2, 54.1, 3.2, 21.8],
    ],
  ],
];

/** Lands that lie in none of those countries and might be taken for their neighbours: drawn inside their own borders. */
const OUTSIDE: readonly Box[] = [
  // Switzerland, Norway, Iceland
  [46.6, 47.4, 7.2, 9.3],
  [58.2, 62.5, 5, 10.9],
  [63, 67, -25, -13],
  // the west of Russia, Belarus, Ukraine
  [59.4, 60.6, 29, 35],
  [52.2, 55.4, 27, 35],
  [46.5, 52.2, 30, 35],
  // Bosnia, Serbia, Turkey
  [43.4, 44.8, 17.2, 18.9],
  [43, 44.6, 19.6, 21.5],
  [36, 40.8, 29.5, 35],
  // Mexico, Greenland
  [24, 28.8, -113, -101],
  [24, 25.75, -101, -98],
  [24, 32.3, -116.5, -113.5],
  [59.5, 84, -56, -17],
];

/** Wide enough that whoever lives near a border finds the own country among those told. Africa's north coast is left out. */
const NEAR: readonly (readonly [readonly RadonCountry[], readonly Box[]])[] = [
  [['US', 'Canada'], [[24, 84, -170, -50]]],
  [
    ['United Kingdom', 'Ireland', 'European Union'],
    [
      [37.6, 72, -25, 35],
      // the south of Iberia, Sicily and Malta, the south of Greece, Cyprus
      [35.9, 37.6, -9.6, -1.5],
      [35.7, 37.6, 11.8, 16],
      [34.7, 37.6, 20, 28.3],
      [34.5, 35.8, 32.2, 34.7],
      // Madeira and the Canary Islands
      [32, 33.5, -17.5, -16],
      [27.6, 29.5, -18.3, -13.3],
    ],
  ],
];

/**
 * Countries whose level a site may be held to.
 *
 * @param latitudeDeg north positive
 * @param longitudeDeg east positive
 * @returns one where the site surely lies in it; more near borders; none where no level is kept here
 */
export function radonCountries(latitudeDeg: number, longitudeDeg: number): readonly RadonCountry[] {
  const holds = ([south, north, west, east]: Box) =>
    latitudeDeg >= south && latitudeDeg <= north && longitudeDeg >= west && longitudeDeg <= east;
  const sure = INSIDE.find(([, boxes]) => boxes.some(holds));
  if (sure !== undefined) return [sure[0]];
  if (OUTSIDE.some(holds)) return [];
  return NEAR.find(([, boxes]) => boxes.some(holds))?.[0] ?? [];
}
