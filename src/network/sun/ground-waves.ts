// Temperature of the ground beyond floors and bermed walls, by its yearly wave. A laid-out model in; the boundary
// temperature of each end that meets the ground, written into the stepper each hour, out.

import { cos } from '../../physics/elementary.ts';
import type { Layout } from '../layout/layout.ts';
import { endA } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';

/** The yearly wave of the ground under an end. */
interface GroundWave {
  readonly end: number;
  readonly meanC: number;
  readonly amplitudeK: number;
  readonly coldestDay: number;
}

/** Ground temperatures written onto a stepper; load() before use. */
export function createGroundWaves(stepper: Stepper) {
  let waves: readonly GroundWave[] = [];

  function load(layout: Layout): void {
    waves = layout.elements.flatMap(({ element: { a }, chain }) =>
      a.kind === 'ground' ? [{ end: endA(chain), ...a.wave }] : [],
    );
  }

  function renew(hour: number): void {
    const { endBoundaryC } = stepper;
    for (let i = 0; i < waves.length; i++) {
      const { end, meanC, amplitudeK, coldestDay } = waves[i]!;
      const angle = (2 * Math.PI * (hour / 24 - coldestDay)) / 365;
      endBoundaryC[end] = meanC - amplitudeK * cos(angle);
    }
  }

  return { load, renew };
}
