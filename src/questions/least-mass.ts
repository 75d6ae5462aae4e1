// The least mass of each way to build that keeps to the limit, in cubic metres, tonnes, pieces and days, and the
// sentence that sums it up: enough already, so much more, or no mass is enough and what would be.

import { geometryOf } from '../design/geometry.ts';
import { materialById } from '../design/materials.ts';
import { criterionInWords } from '../findings/hot-words.ts';
import { dayRangeInWords } from '../quantities/words.ts';
import { ALL_WAYS, type BuildingWork, buildingWork, type WayToBuild } from './building-work.ts';
import { hotInWords } from './criterion.ts';
import type { Figures } from './figures.ts';
import { bracketFor, byArea, mosts } from './mass-runs.ts';
import type { Basis, Run, Runs, Sentence, Table } from './question.ts';
import { burden, withoutDamp } from './weights.ts';
import { capitalised, countInWords, hoursInWords, type Words } from './words.ts';

/** Less heat than this share of it is no reason to build. House rule. */
const WORTH_SHARE = 0.05;

interface LeastMass {
  readonly way: WayToBuild;
  /** face area [m²]; null when the most tried is not enough */
  readonly areaM2: number | null;
  readonly work: BuildingWork | null;
}

function leastMass(basis: Basis, runs: Runs): LeastMass[] {
  return ALL_WAYS.map((way) => {
    const bracket = bracketFor(basis, way, runs);
    const areaM2 = bracket.passesAtStart ? 0 : bracket.after;
    return { way, areaM2, work: areaM2 === null ? null : buildingWork(way, areaM2) };
  });
}

/** The least mass by material, and what it takes. */
export function leastMassTable(basis: Basis, runs: Runs): Table {
  const column = (label: string, unit: string, digits = 0) => ({ label, unit, digits });
  const advised = massAdvised(basis, runs).job;
  return {
    ...(advised.at.way !== undefined && advised.id !== 'none' && { advised: advised.id }),
    id: 'least-mass',
    title: `Least extra mass for ${criterionInWords(basis.criterion, basis.words)}`,
    columns: [
      column('built of', ''),
      column('thickness', 'm', 2),
      column('face', 'm²'),
      column('volume', 'm³', 1),
      column('weight', 't', 1),
      column('pieces', ''),
      column('of', ''),
      column('days, at least', ''),
      column('days, at most', ''),
    ],
    rowRuns: leastMass(basis, runs).map(
      ({ way, areaM2 }) => byArea(way, runs).find(({ job }) => job.at.areaM2 === areaM2)?.job.id ?? null,
    ),
    rows: leastMass(basis, runs).map(({ way, areaM2, work }) => [
      materialById(way.material).name,
      way.thicknessM,
      areaM2,
      work?.volumeM3 ?? null,
      work === null ? null : work.weightKg / 1000,
      work?.pieces ?? null,
      way.piece(basis.words),
      work?.days[0] ?? null,
      work?.days[1] ?? null,
    ]),
  };
}

/** The closing sentence. */
export function massFinding(basis: Basis, runs: Runs): Sentence {
  const { criterion, words } = basis;
  const bare = runs.get('none')!.figures.tooHotHours;
  const rows = leastMass(basis, runs);
  const possible = rows.filter(({ areaM2 }) => areaM2 !== null);
  const figures = {
    withoutMassHours: bare,
    limitHours: criterion.hours,
    limitC: criterion.aboveC,
    ...Object.fromEntries(rows.map(({ way, areaM2 }) => [`${way.id}M2`, areaM2])),
  };
  if (bare <= criterion.hours) return noneIsNeeded(basis, runs, figures);
  if (possible.length === 0) return noMassIsEnough(basis, runs, bare, figures);
  const least = (amount: (row: LeastMass) => number) =>
    possible.reduce((best, row) => (amount(row) < amount(best) ? row : best));
  const easiest = easiestOf(possible);
  const lightest = least(({ work }) => work!.weightKg);
  const smallest = least(({ work }) => work!.volumeM3);
  const { way, areaM2, work } = easiest;
  const { areaM2: drawnM2 } = basis.design.mass;
  const drawn = runs.get('as drawn')!.figures;
  const withIt = byArea(way, runs).find(({ job }) => job.at.areaM2 === areaM2)!.figures;
  const without = runs.get('none')!.figures;
  const others = [...new Set([lightest, smallest])].filter((row) => row !== easiest);
  return {
    figures: {
      ...figures,
      drawnHours: drawn.tooHotHours,
      areaM2,
      thicknessM: way.thicknessM,
      volumeM3: work!.volumeM3,
      weightKg: work!.weightKg,
      daysLow: work!.days[0],
      daysHigh: work!.days[1],
      lightestKg: lightest.work!.weightKg,
      smallestM3: smallest.work!.volumeM3,
      heatingKWh: withIt.heatingKWh,
      humidHours: withIt.humidHours,
    },
    text:
      `${drawnM2 > 0 ? `What is drawn gives ${hoursInWords(drawn.tooHotHours)} a year ${hotInWords(basis)}, and no` : 'No'} extra mass ${hoursInWords(bare)}${drawnM2 > 0 ? '' : ` a year ${hotInWords(basis)}`}; ${countInWords(criterion.hours)} are allowed. ` +
      `The least work that keeps to it is ${builtInWords(easiest, words)}: ${dayRangeInWords(work!.days)} of one person, ${words.weight(work!.weightKg)}, ${words.volume(work!.volumeM3)}. ` +
      others.map((row) => `${otherwiseInWords(row, lightest, smallest, words)} `).join('') +
      `Back-up heat then goes from ${words.energy(without.heatingKWh)} to ${words.energy(withIt.heatingKWh)}, and damp from ${countInWords(without.humidHours)} to ${hoursInWords(withIt.humidHours)}. Days are those of a first-timer, by labour norms of different worth.`,
  };
}

/** The house that the sentence advises: without extra mass, with the least work, or the best there is instead. */
export function massAdvised(basis: Basis, runs: Runs): Run {
  const none = runs.get('none')!;
  if (none.figures.tooHotHours <= basis.criterion.hours) return none;
  const possible = leastMass(basis, runs).filter(({ areaM2 }) => areaM2 !== null);
  if (possible.length === 0) {
    const { enough, best } = insteadOf(basis, runs);
    return enough ?? best;
  }
  const { way, areaM2 } = easiestOf(possible);
  return byArea(way, runs).find(({ job }) => job.at.areaM2 === areaM2)!;
}

function easiestOf(possible: readonly LeastMass[]): LeastMass {
  return possible.reduce((best, row) => (row.work!.days[1] < best.work!.days[1] ? row : best));
}

/** Vents and shade in place of mass: the first that is enough, and the best. */
function insteadOf(
  { criterion }: Basis,
  runs: Runs,
): { readonly enough: Run | undefined; readonly best: Run } {
  const tried = ['vents', 'shade', 'both'].map((id) => runs.get(`instead: ${id}`)!);
  return {
    enough: tried.find(({ figures: of }) => of.tooHotHours <= criterion.hours),
    best: tried.reduce((one, run) => (run.figures.tooHotHours < one.figures.tooHotHours ? run : one)),
  };
}

/** "72 m² of adobe, 12 cm thick". */
function builtInWords({ way, areaM2 }: LeastMass, words: Words): string {
  return `${words.area(areaM2!)} of ${materialById(way.material).name.toLowerCase()}, ${words.thickness(way.thicknessM)} thick`;
}

function otherwiseInWords(row: LeastMass, lightest: LeastMass, smallest: LeastMass, words: Words): string {
  const { weightKg, volumeM3 } = row.work!;
  const best =
    row === lightest && row === smallest
      ? 'Lightest and smallest'
      : row === lightest
        ? 'Lightest'
        : 'Smallest';
  return `${best} is ${builtInWords(row, words)}: ${words.weight(weightKg)}, ${words.volume(volumeM3)}.`;
}

/**
 * Enough without: what mass would still do for warmth and swing, and whether its heat alone is worth its work. What it does to
 * damp does not call for it: damp is cured where the water starts.
 */
function noneIsNeeded(basis: Basis, runs: Runs, figures: Sentence['figures']): Sentence {
  const { criterion, words } = basis;
  const weights = withoutDamp(basis.weights);
  const bare = runs.get('none')!.figures;
  const tried = ALL_WAYS.flatMap((way) =>
    byArea(way, runs).map((run) => {
      const work = buildingWork(way, Number(run.job.at.areaM2));
      return { run, work, weighs: burden(run.figures, work.days[1], weights) };
    }),
  ).filter(({ run }) => run.job.id !== 'none');
  const best = tried.reduce((one, other) => (other.weighs < one.weighs ? other : one));
  // Of a house without heat the hours too cold stand for it.
  const isHeated = basis.design.heating.capacityKW > 0;
  const wanting = ({ heatingKWh, underheatedHours }: Figures) => (isHeated ? heatingKWh : underheatedHours);
  const saved = wanting(bare) - wanting(best.run.figures);
  const pays = best.weighs < burden(bare, 0, weights) && saved >= WORTH_SHARE * wanting(bare);
  const told = pays
    ? best.run
    : mosts(ALL_WAYS, runs).reduce((one, other) =>
        wanting(other.figures) < wanting(one.figures) ? other : one,
      );
  const { work } = tried.find(({ run }) => run === told)!;
  const { heatingKWh, swingK, sunspaceColdestC } = told.figures;
  const sunspace =
    sunspaceColdestC === null
      ? ''
      : ` The coldest hour of the sunspace goes from ${words.temperature(bare.sunspaceColdestC!, 1)} to ${words.temperature(sunspaceColdestC, 1)}.`;
  const worth = pays
    ? 'For its warmth some is worth its work:'
    : `Nor does any ${isHeated ? 'save heat' : 'bring warmth'} worth its work. The best is`;
  const warmth = isHeated
    ? `back-up heat goes from ${words.energy(bare.heatingKWh)} to ${words.energy(heatingKWh)}`
    : `the rooms are too cold for ${hoursInWords(told.figures.underheatedHours)} instead of ${countInWords(bare.underheatedHours)}`;
  const brings =
    wanting(told.figures) > wanting(bare) - 0.5
      ? `Nor does any that we tried ${isHeated ? 'save heat' : 'make it warmer'}.`
      : `${worth} ${told.job.label}, ${dayRangeInWords(work.days)} of one person. ` +
        `With it ${warmth}, and the swing of a day from ${words.degrees(bare.swingK)} to ${words.degrees(swingK)}.${sunspace}`;
  return {
    figures: {
      ...figures,
      bareHeatingKWh: bare.heatingKWh,
      massHeatingKWh: heatingKWh,
      bareSwingK: bare.swingK,
      massSwingK: swingK,
    },
    text:
      `This glass asks for no extra mass against heat: without any, the rooms are ${hotInWords(basis)} for ${hoursInWords(bare.tooHotHours)} a year, and ${countInWords(criterion.hours)} are allowed. ` +
      brings,
  };
}

function noMassIsEnough(basis: Basis, runs: Runs, bare: number, figures: Sentence['figures']): Sentence {
  const { criterion } = basis;
  const most = mosts(ALL_WAYS, runs).reduce((one, other) =>
    other.figures.tooHotHours < one.figures.tooHotHours ? other : one,
  );
  const { enough, best } = insteadOf(basis, runs);
  const instead =
    enough === undefined
      ? `Vents and shade do not do it either: the best of them leaves ${countInWords(best.figures.tooHotHours)}. ${geometryOf(basis.design).glassM2 > 0 ? 'Take away glass.' : 'Look to the other windows, and to what gives heat within.'}`
      : `${insteadInWords(enough)} would do it, with ${countInWords(enough.figures.tooHotHours)}.`;
  return {
    figures: {
      ...figures,
      mostMassHours: most.figures.tooHotHours,
      insteadHours: (enough ?? best).figures.tooHotHours,
    },
    text: `No mass that has room in the house is enough for this glass. Without any, the rooms are ${hotInWords(basis)} for ${hoursInWords(bare)} a year; with ${most.job.label}, still for ${countInWords(most.figures.tooHotHours)}. Only ${countInWords(criterion.hours)} are allowed. ${instead}`,
  };
}

function insteadInWords({ job }: Run): string {
  if (job.at.instead === 'both') return 'Twice the vents with an automatic opener, and a seasonal shade,';
  return capitalised(job.label);
}
