// What air flows and the rules of openings depend on: air and humidity of the zones, as the run writes them before each
// step, beside the weather of the hour.

import type { HourWeather } from '../hour/hour-weather.ts';

export interface ZoneAir {
  /** air of each zone [°C] */
  readonly zoneC: Float64Array;
  /** mean radiant temperature at a step's start [°C] */
  readonly radiantC: Float64Array;
  /** humidity ratio of each zone [kg/kg] */
  readonly zoneRatio: Float64Array;
  /** relative humidity of each zone, 0…1 */
  readonly zoneHumidity: Float64Array;
  /** carbon dioxide of each zone in the hour before [ppm] */
  readonly co2Ppm: Float64Array;
  readonly weather: HourWeather;
}
