// Catalogue of glazing by centre-of-glass values at upright: U, solar heat gain and solar transmittance at
// normal incidence, and the make-up behind them (sheets, gap, gas, emissivity facing the gap). U at another
// tilt follows from the make-up by EN 673; the angle curve from clear sheets scaled to the normal values.
// Sources: ASHRAE Fundamentals and EN 673 values from memory, high confidence, unless a row says otherwise.

export interface Glass {
  readonly id: string;
  readonly name: string;
  /** number of sheets, 1…3 */
  readonly sheets: 1 | 2 | 3;
  /** thickness of each sheet [m] */
  readonly sheetM: number;
  /** width of each gap [m]; 0 for single glass */
  readonly gapM: number;
  readonly gas: 'air' | 'argon' | 'krypton';
  /** corrected emissivity of the coated face in each gap; 0.837 where uncoated */
  readonly gapEmissivity: number;
  /** U-value quoted upright [W/(m²·K)], for display and tests */
  readonly quotedUValue: number;
  /** solar heat gain coefficient at normal incidence, 0…1 */
  readonly solarHeatGain: number;
  /** solar transmittance at normal incidence, 0…1 */
  readonly solarTransmittance: number;
  /** visible transmittance, 0…1 */
  readonly visible: number;
  readonly source: string;
}

const UNCOATED = 0.837;

export const GLASS: readonly Glass[] = [
  {
    id: 'single-clear',
    name: 'Single clear',
    sheets: 1,
    sheetM: 0.004,
    gapM: 0,
    gas: 'air',
    gapEmissivity: UNCOATED,
    quotedUValue: 5.8,
    solarHeatGain: 0.86,
    solarTransmittance: 0.83,
    visible: 0.9,
    source: 'ASHRAE, EN 673',
  },
  {
    id: 'double-clear',
    name: 'Double clear',
    sheets: 2,
    sheetM: 0.004,
    gapM: 0.012,
    gas: 'air',
    gapEmissivity: UNCOATED,
    quotedUValue: 2.8,
    solarHeatGain: 0.76,
    solarTransmittance: 0.7,
    visible: 0.81,
    source: 'ASHRAE, EN 673',
  },
  {
    id: 'double-low-e',
    name: 'Double low-e, high gain',
    sheets: 2,
    sheetM: 0.004,
    gapM: 0.016,
    gas: 'argon',
    gapEmissivity: 0.04,
    quotedUValue: 1.15,
    solarHeatGain: 0.62,
    solarTransmittance: 0.54,
    visible: 0.8,
    source: 'EN 673 soft coat',
  },
  {
    id: 'double-hard-coat',
    name: 'Double low-e, hard coat',
    sheets: 2,
    sheetM: 0.004,
    gapM: 0.012,
    gas: 'argon',
    gapEmissivity: 0.15,
    quotedUValue: 1.6,
    solarHeatGain: 0.71,
    solarTransmittance: 0.64,
    visible: 0.75,
    source: 'EN 673 hard coat',
  },
  {
    id: 'double-selective',
    name: 'Double low-e, sun-control',
    sheets: 2,
    sheetM: 0.004,
    gapM: 0.016,
    gas: 'argon',
    gapEmissivity: 0.03,
    quotedUValue: 1.1,
    solarHeatGain: 0.35,
    solarTransmittance: 0.3,
    visible: 0.65,
    source: 'middle of the quoted range',
  },
  {
    id: 'triple-clear',
    name: 'Triple clear',
    sheets: 3,
    sheetM: 0.004,
    gapM: 0.012,
    gas: 'air',
    gapEmissivity: UNCOATED,
    quotedUValue: 1.9,
    solarHeatGain: 0.68,
    solarTransmittance: 0.59,
    visible: 0.74,
    source: 'ASHRAE, EN 673',
  },
  {
    id: 'triple-low-e',
    name: 'Triple low-e, high gain',
    sheets: 3,
    sheetM: 0.004,
    gapM: 0.012,
    gas: 'argon',
    gapEmissivity: 0.06,
    quotedUValue: 0.75,
    solarHeatGain: 0.61,
    solarTransmittance: 0.5,
    visible: 0.73,
    source: 'EN 673, high-gain coats',
  },
  {
    id: 'twin-wall',
    name: 'Twin-wall polycarbonate 10 mm',
    sheets: 2,
    sheetM: 0.001,
    gapM: 0.01,
    gas: 'air',
    gapEmissivity: UNCOATED,
    quotedUValue: 3.1,
    solarHeatGain: 0.8,
    solarTransmittance: 0.77,
    visible: 0.8,
    source: 'maker data; solar heat gain from memory, medium',
  },
];

/**
 * Look a glazing up by id.
 *
 * @param id catalogue id
 * @returns the row; throws RangeError for an unknown id, since the schema has already refused those
 */
export function glassById(id: string): Glass {
  const found = GLASS.find((glass) => glass.id === id);
  if (!found) throw new RangeError(`glass is '${id}'; allowed ${GLASS.map((g) => g.id).join(', ')}`);
  return found;
}
