// U-value of a glazing at its centre from its make-up: panes, gaps, films and tilt in; U, the resistances in a row and
// the share of each pane's absorbed sun that flows inward out. Rated conditions of EN 673: mean 283 K, 15 K over all
// gaps together, split among them by repeated solution.
// Source: EN 673:2011 (outside 25, inside 3.6 + 4.1 ε/0.837 = 7.7 W/(m²·K), upright; the 1997 edition had 4.4, which
// misses today's 5.8 of single glass). EN 673 gives no inside film for leaning glass: the convective 3.6 rises here
// along a straight line to 5.0 flat, the ISO 6946 value for upward flow.
import { type GapGas, gapConductance } from './gas-gap.ts';
import { requireRange } from './require-range.ts';

export interface GlazingMakeUp {
  /** outer first; 1…5 */
  readonly panes: readonly {
    readonly thicknessM: number;
    /** [W/(m·K)]; 1.0 glass */
    readonly conductivity: number;
  }[];
  /** one fewer than the panes, outer first */
  readonly gaps: readonly {
    readonly gas: GapGas;
    /** share of the gas, the rest air; absent = 1 */
    readonly fill?: number;
    readonly widthM: number;
    /** corrected emissivity of the outer and of the inner face of the gap */
    readonly emissivityOuter: number;
    readonly emissivityInner: number;
  }[];
  /** corrected emissivity of the face to the room; 0.837 bare */
  readonly insideEmissivity: number;
}

/** Each overrides EN 673's rated value. */
export interface GlazingConditions {
  /** whole outside film [W/(m²·K)] */
  readonly outsideFilm?: number;
  /** whole inside film [W/(m²·K)] */
  readonly insideFilm?: number;
  /** temperature difference over all gaps together [K] */
  readonly gapsDeltaK?: number;
  /** mean temperature of the gaps [K] */
  readonly meanTempK?: number;
}

export interface GlazingPath {
  /** [W/(m²·K)] */
  readonly uValue: number;
  /** [W/(m²·K)] */
  readonly outsideFilm: number;
  readonly insideFilm: number;
  /** total conductance of each gap [W/(m²·K)], outer first */
  readonly gapConductances: readonly number[];
  /** share of the heat absorbed in each pane (at its mid-plane) that flows to the room, outer first */
  readonly inwardFractions: readonly number[];
}

/** Bare glass, EN 673. */
export const BARE_EMISSIVITY = 0.837;

const OUTSIDE_FILM = 25;

/**
 * The whole path of heat through a glazing.
 *
 * @param system panes and gaps
 * @param tiltDeg [°]; 0…90
 * @param conditions overrides
 * @returns U, films, gap conductances and inward-flowing fractions
 */
export function glazingPath(
  system: GlazingMakeUp,
  tiltDeg: number,
  conditions: GlazingConditions = {},
): GlazingPath {
  requireRange('tiltDeg', tiltDeg, 0, 90, '°');
  requireRange('number of panes', system.panes.length, 1, 5, '');
  requireRange('number of gaps', system.gaps.length, system.panes.length - 1, system.panes.length - 1, '');
  requireRange('insideEmissivity', system.insideEmissivity, 0.01, 1, '');
  const outsideFilm = conditions.outsideFilm ?? OUTSIDE_FILM;
  const insideFilm = conditions.insideFilm ?? ratedInsideFilm(system.insideEmissivity, tiltDeg);
  requireRange('outsideFilm', outsideFilm, 0.1, 1000, 'W/m²K');
  requireRange('insideFilm', insideFilm, 0.1, 1000, 'W/m²K');
  const gapConductances = ratedGaps(
    system,
    tiltDeg,
    conditions.gapsDeltaK ?? 15,
    conditions.meanTempK ?? 283,
  );
  const paneResistances = system.panes.map((pane) => pane.thicknessM / pane.conductivity);
  const outward = outwardResistances(1 / outsideFilm, paneResistances, gapConductances);
  const total = outward.at(-1)! + paneResistances.at(-1)! / 2 + 1 / insideFilm;
  return {
    uValue: 1 / total,
    outsideFilm,
    insideFilm,
    gapConductances,
    inwardFractions: outward.map((resistance) => resistance / total),
  };
}

/**
 * EN 673's inside film, leaning glass as the file's head says.
 *
 * @param emissivity corrected, of the face to the room; 0…1
 * @param tiltDeg [°]; 0…90
 * @returns [W/(m²·K)]; 7.7 for bare upright glass
 */
function ratedInsideFilm(emissivity: number, tiltDeg: number): number {
  const convective = 5.0 + (3.6 - 5.0) * (tiltDeg / 90);
  return convective + (4.1 * emissivity) / BARE_EMISSIVITY;
}

/** Gap conductances with the temperature difference shared out by resistance until it settles. */
function ratedGaps(
  system: GlazingMakeUp,
  tiltDeg: number,
  deltaK: number,
  meanTempK: number,
): readonly number[] {
  const count = system.gaps.length;
  let shares = system.gaps.map(() => 1 / count);
  let conductances: readonly number[] = [];
  for (let pass = 0; pass < 30; pass++) {
    conductances = system.gaps.map(
      (gap, i) =>
        gapConductance({
          gas: gap.gas,
          fill: gap.fill ?? 1,
          widthM: gap.widthM,
          tiltDeg,
          meanTempK,
          deltaTempK: deltaK * shares[i]!,
          emissivity1: gap.emissivityOuter,
          emissivity2: gap.emissivityInner,
        }).total,
    );
    const sum = conductances.reduce((total, conductance) => total + 1 / conductance, 0);
    shares = conductances.map((conductance) => 1 / conductance / sum);
  }
  return conductances;
}

/** Resistance from outdoors to the mid-plane of each pane [m²K/W], outer first. */
function outwardResistances(
  outsideFilm: number,
  panes: readonly number[],
  gapConductances: readonly number[],
): readonly number[] {
  const outward: number[] = [];
  let so = outsideFilm;
  for (const [i, pane] of panes.entries()) {
    outward.push(so + pane / 2);
    so += pane + (i < gapConductances.length ? 1 / gapConductances[i]! : 0);
  }
  return outward;
}
