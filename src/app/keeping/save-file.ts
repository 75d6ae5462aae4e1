// A file for the person, by the browser's own download.

/** How long the browser may take to fetch what it was handed [ms]. */
const FETCH_MS = 10_000;

export function saveFile(name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), FETCH_MS);
}
