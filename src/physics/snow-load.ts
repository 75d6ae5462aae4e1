// Snow on leaning glass. In: tilt. Out: shape factor of the load. Method: EN 1991-1-3,
// monopitch roofs (from memory, high confidence). For orientation only: overhead glass and what carries it need a
// structural engineer and the local code, for drifts, roof avalanches, wind and the glass itself.
import { requireRange } from './require-range.ts';

/**
 * Shape factor μ₁ of a slope: 0.8 up to 30°, falling in a straight line to 0 at 60°.
 *
 * @param tiltDeg 0 flat, 90 upright [°]; 0…90
 * @param freeToSlide false where snow guards, a parapet or a higher snow bank holds it: then never below 0.8
 * @returns μ₁ [–]
 * Source: EN 1991-1-3, table of snow load shape coefficients.
 */
export function snowShapeFactor(tiltDeg: number, freeToSlide: boolean): number {
  requireRange('tiltDeg', tiltDeg, 0, 90, '°');
  if (!freeToSlide || tiltDeg <= 30) return 0.8;
  return tiltDeg >= 60 ? 0 : (0.8 * (60 - tiltDeg)) / 30;
}
