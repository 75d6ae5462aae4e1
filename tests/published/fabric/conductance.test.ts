// What the fabric cases need no weather for: conductance sums through the network at rest, and the
// glass by angle as the network reads it. Source: ANSI/ASHRAE 140, editions to 2017 for the films and glass of the sums
// (combined films 8.29 inside, 29.3 outside, 21.0 on glass, none under the floor; gap 6.297), tests/data/fabric-tests.json.
import { describe, expect, test } from 'vitest';
import type { Film, GlassSystem, Model } from '../../../src/model/model.ts';
import { simulate } from '../../../src/network/simulate.ts';
import { atCosine, opticsOf } from '../../../src/network/sun/pane-optics.ts';
import { HOURS } from '../../../src/weather/typical-year.ts';
import { madeClimate } from '../../outcomes/made-climate.ts';
import { check } from '../ledger.ts';
import { readJson } from '../reference-table.ts';
import { CASES, CLEAR_PANE, INFILTRATION_W_PER_K } from './cases.ts';
import { type FilmSet, modelOfCase } from './model-of-case.ts';
import { roomDensity } from './runs.ts';

const ALLOWED = {
  /** the data file's own tolerance for sums of rounded parts */
  sum: 0.001,
  /** the data file's own tolerance for the angular table */
  glass: 0.003,
};

/** Convection alone, since the sums lump both; a trace of radiation keeps the radiant node tied to its room. */
const lumped = (convection: number): Film => ({ kind: 'fixed', convection, radiation: 1e-7 });
const INSIDE = lumped(8.29);
const OUTSIDE = lumped(29.3);
const LUMPED: FilmSet = {
  inside: { wall: INSIDE, roof: INSIDE, floor: INSIDE, glass: INSIDE },
  outside: { wall: OUTSIDE, roof: OUTSIDE, floor: lumped(1e6), glass: lumped(21) },
};
const OLD_PANE = { refractiveIndex: 1.526, extinctionPerM: 19.6, thicknessM: 0.003175 };
const OLD_GLASS: GlassSystem = {
  ...clearGlass(OLD_PANE),
  sheetConductivity: 1.06,
  gapM: 0.013,
  gapConductance: 6.297,
};

function clearGlass(pane: typeof CLEAR_PANE | typeof OLD_PANE): GlassSystem {
  const { refractiveIndex, extinctionPerM, thicknessM } = pane;
  return {
    sheets: 2,
    sheetM: thicknessM,
    sheetConductivity: 1,
    gapM: 0.012,
    gas: 'air',
    gapEmissivity: 0.84,
    outsideEmissivity: 0.84,
    insideEmissivity: 0.84,
    optics: { kind: 'clear', refractiveIndex, extinctionPerM },
  };
}

/** A case with the old edition's glass and films, without gains. */
function oldModel(id: string): Model {
  const model = modelOfCase(CASES.find((of) => of.id === id)!, LUMPED);
  return {
    ...model,
    zones: model.zones.map((zone) => ({ ...zone, gains: [] })),
    panes: model.panes.map((pane) => ({ ...pane, glass: OLD_GLASS })),
  };
}

interface Sums {
  readonly [part: string]: number | string | object;
}
const reference = readJson<{ conductance_check_W_per_K: Record<string, Sums> }>(
  'fabric-tests.json',
).conductance_check_W_per_K;

describe.each(['600', '900'])('conductances of %s', (id) => {
  const sums = reference[`case_${id}`]!;
  test('the network at rest, 20 °C inside and 0 °C outside, gives off the sum', () => {
    const density = new Float64Array(HOURS).fill(roomDensity());
    const climate = { ...madeClimate({ dryBulbC: 0, dewPointC: -60 }), airDensity: density };
    const year = simulate(oldModel(id), climate);
    const heating = year.zones[0]!.heatingW.at(-1)!;
    check({
      source: 'ANSI/ASHRAE 140, conductances',
      case: id,
      quantity: 'whole, through the network',
      kind: 'rel',
      reference: sums.total_with_windows as number,
      ours: heating / 20,
      allowed: ALLOWED.sum,
      unit: 'W/K',
      mark: 'memory',
    });
    expect(INFILTRATION_W_PER_K).toBe(sums.infiltration);
  });
});

describe.each([
  ['edition_A_double_clear', OLD_GLASS],
  ['edition_B_double_clear', clearGlass(CLEAR_PANE)],
] as const)('glass by angle as the network reads it, %s', (name, glass) => {
  test('transmitted and absorbed shares agree at ten angles', () => {
    const optics = opticsOf(glass);
    const { rows } = readJson<{
      windows: Record<string, { angular_table_calculated: { rows: number[][] } }>;
    }>('fabric-tests.json').windows[name]!.angular_table_calculated;
    expect(rows).toHaveLength(10);
    for (const [angle, ...shares] of rows) {
      const cosine = Math.max(0, Math.cos((angle! * Math.PI) / 180));
      const tables = [optics.transmittance, ...optics.absorbed];
      ['transmittance', 'absorbed outer', 'absorbed inner'].forEach((quantity, i) => {
        check({
          source: 'ANSI/ASHRAE 140 glazing in the network',
          case: `${name.replaceAll('_', ' ')}, ${angle}°`,
          quantity,
          reference: shares[i]!,
          ours: atCosine(tables[i]!, cosine),
          allowed: ALLOWED.glass,
          unit: '',
          mark: 'computed',
        });
      });
    }
  });
});
