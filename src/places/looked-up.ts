// What a person asked for, a name or a pair of coordinates, as places to choose from; and a chosen one with its surroundings
// looked up. Knows no file and no page: the unpacked data come in.

import { coordinatesIn } from './coordinates.ts';
import type { Gazetteer, Place } from './gazetteer.ts';
import { type Ring, shoreKm } from './land.ts';
import { type LocalNormals, localNormals, type PlaceWords } from './local-normals.ts';
import type { NormalsTable } from './normals-table.ts';
import type { ExposureId } from './wind-exposure.ts';

export interface PlaceData {
  readonly gazetteer: Gazetteer;
  readonly land: readonly Ring[];
}

export type PlacesResult =
  | { readonly ok: true; readonly places: readonly FoundPlace[] }
  | { readonly ok: false; readonly fault: string };

export interface FoundPlace extends Place {
  /** for coordinates: the height is that of the nearest place known, this far off [km]; absent where it is its own */
  readonly heightFromKm?: number;
}

/** A place within this is what a position is called by [km]. */
const CALLED_KM = 30;
/** Its height is looked for within this [km]. */
const HEIGHT_KM = 300;
const AROUND_KM = 25;
const MOST_AROUND = 60;

/**
 * Places for what was asked, best first.
 *
 * @param asked a name, the beginning of one, with region or country behind it or not; or a latitude and a longitude
 * @param most 1…100
 */
export function placesFor(asked: string, most: number, { gazetteer }: PlaceData): PlacesResult {
  const at = coordinatesIn(asked);
  if (at === null) return { ok: true, places: gazetteer.find(asked, most) };
  if ('fault' in at) return { ok: false, fault: at.fault };
  const [near] = gazetteer.near(at, HEIGHT_KM, 1);
  const isCalled = near !== undefined && near.distanceKm <= CALLED_KM;
  const position = positionText(at.latitudeDeg, at.longitudeDeg);
  const place: FoundPlace = {
    ...at,
    name: isCalled ? `${position}, near ${near.name}` : position,
    region: isCalled ? near.region : '',
    country: isCalled ? near.country : '',
    countryCode: isCalled ? near.countryCode : '',
    elevationM: near?.elevationM ?? 0,
    heightFromKm: near?.distanceKm ?? HEIGHT_KM,
  };
  return { ok: true, places: [place] };
}

function positionText(latitudeDeg: number, longitudeDeg: number): string {
  const degrees = (value: number) => Number(Math.abs(value).toFixed(2));
  return `${degrees(latitudeDeg)}° ${latitudeDeg < 0 ? 'S' : 'N'} ${degrees(longitudeDeg)}° ${longitudeDeg < 0 ? 'W' : 'E'}`;
}

/** The normals of a place found. */
export function lookedUp(
  place: FoundPlace,
  exposure: ExposureId | null,
  { gazetteer, land }: PlaceData,
  table: NormalsTable,
  words?: PlaceWords,
): LocalNormals {
  const heightsAround = gazetteer
    .near(place, AROUND_KM, MOST_AROUND)
    .filter(({ distanceKm }) => distanceKm > 1)
    .map(({ elevationM }) => elevationM);
  const { heightFromKm } = place;
  return localNormals(
    place,
    {
      exposure,
      heightsAround,
      seaKm: shoreKm(land, place),
      ...(heightFromKm === undefined ? {} : { heightFromKm }),
    },
    table,
    words,
  );
}
