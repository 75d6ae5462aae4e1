// The climates that come with the tool: which source file each is made from, its corrected name, and one line on
// its character. The figures in these lines are those of the files themselves.

export interface ClimateChoice {
  readonly id: string;
  /** name of the source file, without .gz */
  readonly file: string;
  readonly name: string;
  readonly character: string;
  /** for tables without a header */
  readonly elevationM?: number;
}

export const CLIMATE_CHOICES: readonly ClimateChoice[] = [
  {
    id: 'denver',
    file: '725650TYA.CSV',
    name: 'Denver International Airport, Colorado',
    character: 'Cold and sunny, on the high plains: 3100 degree-days, bright winters, cool nights.',
  },
  {
    id: 'alamosa',
    file: '724620TYA.CSV',
    name: 'Alamosa, San Luis Valley, Colorado',
    character:
      'Very cold and very sunny, at 2300 m: nights to −32 °C, winter sun as strong as anywhere in the set.',
  },
  {
    id: 'santa-fe',
    file: '723656TYA.CSV',
    name: 'Santa Fe, New Mexico',
    character: 'Cool, dry and very sunny, at 1900 m: the home ground of the sun-heated adobe house.',
  },
  {
    id: 'tucson',
    file: '722740TYA.CSV',
    name: 'Tucson, Arizona',
    character: 'Hot and dry: winters that need little heat, summers in which glass is the trouble.',
  },
  {
    id: 'helena',
    file: '727720TYA.CSV',
    name: 'Helena, Montana',
    character: 'Cold northern plains and mountains: 4150 degree-days, short winter days, clear summers.',
  },
  {
    id: 'burlington',
    file: '726170TYA.CSV',
    name: 'Burlington, Vermont',
    character: 'Cold and cloudy: heating season as long as in the mountains, with half the winter sun.',
  },
  {
    id: 'greensboro',
    file: '723170TYA.CSV',
    name: 'Greensboro, North Carolina',
    character: 'Mixed and humid, at the foot of the Appalachians: short cool winters, warm damp summers.',
  },
  {
    id: 'sacramento',
    file: '724839TYA.CSV',
    name: 'Sacramento, California',
    character: 'Mediterranean valley: mild foggy winters, long hot dry summers with cool nights.',
  },
  {
    id: 'quillayute',
    file: '727970TYA.CSV',
    name: 'Quillayute, Washington',
    character: 'Mild, wet and grey, on the Pacific coast: long cool season, air near saturation.',
  },
  {
    id: 'anchorage',
    file: '702730TYA.CSV',
    name: 'Anchorage, Alaska',
    character: 'Cold at 61° north: hardly any sun at midwinter, long light evenings in summer.',
  },
  {
    id: 'belfast',
    file: 'PVGIS_TMY_Data_54.60452_-5.9286.csv',
    name: 'Belfast, Northern Ireland (coastal grid cell)',
    character: 'Mild, windy and cloudy: never hot, never very cold, sun mostly through cloud.',
    elevationM: 10,
  },
  {
    id: 'north-italy',
    file: 'tmy_45.000_8.000_2005_2023.csv',
    name: 'Po valley, northern Italy (grid cell)',
    character: 'Temperate with little wind: damp, hazy winters and warm summers.',
  },
  {
    id: 'madrid',
    file: 'tmy_40.417_-3.704_2005_2014.csv',
    name: 'Madrid, Spain (grid cell)',
    character: 'Mediterranean upland: sunny cool winters, hot dry summers.',
  },
  {
    id: 'southern-chile',
    file: 'tmy_-38.320_-71.960_2005_2023.csv',
    name: 'Araucanía foothills, southern Chile (grid cell)',
    character:
      'Southern hemisphere, cool and temperate: the sun stands in the north, July is the cold month.',
  },
];
