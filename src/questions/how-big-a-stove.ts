// How big a stove? The stove as drawn, or a light one where none is, and a masonry heater beside it, from far too small to far
// too big for the floor: the smallest that does but for a few hours, and what one too big does to the rooms.

import type { Design } from '../design/design.ts';
import { type StoveKind, type StoveSource, USUAL_STOVE } from '../design/heat-source.ts';
import { limitOf } from '../design/limits.ts';
import { bracketOf } from './bracket.ts';
import type { AnswerBody, Basis, Question, Run, Runs, Sentence, Table } from './question.ts';
import type { RunJob } from './run-job.ts';
import { PLAINLY_K } from './short-hours.ts';
import { type Unknown, unknownsOf } from './what-nobody-knows.ts';
import { capitalised, countInWords, hoursInWords } from './words.ts';

/** Output by floor area [W/m²]: from a superinsulated house in a mild winter to an old one in a hard one. House rule. */
const W_PER_M2 = [5, 10, 15, 20, 30, 45, 70, 110] as const;
const STEP_KW = 0.5;
/** Smallest that is made: light stoves 3 to 8 kW (EN 13240), masonry heaters for fires of 5 kg and up (read). */
const LEAST_LIGHT_KW = 3;
const LEAST_MASONRY_KW = 1;
/** Of 4745 hours in which people are up, so many may fall short: one in fifty. House rule. */
const SHORT_HOURS = 95;
/** Hours too hot beyond those of the smallest that does, from which a stove is too big. House rule. */
const TOO_BIG_HOURS = 50;

const KIND_WORDS: Readonly<Record<StoveKind, string>> = {
  steel: 'a light steel stove',
  'cast-iron': 'a cast-iron stove',
  soapstone: 'a stove clad in soapstone',
  masonry: 'a masonry heater',
};

export const howBigAStove: Question = {
  id: 'how-big-a-stove',
  title: 'How big a stove?',
  asks: 'Which is the smallest stove that keeps the rooms warm but for a few hours, and from what size is one too big?',
  plan: (basis) =>
    kindsTried(basis.design).flatMap((kind) =>
      sizesFor(basis.design, kind).map((kW) => ({
        id: idOf(kind, kW),
        label: `${KIND_WORDS[kind]}, ${basis.words.power(1000 * kW)}`,
        design: withStove(basis.design, kind, kW),
        at: { kind, kW },
        shortHours: true as const,
      })),
    ),
  refine: (basis, runs) => UNKNOWNS.flatMap((unknown) => stillToTry(basis, runs, unknown)),
  answer,
};

/** What the size is tried over. */
const UNKNOWNS = ['cold-year', 'leaky'] as const;
type Tried = (typeof UNKNOWNS)[number];

function triedOver(basis: Basis, id: Tried): Unknown | undefined {
  return unknownsOf(basis.design, basis.isMade).find((unknown) => unknown.id === id);
}

/** From the smallest that does on, size by size, until one does there too. */
function sizesOver(basis: Basis, runs: Runs): readonly number[] {
  const [kind] = kindsTried(basis.design);
  const { least } = sizesOf(kind!, runs);
  return sizesFor(basis.design, kind!).filter((kW) => kW >= Number(least.job.at.kW));
}

function overId(unknown: Tried, kW: number): string {
  return `in doubt, ${unknown}: ${kW} kW`;
}

function stillToTry(basis: Basis, runs: Runs, id: Tried): readonly RunJob[] {
  const unknown = triedOver(basis, id);
  if (unknown === undefined) return [];
  const [kind] = kindsTried(basis.design);
  for (const kW of sizesOver(basis, runs)) {
    const known = runs.get(overId(id, kW));
    if (known !== undefined && shortOf(known) <= SHORT_HOURS) return [];
    if (known !== undefined) continue;
    return [
      {
        id: overId(id, kW),
        label: `${KIND_WORDS[kind!]}, ${basis.words.power(1000 * kW)}, ${unknown.when(basis.words)}`,
        design: unknown.apply(withStove(basis.design, kind!, kW)),
        at: { doubt: id, of: kind!, kW },
        shortHours: true,
      },
    ];
  }
  return [];
}

/** Output that does there, null where none tried does [kW]; absent while it is not known. */
function sizeOver(basis: Basis, runs: Runs, id: Tried): number | null | undefined {
  if (triedOver(basis, id) === undefined) return undefined;
  const tried = sizesOver(basis, runs).map((kW) => ({ kW, run: runs.get(overId(id, kW)) }));
  const does = tried.find(({ run }) => run !== undefined && shortOf(run) <= SHORT_HOURS);
  if (does !== undefined) return does.kW;
  return tried.every(({ run }) => run !== undefined) ? null : undefined;
}

/** What helps where no size does. */
function cureOf({ heating: { source } }: Design): string {
  return source?.kind === 'stove' && source.unlitWeekends
    ? 'They are cold after weekends away: have someone light it the evening before, or insulate.'
    : 'Insulate before you buy a bigger one.';
}

/** "How sure? In a year 1.5 °C colder it is 5 kW." */
function sureInWords(basis: Basis, runs: Runs): string {
  const told = UNKNOWNS.flatMap((id) => {
    const kW = sizeOver(basis, runs, id);
    if (kW === undefined) return [];
    const when = capitalised(triedOver(basis, id)!.when(basis.words));
    return [
      `${when}, ${kW === null ? 'none that we tried does' : `it takes ${basis.words.power(1000 * kW)}`}.`,
    ];
  });
  return told.length === 0 ? '' : ` How sure? ${told.join(' ')}`;
}

function idOf(kind: StoveKind, kW: number): string {
  return `${kind}, ${kW} kW`;
}

/** The drawn kind first, then the other way to burn wood. */
function kindsTried({ heating }: Design): readonly StoveKind[] {
  const drawn = heating.source?.kind === 'stove' ? heating.source.stove : USUAL_STOVE.stove;
  return drawn === 'masonry' ? ['masonry', 'steel'] : [drawn, 'masonry'];
}

/** The one drawn among them. */
function sizesFor({ house, heating }: Design, kind: StoveKind): readonly number[] {
  const { max } = limitOf('heating.capacityKW');
  const least = kind === 'masonry' ? LEAST_MASONRY_KW : LEAST_LIGHT_KW;
  const sizes = W_PER_M2.map((each) => {
    const kW = STEP_KW * Math.round((each * house.floorAreaM2) / 1000 / STEP_KW);
    return Math.min(max, Math.max(least, kW));
  });
  const { source, capacityKW } = heating;
  const drawn = source?.kind === 'stove' && source.stove === kind && capacityKW > 0 ? [capacityKW] : [];
  return [...new Set([...sizes, ...drawn])].sort((one, other) => one - other);
}

/** Another kind is as usual of its kind; all else about it stays. */
function withStove(design: Design, kind: StoveKind, capacityKW: number): Design {
  const { source } = design.heating;
  const drawn: StoveSource = source?.kind === 'stove' ? source : USUAL_STOVE;
  const { efficiency: _, ...rest } = drawn;
  const stove: StoveSource = kind === drawn.stove ? drawn : { ...rest, stove: kind };
  const rooms = design.rooms && {
    ...design.rooms,
    list: design.rooms.list.some(({ heated }) => heated)
      ? design.rooms.list
      : design.rooms.list.map((room, i) => ({ ...room, heated: i === 0 })),
  };
  return { ...design, ...(rooms && { rooms }), heating: { ...design.heating, capacityKW, source: stove } };
}

function bySize(kind: string, runs: Runs): Run[] {
  return [...runs.values()]
    .filter(({ job }) => job.at.kind === kind)
    .sort((one, other) => Number(one.job.at.kW) - Number(other.job.at.kW));
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const { design, words } = basis;
  const kinds = kindsTried(design);
  return {
    finding: complete ? finding(basis, runs) : null,
    charts: [
      {
        id: 'sizes',
        title: 'A bigger stove warms colder days, and from some size on only overheats the rooms',
        x: { label: 'output of the stove', unit: 'kW' },
        y: ['coldestC', 'tooHotHours', 'underheatedHours', 'heatingKWh'],
        curves: kinds.map((kind) => ({
          id: kind,
          label: KIND_WORDS[kind],
          points: bySize(kind, runs).map((run) => ({
            x: Number(run.job.at.kW),
            run: run.job.id,
            figures: run.figures,
          })),
        })),
        marks:
          design.heating.capacityKW > 0
            ? [
                {
                  id: 'drawn',
                  kind: 'drawn',
                  x: design.heating.capacityKW,
                  label: 'as drawn',
                  curve: null,
                  source: 'the design',
                },
              ]
            : [],
      },
    ],
    tables: kinds.map((kind) => sizeTable(kind, bySize(kind, runs))),
    map: null,
    notes: [
      ...(design.heating.source?.kind === 'stove'
        ? []
        : ['No stove is drawn: a light one on dry beech stands in, fed by whoever is at home and awake.']),
      `It falls short where people are up, from 9 to 22 h, and a heated room is more than ${words.degrees(PLAINLY_K)} colder than asked for; ${SHORT_HOURS} hours a year may be so. House rules.`,
      `The smallest tried is the smallest made: ${words.power(1000 * LEAST_LIGHT_KW)} of a light stove, ${words.power(1000 * LEAST_MASONRY_KW)} of a masonry heater.`,
      'A light stove’s size is its nominal output, a masonry heater’s its mean output between fires. Wood burns with the same efficiency whatever the load and its water, and a flue that stands warm draws no air here. A real stove throttled far down, or fed wet wood, burns badly and soots its flue; over a season count on some ten points less than was tested.',
      'A stove needs a flue, clear distance from what can burn, air of its own and a carbon monoxide alarm: the maker’s sheet, the local code and a licensed fitter come first.',
    ],
    proposal: null,
  };
}

function sizeTable(kind: StoveKind, runs: readonly Run[]): Table {
  return {
    id: `sizes-${kind}`,
    title: `${capitalised(KIND_WORDS[kind])} by size`,
    columns: [
      { label: 'output', unit: 'kW', digits: 1 },
      { label: 'hours short of warmth', unit: 'h/year', digits: 0 },
      { label: 'hours too hot', unit: 'h/year', digits: 0 },
      { label: 'coldest hour', unit: '°C', digits: 1 },
      { label: 'wood', unit: 'kg/year', digits: 0 },
      { label: 'stacked', unit: 'm³/year', digits: 1 },
      { label: 'loads', unit: 'per year', digits: 0 },
      { label: 'loads on the busiest day', unit: '', digits: 0 },
      { label: 'days with fire', unit: 'per year', digits: 0 },
    ],
    rowRuns: runs.map(({ job }) => job.id),
    rows: runs.map(({ job, result, figures }) => {
      const { fuel } = result.outcome;
      return [
        Number(job.at.kW),
        result.shortHours ?? null,
        figures.tooHotHours,
        figures.coldestC,
        fuel?.kg ?? null,
        fuel?.stackedM3 ?? null,
        fuel?.loads ?? null,
        fuel?.loadsOnBusiestDay ?? null,
        fuel?.daysWithFire ?? null,
      ];
    }),
  };
}

function timesInWords(times: number): string {
  return ['never', 'once', 'twice'][times] ?? `${times} times`;
}

const shortOf = ({ result, figures }: Run) => result.shortHours ?? figures.underheatedHours;

/** The smallest that does, or the biggest tried; and the first that is too big, if any is. */
function sizesOf(kind: StoveKind, runs: Runs) {
  const all = bySize(kind, runs);
  const { passesAtStart, before, after } = bracketOf(
    all.map((run) => ({ x: Number(run.job.at.kW), passes: shortOf(run) <= SHORT_HOURS })),
  );
  const leastKW = passesAtStart ? Number(all[0]!.job.at.kW) : (after ?? before);
  const least = all.find(({ job }) => job.at.kW === leastKW)!;
  const tooBig = all.find(
    ({ job, figures }) =>
      Number(job.at.kW) > leastKW && figures.tooHotHours > least.figures.tooHotHours + TOO_BIG_HOURS,
  );
  return { does: shortOf(least) <= SHORT_HOURS, least, tooBig };
}

function finding(basis: Basis, runs: Runs): Sentence {
  const { design, words } = basis;
  const [first, second] = kindsTried(design) as [StoveKind, StoveKind];
  const [own, other] = [sizesOf(first, runs), sizesOf(second, runs)];
  const power = (run: Run) => words.power(1000 * Number(run.job.at.kW));
  const { least, tooBig } = own;
  const { fuel } = least.result.outcome;
  const wood = fuel?.kg
    ? ` It burns ${words.weight(fuel.kg)} of wood a year, ${words.stackedWood(fuel.stackedM3!)}, on ${fuel.daysWithFire} days, and is fed ${timesInWords(fuel.loadsOnBusiestDay!)} on the busiest.`
    : '';
  const head = own.does
    ? `The smallest that does is ${KIND_WORDS[first]} of ${power(least)}: the rooms fall short for ${hoursInWords(shortOf(least))} a year.`
    : `No size of ${KIND_WORDS[first].replace(/^a /, '')} does: at ${power(least)} the rooms still fall short for ${hoursInWords(shortOf(least))} a year. ${cureOf(design)}`;
  const big =
    tooBig === undefined
      ? ' None that we tried is too big.'
      : ` One of ${power(tooBig)} is too big: it makes ${countInWords(tooBig.figures.tooHotHours)} hours too hot rather than ${countInWords(least.figures.tooHotHours)}.`;
  const instead = other.does
    ? ` As ${KIND_WORDS[second]} it would be ${power(other.least)}${other.tooBig ? `, and too big from ${power(other.tooBig)} on` : ''}.`
    : ` No ${KIND_WORDS[second].replace(/^a /, '')} that we tried does.`;
  return {
    text: `${head}${wood}${big}${instead}${sureInWords(basis, runs)}`,
    figures: {
      kW: Number(least.job.at.kW),
      shortHours: shortOf(least),
      allowedHours: SHORT_HOURS,
      tooHotHours: least.figures.tooHotHours,
      woodKg: fuel?.kg ?? null,
      stackedM3: fuel?.stackedM3 ?? null,
      daysWithFire: fuel?.daysWithFire ?? null,
      loadsOnBusiestDay: fuel?.loadsOnBusiestDay ?? null,
      tooBigKW: tooBig ? Number(tooBig.job.at.kW) : null,
      tooBigHotHours: tooBig?.figures.tooHotHours ?? null,
      otherKW: Number(other.least.job.at.kW),
      otherTooBigKW: other.tooBig ? Number(other.tooBig.job.at.kW) : null,
      coldYearKW: sizeOver(basis, runs, 'cold-year') ?? null,
      leakyKW: sizeOver(basis, runs, 'leaky') ?? null,
    },
  };
}
