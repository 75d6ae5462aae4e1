// Open or closed off? The sunspace open to the rooms, closed with a door that is opened when the rooms want heat,
// always shut, and no sunspace at all, the glass then upright in the house wall.

import { geometryOf } from '../design/geometry.ts';
import { hotInWords } from './criterion.ts';
import type { AnswerBody, Basis, Question, Runs, Sentence } from './question.ts';
import { runAt, runTable } from './run-table.ts';
import { type Changes, varied, withGlassAsArea } from './variation.ts';
import { countInWords, hoursInWords } from './words.ts';

/** A door that a person opens, where the drawn opening is a missing wall [m²]. */
const USUAL_DOOR_M2 = 2;
const LARGEST_DOOR_M2 = 6;
/** A difference below this share is none worth a sentence. */
const SMALL_SHARE = 0.02;

const WAYS = ['by-need', 'open', 'shut', 'none'] as const;
type Way = (typeof WAYS)[number];

const LABELS: Readonly<Record<Way, string>> = {
  'by-need': 'closed, door opened when the rooms want heat',
  open: 'open to the rooms',
  shut: 'closed, door always shut',
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
      design: varied(withGlassAsArea(design), changesFor(way, design.sunspace.doorM2)),
      at: { way },
    })),
  answer,
};

function changesFor(way: Way, doorM2: number): Changes {
  if (way === 'none') return { 'sunspace.join': 'none', 'glass.tiltDeg': 90 };
  if (way === 'open') return { 'sunspace.join': 'open', 'sunspace.doorRule': 'open' };
  const door = doorM2 > 0 && doorM2 <= LARGEST_DOOR_M2 ? doorM2 : USUAL_DOOR_M2;
  return { 'sunspace.join': 'closed', 'sunspace.doorM2': door, 'sunspace.doorRule': way };
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
      'The door moves by the same hands as the vents. Plants, vents and glass stay as drawn.',
    ],
    proposal: null,
  };
}

function finding(basis: Basis, runs: Runs): Sentence {
  const { words, criterion } = basis;
  const of = (way: Way) => runAt(runs, way).figures;
  const [closed, open, shut, none] = [of('by-need'), of('open'), of('shut'), of('none')];
  const figures = {
    closedOverheatedHours: closed.tooHotHours,
    closedHeatingKWh: closed.heatingKWh,
    closedHumidHours: closed.humidHours,
    openOverheatedHours: open.tooHotHours,
    openHeatingKWh: open.heatingKWh,
    openHumidHours: open.humidHours,
    shutOverheatedHours: shut.tooHotHours,
    shutHeatingKWh: shut.heatingKWh,
    noneOverheatedHours: none.tooHotHours,
    noneHeatingKWh: none.heatingKWh,
    limitC: criterion.aboveC,
  };
  const door = shut.heatingKWh - closed.heatingKWh;
  const doorSays =
    Math.abs(door) < SMALL_SHARE * shut.heatingKWh
      ? 'A door opened when the rooms want heat saves no more than one left shut.'
      : door > 0
        ? `Opening the door when the rooms want heat saves ${words.energy(door)} over leaving it shut.`
        : `The door used as drawn costs ${words.energy(-door)} more than leaving it shut.`;
  const without = `With no sunspace and the glass in the house wall it would need ${words.energy(none.heatingKWh)}, and be ${hotInWords(basis)} for ${hoursInWords(none.tooHotHours)}.`;
  const better = closed.tooHotHours <= open.tooHotHours && closed.humidHours <= open.humidHours;
  return {
    figures,
    text:
      `Open to the rooms, the house is ${hotInWords(basis)} for ${hoursInWords(open.tooHotHours)} a year and humid for ${countInWords(open.humidHours)}. ` +
      `Closed off with a door, it is ${countInWords(closed.tooHotHours)} and ${countInWords(closed.humidHours)} hours. ` +
      `Back-up heat is ${words.energy(open.heatingKWh)} open and ${words.energy(closed.heatingKWh)} closed. ${doorSays} ${without} ` +
      (better ? 'Close it off.' : 'Neither is better in everything, so weigh warmth against damp.'),
  };
}
