import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { simulate } from '../../src/network/simulate.ts';
import { bundledClimate, bundledYear } from '../weather/bundled-climates.ts';

const { site } = bundledYear('denver');
const climate = bundledClimate('denver');

test.each([0, 1e-9, 1e-4, 1e-2, 0.05])(
  '%d m² of glass under an overhang runs, and lets in no more light than falls on it',
  (value) => {
    // Where the glass comes to nothing in every house, else in the one whose years take least.
    for (const { design } of EXAMPLES.filter(({ id }) => value === 0 || value === 1e-4 || id === 'modest')) {
      const tiny = { ...design, glass: { ...design.glass, basis: 'area' as const, value, overhangM: 0.5 } };
      const year = simulate(modelOf(tiny, site, climate.ground), climate, { warmUpDays: 0 });
      expect(year.zones[0]!.airC.every(Number.isFinite)).toBe(true);
      for (const pane of year.panes.filter(({ id }) => id.startsWith('front'))) {
        expect(pane.transmittedW.every((watt, hour) => watt <= pane.incidentW[hour]! + 1e-9)).toBe(true);
      }
    }
  },
);
