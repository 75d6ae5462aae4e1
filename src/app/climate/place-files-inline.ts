// The same for a one-file build that was asked to hold them: they are inside the page as base 64.

const TEXTS = import.meta.glob<string>('../../../climates/places/*.bin', {
  query: '?url&inline',
  import: 'default',
  eager: true,
});

export const PLACE_ADDRESSES: readonly string[] = [];

export const NO_PLACES: string | null = null;

export async function placeFile(name: string): Promise<Uint8Array> {
  const data = TEXTS[`../../../climates/places/${name}`]!;
  const text = atob(data.slice(data.indexOf(',') + 1));
  return Uint8Array.from(text, (letter) => letter.charCodeAt(0));
}
