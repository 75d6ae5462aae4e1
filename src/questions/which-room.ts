// Which room is worst, and what helps it? The house as drawn, room by room; then, for the rooms that are worst by heat, by cold
// and by damp, each change that could help: its door, a grille, a fan, shade, windows, mass, the stove. A house of one room
// is divided first in the way that suits it, and said to be.

import type { Design } from '../design/design.ts';
import { roomPlanOf } from '../design/room-plan.ts';
import { dividedBy, usualPreset } from '../design/room-presets.ts';
import { mayBurn } from '../findings/rules/heat-source.ts';
import { worstIn } from '../outcomes/judged-house.ts';
import type { OutcomeFigures, RoomOutcome } from '../outcomes/outcome.ts';
import { DAYS_SAY } from '../quantities/words.ts';
import type { AnswerBody, Basis, Question, Run, Runs, Sentence, Table } from './question.ts';
import { roomChanges } from './room-changes.ts';
import { helpAgainst, hoursOf, isMore, isTrouble, TROUBLES, type Trouble, WORTH_SHARE } from './room-help.ts';
import type { RunJob } from './run-job.ts';
import { runAt } from './run-table.ts';
import { type Weights, weightsInWords } from './weights.ts';
import { capitalised, countInWords, hoursInWords, type Words } from './words.ts';

const DRAWN = 'divided';
/** Less heat more than this goes untold. House rule. */
const LEAST_HEAT_KWH = 50;

export const whichRoom: Question = {
  id: 'which-room',
  title: 'Which room is worst, and what helps it?',
  asks: 'Which room is too hot, too cold or too damp, and does its door, a fan, a window, mass or the stove help it?',
  plan: ({ design }) => [
    { id: DRAWN, label: 'as drawn', design: divided(design), at: { room: '', change: '' } },
  ],
  refine: (basis, runs) => changesOf(divided(basis.design), runAt(runs, DRAWN).result.outcome, basis.words),
  answer,
};

/** The design as it is asked about: its own rooms, or those that suit it. */
function divided(design: Design): Design {
  return design.rooms === undefined ? dividedBy(design, usualPreset(design)) : design;
}

/** Changes for the rooms that are worst in some respect, each once. */
function changesOf(design: Design, outcome: OutcomeFigures, words: Words): RunJob[] {
  const troubled = new Set(TROUBLES.flatMap((trouble) => worstIn(outcome, trouble)?.id ?? []));
  return [...troubled].flatMap((id) => {
    const i = roomPlanOf(design)!.rooms.findIndex((placed) => placed.id === id);
    // The same in any units, so that an answer can be told again in others.
    return roomChanges(design, i, words).map(({ words: change, design: changed }, n) => ({
      id: `${id}, change ${n + 1}`,
      label: `"${design.rooms!.list[i]!.name}": ${change}`,
      design: changed,
      at: { room: id, change },
    }));
  });
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const drawn = runs.get(DRAWN);
  const rooms = drawn?.result.outcome.rooms ?? [];
  const changes = [...runs.values()].filter(({ job }) => job.id !== DRAWN);
  return {
    finding: complete && drawn ? findingOf(basis, drawn, changes) : null,
    charts: [],
    tables:
      drawn === undefined || rooms.length === 0
        ? []
        : [
            roomTable(rooms),
            ...(complete ? helpTable(drawn, changes, basis.weights) : []),
            ...(changes.length > 0 ? [changeTable(changes)] : []),
          ],
    map: null,
    notes: [
      'Heat and cold count in bedrooms from 22 to 7 o’clock, in other rooms while people are up; damp counts at all hours.',
      `Of the changes that help a room, that one is told with which the worst rooms, the heat and the work weigh least. ${weightsInWords(basis.weights)}`,
      DAYS_SAY,
      'Each change is tried alone. A wide opening and a shut door are plain; a fan between rooms may ask for a fire check of your code.',
      ...(basis.design.heating.capacityKW > 0 && mayBurn(basis.design.heating.source)
        ? [
            'A stove wants a flue and air of its own wherever it stands, and many codes allow no fire where people sleep: ask your building office, and fit a carbon monoxide alarm.',
          ]
        : []),
      ...(basis.design.rooms === undefined
        ? ['The house is drawn as one room; it was divided for this answer as "Divide into rooms" would.']
        : []),
    ],
    proposal: null,
  };
}

function roomTable(rooms: readonly RoomOutcome[]): Table {
  return {
    id: 'rooms',
    title: 'The rooms as drawn',
    columns: [
      { label: 'room', unit: '', digits: 0 },
      { label: 'hours too hot there', unit: 'h/year', digits: 0 },
      { label: 'of them allowed', unit: 'h/year', digits: 0 },
      { label: 'hours too cold there', unit: 'h/year', digits: 0 },
      { label: 'humid hours there', unit: 'h/year', digits: 0 },
      { label: 'mould index there', unit: '0–6', digits: 1 },
    ],
    rowRuns: rooms.map(() => DRAWN),
    rows: rooms.map(({ name, tooHot, lived, humidHours, mouldIndexMax }) => [
      name,
      tooHot.hours,
      tooHot.limitHours,
      lived.underheatedHours,
      humidHours,
      mouldIndexMax,
    ]),
  };
}

function changeTable(changes: readonly Run[]): Table {
  const told = changes.flatMap((run) => {
    const room = run.result.outcome.rooms?.find(({ id }) => id === run.job.at.room);
    return room === undefined ? [] : [{ run, room }];
  });
  return {
    id: 'changes',
    title: 'What each change does to the room it is for',
    columns: [
      { label: 'change', unit: '', digits: 0 },
      { label: 'hours too hot there', unit: 'h/year', digits: 0 },
      { label: 'hours too cold there', unit: 'h/year', digits: 0 },
      { label: 'humid hours there', unit: 'h/year', digits: 0 },
      { label: 'back-up heat', unit: 'kWh/year', digits: 0 },
    ],
    rowRuns: told.map(({ run }) => run.job.id),
    rows: told.map(({ run, room }) => [
      run.job.label,
      room.tooHot.hours,
      room.lived.underheatedHours,
      room.humidHours,
      run.result.outcome.heating.energyKWh,
    ]),
  };
}

function findingOf(basis: Basis, drawn: Run, changes: readonly Run[]): Sentence {
  const { outcome } = drawn.result;
  const told = TROUBLES.map((trouble) => troubleOf(trouble, drawn, changes, basis));
  const divides =
    basis.design.rooms === undefined
      ? ' The house is drawn as one room, and was divided for this answer.'
      : '';
  const text = told.map(({ sentence }) => sentence).filter((sentence) => sentence !== '');
  const count = divided(basis.design).rooms!.list.length;
  const figures = Object.assign(
    {
      rooms: count,
      drawnAs: basis.design.rooms?.list.length ?? 1,
      heatingKWh: outcome.heating.energyKWh,
    },
    ...told.map((one) => one.figures),
  );
  const calm = `None of the ${count} rooms is too hot, too cold or too damp for longer than people mind.`;
  return { text: `${text.length === 0 ? calm : text.join(' ')}${divides}`, figures };
}

const TROUBLE_WORDS: Readonly<Record<Trouble, string>> = { hot: 'hottest', cold: 'coldest', damp: 'dampest' };
const SUFFERS: Readonly<Record<Trouble, string>> = { hot: 'too hot', cold: 'too cold', damp: 'too damp' };

/** The worst room in a respect, its hours, the change that takes most of them off, and what that costs elsewhere. */
function troubleOf(trouble: Trouble, drawn: Run, changes: readonly Run[], basis: Basis) {
  const { outcome } = drawn.result;
  const help = helpAgainst(trouble, drawn, changes, basis.weights);
  if (help === null) return { sentence: '', figures: {} };
  const { room, before, best } = help;
  const opening = `The ${TROUBLE_WORDS[trouble]} room is "${room.name}": ${SUFFERS[trouble]} for ${hoursInWords(before)} a year.`;
  const figures = { [`${trouble}Room`]: room.name, [`${trouble}Hours`]: before };
  if (best === null) {
    const none = help.helps
      ? 'What helps it costs as much in other hours or in heat.'
      : 'No single change tried here helps it much.';
    return { sentence: `${opening} ${none}`, figures };
  }
  const price = priceOf(trouble, outcome, best.run.result.outcome, basis.words);
  return {
    sentence: `${opening} ${capitalised(String(best.run.job.at.change))} leaves ${countInWords(best.hours)}.${price.sentence}`,
    figures: { ...figures, [`${trouble}HelpHours`]: best.hours, ...price.figures },
  };
}

/** What a change against one trouble makes worse in the worst rooms by the others, and in heat. */
function priceOf(trouble: Trouble, before: OutcomeFigures, after: OutcomeFigures, { energy }: Words) {
  const worse = TROUBLES.filter((other) => other !== trouble).flatMap((other) => {
    const [was, is] = [worstIn(before, other)!, worstIn(after, other)!];
    const [from, to] = [hoursOf(was, other), hoursOf(is, other)];
    return isTrouble(is, other) && isMore(to, from) ? [{ other, room: is.name, from, to }] : [];
  });
  const heat = { from: before.heating.energyKWh, to: after.heating.energyKWh };
  const dearer = heat.to - heat.from >= Math.max(LEAST_HEAT_KWH, WORTH_SHARE * heat.from);
  const told = [
    ...worse.map(
      ({ other, room, from, to }) =>
        `"${room}" is then ${SUFFERS[other]} for ${hoursInWords(to)}, up from ${countInWords(from)}`,
    ),
    ...(dearer ? [`back-up heat is then ${energy(heat.to)}, up from ${energy(heat.from)}`] : []),
  ];
  return {
    sentence: told.length === 0 ? '' : ` The price: ${told.join('; ')}.`,
    figures: {
      ...Object.fromEntries(
        worse.flatMap(({ other, from, to }) => [
          [`${trouble}Help${capitalised(other)}From`, from],
          [`${trouble}Help${capitalised(other)}Hours`, to],
        ]),
      ),
      ...(dearer && { [`${trouble}HelpHeatingKWh`]: heat.to }),
    },
  };
}

/** The change that helps most against each trouble, to be drawn at once. */
function helpTable(drawn: Run, changes: readonly Run[], weights: Weights): Table[] {
  const told = TROUBLES.flatMap((trouble) => {
    const help = helpAgainst(trouble, drawn, changes, weights);
    return help === null || help.best === null ? [] : [{ ...help, best: help.best, trouble }];
  });
  if (told.length === 0) return [];
  return [
    {
      id: 'helps',
      title: 'What helps each most',
      columns: [
        { label: 'change', unit: '', digits: 0 },
        { label: 'against', unit: '', digits: 0 },
        { label: 'hours as drawn', unit: 'h/year', digits: 0 },
        { label: 'hours with it', unit: 'h/year', digits: 0 },
        { label: 'back-up heat', unit: 'kWh/year', digits: 0 },
      ],
      rowRuns: told.map(({ best }) => best.run.job.id),
      rows: told.map(({ best, trouble, before }) => [
        best.run.job.label,
        SUFFERS[trouble],
        before,
        best.hours,
        best.run.result.outcome.heating.energyKWh,
      ]),
    },
  ];
}
