// Upright or leaning? The same area of glass at tilts from upright to 30°, each with and without an overhang: sun
// let in by month, loss of dark hours, hours too hot, heat, humid hours. What is advised is what weighs less, as everywhere
// (weights.ts), the leaks and the safety glass of a slope counted in. The cautions about leaks, overhead glass
// and snow stand beside the figures: model building codes call glass sloped when it is more than 15° from upright.

import { geometryOf } from '../design/geometry.ts';
import { MONTH_NAMES } from '../outcomes/calendar.ts';
import { highSunMonths, lowSunMonths, sumOver } from '../weather/seasons.ts';
import { hotInWords } from './criterion.ts';
import type { Figures } from './figures.ts';
import { houseOfRun } from './in-doubt.ts';
import type { AnswerBody, Basis, Chart, Question, Run, Runs, Sentence, Table } from './question.ts';
import type { RunJob } from './run-job.ts';
import { advisedTable, runAt } from './run-table.ts';
import { varied, withGlassAsArea, withGlassM2 } from './variation.ts';
import { areAllDamp, burden, weightsBetween, weightsInWords } from './weights.ts';
import { countInWords, hoursInWords, percentInWords } from './words.ts';

const TILTS = [90, 45, 75, 60, 30] as const;
/** What the leaks and the safety glass of a slope weigh [hours], as much as 500 kWh of heat a year. House rule. */
const SLOPE_HOURS = 50;
/** Overhang tried where none is drawn [m]. */
const USUAL_OVERHANG_M = 0.6;
const SLOPED_BELOW_DEG = 75;

export const uprightOrLeaning: Question = {
  id: 'upright-or-leaning',
  title: 'Upright or leaning?',
  asks: 'Should the same glass stand upright or lean, and what can an overhang do for it?',
  plan: (basis) =>
    tilts(basis).flatMap((tiltDeg) => [jobAt(basis, tiltDeg, true), jobAt(basis, tiltDeg, false)]),
  doubt: (basis, runs) => {
    if (glassM2(basis) === 0) return null;
    const { upright, leaning, leanDeg } = comparedRuns(basis, runs);
    const leans = isLeaningBetter(basis, upright.figures, leaning.figures);
    const houses = [houseOfRun('upright', upright), houseOfRun('leaning', leaning)];
    return {
      houses: leans ? houses.reverse() : houses,
      advice: (figuresOf) =>
        isLeaningBetter(basis, figuresOf('upright'), figuresOf('leaning'))
          ? `lean it to ${leanDeg}°`
          : 'stand it upright',
      subject: leans ? 'With it leaning the house' : 'With it upright the house',
    };
  },
  answer,
};

/** Upright and the usual leans, and the drawn one where it leans otherwise. */
function tilts({ design }: Basis): readonly number[] {
  const { tiltDeg } = design.glass;
  return (TILTS as readonly number[]).includes(tiltDeg) ? TILTS : [...TILTS, tiltDeg];
}

function overhangM({ design }: Basis): number {
  return design.glass.overhangM > 0 ? design.glass.overhangM : USUAL_OVERHANG_M;
}

/** The same area at every tilt: as drawn, or what the front holds upright, where it holds least [m²]. */
function glassM2({ design }: Basis): number {
  const { largestGlassM2 } = geometryOf(varied(withGlassAsArea(design), { 'glass.tiltDeg': 90 }));
  return Math.min(geometryOf(design).glassM2, largestGlassM2);
}

function idOf(tiltDeg: number, shaded: boolean): string {
  return `${tiltDeg}°, ${shaded ? 'overhang' : 'no overhang'}`;
}

function jobAt(basis: Basis, tiltDeg: number, shaded: boolean): RunJob {
  const { design, words } = basis;
  const tilted = varied(withGlassAsArea(design), {
    'glass.tiltDeg': tiltDeg,
    'glass.overhangM': shaded ? overhangM(basis) : 0,
  });
  return {
    id: idOf(tiltDeg, shaded),
    label: `${tiltDeg}°, ${shaded ? `overhang of ${words.length(overhangM(basis))}` : 'no overhang'}`,
    design: withGlassM2(tilted, glassM2(basis)),
    frontGlass: true,
    at: { tiltDeg, overhang: shaded ? 'with' : 'without' },
  };
}

function answer(basis: Basis, runs: Runs, complete: boolean): AnswerBody {
  const { words, design } = basis;
  const all = [...runs.values()].sort((one, other) => tiltOf(other) - tiltOf(one));
  const held = glassM2(basis);
  const drawn = geometryOf(design).glassM2;
  const chart: Chart = {
    id: 'tilt',
    title: 'What leaning gains and what it costs',
    x: { label: 'tilt of the glass, 90 upright', unit: '°' },
    y: ['tooHotHours', 'heatingKWh', 'humidHours', 'coldestC'],
    curves: ['with', 'without'].map((overhang) => ({
      id: overhang,
      label: overhang === 'with' ? `overhang of ${words.length(overhangM(basis))}` : 'no overhang',
      points: all
        .filter(({ job }) => job.at.overhang === overhang)
        .reverse()
        .map((run) => ({ x: tiltOf(run), run: run.job.id, figures: run.figures })),
    })),
    marks: [
      {
        id: 'drawn',
        kind: 'drawn',
        x: design.glass.tiltDeg,
        label: 'as drawn',
        curve: null,
        source: 'the design',
      },
    ],
  };
  return {
    finding: complete ? finding(basis, runs) : null,
    charts: [chart],
    tables: [
      advisedTable(
        complete && held > 0 ? bestOf(basis, runs).job.id : null,
        'by-tilt',
        `${words.area(held)} of glass at each tilt`,
        'tilt',
        ['tooHotHours', 'heatingKWh', 'coldestC', 'warmestC', 'humidHours'],
        all,
      ),
      sunTable(basis, all),
      monthTable(all),
    ],
    map: null,
    notes: [
      ...(drawn > held + 0.05
        ? [
            `The front holds ${words.area(held)} upright, so that much is compared, not the ${words.area(drawn)} drawn.`,
          ]
        : []),
      `The house that weighs less is advised, and a slope weighs ${SLOPE_HOURS} hours for its leaks and its safety glass; where both are too damp, damp and mould are left out. ${weightsInWords(basis.weights)}`,
      'Sun let in is after overhang, frames and dirt; the loss of dark hours is what the rooms hand to the glass while the sun is down.',
      'Leaning glass has a name for leaking: have it built as a drained, capped glazing system, not as windows laid on rafters.',
      'Glass more than 15° from upright counts as sloped in model building codes: laminated or otherwise safe glass over people, snow and sliding snow reckoned with, and the local code decides.',
    ],
    proposal: null,
  };
}

function tiltOf({ job }: Run): number {
  return Number(job.at.tiltDeg);
}

/** Sun of the low and the high months, and night loss, by tilt; and what the overhang takes away of each. */
function sunTable({ site }: Basis, all: readonly Run[]): Table {
  const low = lowSunMonths(site.latitudeDeg);
  const high = highSunMonths(site.latitudeDeg);
  const kWh = (label: string) => ({ label, unit: 'kWh', digits: 0 });
  return {
    id: 'sun-by-tilt',
    title: 'Sun let in by the glass and heat lost through it at night',
    columns: [
      { label: 'tilt', unit: '', digits: 0 },
      kWh(`sun ${monthSpan(low)}`),
      kWh(`sun ${monthSpan(high)}`),
      kWh('sun of the year'),
      kWh(`night loss ${monthSpan(low)}`),
      kWh('night loss of the year'),
    ],
    rows: all.map(({ job, result }) => {
      const { transmittedKWh, nightLossKWh } = result.frontGlass!;
      return [
        job.label,
        sumOver(transmittedKWh, low),
        sumOver(transmittedKWh, high),
        total(transmittedKWh),
        sumOver(nightLossKWh, low),
        total(nightLossKWh),
      ];
    }),
  };
}

function monthTable(all: readonly Run[]): Table {
  return {
    id: 'sun-by-month',
    title: 'Sun let in by month',
    columns: [
      { label: 'tilt', unit: '', digits: 0 },
      ...MONTH_NAMES.map((name) => ({ label: name.slice(0, 3), unit: 'kWh', digits: 0 })),
    ],
    rows: all.map(({ job, result }) => [job.label, ...result.frontGlass!.transmittedKWh]),
  };
}

function monthSpan(months: readonly number[]): string {
  return `${MONTH_NAMES[months[0]!]} to ${MONTH_NAMES[months.at(-1)!]}`;
}

function total(monthly: readonly number[]): number {
  return monthly.reduce((sum, value) => sum + value, 0);
}

function finding(basis: Basis, runs: Runs): Sentence {
  const { words, criterion, site } = basis;
  const { upright, leaning, leanDeg } = comparedRuns(basis, runs);
  const shaded = [runAt(runs, idOf(90, true)), runAt(runs, idOf(leanDeg, true))] as const;
  const bare = [runAt(runs, idOf(90, false)), runAt(runs, idOf(leanDeg, false))] as const;
  const low = lowSunMonths(site.latitudeDeg);
  const high = highSunMonths(site.latitudeDeg);
  const sun = (run: Run, months: readonly number[]) => sumOver(run.result.frontGlass!.transmittedKWh, months);
  const loss = (run: Run) => total(run.result.frontGlass!.nightLossKWh);
  const figures = {
    glassM2: glassM2(basis),
    leanDeg,
    uprightOverheatedHours: upright.figures.tooHotHours,
    leaningOverheatedHours: leaning.figures.tooHotHours,
    uprightHeatingKWh: upright.figures.heatingKWh,
    leaningHeatingKWh: leaning.figures.heatingKWh,
    uprightHumidHours: upright.figures.humidHours,
    leaningHumidHours: leaning.figures.humidHours,
    winterSunTimes: ratio(sun(leaning, low), sun(upright, low)),
    summerSunTimes: ratio(sun(leaning, high), sun(upright, high)),
    nightLossTimes: ratio(loss(leaning), loss(upright)),
    overhangLeavesUpright: ratio(sun(shaded[0], high), sun(bare[0], high)),
    overhangLeavesLeaning: ratio(sun(shaded[1], high), sun(bare[1], high)),
    limitC: criterion.aboveC,
  };
  if (figures.glassM2 === 0) {
    return {
      figures,
      text: 'There is no equator-facing glass, so there is nothing to lean. Draw some first.',
    };
  }
  const { winterSunTimes, summerSunTimes, nightLossTimes } = figures;
  return {
    figures,
    text:
      `${adviceInWords(basis, upright, leaning, leanDeg)} ` +
      `Leaned, the same ${words.area(figures.glassM2)} takes in ${moreInWords(winterSunTimes, 'sun')} in the dark months and ${summerSunTimes === null ? 'none' : `${summerSunTimes.toFixed(1)} times as much`} in the bright ones. ` +
      `It loses ${moreInWords(nightLossTimes, 'heat')} at night.` +
      overhangInWords(figures.overhangLeavesUpright, figures.overhangLeavesLeaning),
  };
}

/** The same house in both, upright and leaning. */
function comparedRuns({ design }: Basis, runs: Runs): { upright: Run; leaning: Run; leanDeg: number } {
  // The tilt to set beside upright: the drawn one where it leans, else the usual dream of 60°.
  const leanDeg = design.glass.tiltDeg < SLOPED_BELOW_DEG ? design.glass.tiltDeg : 60;
  // An overhang where one is drawn, and none where none is.
  const hasOverhang = design.glass.overhangM > 0;
  return {
    upright: runAt(runs, idOf(90, hasOverhang)),
    leaning: runAt(runs, idOf(leanDeg, hasOverhang)),
    leanDeg,
  };
}

/** What leaning takes off the weight of the house, its leaks and safety glass not counted [hours]. */
function leaningSaves(basis: Basis, upright: Figures, leaning: Figures): number {
  const weights = weightsBetween([upright, leaning], basis.weights);
  return burden(upright, 0, weights) - burden(leaning, 0, weights);
}

/** Upright or leaning, whichever is advised. */
function bestOf(basis: Basis, runs: Runs): Run {
  const { upright, leaning } = comparedRuns(basis, runs);
  return isLeaningBetter(basis, upright.figures, leaning.figures) ? leaning : upright;
}

function isLeaningBetter(basis: Basis, upright: Figures, leaning: Figures): boolean {
  return leaningSaves(basis, upright, leaning) > SLOPE_HOURS;
}

/** What to do, and what it costs: hours too hot, damp, heat, and the leaks of a slope. */
function adviceInWords(basis: Basis, upright: Run, leaning: Run, leanDeg: number): string {
  const { words } = basis;
  const best = isLeaningBetter(basis, upright.figures, leaning.figures) ? leaning : upright;
  const other = best === upright ? leaning : upright;
  const advice = best === upright ? 'Stand it upright' : `Lean it to ${leanDeg}°`;
  const { tooHotHours, humidHours, heatingKWh } = best.figures;
  const heat = heatingKWh - other.figures.heatingKWh;
  const price =
    basis.design.heating.capacityKW <= 0
      ? `They are too cold for ${hoursInWords(best.figures.underheatedHours)}${beside(best.figures.underheatedHours, other.figures.underheatedHours)}`
      : Math.round(heat) === 0
        ? 'Back-up heat is the same'
        : heat > 0
          ? `The price is ${words.energy(heat)} more back-up heat a year, ${words.energy(heatingKWh)} in all`
          : `It saves ${words.energy(-heat)} of back-up heat a year, and takes ${words.energy(heatingKWh)}`;
  const slope =
    best === leaning
      ? ' The price is a slope: safety glass, drained bars, leaks and snow.'
      : ' It also spares the leaks and the safety glass of a slope.';
  // The figures speak for the slope, and the slope itself against it.
  const isSlopeDecisive = best === upright && leaningSaves(basis, upright.figures, leaning.figures) > 0;
  const reason = isSlopeDecisive
    ? 'Leaning gains too little to pay for the leaks and the safety glass of a slope. '
    : '';
  const damp = areAllDamp([best.figures, other.figures])
    ? ' Both are too damp, and damp is cured where the water starts, not by the tilt.'
    : '';
  return (
    `${advice}: the rooms are then ${hotInWords(basis)} for ${hoursInWords(tooHotHours)} a year${beside(tooHotHours, other.figures.tooHotHours)}, and damp for ${countInWords(humidHours)}${beside(humidHours, other.figures.humidHours)}. ` +
    `${reason}${price}.${damp}${isSlopeDecisive ? '' : slope}`
  );
}

function beside(hours: number, others: number): string {
  const [count, other] = [countInWords(hours), countInWords(others)];
  return count === other ? ' either way' : ` instead of ${other}`;
}

/** Null where there is nothing to compare with: no sun in a polar night, no loss without a night. */
function ratio(one: number, other: number): number | null {
  return other > 0 ? one / other : null;
}

/** "11 % more sun", "3 % less heat", "no sun" where there is none to compare. */
function moreInWords(times: number | null, what: string): string {
  if (times === null) return `no ${what}`;
  return `${percentInWords(Math.abs(times - 1))} ${times < 1 ? 'less' : 'more'} ${what}`;
}

function overhangInWords(leavesUpright: number | null, leavesLeaning: number | null): string {
  if (leavesUpright === null || leavesLeaning === null) return '';
  const only = leavesLeaning > leavesUpright ? 'but only ' : 'and ';
  return ` An overhang keeps ${percentInWords(1 - leavesUpright)} of the summer sun from upright glass, ${only}${percentInWords(1 - leavesLeaning)} from leaning.`;
}
