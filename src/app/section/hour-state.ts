// One hour of the year as the section shows it. In: a year, the weather, the design and the hour. Out: where the sun
// stands in the section's plane, temperatures and humidity of the rooms, what flows, and water on the glass.

import type { Design } from '../../design/design.ts';
import type { Year } from '../../network/year.ts';
import { sunPosition } from '../../physics/sun-position.ts';
import { equatorAzimuth } from '../../weather/prepared/prepared-climate.ts';
import { instantOfHour, type TypicalYear } from '../../weather/typical-year.ts';
import { profileAngleDeg } from './noon-sun.ts';

export interface ZoneState {
  readonly id: string;
  readonly operativeC: number;
  readonly relativeHumidity: number;
  readonly heatingW: number;
  readonly ventAch: number;
  readonly condensationG: number;
}

export interface FlowState {
  readonly id: string;
  readonly kind: string;
  /** share open 0…1 */
  readonly open: number;
  /** [m³/s], each way */
  readonly flow: number;
}

export interface HourState {
  readonly hour: number;
  readonly outdoorC: number;
  readonly beamNormal: number;
  readonly globalHorizontal: number;
  /** true elevation at mid-hour [°] */
  readonly sunElevationDeg: number;
  /** in the section's plane [°]; null when the sun is down */
  readonly profileDeg: number | null;
  readonly zones: readonly ZoneState[];
  readonly flows: readonly FlowState[];
}

/** The hour put together; the sun is taken at mid-hour. */
export function hourState(year: Year, climate: TypicalYear, design: Design, hour: number): HourState {
  const { latitudeDeg, longitudeDeg } = climate.site;
  const sun = sunPosition(instantOfHour(climate, hour, 30), latitudeDeg, longitudeDeg);
  const front = equatorAzimuth(latitudeDeg) + design.house.turnDeg;
  return {
    hour,
    outdoorC: climate.dryBulbC[hour]!,
    beamNormal: climate.beamNormal[hour]!,
    globalHorizontal: climate.globalHorizontal[hour]!,
    sunElevationDeg: sun.elevationDeg,
    profileDeg: sun.elevationDeg > 0 ? profileAngleDeg(sun.elevationDeg, sun.azimuthDeg - front) : null,
    zones: [...year.zones, ...(year.rooms ?? [])].map((zone) => ({
      id: zone.id,
      operativeC: zone.operativeC[hour]!,
      relativeHumidity: zone.relativeHumidity[hour]!,
      heatingW: zone.heatingW[hour]!,
      ventAch: zone.ventAch[hour]!,
      condensationG: zone.condensationG[hour]!,
    })),
    flows: year.openings.map(({ id, kind, open, flow }) => ({
      id,
      kind,
      open: open[hour]!,
      flow: flow[hour]!,
    })),
  };
}
