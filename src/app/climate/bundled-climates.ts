// The climates that come with the page: what each is, and its text fetched when first chosen. The build gives every
// climate file its own address beside the page, so the set is loaded one at a time and works from any folder.

import catalogue from '../../../climates/index.json';

export interface BundledClimate {
  readonly id: string;
  readonly name: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  readonly character: string;
  readonly credit: string;
}

const ADDRESSES = import.meta.glob<string>('../../../climates/*.txt', {
  query: '?url',
  import: 'default',
  eager: true,
});

export const BUNDLED_CLIMATES: readonly BundledClimate[] = catalogue;

/** A bundled climate's row, or undefined. */
export function bundledClimate(id: string): BundledClimate | undefined {
  return BUNDLED_CLIMATES.find((climate) => climate.id === id);
}

/** The text of a bundled climate. Rejects with a sentence for the person when it cannot be had. */
export async function fetchBundledClimate(id: string): Promise<string> {
  const address = ADDRESSES[`../../../climates/${id}.txt`];
  if (address === undefined) throw new Error(`There is no climate '${id}' with this page.`);
  const response = await fetch(address).catch(() => null);
  if (!response?.ok) throw new Error(`The climate '${id}' could not be loaded. Is the network gone?`);
  return response.text();
}
