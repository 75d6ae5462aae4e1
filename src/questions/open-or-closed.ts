// Open, closed off or left out? The sunspace open to the rooms; closed with a door that is opened when the rooms want heat,
// with one left shut and one left open; and no sunspace at all: its glass upright in the house wall, its bed gone with it.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { bestHouse, choiceRule } from './choice-of-houses.ts';
import { hotInWords } from './criterion.ts';
import type { Figures } from './figures.ts';
import { houseOfRun } from './in-doubt.ts';
import type { AnswerBody, Basis, Question, Runs, Sentence } from './question.ts';
import { runAt, runTable } from './run-table.ts';
import { varied, withGlassAsArea } from './variation.ts';
import { countInWords, hoursInWords } from './words.ts';

/** A difference below this share is none worth a sentence. */
const SMALL_SHARE = 0.02;

const WAYS = ['by-need', 'open', 'shut', 'left-open', 'none'] as const;
type Way = (typeof WAYS)[number];
/** The plainest first. */
const CHOICES = ['none', 'by-need', 'open'] as const;

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
  doubt: ({ weights }, runs) => {
    const best = bestHouse(CHOICES, (way) => runAt(runs, way).figures, weights);
    const order = [best, ...CHOICES.filter((way) => way !== best)];
    return {
      houses: order.map((way) => houseOfRun(way, runAt(runs, way))),
      advice: (figuresOf) => ADVICE[bestHouse(CHOICES, figuresOf, weights)].turned,
      subject: ADVICE[best].subject,
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

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const { design, words } = basis;
  const drawn = geometryOf(design).glassM2;
  const inWall = runs.get('none');
  const fits = inWall === undefined ? drawn : geometryOf(inWall.job.design).glassM2;
  return {
    finding: complete ? finding(basis, runs) : null,
    charts: [],
    tables: [
      runTable(
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
    ],
    proposal: null,
  };
}

function finding(basis: Basis, runs: Runs): Sentence {
  const { words, criterion, design } = basis;
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
  const best = bestHouse(CHOICES, of, basis.weights);
  const { advice, house } = ADVICE[best];
  const told = (way: (typeof CHOICES)[number]) => {
    const { tooHotHours, humidHours, heatingKWh } = of(way);
    return `${hoursInWords(tooHotHours)}, ${countInWords(humidHours)} and ${words.energy(heatingKWh)}`;
  };
  const { tooHotHours, humidHours, heatingKWh } = of(best);
  const others = CHOICES.filter((way) => way !== best);
  const bed =
    design.plants.bedM2 > 0 && design.sunspace.join !== 'none' ? ' Left out, its plants go with it.' : '';
  return {
    figures,
    text:
      `${advice}: ${house} is ${hotInWords(basis)} for ${hoursInWords(tooHotHours)} a year, damp for ${countInWords(humidHours)}, and takes ${words.energy(heatingKWh)} of back-up heat. ` +
      `${others.map((way) => `${ADVICE[way].otherwise} it would be ${told(way)}.`).join(' ')}${bed} ` +
      doorInWords(basis, closed, shut, leftOpen),
  };
}

const ADVICE = {
  none: {
    advice: 'Leave the sunspace out',
    house: 'with the glass upright in its own wall the house',
    otherwise: 'Left out,',
    subject: 'The house without a sunspace',
    turned: 'leave the sunspace out',
  },
  'by-need': {
    advice: 'Close the sunspace off with a door',
    house: 'with the door used well the house',
    otherwise: 'Closed off,',
    subject: 'The house with it closed off',
    turned: 'close the sunspace off',
  },
  open: {
    advice: 'Leave the sunspace open to the rooms',
    house: 'the house',
    otherwise: 'Open to the rooms,',
    subject: 'The house with it open',
    turned: 'leave the sunspace open',
  },
} as const;

/** What the door brings, used well and badly. */
function doorInWords({ words }: Basis, well: Figures, shut: Figures, leftOpen: Figures): string {
  const saved = shut.heatingKWh - well.heatingKWh;
  const used =
    Math.abs(saved) < SMALL_SHARE * shut.heatingKWh
      ? 'A door opened when the rooms want heat saves no more than one left shut'
      : saved > 0
        ? `Opening the door when the rooms want heat saves ${words.energy(saved)} over leaving it shut`
        : `The door used as drawn costs ${words.energy(-saved)} more than leaving it shut`;
  return `${used}; always open, it is ${hoursInWords(leftOpen.tooHotHours)}, ${countInWords(leftOpen.humidHours)} and ${words.energy(leftOpen.heatingKWh)}.`;
}
