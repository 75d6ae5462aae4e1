// Goes to the inputs of a room: unfolds what its card stands in, step by step, since a fold may make what is in it only once
// it is open.

/** Frames that the page is given to show what was unfolded. */
const PATIENCE_FRAMES = 30;

export async function openRoomCard(id: string): Promise<void> {
  for (const fold of [
    '.inputs-more',
    '.inputs [data-group="house"]',
    `.inputs [data-room="${id}"] details`,
  ]) {
    const details = await shownElement(fold);
    if (!(details instanceof HTMLDetailsElement)) return;
    details.open = true;
  }
  const summary = (await shownElement(`.inputs [data-room="${id}"] summary`)) as HTMLElement | null;
  summary?.focus({ preventScroll: true });
  summary?.scrollIntoView({ block: 'center' });
}

async function shownElement(selector: string): Promise<Element | null> {
  for (let frame = 0; frame < PATIENCE_FRAMES; frame++) {
    const found = document.querySelector(selector);
    if (found) return found;
    await new Promise(requestAnimationFrame);
  }
  return null;
}
