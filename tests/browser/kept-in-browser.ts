// Waiting until the page has kept what a test is about to look for after a reload.
import type { Page } from 'playwright-core';

/** Until the sheet in local storage is that of the tab that wrote it last and holds a piece of text. */
export async function sheetKept(page: Page, piece: string): Promise<void> {
  await page.waitForFunction((wanted) => {
    const kept = localStorage.getItem('daystone.sheet');
    return kept !== null && JSON.stringify(JSON.parse(kept).design).includes(wanted);
  }, piece);
}

/** Until a year of weather of the person's own is in the page's data base. */
export async function weatherKept(page: Page): Promise<void> {
  await page.waitForFunction(async () => {
    const isThere = (await indexedDB.databases()).some(({ name }) => name === 'daystone');
    if (!isThere) return false;
    return new Promise<boolean>((resolve, reject) => {
      const opening = indexedDB.open('daystone');
      opening.onerror = () => reject(opening.error);
      opening.onsuccess = () => {
        const base = opening.result;
        const counting = base.transaction('climates').objectStore('climates').count();
        counting.onerror = () => reject(counting.error);
        counting.onsuccess = () => {
          base.close();
          resolve(counting.result > 0);
        };
      };
    });
  });
}
