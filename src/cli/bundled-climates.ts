// The climates that come with the program, read from disk: climates/index.json lists them, climates/ID.txt holds
// the hours. A line or a typical year out.

import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import * as v from 'valibot';
import { readBundle } from '../weather/formats/bundle-form.ts';
import type { ReadResult } from '../weather/read-result.ts';

const FOLDER = new URL('../../climates/', import.meta.url);

const IndexSchema = v.array(
  v.looseObject({
    id: v.string(),
    name: v.string(),
    character: v.string(),
  }),
);

export type BundledClimate = v.InferOutput<typeof IndexSchema>[number];

/** All bundled climates, in the order of the index. */
export async function bundledClimates(): Promise<readonly BundledClimate[]> {
  return v.parse(IndexSchema, JSON.parse(await readFile(new URL('index.json', FOLDER), 'utf8')));
}

/**
 * One bundled climate.
 *
 * @param id as `climates` lists it
 * @returns the year, or null when no climate has this id
 */
export async function bundledClimate(id: string): Promise<ReadResult | null> {
  const known = (await bundledClimates()).some((climate) => climate.id === id);
  return known ? readBundle(await readFile(fileURLToPath(new URL(`${id}.txt`, FOLDER)), 'utf8')) : null;
}
