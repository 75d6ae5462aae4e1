// What a year is made from: twelve numbers of each kind for a place, and where they are from.

/** Twelve numbers each, January first. */
export interface MonthlyNormals {
  readonly name: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  /** longitude/15, rounded, when absent [h] */
  readonly utcOffsetH?: number;
  /** mean of the daily highest and lowest air temperature [°C] */
  readonly meanDailyHighC: readonly number[];
  readonly meanDailyLowC: readonly number[];
  /** mean relative humidity [%], 5…97 */
  readonly humidityPercent: readonly number[];
  /** daily global radiation [kWh/m²], or hours of bright sunshine a day: one of the two */
  readonly dailyGlobalKWh?: readonly number[];
  readonly sunshineHours?: readonly number[];
  /** mean wind at 10 m [m/s], 0.2…20 */
  readonly windSpeed: readonly number[];
  /** draws the order of the days; 1 when absent */
  readonly seed?: number;
  /** where the normals are from, if not from the person */
  readonly from?: NormalsOrigin;
}

export interface NormalsOrigin {
  /** in a few words */
  readonly source: string;
  /** the credit their data ask for */
  readonly credit: string;
  /** what they rest on and what makes them doubtful, a sentence each */
  readonly notes: readonly string[];
}
