// Angle between the sun and a plane: sun and plane directions in, cosine of the incidence angle out.
// Conventions: elevation true; azimuths clockwise from north; tilt 0 = flat facing up, 90 = upright.
// Source: spherical trigonometry (dot product of the two unit vectors), any solar engineering text.

const DEG = Math.PI / 180;

/**
 * Cosine of the angle between the sun's direction and a plane's outward normal.
 *
 *   cos θ = sin h · cos β + cos h · sin β · cos(γs − γ)
 *
 * Called for every plane in every hour, so it does not check its input.
 *
 * @param elevationDeg sun's true elevation h [°]; −90…90
 * @param azimuthDeg sun's azimuth γs [° clockwise from north]
 * @param tiltDeg plane's tilt β [°]; 0 flat facing up, 90 upright, 180 facing down
 * @param planeAzimuthDeg azimuth γ the plane faces [° clockwise from north]
 * @returns −1…1; negative when the sun is behind the plane (or, for flat ones, below the horizon)
 */
export function cosIncidence(
  elevationDeg: number,
  azimuthDeg: number,
  tiltDeg: number,
  planeAzimuthDeg: number,
): number {
  const elevation = elevationDeg * DEG;
  const tilt = tiltDeg * DEG;
  const facing = Math.cos((azimuthDeg - planeAzimuthDeg) * DEG);
  return Math.sin(elevation) * Math.cos(tilt) + Math.cos(elevation) * Math.sin(tilt) * facing;
}
