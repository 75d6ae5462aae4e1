// A file dropped anywhere on the page is opened. In: the window and what to do with a file. Out: a function that
// stops listening.

export function listenForFiles(target: Window, open: (file: File) => void): () => void {
  const hasFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
  const over = (event: DragEvent) => {
    if (hasFiles(event)) event.preventDefault();
  };
  const drop = (event: DragEvent) => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    for (const file of event.dataTransfer?.files ?? []) open(file);
  };
  target.addEventListener('dragover', over);
  target.addEventListener('drop', drop);
  return () => {
    target.removeEventListener('dragover', over);
    target.removeEventListener('drop', drop);
  };
}
