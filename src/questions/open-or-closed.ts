// Open, closed off or left out? The sunspace open to the rooms; closed with a door that is opened when the rooms want heat,
// with one left shut and one left open; and no sunspace at all: its glass upright in the house wall, its bed gone with it.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { changeBetween } from '../quantities/change.ts';
import { DAYS_SAY } from '../quantities/words.ts';
import { bestHouse, choiceRule } from './choice-of-houses.ts';
import { hotInWords } from './criterion.ts';
import type { Figures } from './figures.ts';
import { houseOfRun } from './in-doubt.ts';
import type { AnswerBody, Basis, Question, Runs, Sentence } from './question.ts';
import { advisedTable, runAt } from './run-table.ts';
import { varied, withGlassAsArea } from './variation.ts';
import { areAllDamp } from './weights.ts';
import { countInWords, hoursInWords, lowered } from './words.ts';

/** A difference below this share, or this much heat [kWh], is none worth a sentence. */
const SMALL_SHARE = 0.02;
const SMALL_KWH = 5;

const WAYS = ['by-need', 'open', 'shut', 'left-open', 'none'] as const;
type Way = (typeof WAYS)[number];
/** The plainest first. */
const CHOICES = ['none', 'by-need', 'open'] as const;
type Choice = (typeof CHOICES)[number];

const LABELS: Readonly<Record<Way, string>> = {
  'by-need': 'closed, door opened when the rooms want heat',
  open: 'open to the rooms',
  shut: 'closed, door always shut',
  'left-open': 'closed, door always left open',
  none: 'no sunspace, the glass upright in the house wall',
};

export const openOrClosed: Question = {
  id: 'open-or-closed',
  title: 'Open or closed off?',
  asks: 'Should the sunspace be open to the rooms, closed off with a door, or left out?',
  plan: ({ design }) =>
    WAYS.map((way) => ({
      id: way,
      label: LABELS[way],
      design: houseOf(way, withGlassAsArea(design)),
      at: { way },
    })),
  doubt: (basis, runs) => {
    const bestOf = chooserAmong(basis);
    const best = bestOf((way) => runAt(runs, way).figures);
    const order = [best, ...CHOICES.filter((way) => way !== best)];
    const advice = adviceFor(basis.design);
    return {
      houses: order.map((way) => houseOfRun(way, runAt(runs, way))),
      advice: (figuresOf) => lowered(advice[bestOf(figuresOf)]),
      subject: HOUSES[best].subject,
    };
  },
  answer,
};

/** As the page's own choice gives it, with the door used that way. */
function houseOf(way: Way, drawn: Design): Design {
  if (way === 'none' || way === 'open') return varied(drawn, { 'sunspace.join': way });
  const doorRule = way === 'left-open' ? 'open' : way;
  return varied(varied(drawn, { 'sunspace.join': 'closed' }), { 'sunspace.doorRule': doorRule });
}

/**
 * The choice between them, the work of each over the house as drawn counted in. Nobody builds a sunspace against heat, which
 * shade takes away for less: where none is drawn and it is too hot without, hours too hot decide nothing.
 */
function chooserAmong({ design, weights }: Basis) {
  const drawn = withGlassAsArea(design);
  const days = new Map(CHOICES.map((way) => [way, changeBetween(drawn, houseOf(way, drawn)).days]));
  return (figuresOf: (way: Choice) => Figures) => {
    const fair = isHotWithout(design, figuresOf('none')) ? { ...weights, hot: 0 } : weights;
    return bestHouse(CHOICES, figuresOf, (way) => days.get(way)!, fair);
  };
}

function isHotWithout({ sunspace }: Design, none: Figures): boolean {
  return sunspace.join === 'none' && none.tooHotHours > none.tooHotLimitHours;
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const { design, words } = basis;
  const drawn = geometryOf(design).glassM2;
  const inWall = runs.get('none');
  const fits = inWall === undefined ? drawn : geometryOf(inWall.job.design).glassM2;
  return {
    finding: complete ? finding(basis, runs) : null,
    charts: [],
    tables: [
      advisedTable(
        complete ? chooserAmong(basis)((way) => runAt(runs, way).figures) : null,
        'by-join',
        'The house by how the sunspace joins it',
        'sunspace',
        [
          'tooHotHours',
          'heatingKWh',
          'coldestC',
          'humidHours',
          'mouldIndex',
          'sunspaceWarmestC',
          'sunspaceColdestC',
          'ventMovesPerDay',
        ],
        [...runs.values()],
      ),
    ],
    map: null,
    notes: [
      ...(design.sunspace.join === 'none'
        ? [
            `No sunspace is drawn; the others are ${words.length(design.sunspace.lengthM)} long and ${words.length(design.sunspace.depthM)} deep, with the glass in their front.`,
          ]
        : []),
      ...(fits < drawn - 0.05
        ? [
            `The house wall holds ${words.area(fits)} of upright glass, less than the ${words.area(drawn)} of the sunspace.`,
          ]
        : []),
      'The door moves by the same hands as the vents. Vents stay as drawn, and so do plants where there is a sunspace.',
      choiceRule(basis.weights),
      DAYS_SAY,
    ],
    proposal: null,
  };
}

function finding(basis: Basis, runs: Runs): Sentence {
  const { criterion, design } = basis;
  const of = (way: Way) => runAt(runs, way).figures;
  const [closed, open, shut, leftOpen, none] = [
    of('by-need'),
    of('open'),
    of('shut'),
    of('left-open'),
    of('none'),
  ];
  const figures = {
    closedOverheatedHours: closed.tooHotHours,
    closedHeatingKWh: closed.heatingKWh,
    closedHumidHours: closed.humidHours,
    openOverheatedHours: open.tooHotHours,
    openHeatingKWh: open.heatingKWh,
    openHumidHours: open.humidHours,
    shutOverheatedHours: shut.tooHotHours,
    shutHeatingKWh: shut.heatingKWh,
    leftOpenHeatingKWh: leftOpen.heatingKWh,
    leftOpenHumidHours: leftOpen.humidHours,
    leftOpenOverheatedHours: leftOpen.tooHotHours,
    noneOverheatedHours: none.tooHotHours,
    noneHeatingKWh: none.heatingKWh,
    noneHumidHours: none.humidHours,
    limitC: criterion.aboveC,
  };
  const best = chooserAmong(basis)(of);
  const { tooHotHours, humidHours } = of(best);
  const backUp = design.heating.capacityKW > 0 ? ' of back-up heat' : '';
  const others = CHOICES.filter((way) => way !== best);
  const hot =
    tooHotHours > criterion.hours
      ? ` Only ${countInWords(criterion.hours)} of those hours are allowed, so ask too how much glass it carries.`
      : '';
  const damp = areAllDamp(CHOICES.map(of))
    ? ' All ways are too damp, and damp is cured where the water starts.'
    : '';
  const first =
    design.sunspace.join === 'none' && best !== 'none'
      ? ' Before you build one, ask what helps most: less may do as much.'
      : '';
  const shade = isHotWithout(design, none)
    ? ' A sunspace keeps sun from the rooms, and so does shade, for less work.'
    : '';
  const bed =
    design.plants.bedM2 > 0 && design.sunspace.join !== 'none' ? ' Left out, its plants go with it.' : '';
  return {
    figures,
    text:
      `${adviceFor(design)[best]}: ${HOUSES[best].house} is ${hotInWords(basis)} for ${hoursInWords(tooHotHours)} a year, damp for ${countInWords(humidHours)}, and ${warmthInWords(basis, of(best))}${backUp}.${hot}${shade}${damp}${first} ` +
      `${others.map((way) => `${HOUSES[way].otherwise} it is ${toldOf(basis, of(way))}.`).join(' ')}${bed} ` +
      doorInWords(basis, closed, shut, leftOpen),
  };
}

const HOUSES: Readonly<Record<Choice, Readonly<Record<'house' | 'otherwise' | 'subject', string>>>> = {
  none: {
    house: 'with the glass upright in its own wall the house',
    otherwise: 'Left out,',
    subject: 'The house without a sunspace',
  },
  'by-need': {
    house: 'with the door used well the house',
    otherwise: 'Closed off,',
    subject: 'The house with it closed off',
  },
  open: {
    house: 'the house',
    otherwise: 'Open to the rooms,',
    subject: 'The house with it open',
  },
};

/** What to do with what is drawn. */
function adviceFor({ sunspace }: Design): Readonly<Record<Choice, string>> {
  switch (sunspace.join) {
    case 'none':
      return {
        none: 'Build no sunspace',
        'by-need': 'Build a sunspace closed off with a door',
        open: 'Build a sunspace open to the rooms',
      };
    case 'closed':
      return {
        none: 'Leave the sunspace out',
        'by-need': 'Keep the sunspace closed off',
        open: 'Open the sunspace to the rooms',
      };
    default:
      return {
        none: 'Leave the sunspace out',
        'by-need': 'Close the sunspace off with a door',
        open: 'Leave the sunspace open to the rooms',
      };
  }
}

/** Back-up heat, or the hours too cold of a house that has none. */
function warmthInWords({ design, words }: Basis, { heatingKWh, underheatedHours }: Figures): string {
  return design.heating.capacityKW > 0
    ? `takes ${words.energy(heatingKWh)}`
    : `too cold for ${countInWords(underheatedHours)}`;
}

function toldOf(basis: Basis, figures: Figures): string {
  return `too hot for ${hoursInWords(figures.tooHotHours)}, damp for ${countInWords(figures.humidHours)}, and ${warmthInWords(basis, figures)}`;
}

/** What the door brings, used well and badly. */
function doorInWords(basis: Basis, well: Figures, shut: Figures, leftOpen: Figures): string {
  const { words, design } = basis;
  if (design.heating.capacityKW <= 0) return `With the door always open it is ${toldOf(basis, leftOpen)}.`;
  const saved = shut.heatingKWh - well.heatingKWh;
  const used =
    Math.abs(saved) < Math.max(SMALL_KWH, SMALL_SHARE * shut.heatingKWh)
      ? 'A door opened when the rooms want heat saves no more than one left shut'
      : saved > 0
        ? `Opening the door when the rooms want heat saves ${words.energy(saved)} over leaving it shut`
        : `The door used as drawn costs ${words.energy(-saved)} more than leaving it shut`;
  return `${used}; always open, it is ${toldOf(basis, leftOpen)}.`;
}
