// What an input means, for who does not build houses every day: one or two plain sentences by path, and for some numbers
// the words the trade has for them. Values of words: common practice, no source.

/** By path; no entry where the name says it all. */
export const INPUT_HELP: Readonly<Record<string, string>> = {
  'glass.value': 'All glass on the side of the midday sun, frames and all.',
  'glass.basis': 'Builders count glass by its area, by the wall it is in, or by the floor it lights.',
  'glass.tiltDeg':
    '90° stands upright. The less it is, the further the glass leans back and the more summer sun it takes.',
  'glass.type': 'Low-e glass has a thin clear coat that keeps heat in.',
  'glass.overhangM':
    'A roof edge over the glass. It keeps the high summer sun off and lets the low winter sun in.',
  'glass.overhangGapM': 'How far the overhang sits above the top of the glass.',
  'glass.frameShare': 'The part of each window that is frame and not glass.',
  'glass.otherShareOfFloor': 'Windows on the other three sides, by the floor they light.',
  'glass.summerShade': 'How much of the sun a shade outside keeps off from late spring to early autumn.',
  'glass.nightResistance': 'Shutters or quilts over the glass from dusk to dawn. More holds more heat in.',
  'sunspace.join':
    'A sunspace is a glazed room on the sunny side. Open, it shares its heat and its damp with the rooms.',
  'sunspace.depthM': 'From the house wall out to the foot of the glass.',
  'sunspace.commonWallM': 'The wall between the sunspace and the rooms.',
  'mass.areaM2':
    "Heavy walls or drums that hold the day's heat until night. Count each face that the room sees.",
  'mass.place': 'Mass that the sun shines on takes up far more of it.',
  'floor.cover': "Carpet and wood keep the sun's heat out of the floor below.",
  'floor.edgeResistance': 'Insulation down the side of the floor slab, where the cold comes in first.',
  'envelope.wallResistance':
    'How well the walls hold heat in. More is better. R on packs in the United States is 5.7 times m²K/W.',
  'envelope.roofResistance':
    'How well the roof holds heat in. More is better. R on packs in the United States is 5.7 times m²K/W.',
  'envelope.bermShare': 'Earth piled against the back and side walls.',
  'envelope.wallLining': 'The layer of an outer wall next to the room.',
  'air.ach50':
    'How leaky the house is: air changes an hour while a test fan presses on it at 50 Pa. Fewer is tighter.',
  'people.awayWeekends':
    'From Friday evening to Monday morning nobody moves a window or lights a fire, and the heat is left at its night.',
  'air.shelter': 'How well the wind is kept off: 1 is open ground, 5 well hidden.',
  'vents.habit': 'Who opens and shuts windows and vents, and how well they keep it up.',
  'vents.houseM2': 'Windows of the rooms that can be opened. A twentieth of the floor is common.',
  'vents.stackM': 'Warm air rises: the further apart low and high openings are, the more air moves.',
  'vents.nightPurgeAch': 'A fan that blows cool night air through the house in the warm months.',
  'vents.extractAch': 'A fan that draws air out of kitchen and bath.',
  'ventilation.recoveryAch':
    'Fans that bring fresh air in past the used air, so that most of its heat stays.',
  'people.living': 'How much water cooking, washing and drying put into the air.',
  'plants.bedM2': 'Plants give off a great deal of water.',
  'plants.leafAreaIndex': 'How many times the leaves would cover the bed.',
  'heating.dayC': 'What people ask for. A heater keeps to it; a stove is lit when it is colder.',
  'heating.capacityKW':
    'The most a heater can give at once. Of a stove it is the nominal output; of a masonry heater the mean between fires.',
  'comfort.humidLimit': 'Above this humidity an hour counts as damp.',
};

export interface TradeWord {
  readonly words: string;
  /** SI */
  readonly value: number;
}

const R_VALUE = 0.1761102;
const r = (value: number): TradeWord => ({
  words: `R-${value}`,
  value: Number((value * R_VALUE).toFixed(2)),
});

/** Numbers that people name by a word. */
export const TRADE_WORDS: Readonly<Record<string, readonly TradeWord[]>> = {
  'envelope.wallResistance': [r(13), r(20), r(30), r(40)],
  'envelope.roofResistance': [r(30), r(40), r(50), r(60)],
  'air.ach50': [
    { words: 'draughty', value: 10 },
    { words: 'ordinary', value: 5 },
    { words: 'tight', value: 2 },
    { words: 'very tight', value: 0.6 },
  ],
};
