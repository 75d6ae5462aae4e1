// Fifty places as people write them elsewhere: in other scripts, old names, short forms, wide letters, with the region or the
// country in any language behind the name. Positions are those of an atlas, from memory, to about a tenth of a degree.

export const ODD_SPELLINGS: readonly (readonly [name: string, latitudeDeg: number, longitudeDeg: number])[] =
  [
    // short forms and sides of the sky
    ['Mt. Shasta, CA', 41.31, -122.31],
    ['Ft Worth TX', 32.73, -97.32],
    ['Ft. Collins, Colorado', 40.59, -105.08],
    ['S. Lake Tahoe', 38.93, -119.98],
    ['N. Platte, Nebraska', 41.12, -100.77],
    ['St Petersburg, Florida', 27.77, -82.64],
    ['Coeur d’Alene', 47.68, -116.78],
    ['L.A., California', 34.05, -118.24],
    ['Washington, D.C.', 38.9, -77.04],
    ['newcastle-on-tyne', 54.97, -1.61],
    // a region, a country, or both behind the name
    ['espanola nm usa', 35.99, -106.08],
    ['Taos NM', 36.41, -105.57],
    ['Trois Rivières QC', 46.34, -72.54],
    ['Perth WA', -31.95, 115.86],
    ['Alice springs NT', -23.7, 133.88],
    ['Perth, Scotland', 56.4, -3.43],
    ['Bogota DC', 4.61, -74.08],
    ['Wanaka NZ', -44.7, 169.14],
    ['Cambridge MA', 42.37, -71.1],
    ['Denver (Colorado)', 39.74, -104.98],
    // the country in its own language
    ['São Paulo, Brasil', -23.55, -46.64],
    ['Sevilla España', 37.38, -5.97],
    ['Roma, Italia', 41.89, 12.48],
    ['Wien Österreich', 48.21, 16.37],
    ['München, Deutschland', 48.14, 11.58],
    ['Bern, Schweiz', 46.95, 7.45],
    ['Genève, Suisse', 46.2, 6.15],
    ['Praha, Česko', 50.09, 14.42],
    ['東京, 日本', 35.68, 139.69],
    ['Казань, Россия', 55.79, 49.12],
    // old names and names in other languages
    ['Peking', 39.9, 116.4],
    ['Bombay', 19.07, 72.88],
    ['Danzig', 54.35, 18.65],
    ['Kaapstad', -33.93, 18.42],
    ['Cuzco', -13.52, -71.97],
    ['Genf', 46.2, 6.15],
    // letters written out, with accents or without, large or wide
    ['koeln', 50.94, 6.96],
    ['Århus', 56.16, 10.2],
    ['Diyarbakir', 37.91, 40.24],
    ['İSTANBUL', 41.01, 28.95],
    ['ＴＯＫＹＯ', 35.68, 139.69],
    // other scripts
    ['臺北', 25.05, 121.55],
    ['おおさか', 34.69, 135.5],
    ['부산광역시', 35.1, 129.04],
    ['চট্টগ্রাম', 22.34, 91.83],
    ['ಬೆಂಗಳೂರು', 12.97, 77.59],
    ['မန္တလေး', 21.97, 96.08],
    ['ភ្នំពេញ', 11.56, 104.92],
    ['کابل', 34.53, 69.17],
    ['Θεσσαλονίκη', 40.64, 22.93],
  ];

/** Names the list lacks and the program adds, all of them; positions as above. */
export const NAMES_BESIDE: readonly (readonly [name: string, latitudeDeg: number, longitudeDeg: number])[] = [
  ['NYC', 40.71, -74.01],
  ['NYC NY', 40.71, -74.01],
  ['Qosqo, Perú', -13.52, -71.97],
  ['Tāmaki Makaurau', -36.85, 174.76],
  ['Te Whanganui-a-Tara', -41.29, 174.78],
  ['Pōneke', -41.29, 174.78],
  ['Te Papaioea', -40.36, 175.61],
  ['Tūranga-nui-a-Kiwa', -38.66, 178.02],
  ['Utqiaġvik', 71.29, -156.79],
  ['Qikiqtaġruk', 66.9, -162.6],
  ['Kangiqliniq', 62.81, -92.09],
  ['Kinngait', 64.23, -76.53],
  ['Mittimatalik', 72.7, -77.96],
];
