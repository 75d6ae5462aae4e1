// The house as one zone of air: its size, furniture, people, back-up heating and coldest corner. A design in, zone out.

import type { Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { cornerFactor } from './corner-factor.ts';
import { gainsOf, isAwayAtWeekends, moistureOf, peopleAtHome } from './household.ts';
import { resistanceOf, wallLayers } from './layers.ts';
import type { Thermostat, Zone } from './model.ts';
import { plantingIn } from './planting.ts';
import { always, byHour } from './schedule.ts';

/** Furniture and partitions, each m² of floor: heat [J/K], water [kg per unit RH]; common practice, no source. */
export const FURNITURE_J_PER_K = 20_000;
export const FURNITURE_KG = 0.3;
const DAY_FROM_H = 7;
const NIGHT_FROM_H = 22;

/** The house. */
export function houseZone(design: Design): Zone {
  const { floorAreaM2 } = design.house;
  const { wallResistance, wallLining, wallLiningM } = design.envelope;
  return {
    id: 'house',
    floorAreaM2,
    volumeM3: geometryOf(design).houseVolumeM3,
    furnitureCapacity: FURNITURE_J_PER_K * floorAreaM2,
    furnitureMoisture: FURNITURE_KG * floorAreaM2,
    thermostat: thermostatOf(design),
    gains: gainsOf(design),
    moisture: moistureOf(design),
    planting: plantingIn(design, 'house', geometryOf(design).groundFloorM2),
    people: peopleAtHome(design),
    cornerFactor: cornerFactor(resistanceOf(wallLayers(wallResistance, wallLining, wallLiningM))),
  };
}

/** Back-up heat by day and night, of weekends away as by night; null when there is none. No cooling: the tool is about houses that do without. */
function thermostatOf(design: Design): Thermostat | null {
  const { dayC, nightC, capacityKW } = design.heating;
  if (capacityKW <= 0) return null;
  const daily = byHour((hour) => (hour >= DAY_FROM_H && hour < NIGHT_FROM_H ? dayC : nightC));
  const heatC = isAwayAtWeekends(design) ? { ...daily, weekend: always(nightC).workday } : daily;
  return { heatC, coolC: null, heatCapacityW: capacityKW * 1000, coolCapacityW: 0 };
}
