// Gas gaps by table: EN 673 conductance of a glass system at its tilt over mean temperature and temperature
// difference, worked out once and read by linear interpolation in the hourly loop.
// Error: within the table below 1 % of gas-gap.ts from 4 K on, below 4 % nearer nothing, where convection sets in
// (tests/network/surfaces/gap-table.test.ts); beyond its edges the edge.

import type { GlassSystem } from '../../model/model.ts';
import { ZERO_CELSIUS_K } from '../../physics/constants.ts';
import { gapConductance } from '../../physics/gas-gap.ts';
import { BARE_EMISSIVITY } from '../../physics/glass-u-value.ts';

/** [°C] */
const LOWEST_MEAN = -50;
const MEAN_STEP = 5;
const MEANS = 29;
/** inner less outer pane [K] */
const LOWEST_DELTA = -50;
const DELTA_STEP = 0.5;
const DELTAS = 201;

/** mean · DELTAS + delta [W/(m²K)] */
export type GapTable = Float64Array;

const known = new Map<string, GapTable>();
const MOST_KNOWN = 200;

/** Conductance of the gap of a glass system at a tilt [W/(m²K)], row by row as GapTable says; remembered by value. */
export function gapTable(glass: GlassSystem, tiltDeg: number): GapTable {
  const { gas, gapM, gapEmissivity } = glass;
  const key = `${gas} ${gapM} ${gapEmissivity} ${tiltDeg}`;
  const found = known.get(key);
  if (found) return found;
  if (known.size >= MOST_KNOWN) known.clear();
  const table = new Float64Array(MEANS * DELTAS);
  for (let m = 0; m < MEANS; m++) {
    for (let d = 0; d < DELTAS; d++) {
      table[m * DELTAS + d] = gapConductance({
        gas,
        widthM: gapM,
        tiltDeg,
        meanTempK: LOWEST_MEAN + m * MEAN_STEP + ZERO_CELSIUS_K,
        deltaTempK: LOWEST_DELTA + d * DELTA_STEP,
        emissivity1: BARE_EMISSIVITY,
        emissivity2: gapEmissivity,
      }).total;
    }
  }
  known.set(key, table);
  return table;
}

/**
 * Read a table. Every hour of every pane: no guards.
 *
 * @param meanC mean of the two panes [°C]
 * @param deltaK inner less outer [K]
 * @returns [W/(m²K)]
 */
export function conductanceAt(table: GapTable, meanC: number, deltaK: number): number {
  const m = Math.min(MEANS - 1.0001, Math.max(0, (meanC - LOWEST_MEAN) / MEAN_STEP));
  const d = Math.min(DELTAS - 1.0001, Math.max(0, (deltaK - LOWEST_DELTA) / DELTA_STEP));
  const row = Math.floor(m);
  const column = Math.floor(d);
  const at = row * DELTAS + column;
  const across = d - column;
  const lower = table[at]! + across * (table[at + 1]! - table[at]!);
  const upper = table[at + DELTAS]! + across * (table[at + DELTAS + 1]! - table[at + DELTAS]!);
  return lower + (m - row) * (upper - lower);
}
