// The places, their names in other scripts, the stations and the outline of land, read from disk when first asked for.

import { readFile } from 'node:fs/promises';
import { createGazetteer, type Gazetteer } from '../places/gazetteer.ts';
import { landRings, type Ring } from '../places/land.ts';
import { createNormalsTable, type NormalsTable } from '../places/normals-table.ts';
import { unpacked } from '../places/packed.ts';

const FOLDER = new URL('../../climates/places/', import.meta.url);

const packed = async (file: string) => unpacked(await readFile(new URL(file, FOLDER)));

export interface PlaceFiles {
  readonly gazetteer: Gazetteer;
  readonly land: readonly Ring[];
  readonly table: NormalsTable;
}

let files: Promise<PlaceFiles> | undefined;

/** All of them, read once. */
export function placeFiles(): Promise<PlaceFiles> {
  files ??= load();
  return files;
}

async function load(): Promise<PlaceFiles> {
  const gazetteer = createGazetteer(await packed('places.bin'));
  gazetteer.addScripts(await packed('scripts.bin'));
  const land = landRings(await readFile(new URL('land.txt', FOLDER), 'utf8'));
  return { gazetteer, land, table: createNormalsTable(await packed('normals.bin')) };
}
