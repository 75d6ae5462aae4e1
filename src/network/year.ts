// The year: the hourly outcome of one run, as plain typed arrays that pass between threads. Rows are hours of
// the typical year (its convention); every value is the mean over the hour unless said. Heat into a zone is
// positive. Energies of the books are in joules, water in kilograms.

export interface ZoneYear {
  readonly id: string;
  /** [°C] */
  readonly airC: Float64Array;
  /** mean of air and mean radiant temperature (air speed below 0.2 m/s) [°C] */
  readonly operativeC: Float64Array;
  /** 0…1, over water */
  readonly relativeHumidity: Float64Array;
  /** sun absorbed inside the zone, first pass and reflections, panes included [W] */
  readonly solarW: Float64Array;
  /** heat that heaters give the zone, and what cooling takes from it, 0 or more [W] */
  readonly heatingW: Float64Array;
  readonly coolingW: Float64Array;
  /** air changes with outdoors, an hour [1/h] */
  readonly ventAch: Float64Array;
  /** water vapour released in the zone, all causes [g/h] */
  readonly moistureG: Float64Array;
  /** net condensation on panes, negative while they dry [g/h] */
  readonly condensationG: Float64Array;
  /** heat that moved air brought: from outdoors and other zones, by cracks, openings and fans, what an exchanger gave back included [W] */
  readonly airHeatW: Float64Array;
  /** water that moved air brought, the same ways [g/h] */
  readonly airWaterG: Float64Array;
  /** of that over the year, what air from each other zone brought more than the air it replaced held; negative for less [kg] */
  readonly airWaterFrom: readonly { readonly zone: string; readonly kg: number }[];
  /** water vapour released by cause over the year [kg] and by month; same causes in every month */
  readonly moistureByCause: readonly { readonly cause: string; readonly monthKg: readonly number[] }[];
  /** air temperature at the surface of the coldest corner [°C] */
  readonly cornerC: Float64Array;
  /** water that ran off panes over the year [kg] */
  readonly drainedKg: number;
  /** water that air, surfaces and panes hold more at the year's end than at its start [kg] */
  readonly waterGainKg: number;
  /** carbon dioxide [ppm] */
  readonly co2Ppm: Float64Array;
}

export interface PaneYear {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly areaM2: number;
  /** on the outside of the glass, unshaded [W] */
  readonly incidentW: Float64Array;
  /** passed into the zone as light, covers drawn as they were [W] */
  readonly transmittedW: Float64Array;
  /** inner face [°C] */
  readonly innerC: Float64Array;
  /** hours with water on the inner face */
  readonly wetHours: number;
  /** of those, hours with the face below freezing */
  readonly frostHours: number;
}

export interface OpeningYear {
  readonly id: string;
  readonly kind: string;
  /** share open by hour, 0…1 */
  readonly open: Float64Array;
  /** volume flow [m³/s], each way */
  readonly flow: Float64Array;
  /** times somebody moved it */
  readonly moves: number;
  /** moves by day of the year, 365 entries */
  readonly movesByDay: Float64Array;
  /** hours in which it should have been moved and was not */
  readonly neglectedHours: number;
  /** times it was opened wide for some minutes to change the air */
  readonly airings: number;
  /** hours in which the room's heater ran while it stood open to cool, and the heat that then went out by it [J] */
  readonly heatedOpenHours: number;
  readonly heatedOpenJ: number;
}

/** A stove's hours: wood and heat. */
export interface StoveYear {
  readonly zone: string;
  /** net heat of its wood [J/kg] */
  readonly woodJPerKg: number;
  /** wood put on in the hour [kg] */
  readonly loadKg: Float64Array;
  /** heat of the wood that burns, and of it what its room, heated floors and the flue get [W] */
  readonly burntW: Float64Array;
  readonly roomW: Float64Array;
  readonly floorW: Float64Array;
  readonly flueW: Float64Array;
  /** wood on the fire, heat of the body above the room's, and of a store above 20 °C, at the hour's end [J] */
  readonly heldJ: Float64Array;
}

/** A cover, or covers drawn together. */
export interface CoverYear {
  readonly id: string;
  /** share drawn by hour, 0…1 */
  readonly drawn: Float64Array;
  /** times somebody moved it */
  readonly moves: number;
  /** moves by day of the year, 365 entries */
  readonly movesByDay: Float64Array;
  /** hours in which it should have been moved and was not */
  readonly neglectedHours: number;
}

/** Heat of a zone or the whole, summed over a month by cause [J]; heat in is positive. */
export interface HeatByCause {
  readonly zone: string;
  readonly cause: string;
  readonly monthJ: readonly number[];
}

export interface Books {
  /** heat in − out − stored, relative to the year's solar gain (or throughput when there is no sun) */
  readonly heatResidual: number;
  /** water held more − water received, relative to all that was released (or to what air brought, when nothing was) */
  readonly waterResidual: number;
  /** the same for each zone, in the model's order */
  readonly zoneHeatResidual: readonly number[];
}

/** Node temperatures by hour, kept only when asked for: layer by layer, from face a to face b. */
export interface ElementHistory {
  readonly id: string;
  /** distance of each node from face a [m] */
  readonly depthM: readonly number[];
  /** hour-major: [hour · nodes + node], °C at the end of the hour */
  readonly temperatureC: Float32Array;
}

export interface Year {
  readonly zones: readonly ZoneYear[];
  /** of a divided house, whose zone 'house' is then all of them together: each room, and its heat by cause */
  readonly rooms?: readonly ZoneYear[];
  readonly roomHeat?: readonly HeatByCause[];
  readonly panes: readonly PaneYear[];
  readonly openings: readonly OpeningYear[];
  /** absent where no pane has any */
  readonly covers?: readonly CoverYear[];
  /** absent where there is none */
  readonly stoves?: readonly StoveYear[];
  readonly heat: readonly HeatByCause[];
  readonly books: Books;
  readonly history: readonly ElementHistory[] | null;
  /** nodes in chains, hubs excluded */
  readonly nodes: number;
}
