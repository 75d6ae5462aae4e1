// What a number's field and slider allow, in the units shown. In: a path, the design, the unit system. Out: unit,
// hard limits, the slider's narrower range (what designers plausibly choose, widened to hold the present value) and
// a step that is round in those units.

import type { Design } from '../../design/design.ts';
import { numberAt, valueAt } from '../../design/design-path.ts';
import { geometryOf } from '../../design/geometry.ts';
import { limitOf } from '../../design/limits.ts';
import {
  isOnTape,
  quantityOfLimit,
  type ShownQuantity,
  toShown,
  type UnitSystem,
  unitOf,
} from '../parts/display-unit.ts';

export interface NumberRange {
  readonly path: string;
  readonly label: string;
  readonly quantity: ShownQuantity;
  readonly sign: string;
  readonly words: string;
  readonly digits: number;
  /** SI */
  readonly value: number;
  readonly min: number;
  readonly max: number;
  /** shown units */
  readonly sliderMin: number;
  readonly sliderMax: number;
  readonly step: number;
  /** a tenth of a step, or an inch; one where there is nothing between whole numbers */
  readonly fineStep: number;
  /** why no more is allowed, where that follows from another number; '' elsewhere */
  readonly mostBecause: string;
  /** nothing between whole numbers is allowed */
  readonly whole: boolean;
}

/** Steps offered in shown units, smallest first. */
const ROUND_STEPS = [0.01, 0.05, 0.1, 0.25, 0.5, 1, 5, 10, 25, 50, 100];
/** The same in feet: what is whole inches. */
const INCH = 1 / 12;
const TAPE_STEPS = [INCH, 0.25, 0.5, 1, 5, 10];

const ALONG_WALL = 'No longer than the wall it leans on.';
const IN_FRONT = 'No more fits its front.';

/** How a number is asked for. */
export function numberRange(path: string, design: Design, system: UnitSystem): NumberRange {
  const limit = limitOf(path);
  const value = (valueAt(design, path) as number | undefined) ?? limit.absent ?? numberAt(design, path);
  const glass = path === 'glass.value' ? glassRange(design) : null;
  const quantity = glass?.quantity ?? quantityOfLimit(limit);
  const min = limit.min;
  const { join } = design.sunspace;
  const isAlongWall = path === 'sunspace.lengthM' && join !== 'none';
  const max = isAlongWall ? Math.min(limit.max, design.house.equatorWallM) : (glass?.max ?? limit.max);
  const [low, high] = glass?.plausible ?? limit.plausible;
  const unit = unitOf(quantity, system);
  const step = limit.whole
    ? 1
    : roundStep(
        Math.abs(limit.step * (glass ? glass.stepFactor : 1) * unit.factor),
        isOnTape(quantity, system) ? TAPE_STEPS : ROUND_STEPS,
      );
  const snap = (si: number, round: (x: number) => number) =>
    round(toShown(si, quantity, system) / step) * step;
  return {
    path,
    label: limit.label,
    quantity,
    sign: unit.sign,
    words: unit.words,
    digits: digitsFor(step),
    value,
    min,
    max,
    sliderMin: Math.max(toShown(min, quantity, system), snap(Math.min(low, value), Math.floor)),
    sliderMax: Math.min(toShown(max, quantity, system), snap(Math.max(high, value), Math.ceil)),
    step,
    fineStep: limit.whole ? 1 : isOnTape(quantity, system) ? INCH : step / 10,
    mostBecause: isAlongWall ? ALONG_WALL : glass ? IN_FRONT : '',
    whole: limit.whole === true,
  };
}

/** The glass is an area or a share; its limits follow from the front it has to fit. */
function glassRange(design: Design) {
  const { largestGlassM2, equatorWallM2 } = geometryOf(design);
  const { basis } = design.glass;
  if (basis === 'area') {
    const max = Math.floor(largestGlassM2 * 100) / 100;
    return { quantity: 'area' as const, max, plausible: [0, max] as const, stepFactor: 10 };
  }
  const per = basis === 'share-of-wall' ? equatorWallM2 : design.house.floorAreaM2;
  const max = Math.min(1, Math.floor((largestGlassM2 / per) * 1000) / 1000);
  return { quantity: 'share' as const, max, plausible: [0, max] as const, stepFactor: 0.5 };
}

function roundStep(step: number, steps: readonly number[]): number {
  return steps.reduce((best, candidate) =>
    Math.abs(Math.log(candidate / step)) < Math.abs(Math.log(best / step)) ? candidate : best,
  );
}

function digitsFor(step: number): number {
  return step >= 1 ? 0 : step * 10 >= 1 && Math.abs(step * 10 - Math.round(step * 10)) < 1e-9 ? 1 : 2;
}
