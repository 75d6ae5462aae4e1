// What air flows and the rules of openings depend on, as the run writes it before each hour and step.

export interface AirState {
  readonly zoneC: Float64Array;
  /** mean radiant temperature at a step's start [°C] */
  readonly radiantC: Float64Array;
  /** humidity ratio of each zone [kg/kg] */
  readonly zoneRatio: Float64Array;
  /** relative humidity of each zone, 0…1 */
  readonly zoneHumidity: Float64Array;
  outdoorC: number;
  /** humidity ratio outdoors [kg/kg] */
  outdoorRatio: number;
  /** rain in the hour [mm]; 0 where the weather knows of none */
  rainMm: number;
  wind: number;
  /** outdoors [kg/m³] */
  density: number;
}
