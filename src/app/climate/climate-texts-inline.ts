// The same for the one-file build: the texts are inside the page.

const TEXTS = import.meta.glob<string>('../../../climates/*.txt', {
  query: '?raw',
  import: 'default',
  eager: true,
});

export async function climateText(id: string): Promise<string> {
  const text = TEXTS[`../../../climates/${id}.txt`];
  if (text === undefined) throw new Error(`There is no climate '${id}' with this page.`);
  return text;
}
