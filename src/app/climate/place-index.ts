// Places and their normals on the page: what is fetched when, each file once. A name in; places, or a place's normals, out.

import landText from '../../../climates/places/land.txt?raw';
import { wordingOf } from '../../findings/wording.ts';
import { isLatin } from '../../places/folded-name.ts';
import { createGazetteer, type Gazetteer } from '../../places/gazetteer.ts';
import { landRings } from '../../places/land.ts';
import type { LocalNormals, PlaceWords } from '../../places/local-normals.ts';
import { type FoundPlace, lookedUp, type PlacesResult, placesFor } from '../../places/looked-up.ts';
import { createNormalsTable, type NormalsTable } from '../../places/normals-table.ts';
import { unpacked } from '../../places/packed.ts';
import type { ExposureId } from '../../places/wind-exposure.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';
import { placeFile } from './place-files.ts';

const MOST = 8;

const packed = async (name: string) => unpacked(await placeFile(name));

/** A thing that is loaded once; a failure is forgotten, so that it can be tried again. */
function once<T>(load: () => Promise<T>): () => Promise<T> {
  let loading: Promise<T> | undefined;
  return () => {
    loading ??= load().catch((reason) => {
      loading = undefined;
      throw reason;
    });
    return loading;
  };
}

const gazetteer = once(async () => createGazetteer(await packed('places.bin')));
const withScripts = once(async (): Promise<Gazetteer> => {
  const places = await gazetteer();
  places.addScripts(await packed('scripts.bin'));
  return places;
});
const normals = once(async () => createNormalsTable(await packed('normals.bin')));

export const LAND = landRings(landText);

/** Places for what was typed, best first. */
export async function findPlaces(asked: string): Promise<PlacesResult> {
  const places = await (isLatin(asked) ? gazetteer() : withScripts());
  return placesFor(asked, MOST, { gazetteer: places, land: LAND });
}

/** The normals looked up for a place. */
export async function placeNormals(
  place: FoundPlace,
  exposure: ExposureId | null,
  system: UnitSystem,
): Promise<LocalNormals> {
  const [places, table] = await Promise.all([gazetteer(), normals()]);
  return lookedUp(place, exposure, { gazetteer: places, land: LAND }, table, wordsIn(system));
}

function wordsIn(system: UnitSystem): PlaceWords {
  const { degrees } = wordingOf(system);
  return {
    distance: (km) => quantityText(km, 'distance', system),
    height: (m) => quantityText(m, 'elevation', system),
    degrees: system === 'metric' ? (kelvin, digits) => `${kelvin.toFixed(digits)} K` : degrees,
    speed: (metresPerSecond) => quantityText(metresPerSecond, 'speed', system),
  };
}

/** Positions of all stations: longitude and latitude [°] in turn. */
export async function stationPositions(): Promise<Float32Array> {
  const table: NormalsTable = await normals();
  return table.positions();
}
