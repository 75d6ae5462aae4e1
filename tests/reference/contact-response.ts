// How a ground contact of the model answers: its soil, construction and ground face in; heat through its room side for a
// swing indoors and for the year's wave outdoors out, by ISO 13786's matrices.

import type { GroundContact } from '../../src/model/ground-contact.ts';
import type { Layer } from '../../src/model/model.ts';
import { wallTransfer } from '../../src/physics/heat-transfer-matrix.ts';
import type { Complex } from './ground-section.ts';

/** A year outdoors of 1 K about 0 °C, coldest at its start, so that what comes of it is a ratio. */
export const UNIT_YEAR = { meanC: 0, amplitudeK: 1, coldestDay: 0 };

/**
 * Answer of a contact made with UNIT_YEAR.
 *
 * @param layers of the construction, from the ground inwards
 * @param film inside [m²K/W]
 * @param periodS of the swing indoors [s]
 * @returns heat into the ground per kelvin indoors, into the room per kelvin outdoors [W/(m²·K)]
 */
export function contactResponse(
  { soil, face }: GroundContact,
  layers: readonly Layer[],
  film: number,
  periodS: number,
): { readonly inside: Complex; readonly outside: Complex } {
  const { y11, y12 } = wallTransfer([...soil, ...layers].toReversed(), film, face.resistance, periodS);
  const sign = y11.re < 0 ? -1 : 1;
  const angle = (-2 * Math.PI * face.wave.coldestDay) / 365;
  const wave = { re: face.wave.amplitudeK * Math.cos(angle), im: face.wave.amplitudeK * Math.sin(angle) };
  return {
    inside: { re: sign * y11.re, im: sign * y11.im },
    outside: { re: y12.re * wave.re - y12.im * wave.im, im: y12.re * wave.im + y12.im * wave.re },
  };
}
