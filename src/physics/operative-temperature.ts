// The temperature a person feels, between that of the air and that of the surfaces around: air and mean radiant
// temperature in, operative temperature out.
// Source: ISO 7726 and ASHRAE 55 (from memory, high confidence): the plain mean where air moves at less than 0.2 m/s.

/**
 * Operative temperature in a still room: (Ta + Tmr) / 2. Every time step: no guards.
 *
 * @param airTempC [°C]
 * @param meanRadiantTempC [°C]
 * @returns [°C]
 */
export function operativeTemperature(airTempC: number, meanRadiantTempC: number): number {
  return (airTempC + meanRadiantTempC) / 2;
}
