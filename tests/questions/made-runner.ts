// A runner whose outcomes come from a formula of the design, so that searches, rankings and answers are tested
// against numbers known beforehand, without a year being run. The formula is the test's own.
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { geometryOf } from '../../src/design/geometry.ts';
import { criterionOf } from '../../src/design/too-hot-criterion.ts';
import type { FuelOutcome } from '../../src/outcomes/fuel.ts';
import type { Outcome, ZoneOutcome } from '../../src/outcomes/outcome.ts';
import { basisOf } from '../../src/questions/basis.ts';
import type { ColdSpell } from '../../src/questions/cold-spell.ts';
import type { Basis } from '../../src/questions/question.ts';
import type { RunJob, RunResult } from '../../src/questions/run-job.ts';
import type { Runner } from '../../src/questions/runner.ts';

export interface MadeFigures {
  readonly overheatedHours: number;
  readonly heatingKWh?: number;
  readonly humidHours?: number;
  /** heat it wants, in times of what heaters are made for here */
  readonly heatTimes?: number;
  readonly underheatedHours?: number;
}

export type Formula = (design: Design, job: RunJob) => MadeFigures;

const WOOD: FuelOutcome = {
  fuel: 'wood',
  fuelKWh: 1250,
  lostKWh: 275,
  kg: 310,
  litres: null,
  therms: null,
  stackedM3: 0.7,
  cords: 0.2,
  loads: 240,
  loadsOnBusiestDay: 9,
  daysWithFire: 97,
};
const COLD_SPELL: ColdSpell = {
  fromRow: 744,
  outdoorMeanC: -19.2,
  outdoorLowestC: -25,
  daysFollowed: 14,
  noHeat: { warmHours: 6, unfrozenHours: 109, nextMorningC: 12.6, lowestC: 3.2 },
  noPower: { warmHours: null, unfrozenHours: null, nextMorningC: 17.1, lowestC: 16.7 },
};

/** A formula in which glass, mass, tilt, vents and shade all have their say. */
export const plausible: Formula = (design, job) => {
  const { glassM2 } = geometryOf(design);
  const { mass, glass, vents, sunspace } = design;
  const lean = 1 + (90 - glass.tiltDeg) / 40;
  const hands = { automatic: 0.9, attentive: 1, away: 1.5, forgetful: 2, never: 6 }[vents.habit];
  const warmer = design.hotter?.summerK ?? job.change?.shiftK?.[6] ?? 0;
  const load = 14 * glassM2 * lean * hands * (1 - 0.7 * glass.summerShade) * (1 - 0.05 * glass.overhangM);
  const stored = 1 + (mass.areaM2 * Math.min(mass.thicknessM, 0.15)) / 10;
  return {
    overheatedHours: Math.round(load / stored + 60 * warmer),
    heatingKWh: 3000 - 50 * glassM2 + 20 * warmer + (sunspace.join === 'none' ? 300 : 0),
    humidHours: Math.round(400 + 300 * design.plants.bedM2 - 10 * glassM2),
  };
};

export interface MadeRunner extends Runner {
  /** every job that was run, in order */
  readonly ran: RunJob[];
}

/** Jobs of the question itself, without those that try it over what nobody can know. */
export function mainJobs({ ran }: MadeRunner): readonly RunJob[] {
  return ran.filter(({ at }) => at.doubt === undefined);
}

export function madeRunner(formula: Formula): MadeRunner {
  return runnerOf((job) => madeResult(job, formula));
}

/** A runner that notes its jobs and gives what is said for each. */
export function runnerOf(resultOf: (job: RunJob) => RunResult): MadeRunner {
  const ran: RunJob[] = [];
  return {
    ran,
    run: async (jobs, { onResult } = {}) =>
      jobs.map((job) => {
        ran.push(job);
        const result = resultOf(job);
        onResult?.(result);
        return result;
      }),
  };
}

export function madeResult(job: RunJob, formula: Formula): RunResult {
  const {
    overheatedHours,
    heatingKWh = 1000,
    humidHours = 100,
    heatTimes = 1,
    underheatedHours = 3,
  } = formula(job.design, job);
  const criterion = criterionOf(job.design, 40);
  const months = (value: number) => new Array<number>(12).fill(value);
  const zone: ZoneOutcome = {
    meanAirC: 21,
    maxAirC: 29,
    minAirC: 16,
    maxOperativeC: 28.4,
    minOperativeC: 16.2,
    overheatedHours,
    overheatedDegreeHours: overheatedHours,
    overheatLimitC: job.design.comfort.overheatC,
    adaptiveOverheatedHours: 0,
    tooHot: {
      criterion: criterion.id,
      hours: overheatedHours,
      limitHours: criterion.hours,
      ...(criterion.aboveC !== null && { limitC: criterion.aboveC }),
      lowestLimitC: criterion.aboveC ?? 25.1,
      highestLimitC: criterion.aboveC ?? 29,
    },
    underheatedHours,
    underheatLimitC: 16,
    meanDailySwingK: 3,
    meanRelativeHumidity: 0.5,
    humidHours,
    humidLimit: 0.7,
    mouldIndexMax: 0.4,
    condensationKg: 1,
    moistureLoadKgPerDay: 8,
    moistureByCause: [],
    hottestHour: 5000,
    dampSpots: [],
    freshAir: {
      meanAirChanges: 0.5,
      belowVentilationHours: 0,
      ventilationFloorAch: 0.35,
      staleAirHours: 0,
      maxCo2Ppm: 800,
    },
    feltHeat: { limitC: 32.2, hours: 0, maxC: 28, maxHour: 5000 },
    hotNightHours: 0,
    drainedKg: 0,
    frostHours: 0,
    coldestHour: 100,
  };
  const outcome: Outcome = {
    daystone: '0',
    design: job.design.name,
    site: { name: 'Made-up meadow', latitudeDeg: 40, longitudeDeg: -105, elevationM: 1600 },
    equatorGlass: {
      areaM2: geometryOf(job.design).glassM2,
      shareOfWall: 0,
      shareOfFloor: 0,
      tiltDeg: job.design.glass.tiltDeg,
      incidentKWh: 0,
      transmittedKWh: 0,
    },
    mass: { volumeM3: 1, heatCapacityKWhPerK: 1, kgPerM2Glass: null },
    zones: job.design.sunspace.join === 'none' ? { house: zone } : { house: zone, sunspace: zone },
    heating: { energyKWh: heatingKWh, peakW: 4000, shortHours: shortHoursOf(job.design, heatTimes) },
    ...(job.design.heating.source?.kind === 'stove' && { fuel: WOOD }),
    cooling: { energyKWh: 0, peakW: 0 },
    vents: {
      moves: 300,
      movesPerDayInBusiestMonth: 2.5,
      movesOnBusiestDay: 4,
      neglectedShare: 0.1,
      airings: 0,
      heatedWhileOpenHours: 0,
      heatedWhileOpenKWh: 0,
    },
    ventilation: { fansKWh: 0, frostHeaterKWh: 0, recoveredKWh: 0 },
    books: { heatResidual: 0, waterResidual: 0 },
    findings: [],
  };
  // Sun and loss as the area has them; without glass there is none of either.
  const { glassM2 } = geometryOf(job.design);
  const frontGlass = {
    incidentKWh: months(100 * glassM2),
    transmittedKWh: months(60 * glassM2),
    nightLossKWh: months(20 * glassM2),
  };
  return {
    id: job.id,
    outcome,
    frontGlass: job.frontGlass ? frontGlass : null,
    ...(job.coldSpell && { coldSpell: COLD_SPELL }),
  };
}

/** The bigger a stove the warmer; a thermostat does, and without heat none is asked for. */
function shortHoursOf({ heating: { capacityKW, source } }: Design, heatTimes: number): number | null {
  if (capacityKW <= 0) return null;
  return source?.kind === 'stove' ? Math.round(1000 / (1 + (capacityKW / heatTimes) ** 2)) : 0;
}

export function madeBasis(design: Design = EXAMPLES[2]!.design, changes: Partial<Basis> = {}): Basis {
  const site = {
    name: 'Made-up meadow',
    latitudeDeg: 40,
    longitudeDeg: -105,
    elevationM: 1600,
    utcOffsetH: -7,
  };
  return basisOf(design, changes.site ?? site, changes);
}
