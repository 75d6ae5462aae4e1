// What gives a house its back-up heat, as the model knows it: a stove in one room, slabs that are heated, air for a fire.
// A design and its zones, elements and openings in; the same with the source in them out, or as they are without one.

import type { Design } from '../design/design.ts';
import { efficiencyOf, STOVE_NUMBERS, type StoveSource } from '../design/heat-source.ts';
import type { RoomPlan } from '../design/room-plan.ts';
import { J_PER_KWH } from '../physics/constants.ts';
import { FLOOR_LIMIT_C, WALL_LIMIT_C } from '../physics/floor-output.ts';
import { hotSurface } from '../physics/hot-surface.ts';
import { fireKg } from '../physics/masonry-heater.ts';
import { storeCapacity, storeLoss } from '../physics/water-store.ts';
import { dryHeatOf, woodById, woodHeat } from '../physics/wood-fuel.ts';
import { floorCoverM } from './house-floor.ts';
import { isAwake, peopleAtHome } from './household.ts';
import type { Element, FixedOpening, Model, Opening, Schedule, Stove, WaterStore, Zone } from './model.ts';
import { always, withEachHour } from './schedule.ts';

/** Air a fire draws [m³/kg of wood]: chemistry at twice to two and a half times the least, 7.8–9.8; common practice. */
const FIRE_AIR_M3_PER_KG = 8;
/** Wood a light stove is rated with [kWh/kg]: about 15 % water. */
const RATED_KWH_PER_KG = 4.15;
/** Hottest that a store is let to be; the pump then sends the rest to the floor. Common practice, no source [°C]. */
const STORE_MOST_C = 85;
/** Water to the middle of the slab, pipes 15 to 20 cm apart [W/(m²K)]; common practice, no source. */
const PIPES_W_PER_M2K = 12;
const FACE_EMISSIVITY = 0.9;
const ROOM_C = 20;
/** Hours of the day at which somebody feeds a light stove, and at which a masonry heater is fired; common practice, no source. */
const FED_HOURS = {
  usual: null,
  morning: [7, 8, 9],
  noon: [11, 12, 13],
  evening: [17, 18, 19, 20, 21],
} as const;
const FIRED_HOURS = { usual: [7, 19], morning: [7], noon: [12], evening: [19] } as const;

interface Parts {
  readonly zones: Zone[];
  readonly elements: Element[];
  readonly openings: Opening[];
}

/** The parts with the design's heat source in them. */
export function withHeatSource(design: Design, plan: RoomPlan | null, parts: Parts): Parts {
  const { source, capacityKW } = design.heating;
  if (source === undefined || source.kind === 'heater' || capacityKW <= 0) return parts;
  const layers = source.kind === 'wall' ? heatedWalls(parts) : heatedFloors(design, parts);
  if (source.kind !== 'stove') {
    const heatedFaceMaxC = source.kind === 'wall' ? WALL_LIMIT_C : FLOOR_LIMIT_C;
    const heated = new Set(layers.map(({ b }) => b.zone));
    const zones = parts.zones.map((zone) => (heated.has(zone.id) ? { ...zone, heatedFaceMaxC } : zone));
    return { ...parts, zones, elements: withHeatedLayer(design, parts.elements, layers) };
  }
  const stoveZone = plan ? plan.rooms[plan.stove]!.id : parts.zones[0]!.id;
  const floorShare = layers.length > 0 ? (source.floorShare ?? 0) : 0;
  const stove = stoveOf(design, source, floorShare);
  const zones = parts.zones.map((zone) => {
    if (zone.id !== stoveZone) return zone.thermostat ? { ...zone, thermostat: null } : zone;
    const { thermostat } = heatedZone(design, parts.zones, zone);
    return { ...zone, thermostat, stove };
  });
  const air = source.air === 'room' ? [fireAir(stoveZone, stove)] : [];
  return {
    zones,
    elements: floorShare > 0 ? withHeatedLayer(design, parts.elements, layers) : parts.elements,
    openings: [...parts.openings, ...air],
  };
}

/** All the heat there is stands in the stove's room. */
function heatedZone({ heating }: Design, zones: readonly Zone[], zone: Zone): Pick<Zone, 'thermostat'> {
  const thermostat = zone.thermostat ?? zones.find((other) => other.thermostat !== null)!.thermostat!;
  return { thermostat: { ...thermostat, heatCapacityW: heating.capacityKW * 1000 } };
}

const FLOOR = 'floor';
const MASS = 'extra mass';

function heatedFloors(design: Design, parts: Parts): Element[] {
  return design.floor.thicknessM > 0 ? ofHeatedRooms(parts, FLOOR).filter(({ isBed }) => !isBed) : [];
}

/** The extra mass of heated rooms. */
function heatedWalls(parts: Parts): Element[] {
  return ofHeatedRooms(parts, MASS);
}

function ofHeatedRooms({ zones, elements }: Parts, name: string): Element[] {
  const heated = new Set(zones.flatMap(({ id, thermostat }) => (thermostat ? [id] : [])));
  const ids = new Set(zones.flatMap(({ id }) => (id === 'house' ? [name] : [`${name} ${id}`])));
  return elements.filter(({ id, b }) => ids.has(id) && heated.has(b.zone));
}

/** Pipes or mats in the middle of the slab, or of the mass. */
function withHeatedLayer(
  { floor }: Design,
  elements: readonly Element[],
  heated: readonly Element[],
): Element[] {
  return elements.map((element) => {
    if (!heated.includes(element)) return element;
    const thicknessM = element.layers.reduce((sum, layer) => sum + layer.thicknessM, 0);
    const above = element.id.startsWith(FLOOR)
      ? floorCoverM(floor.cover) + floor.thicknessM / 2
      : thicknessM / 2;
    return { ...element, heatedM: thicknessM - above };
  });
}

/** Zones that a heated floor or wall should warm and that have none: a thermostat warms their air. A back boiler's floor is any. */
export function heatedAsAir(
  design: Design,
  { zones, elements }: Pick<Model, 'zones' | 'elements'>,
): string[] {
  const { source, capacityKW } = design.heating;
  if (source === undefined || source.kind === 'heater' || capacityKW <= 0) return [];
  const heated = elements.filter(({ heatedM }) => heatedM !== undefined);
  if (source.kind === 'stove')
    return source.floorShare && heated.length === 0
      ? zones.flatMap(({ id, stove }) => (stove ? [id] : []))
      : [];
  const zonesHeated = new Set(heated.map(({ b }) => b.zone));
  return zones.flatMap(({ id, thermostat }) => (thermostat && !zonesHeated.has(id) ? [id] : []));
}

function stoveOf(design: Design, source: StoveSource, floorShare: number): Stove {
  const { capacityKW } = design.heating;
  const { faceC, atOnce, coolingH, burnH, leastLoad, fedHourly } = STOVE_NUMBERS[source.stove];
  const wood = woodById(source.wood);
  const efficiency = efficiencyOf(source);
  const fires = FIRED_HOURS[source.lit];
  return {
    woodJPerKg: J_PER_KWH * woodHeat(dryHeatOf(wood), source.moisture),
    loadKg: fedHourly
      ? (capacityKW * burnH) / (RATED_KWH_PER_KG * STOVE_NUMBERS[source.stove].efficiency)
      : fireKg(capacityKW, 24 / fires.length),
    leastLoad,
    burnH,
    efficiency,
    floorShare,
    atOnce,
    coolingH,
    radiantShare: hotSurface(faceC, ROOM_C, FACE_EMISSIVITY).radiantShare,
    mayFeed: feedingHours(design, fedHourly ? FED_HOURS[source.lit] : fires),
    fedHourly,
    byHabit: source.litBy === 'habit',
    ...(floorShare > 0 && source.storeL !== undefined && { store: storeOf(source.storeL) }),
  };
}

function storeOf(litres: number): WaterStore {
  return {
    capacity: storeCapacity(litres),
    loss: storeLoss(litres),
    mostC: STORE_MOST_C,
    pipesPerM2: PIPES_W_PER_M2K,
  };
}

/** Hours in which somebody is at home, awake, and thinks of it. */
function feedingHours(design: Design, hours: readonly number[] | null): Schedule {
  const fed = withEachHour(peopleAtHome(design) ?? always(0), (people, hour) =>
    people > 0 && isAwake(hour) && (hours === null || hours.includes(hour)) ? 1 : 0,
  );
  return { ...fed, weekend: fed.weekend ?? fed.workday };
}

/** Drawn in by the room's cracks while the fire burns, beside what they let through anyway. */
function fireAir(zone: string, { loadKg, burnH }: Stove): FixedOpening {
  const flow = (FIRE_AIR_M3_PER_KG * loadKg) / (burnH * 3600);
  return {
    kind: 'fixed',
    id: 'air for the fire',
    zone,
    flow: always(flow),
    fan: false,
    feedsFire: true,
  };
}
