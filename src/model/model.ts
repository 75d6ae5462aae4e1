// The model: what a design means physically. Zones of well-mixed air, elements of layers between two faces,
// panes of glass, openings for air, and what happens inside. Plain data, SI units, angles in degrees, so that
// tests build models directly and workers pass them along.
//
// Signs and sides. An element runs from face a to face b in the order of its layers; an element to outdoors
// has outdoors at a. Tilt 0 = the outward normal points up, 90 = upright, 180 = down; azimuth clockwise from
// north. A week starts on 1 January, taken as a Monday.

import type { OpeningControl } from './opening-control.ts';
import type { PaneCover } from './pane-cover.ts';

export type { OpeningControl } from './opening-control.ts';
export type { CoverRule, PaneCover } from './pane-cover.ts';

/** A value by hour of day, constant within the hour unless `ramp`; 24 entries, hour 0 = 00:00–01:00. */
export interface Schedule {
  readonly workday: readonly number[];
  /** Saturday and Sunday; absent = as workdays */
  readonly weekend?: readonly number[];
  /** factor by month, January first; absent = 1 */
  readonly months?: readonly number[];
  /** a rise to the next hour is drawn as a straight line over this hour (set-points that ramp up) */
  readonly ramp?: boolean;
}

export interface Layer {
  readonly name: string;
  readonly thicknessM: number;
  /** [W/(m·K)] */
  readonly conductivity: number;
  /** [kg/m³]; 0 for a layer without mass */
  readonly density: number;
  /** [J/(kg·K)] */
  readonly specificHeat: number;
  /** stirred by its own convection: one node, no resistance inside (water in drums) */
  readonly mixed?: boolean;
}

/** Surface coefficients: computed each hour from their correlations, or prescribed [W/(m²K)]. */
export type Film =
  | { readonly kind: 'computed' }
  | { readonly kind: 'fixed'; readonly convection: number; readonly radiation: number | 'computed' };

export interface ZoneFace {
  readonly kind: 'zone';
  readonly zone: string;
  /** solar absorptance 0…1 */
  readonly absorptance: number;
  readonly emissivity: number;
  readonly film: Film;
  /** where beam light falls first: on the floor, on the wall behind, or only after reflection */
  readonly lit: 'floor' | 'back' | 'none';
  /** outward normal of this face as seen from the room: 0 faces up (a floor), 90 a wall, 180 a ceiling */
  readonly faceTiltDeg: number;
}

export interface OutdoorFace {
  readonly kind: 'outdoors';
  readonly absorptance: number;
  readonly emissivity: number;
  readonly tiltDeg: number;
  readonly azimuthDeg: number;
  readonly film: Film;
  /** false: air only, neither sun nor sky (the underside of a raised floor) */
  readonly exposed: boolean;
}

/** Ground of given temperature through the year, reached through a resistance beyond the last layer. */
export interface GroundFace {
  readonly kind: 'ground';
  readonly wave: GroundWave;
  /** [m²K/W] */
  readonly resistance: number;
  /** of the element's layers so much next to this face is soil, whose store is the ground's and not the zone's [m]; 0 unless said */
  readonly soilM?: number;
}

/** mean − amplitude · cos(2π (day − coldestDay)/365): a yearly wave [°C] */
export interface GroundWave {
  readonly meanC: number;
  readonly amplitudeK: number;
  readonly coldestDay: number;
}

export interface AdiabaticFace {
  readonly kind: 'adiabatic';
}

export type Face = ZoneFace | OutdoorFace | GroundFace | AdiabaticFace;

export interface Element {
  readonly id: string;
  readonly areaM2: number;
  /** from face a to face b */
  readonly layers: readonly Layer[];
  readonly a: Face;
  readonly b: ZoneFace;
  /** moisture buffer value of the b face [g/(m²·%RH)]; absent = 0 */
  readonly moistureBuffer?: number;
  /** of a face that is a zone's too; absent = 0 */
  readonly moistureBufferA?: number;
  /** its b face is the ground of the zone's planting: shaded by the leaves, wet */
  readonly isBed?: true;
  /** heat of a floor or wall heater is put in at this depth from face a [m]; absent = nowhere */
  readonly heatedM?: number;
}

/** A glazing as light and heat see it. */
export interface GlassSystem {
  readonly sheets: 1 | 2 | 3;
  readonly sheetM: number;
  /** [W/(m·K)] of the sheets */
  readonly sheetConductivity: number;
  readonly gapM: number;
  readonly gas: 'air' | 'argon' | 'krypton';
  readonly gapEmissivity: number;
  readonly outsideEmissivity: number;
  readonly insideEmissivity: number;
  /** clear sheets from index and extinction, or scaled to quoted normal values */
  readonly optics:
    | { readonly kind: 'clear'; readonly refractiveIndex: number; readonly extinctionPerM: number }
    | { readonly kind: 'scaled'; readonly solarTransmittance: number; readonly solarHeatGain: number };
  /** prescribed conductance of each gap [W/(m²K)]; absent = EN 673 at the pane's tilt, each hour */
  readonly gapConductance?: number;
}

/** What stands in front of a pane; lengths in the plane of the pane unless said. */
export interface Shading {
  readonly widthM: number;
  readonly heightM: number;
  /** horizontal overhang: depth, gap above the top edge, extension past each side (Infinity = long) */
  readonly overhang?: { readonly depthM: number; readonly gapM: number; readonly extendM: number };
  /** upright fins on both sides: depth, gap from the edge */
  readonly fins?: { readonly depthM: number; readonly gapM: number };
  /** share of all sun kept out, by month (an outside shade); absent = 0 */
  readonly seasonal?: readonly number[];
}

export interface Pane {
  readonly id: string;
  /** glass and frame [m²] */
  readonly areaM2: number;
  /** gross area of the wall it stands in [m²], which it must not exceed; absent = not checked */
  readonly wallM2?: number;
  /** 0…1 of the area without light; its heat loss is taken at frameUValue */
  readonly frameShare: number;
  readonly frameUValue: number;
  readonly glass: GlassSystem;
  readonly tiltDeg: number;
  readonly azimuthDeg: number;
  /** outdoors, or the zone that light comes from */
  readonly from: 'outdoors' | string;
  readonly to: string;
  readonly shading: Shading | null;
  readonly filmOutside: Film;
  readonly filmInside: Film;
  /** added at the inside from dusk to dawn [m²K/W]; 0 for none */
  readonly nightResistance: number;
  /** what can be drawn, outermost first, on panes to outdoors; absent = nothing */
  readonly covers?: readonly PaneCover[];
  /** room depth behind the glass [m], and the glass's lower and upper edge above the floor: where beam falls */
  readonly lightRoom: { readonly depthM: number; readonly sillM: number; readonly headM: number } | null;
  /** multiplies transmitted light: dirt, bars, curtains; 1 = clean */
  readonly dirt: number;
}

export interface VentRule {
  /** the zone's air must be above this to open [°C] */
  readonly opensAboveC: number;
  /** width over which it goes from shut to full [K] */
  readonly bandK: number;
  /** only while outdoors is so against the zone; in place of cooler also drier, while the zone stands damp */
  readonly onlyWhileOutside: 'cooler' | 'warmer' | 'either';
  /** in proportion to the need, or full at the temperature and shut once the room has run down */
  readonly opens: 'by-degrees' | 'all-at-once';
  /** share that may be open, by time (hours, days, months) */
  readonly schedule: Schedule;
  /** shut above this wind [m/s] */
  readonly shutAboveWind: number;
  /** shut while it rains, where the weather says when */
  readonly shutInRain: boolean;
}

/** Windows opened wide for some minutes to change the air. */
export interface Airing {
  readonly minutes: number;
  /** hours of the day at whose start somebody thinks of it */
  readonly hours: readonly number[];
  /** whatever the air is like; else only when it is damp or stale */
  readonly byHabit: boolean;
}

interface OpeningBase {
  readonly id: string;
  readonly zone: string;
}

/** Cracks of a zone by effective leakage area, driven by stack and wind. */
export interface CrackOpening extends OpeningBase {
  readonly kind: 'cracks';
  readonly leakageCm2: number;
  readonly stackCoefficient: number;
  readonly windCoefficient: number;
}

/** A prescribed exchange with outdoors, or with another zone. */
export interface FixedOpening extends OpeningBase {
  readonly kind: 'fixed';
  /** absent = outdoors */
  readonly other?: string;
  /** volume flow at the site's air density [m³/s] */
  readonly flow: Schedule;
  /** counted as ventilation someone runs, not as leakage */
  readonly fan: boolean;
  /** fan runs only to cool the zone down to this, while outdoors is cooler [°C]; absent = always */
  readonly onlyAboveC?: number;
  /** fan runs only while `other` wants what warmer air `zone` has, by a door's rule; absent = always */
  readonly gives?: HeatGiving;
  /** fan runs by degrees between these relative humidities of the zone, while outdoors is drier; absent = always */
  readonly byHumidity?: { readonly from: number; readonly full: number };
  /** electricity of its fans while they run [W for each m³/h]; absent = not counted */
  readonly fanWPerM3H?: number;
  /** with as much air blown in, past an exchanger; only with outdoors */
  readonly recovery?: HeatRecovery;
  /** air for the fire of the zone's stove: `flow` is that of a full load, and it flows as the fire burns */
  readonly feedsFire?: true;
}

/** The exchanger of a ventilation unit. */
export interface HeatRecovery {
  /** temperature ratio on the supply side, 0…1 (EN 308, EN 13141-7) */
  readonly effectiveness: number;
  /** against ice: a heater before the exchanger, or the unit's own air turned round for a while */
  readonly frost: 'preheat' | 'recirculate';
  /** the zone's air above this, cooler air goes round the exchanger [°C] */
  readonly bypassAboveC: number;
}

/** When a zone gives heat to another, which wants it: the rule of doors and fans between them. */
export interface HeatGiving {
  /** `zone` gives to `other` while other is below this and zone is warmer [°C] */
  readonly wantsHeatBelowC: number;
  /** not while `zone` holds this much more vapour than `other` [kg/kg dry air] */
  readonly dampLimit: number;
}

/** Vents or windows to outdoors that somebody or something moves. */
export interface VentOpening extends OpeningBase {
  readonly kind: 'vent';
  readonly lowM2: number;
  readonly highM2: number;
  /** between the centres of low and high openings [m]; 0 with one opening only */
  readonly stackM: number;
  /** height of one opening, for one-sided exchange [m] */
  readonly openingHeightM: number;
  readonly discharge: number;
  /** wind coefficient: flow = coefficient · area · wind */
  readonly windCoefficient: number;
  readonly rule: VentRule;
  readonly control: OpeningControl;
  /** absent = never used to air */
  readonly airing?: Airing;
}

/** A door or open side between two zones, with two-way buoyant exchange; light and radiation may pass. */
export interface DoorOpening extends OpeningBase, HeatGiving {
  readonly kind: 'door';
  readonly other: string;
  readonly widthM: number;
  readonly heightM: number;
  readonly discharge: number;
  /** by-need: as giving heat asks for it */
  readonly rule: 'open' | 'shut' | 'by-need';
  /** share that stands open, by time, in place of a rule: the door between two rooms */
  readonly schedule?: Schedule;
  readonly control: OpeningControl;
  /** beam and diffuse light and long-wave radiation pass (a missing wall, not a door) */
  readonly seeThrough: boolean;
}

/** A hole in the floor between two zones: air is exchanged both ways while the lower one is the warmer. */
export interface StairOpening extends OpeningBase {
  readonly kind: 'stairs';
  /** `zone` is the lower one */
  readonly other: string;
  readonly areaM2: number;
  /** of the floor it goes through [m] */
  readonly thicknessM: number;
  /** share that stands open, by time */
  readonly schedule: Schedule;
}

export type Opening = CrackOpening | FixedOpening | VentOpening | DoorOpening | StairOpening;

/** Windows and cracks of a zone at one height, from and to which air may pass through the house. */
export interface StackPlace {
  readonly zone: string;
  /** middle of its windows above the ground [m] */
  readonly heightM: number;
  /** ids of openings; null for none */
  readonly windows: string | null;
  readonly cracks: string | null;
  /** of those openings this much stands at this height, 0…1 */
  readonly share: number;
}

/** The way from a zone to the next, by a door or stairs; nearest to the zone they all lead to first. */
export interface StackWay {
  readonly zone: string;
  readonly to: string;
  readonly opening: string;
}

/** Air that passes a house of several storeys one way: in where it is open below, up, and out above. */
export interface HouseStack {
  readonly places: readonly StackPlace[];
  readonly ways: readonly StackWay[];
}

export interface Gain {
  readonly id: string;
  /** [W] */
  readonly power: Schedule;
  readonly radiantShare: number;
}

export interface MoistureSource {
  /** cause, kept apart to the end: people, cooking, washing, drying, … */
  readonly cause: string;
  /** [g/h] */
  readonly rate: Schedule;
}

/** Leaves over the zone's bed, which is an element of its own. */
export interface Planting {
  /** area of the zone's bed, and of the element that is it [m²] */
  readonly bedM2: number;
  readonly leafAreaIndex: number;
  /** leaf boundary layer resistance [s/m] */
  readonly boundaryResistance: number;
  readonly albedo: number;
  readonly soil: 'mulched' | 'bare' | 'open-water';
}

/** Ideal heating and cooling of the zone's air. */
export interface Thermostat {
  readonly heatC: Schedule | null;
  readonly coolC: Schedule | null;
  readonly heatCapacityW: number;
  readonly coolCapacityW: number;
}

/** A stove that people feed, in place of the thermostat, which then only says what they want. */
export interface Stove {
  /** net heat of its wood [J/kg] */
  readonly woodJPerKg: number;
  readonly loadKg: number;
  /** smallest load, of that, 0…1 */
  readonly leastLoad: number;
  /** a load burns down in [h] */
  readonly burnH: number;
  /** heat to the house of the wood's; the rest goes up the flue, 0…1 */
  readonly efficiency: number;
  /** of the heat to the house, what goes into heated floors; of the rest, what comes at once and not by its body, 0…1 */
  readonly floorShare: number;
  readonly atOnce: number;
  /** its body's heat falls to 1/e of itself in [h] */
  readonly coolingH: number;
  readonly radiantShare: number;
  /** above 0 where somebody is there, awake, and may light or feed it */
  readonly mayFeed: Schedule;
  /** hour by hour while it is cold; else a fire is made for the hours ahead */
  readonly fedHourly: boolean;
  /** whatever the rooms are like, outside summer */
  readonly byHabit: boolean;
  /** what its boiler gives goes through a store of water; absent = into the floors as it comes */
  readonly store?: WaterStore;
}

/** A store of water in the stove's room. */
export interface WaterStore {
  /** [J/K] */
  readonly capacity: number;
  /** to its room [W/K] */
  readonly loss: number;
  /** pumped into heated floors once it is at this [°C], whether they are wanted or not */
  readonly mostC: number;
  /** pipes to the layer they lie in [W/(m²K)] */
  readonly pipesPerM2: number;
}

export interface Zone {
  readonly id: string;
  readonly floorAreaM2: number;
  readonly volumeM3: number;
  /** of furniture, with the air [J/K] */
  readonly furnitureCapacity: number;
  /** of furniture and textiles [kg of water per unit relative humidity] */
  readonly furnitureMoisture: number;
  readonly thermostat: Thermostat | null;
  /** absent = the thermostat warms the air, or the zone's heated floor or wall */
  readonly stove?: Stove;
  /** the thermostat warms floors and walls with a heated layer, up to this temperature of their face [°C]; absent = the air */
  readonly heatedFaceMaxC?: number;
  readonly gains: readonly Gain[];
  readonly moisture: readonly MoistureSource[];
  readonly planting: Planting | null;
  /** people present, by hour */
  readonly people: Schedule | null;
  /** temperature factor of the coldest corner, fRsi */
  readonly cornerFactor: number;
}

export interface Model {
  readonly name: string;
  readonly zones: readonly Zone[];
  readonly elements: readonly Element[];
  readonly panes: readonly Pane[];
  readonly openings: readonly Opening[];
  /** absent where no air passes from zone to zone one way */
  readonly stack?: HouseStack;
  /** on Saturdays and Sundays nobody is there to move anything */
  readonly awayWeekends?: true;
}
