// Net heat (lower heating value) of fuels that are bought by measure: constants with their sources.

/**
 * Heating oil 10.0 kWh/L and pellets 4.75 kWh/kg, heaped 625 kg/m³: Austrian biomass table, read. Propane: 7.07–7.16 kWh/L
 * gross, US energy agencies, read, of which 92 % net, memory. Natural gas is sold by its gross heat, 1.11 times the net, memory,
 * high confidence.
 */
export const FUEL_CONTENT = {
  oilKWhPerL: 10,
  propaneKWhPerL: 6.55,
  pelletsKWhPerKg: 4.75,
  pelletsKgPerM3: 625,
  gasGrossPerNet: 1.11,
} as const;
