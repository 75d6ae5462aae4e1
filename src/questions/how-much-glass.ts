// How much glass? The equator-facing glass from none to the whole front, for three amounts of mass: hours too hot,
// heat, coldest night, humid hours, and the most glass whose hours too hot keep to the limit. Handbook
// marks at 7, 12 and 20 % of the floor: US guideline series (physics/sizing-rules.ts).

import { geometryOf } from '../design/geometry.ts';
import { criterionInWords } from '../findings/hot-words.ts';
import { ACCEPTABLE_DAMP_HOURS } from '../outcomes/acceptable-hours.ts';
import { SIZING_RULES } from '../physics/sizing-rules.ts';
import { type Bracket, bracketOf, nextPlaces } from './bracket.ts';
import { hotInWords } from './criterion.ts';
import { houseOfRun } from './in-doubt.ts';
import { drawnAmount, type MassAmount, massAmounts, massInWords } from './mass-amounts.ts';
import type { AnswerBody, Basis, Chart, Mark, Question, Run, Runs, Sentence } from './question.ts';
import type { RunJob } from './run-job.ts';
import { largestGlassOf, varied, withGlassM2 } from './variation.ts';
import { countInWords, hoursInWords, percentInWords, type Words } from './words.ts';

/** Steps of the coarse sweep from none to the whole front. */
const STEPS = 8;
/** A front that carries less than this carries none [m²]. House rule. */
const LEAST_GLASS_M2 = 0.5;
/** Places run at once in each round of the search. */
const PLACES = 3;
/** The search ends when the limit is known to this share of the whole front. */
const RESOLUTION = 1 / 64;
/** Hours without any front glass worth a sentence, as a share of those with it. House rule. */
const OTHERS_SHARE = 0.25;
/** More back-up heat than this, and such a share of it, is worth a sentence. House rules. */
const DEARER_KWH = 50;
const DEARER_SHARE = 0.05;
/** Shares of the most glass, tried where what nobody can know goes against the house. */
const SAFER = [0.85, 0.7, 0.5, 0.3] as const;
const HANDBOOK = ['sun-tempered', 'direct-gain', 'all-passive'] as const;

export const howMuchGlass: Question = {
  id: 'how-much-glass',
  title: 'How much glass?',
  asks: 'How much equator-facing glass can this house carry before it overheats?',
  plan: (basis) => {
    const most = largestGlassOf(basis.design);
    const amounts = massAmounts(basis.design);
    return coarseToFine(STEPS).flatMap((step) =>
      amounts.map((amount) => jobAt(basis, amount, (most * step) / STEPS)),
    );
  },
  refine: (basis, runs) =>
    massAmounts(basis.design).flatMap((amount) => {
      const bracket = bracketFor(basis, amount, runs);
      if (bracket === null || !bracket.passesAtStart) return [];
      return nextPlaces(bracket, PLACES, largestGlassOf(basis.design) * RESOLUTION).map((areaM2) =>
        jobAt(basis, amount, areaM2),
      );
    }),
  doubt: (basis, runs) => {
    const amount = drawnMass(basis);
    const bracket = bracketFor(basis, amount, runs);
    if (bracket === null) return null;
    const told = ofAmount(runs, amount).find((run) => glassOf(run) === bracket.before)!;
    const { words } = basis;
    // Without any glass that keeps to the limit there is no smaller area to fall back on.
    const areas =
      bracket.passesAtStart && bracket.before > 0 ? SAFER.map((share) => share * bracket.before) : [];
    return {
      houses: [
        houseOfRun(String(bracket.before), told),
        ...areas.map((areaM2) => {
          const { label, design } = jobAt(basis, amount, areaM2);
          return { id: String(areaM2), words: label, design };
        }),
      ],
      advice: (figuresOf) => {
        const fits = [bracket.before, ...areas].find(
          (areaM2) => figuresOf(String(areaM2)).tooHotHours <= basis.criterion.hours,
        );
        if (fits === undefined)
          return areas.length === 0
            ? 'no glass keeps to the limit'
            : `even ${words.area(areas.at(-1)!)} is too much`;
        return areas.length === 0 ? 'it keeps to the limit without any glass' : `stop at ${words.area(fits)}`;
      },
      subject: `With ${words.area(bracket.before)} of glass the house`,
    };
  },
  answer,
};

/** 0, n, n/2, then the rest: ends and middle first. */
function coarseToFine(steps: number): readonly number[] {
  const order: number[] = [0, steps];
  for (let stride = steps / 2; stride >= 1; stride /= 2) {
    for (let step = stride; step < steps; step += 2 * stride) order.push(step);
  }
  return order;
}

function jobAt({ design, words }: Basis, amount: MassAmount, areaM2: number): RunJob {
  return {
    id: `${amount.id}, ${areaM2.toFixed(3)} m²`,
    label: `${words.area(areaM2)} of glass, ${massInWords(amount, design, words)}`,
    design: withGlassM2(varied(design, { 'mass.areaM2': amount.areaM2 }), areaM2),
    at: { mass: amount.id, glassM2: areaM2 },
  };
}

function ofAmount(runs: Runs, amount: MassAmount): Run[] {
  return [...runs.values()]
    .filter(({ job }) => job.at.mass === amount.id)
    .sort((one, other) => glassOf(one) - glassOf(other));
}

function glassOf({ job }: Run): number {
  return Number(job.at.glassM2);
}

/**
 * The most glass with an amount of mass that keeps to the limit at every smaller area [m²].
 *
 * @returns null where no glass does
 */
export function mostGlass(basis: Basis, amount: MassAmount, runs: Runs): number | null {
  const bracket = bracketFor(basis, amount, runs);
  return bracket?.passesAtStart ? bracket.before : null;
}

function drawnMass({ design }: Basis): MassAmount {
  return massAmounts(design).find(({ id }) => id === drawnAmount(design))!;
}

/** Where hours too hot pass the limit, by rising glass; null before any run is in. */
function bracketFor({ criterion }: Basis, amount: MassAmount, runs: Runs): Bracket | null {
  const trials = ofAmount(runs, amount).map((run) => ({
    x: glassOf(run),
    passes: run.figures.tooHotHours <= criterion.hours,
  }));
  return trials.length === 0 ? null : bracketOf(trials);
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const { design, words, criterion } = basis;
  const geometry = geometryOf(design);
  const amounts = massAmounts(design);
  const chart: Chart = {
    id: 'glass',
    title: `More glass, more hours ${hotInWords(basis)}; more mass puts the bend off`,
    x: {
      label: 'equator-facing glass',
      unit: 'm²',
      shares: [
        { of: 'floor area', short: 'floor', wholeX: design.house.floorAreaM2 },
        { of: 'equator-facing wall', short: 'wall', wholeX: geometry.equatorWallM2 },
      ],
    },
    y: ['tooHotHours', 'heatingKWh', 'coldestC', 'humidHours'],
    curves: amounts.map((amount) => ({
      id: amount.id,
      label: massInWords(amount, design, words),
      points: ofAmount(runs, amount).map((run) => ({
        x: glassOf(run),
        run: run.job.id,
        figures: run.figures,
      })),
    })),
    marks: [
      ...handbookMarks(basis),
      {
        id: 'drawn',
        kind: 'drawn',
        x: geometry.glassM2,
        label: 'as drawn',
        curve: null,
        source: 'the design',
      },
      ...(complete ? amounts.flatMap((amount) => limitMark(basis, amount, runs)) : []),
    ],
  };
  const share = (areaM2: number) => [
    areaM2,
    (100 * areaM2) / design.house.floorAreaM2,
    (100 * areaM2) / geometry.equatorWallM2,
  ];
  return {
    finding: complete ? finding(basis, runs) : null,
    charts: [chart],
    tables: [
      {
        id: 'glass-by-mass',
        title: 'The runs, by mass and glass',
        columns: [
          { label: 'mass', unit: '', digits: 0 },
          { label: 'glass', unit: 'm²', digits: 1 },
          { label: 'of floor', unit: '%', digits: 0 },
          { label: 'of wall', unit: '%', digits: 0 },
          { label: 'too hot', unit: 'h', digits: 0 },
          { label: 'back-up heat', unit: 'kWh', digits: 0 },
          { label: 'coldest', unit: '°C', digits: 1 },
          { label: 'humid', unit: 'h', digits: 0 },
        ],
        rowRuns: amounts.flatMap((amount) => ofAmount(runs, amount).map(({ job }) => job.id)),
        rows: amounts.flatMap((amount) =>
          ofAmount(runs, amount).map((run) => [
            massInWords(amount, design, words),
            ...share(glassOf(run)),
            run.figures.tooHotHours,
            run.figures.heatingKWh,
            run.figures.coldestC,
            run.figures.humidHours,
          ]),
        ),
      },
    ],
    map: null,
    notes: [
      `The limit is ${criterionInWords(criterion, words)} (${criterion.source}).`,
      'Tilt, overhang, vents and habits stay as drawn; only glass and extra mass change.',
    ],
    proposal: complete ? proposal(basis, runs) : null,
  };
}

function handbookMarks({ design }: Basis): Mark[] {
  const { house } = design;
  return HANDBOOK.map((id) => {
    const rule = SIZING_RULES.find((entry) => entry.id === id)!;
    return {
      id,
      kind: 'handbook',
      x: rule.high * house.floorAreaM2,
      label: `handbook mark, ${percentInWords(rule.high)} of floor area`,
      curve: null,
      source: `${rule.source} (${rule.mark})`,
    };
  });
}

function limitMark(basis: Basis, amount: MassAmount, runs: Runs): Mark[] {
  const bracket = bracketFor(basis, amount, runs);
  if (bracket === null || !bracket.passesAtStart) return [];
  return [
    {
      id: `limit-${amount.id}`,
      kind: 'limit',
      x: bracket.before,
      label: `most glass with ${massInWords(amount, basis.design, basis.words)}`,
      curve: amount.id,
      source: basis.criterion.source,
    },
  ];
}

function finding(basis: Basis, runs: Runs): Sentence | null {
  const { design, words, criterion } = basis;
  const { equatorWallM2, glassM2 } = geometryOf(design);
  const amount = drawnMass(basis);
  const bracket = bracketFor(basis, amount, runs);
  if (bracket === null) return null;
  const at = ofAmount(runs, amount).find((run) => glassOf(run) === bracket.before)!;
  const { tooHotHours, overheatedHours, humidHours } = at.figures;
  const damp =
    humidHours > ACCEPTABLE_DAMP_HOURS
      ? ` This judges hours too hot alone: the rooms are then also above ${percentInWords(design.comfort.humidLimit)} humidity for ${hoursInWords(humidHours)} a year.`
      : '';
  const withoutGlassHours = ofAmount(runs, amount)[0]!.figures.tooHotHours;
  // What the other windows do is not the front's fault.
  const others =
    withoutGlassHours > OTHERS_SHARE * tooHotHours && withoutGlassHours > 0
      ? ` With no glass to the sun at all it would still be ${countInWords(withoutGlassHours)}: that part comes by the other windows and from within.`
      : '';
  const cold = leastHeatInWords(ofAmount(runs, amount), at, words);
  const mass = massInWords(amount, design, words);
  const shares = (areaM2: number) =>
    `That is ${percentInWords(areaM2 / design.house.floorAreaM2)} of the floor, or ${percentInWords(areaM2 / equatorWallM2)} of the equator-facing wall.`;
  const figures = {
    limitM2: bracket.passesAtStart ? bracket.before : null,
    shareOfFloor: bracket.passesAtStart ? bracket.before / design.house.floorAreaM2 : null,
    shareOfWall: bracket.passesAtStart ? bracket.before / equatorWallM2 : null,
    tooHotHours,
    overheatedHours,
    humidHours,
    limitHours: criterion.hours,
    limitC: criterion.aboveC,
    withoutGlassHours,
    drawnM2: glassM2,
    largestM2: largestGlassOf(design),
    firstFailingM2: bracket.after,
  };
  const above = hotInWords(basis);
  if (!bracket.passesAtStart) {
    return {
      figures,
      text: `With ${mass}, no amount of glass keeps to ${hoursInWords(criterion.hours)} ${above}. Even with none the rooms are ${above} for ${hoursInWords(withoutGlassHours)} a year. Look to vents and shade first.`,
    };
  }
  if (bracket.after === null) {
    return {
      figures,
      text: `With ${mass}, the whole front may be glass: ${words.area(bracket.before)}. ${shares(bracket.before)} The rooms are then ${above} for ${hoursInWords(tooHotHours)} a year, and ${countInWords(criterion.hours)} are allowed.${others}${cold}${damp}`,
    };
  }
  if (bracket.before < LEAST_GLASS_M2) {
    return {
      figures,
      text: `With ${mass}, this front carries no glass: with none the rooms are ${above} for ${hoursInWords(withoutGlassHours)} a year, and a little passes the ${countInWords(criterion.hours)} that are allowed. Look to vents and shade first.${damp}`,
    };
  }
  const drawn =
    glassM2 > bracket.before
      ? `You have drawn ${words.area(glassM2 - bracket.before)} too much.`
      : `You have drawn ${words.area(glassM2)}, so there is room for ${words.area(bracket.before - glassM2)} more.`;
  return {
    figures,
    text: `With ${mass}, stop at about ${words.area(bracket.before)} of glass. ${shares(bracket.before)} It gives ${hoursInWords(tooHotHours)} a year ${above}; ${countInWords(criterion.hours)} are allowed. ${drawn}${others}${cold}${damp}`,
  };
}

/** Less glass that asks for plainly less back-up heat; nothing where the most glass asks for the least. */
function leastHeatInWords(all: readonly Run[], most: Run, words: Words): string {
  const least = all
    .filter((run) => glassOf(run) <= glassOf(most))
    .reduce((best, run) => (run.figures.heatingKWh < best.figures.heatingKWh ? run : best));
  const [less, more] = [least.figures.heatingKWh, most.figures.heatingKWh];
  if (more - less < Math.max(DEARER_KWH, DEARER_SHARE * more)) return '';
  const area = glassOf(least) > 0 ? words.area(glassOf(least)) : 'none at all';
  return ` The least back-up heat is that of ${area}: ${words.energy(less)} a year, and ${words.energy(more)} with the most.`;
}

function proposal(basis: Basis, runs: Runs): AnswerBody['proposal'] {
  const { design, words } = basis;
  const amount = drawnMass(basis);
  const bracket = bracketFor(basis, amount, runs);
  if (bracket === null || !bracket.passesAtStart || bracket.after === null) return null;
  if (bracket.before < LEAST_GLASS_M2) return null;
  return {
    text: `Draw ${words.area(bracket.before)} of glass`,
    design: withGlassM2(design, bracket.before),
  };
}
