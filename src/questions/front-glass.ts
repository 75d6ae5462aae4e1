// What the equator-facing glass takes in and gives away, month by month. Sun that passed it comes from the year;
// the loss of dark hours is the heat that the room hands to the inner pane, from the temperatures of the run:
// convection by Alamdari–Hammond at its tilt, and long-wave exchange, as the run itself has them, with the room's mean radiant
// temperature for the surfaces that the pane sees. Night insulation in front of the pane is counted in.

import type { Model, Pane } from '../model/model.ts';
import type { Year } from '../network/year.ts';
import { ZERO_CELSIUS_K } from '../physics/constants.ts';
import { inclinedConvection } from '../physics/convection.ts';
import { blackBodyConductance } from '../physics/films.ts';
import type { PreparedClimate } from '../weather/prepared/prepared-climate.ts';
import { HOURS, monthOfHour } from '../weather/typical-year.ts';

export interface FrontGlass {
  /** on the outside, unshaded; twelve values, January first [kWh] */
  readonly incidentKWh: readonly number[];
  /** passed as light */
  readonly transmittedKWh: readonly number[];
  /** from the room to the glass while the sun is down; frames and the latent heat of dew left out */
  readonly nightLossKWh: readonly number[];
}

const WATTS_PER_KW = 1000;
/** Of glass along its slope, for its convection; as in a run [m]. */
const HEIGHT_M = 2.5;

/** Sun and night loss of all panes whose id begins with 'front'. */
export function frontGlassOf(model: Model, climate: PreparedClimate, year: Year): FrontGlass {
  const incidentKWh = new Array<number>(12).fill(0);
  const transmittedKWh = new Array<number>(12).fill(0);
  const nightLossKWh = new Array<number>(12).fill(0);
  for (const pane of year.panes) {
    if (!pane.id.startsWith('front')) continue;
    const made = model.panes.find(({ id }) => id === pane.id)!;
    const zone = [...year.zones, ...(year.rooms ?? [])].find(({ id }) => id === pane.to)!;
    const inside = insideCovers(made, year);
    for (let hour = 0; hour < HOURS; hour++) {
      const month = monthOfHour(hour);
      incidentKWh[month]! += pane.incidentW[hour]! / WATTS_PER_KW;
      transmittedKWh[month]! += pane.transmittedW[hour]! / WATTS_PER_KW;
      if (climate.cosZenith[hour]! > 0) continue;
      const airC = zone.airC[hour]!;
      const radiantC = 2 * zone.operativeC[hour]! - airC;
      const glassM2 = made.areaM2 * (1 - made.frameShare);
      nightLossKWh[month]! +=
        (glassM2 *
          fluxToPane(made, drawnResistance(made, inside, hour), airC, radiantC, pane.innerC[hour]!)) /
        WATTS_PER_KW;
    }
  }
  return { incidentKWh, transmittedKWh, nightLossKWh };
}

interface DrawnCover {
  readonly resistance: number;
  readonly drawn: Float64Array;
}

/** Covers between room and pane, with how far each is drawn by hour. */
function insideCovers({ covers = [] }: Pane, year: Year): readonly DrawnCover[] {
  return covers
    .filter(({ place }) => place === 'inside')
    .map(({ hand, coverage, resistance }) => ({
      resistance: coverage * resistance,
      drawn: year.covers!.find(({ id }) => id === hand)!.drawn,
    }));
}

/** Between room and pane at night [m²K/W]. */
function drawnResistance(pane: Pane, inside: readonly DrawnCover[], hour: number): number {
  return inside.reduce((sum, { resistance, drawn }) => sum + resistance * drawn[hour]!, pane.nightResistance);
}

/** Heat from the room to the inner pane through so much resistance [W/m²]. */
function fluxToPane(pane: Pane, resistance: number, airC: number, radiantC: number, innerC: number): number {
  // The inner face of leaning glass looks down into the room: its normal, seen from the room, is past upright.
  const faceTiltDeg = 180 - pane.tiltDeg;
  const difference = innerC - airC;
  const sizeM = Math.sqrt(pane.areaM2 * (1 - pane.frameShare));
  const convection = inclinedConvection(faceTiltDeg, difference, HEIGHT_M, sizeM);
  const meanK = (innerC + radiantC) / 2 + ZERO_CELSIUS_K;
  const radiation = pane.glass.insideEmissivity * blackBodyConductance(meanK);
  const both = convection + radiation;
  const toward = (convection * airC + radiation * radiantC) / both;
  return (toward - innerC) / (1 / both + resistance);
}
