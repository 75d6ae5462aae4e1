// The least mass of each way to build that keeps to the limit, in cubic metres, tonnes, pieces and days, and the
// sentence that sums it up: enough already, so much more, or no mass is enough and what would be.

import { materialById } from '../design/materials.ts';
import { criterionInWords } from '../findings/hot-words.ts';
import { type BuildingWork, buildingWork, WAYS_TO_BUILD, type WayToBuild } from './building-work.ts';
import { hotInWords } from './criterion.ts';
import { bracketFor, mostArea } from './mass-runs.ts';
import type { Basis, Run, Runs, Sentence, Table } from './question.ts';
import { capitalised, countInWords, hoursInWords } from './words.ts';

interface LeastMass {
  readonly way: WayToBuild;
  /** face area [m²]; null when the most tried is not enough */
  readonly areaM2: number | null;
  readonly work: BuildingWork | null;
}

function leastMass(basis: Basis, runs: Runs): LeastMass[] {
  return WAYS_TO_BUILD.map((way) => {
    const bracket = bracketFor(basis, way, runs);
    const areaM2 = bracket.passesAtStart ? 0 : bracket.after;
    return { way, areaM2, work: areaM2 === null ? null : buildingWork(way, areaM2) };
  });
}

/** The least mass by material, and what it takes. */
export function leastMassTable(basis: Basis, runs: Runs): Table {
  const column = (label: string, unit: string, digits = 0) => ({ label, unit, digits });
  return {
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
    ...Object.fromEntries(rows.map(({ way, areaM2 }) => [`${way.material}M2`, areaM2])),
  };
  if (bare <= criterion.hours) {
    return {
      figures,
      text: `This glass asks for no extra mass. Without any, the rooms are ${hotInWords(basis)} for ${hoursInWords(bare)} a year, and ${countInWords(criterion.hours)} are allowed.`,
    };
  }
  if (possible.length === 0) return noMassIsEnough(basis, runs, bare, figures);
  const easiest = possible.reduce((best, row) => (row.work!.days[1] < best.work!.days[1] ? row : best));
  const earth = possible.find(({ way }) => way.material === 'rammed-earth');
  const chosen = earth ?? easiest;
  const { way, areaM2, work } = chosen;
  const days = `${work!.days[0].toFixed(0)} to ${work!.days[1].toFixed(0)} days of one person's work`;
  return {
    figures: {
      ...figures,
      areaM2,
      volumeM3: work!.volumeM3,
      weightKg: work!.weightKg,
      daysLow: work!.days[0],
      daysHigh: work!.days[1],
    },
    text:
      `Without extra mass this glass gives ${hoursInWords(bare)} a year ${hotInWords(basis)}; ${countInWords(criterion.hours)} are allowed. ` +
      `The least that keeps to it is ${words.area(areaM2!)} of ${materialById(way.material).name.toLowerCase()}, ${words.thickness(way.thicknessM)} thick. ` +
      `That is ${words.volume(work!.volumeM3)} or ${words.weight(work!.weightKg)}, and ${days} (common practice, no source).`,
  };
}

function noMassIsEnough(basis: Basis, runs: Runs, bare: number, figures: Sentence['figures']): Sentence {
  const { criterion } = basis;
  const most = [...runs.values()]
    .filter(({ job }) => job.at.areaM2 === mostArea(basis))
    .reduce<Run | null>(
      (best, run) => (best === null || run.figures.tooHotHours < best.figures.tooHotHours ? run : best),
      null,
    )!;
  const tried = ['vents', 'shade', 'both'].map((id) => runs.get(`instead: ${id}`)!);
  const enough = tried.find(({ figures: of }) => of.tooHotHours <= criterion.hours);
  const best = tried.reduce((one, run) => (run.figures.tooHotHours < one.figures.tooHotHours ? run : one));
  const instead =
    enough === undefined
      ? `Vents and shade do not do it either: the best of them leaves ${countInWords(best.figures.tooHotHours)}. Take away glass.`
      : `${insteadInWords(enough)} would do it, with ${countInWords(enough.figures.tooHotHours)}.`;
  return {
    figures: {
      ...figures,
      mostMassHours: most.figures.tooHotHours,
      insteadHours: (enough ?? best).figures.tooHotHours,
    },
    text: `No mass is enough for this glass. Without any, the rooms are ${hotInWords(basis)} for ${hoursInWords(bare)} a year; with ${most.job.label}, still for ${countInWords(most.figures.tooHotHours)}. Only ${countInWords(criterion.hours)} are allowed. ${instead}`,
  };
}

function insteadInWords({ job }: Run): string {
  if (job.at.instead === 'both') return 'Twice the vents with an automatic opener, and a seasonal shade,';
  return capitalised(job.label);
}
