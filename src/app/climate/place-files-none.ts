// The same for the one-file build, which leaves them out.

export const PLACE_ADDRESSES: readonly string[] = [];

export const NO_PLACES: string | null =
  'This page in one file holds no list of places, to stay small. Search on the page as a site, or type the normals below.';

export async function placeFile(_name: string): Promise<Uint8Array> {
  throw new Error(NO_PLACES!);
}
