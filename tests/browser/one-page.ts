// One page for the tests of a file: a page costs some seconds of a core to load, and what a person has done on it is taken
// back in a tenth of that.
import type { Page } from 'playwright-core';
import { afterAll, onTestFailed } from 'vitest';
import { type OpenPage, openPage, type PageOptions, settledFigure } from './served-page.ts';
import type { SharedSite } from './shared-browser.ts';

const SCREEN = { width: 1280, height: 900 };

/**
 * For the head of a test file: what each of its tests calls for its page, settled and as a first visitor finds it. A test
 * that fails leaves the next one a page of its own. What a test gave away (weather files, the words of the report) stays.
 */
export function onePage(served: SharedSite, options: PageOptions = {}): () => Promise<OpenPage> {
  let opened: OpenPage | null = null;
  const close = async () => {
    const last = opened;
    opened = null;
    await last?.close();
  };
  afterAll(close);
  return async () => {
    onTestFailed(close);
    if (opened === null) {
      opened = await openPage(served, options);
      await settledFigure(opened.page, 'heating');
      await opened.page.evaluate(rememberFolds);
    } else {
      opened.complaints.length = 0;
      await backToStart(opened.page, options.viewport ?? SCREEN);
    }
    return opened;
  };
}

async function backToStart(page: Page, viewport: { width: number; height: number }): Promise<void> {
  await page.emulateMedia({ media: null, colorScheme: null });
  await page.setViewportSize(viewport);
  await page.evaluate(takeAllBack);
  await settledFigure(page, 'heating');
}

interface Remembering {
  openFolds?: Element[];
}

function rememberFolds(): void {
  (window as Remembering).openFolds = [...document.querySelectorAll('details[open]')];
}

/** In the page: the sheet, no question open, every step undone, no version, no message, metric, folds as they were. */
async function takeAllBack(): Promise<void> {
  const frame = () => new Promise(requestAnimationFrame);
  const press = async (selector: string, words: string) => {
    for (;;) {
      const button = [...document.querySelectorAll<HTMLButtonElement>(selector)].find(
        ({ ariaLabel, textContent, disabled }) => !disabled && (ariaLabel ?? textContent)!.startsWith(words),
      );
      if (button === undefined) return;
      button.click();
      await frame();
    }
  };
  if (location.hash !== '') location.hash = '#sheet';
  await frame();
  (document.activeElement as HTMLElement | null)?.blur();
  await press('.table-question button', 'Leave it');
  await press('.head-tools button', 'Undo');
  await press('.version-list button', 'Remove');
  document.querySelector<HTMLInputElement>('.units input')!.click();
  const { openFolds } = window as Remembering;
  // A page that was loaded anew has its folds as they were.
  if (openFolds)
    for (const details of document.querySelectorAll('details')) details.open = openFolds.includes(details);
  await frame();
  await press('.notices button', 'Close this message');
  window.scrollTo({ top: 0, behavior: 'instant' });
}
