// The text of a bundled climate, fetched when first asked for. The build gives every climate file its own address
// beside the page.

const ADDRESSES = import.meta.glob<string>('../../../climates/*.txt', {
  query: '?url',
  import: 'default',
  eager: true,
});

/** Rejects with a sentence for the person when it cannot be had. */
export async function climateText(id: string): Promise<string> {
  const address = ADDRESSES[`../../../climates/${id}.txt`];
  if (address === undefined)
    throw new Error(
      `There is no climate '${id}' with this page. A newer page may have it; the design is kept as it is.`,
    );
  const response = await fetch(address).catch(() => null);
  const text = response?.ok ? await response.text().catch(() => null) : null;
  if (text === null) throw new Error(`The climate '${id}' could not be loaded. Is the network gone?`);
  return text;
}
