// The lists of places and stations, fetched when first asked for. The build gives each file its own address beside the
// page, made of what is in it, and the offline copy keeps it once it was fetched.

const ADDRESSES = import.meta.glob<string>('../../../climates/places/*.bin', {
  query: '?url',
  import: 'default',
  eager: true,
});

/** Where this page's lists lie. */
export const PLACE_ADDRESSES: readonly string[] = Object.values(ADDRESSES);

/** Why places cannot be searched here; null where they can. */
export const NO_PLACES: string | null = null;

/** Bytes of a file of places; rejects with a sentence for the person when it cannot be had. */
export async function placeFile(name: string): Promise<Uint8Array> {
  const address = ADDRESSES[`../../../climates/places/${name}`];
  const response = address === undefined ? null : await fetch(address).catch(() => null);
  const bytes = response?.ok ? await response.arrayBuffer().catch(() => null) : null;
  if (bytes === null) throw new Error('The list of places could not be loaded. Is the network gone?');
  return new Uint8Array(bytes);
}
