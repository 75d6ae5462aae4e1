// Random use of the built page in a real browser. Everything the console says is a fault, with the acts before it; so
// are figures that never come back, figures that are no numbers, and a sheet that would not survive a reload.
import type { CDPSession, Page } from 'playwright-core';
import { designFromData } from '../../src/app/keeping/design-text.ts';
import { randomNumbers } from '../../src/weather/synthetic/random-numbers.ts';
import { openPage, type ServedPage } from '../browser/served-page.ts';
import { drawAct } from './page-acts.ts';

const ACTS_TOLD = 6;
const MOST_TOLD = 20;
/** The page is looked at after this many acts. */
const LOOK_EVERY = 10;

export interface PageSoak {
  readonly minutes: number;
  readonly acts: number;
  /** acts by name */
  readonly counts: Readonly<Record<string, number>>;
  /** acts that could not be done, such as a click on what had just gone */
  readonly missed: number;
  readonly looks: number;
  readonly faults: readonly string[];
  /** heap of the page after collection [MB]: at the first look, the largest, and at the last */
  readonly heapMB: readonly [first: number, most: number, last: number];
}

/**
 * Use the page at random.
 *
 * @param served where the page is and a browser to open it with
 * @param until acts or minutes, whichever is reached first
 * @param seed the same seed draws the same acts; what they meet depends on the machine's pace
 */
export async function soakPage(
  served: Pick<ServedPage, 'address' | 'browser'>,
  until: { readonly minutes?: number; readonly acts?: number },
  seed: number,
  onLook: (acts: number, heapMB: number) => void = () => {},
): Promise<PageSoak> {
  const random = randomNumbers(seed);
  const { page, complaints, close } = await openPage(served, {
    permissions: ['clipboard-read', 'clipboard-write'],
    // What a person has in the background is there to be given up under every act.
    ranges: 'by itself',
    cores: 'all',
  });
  const { minutes: minutesAtMost = Number.POSITIVE_INFINITY, acts: actsAtMost = Number.POSITIVE_INFINITY } =
    until;
  const start = performance.now();
  const passed = () => (performance.now() - start) / 60_000;
  const counts: Record<string, number> = {};
  const lately: string[] = [];
  const faults: string[] = [];
  const heaps: number[] = [];
  let [acts, missed, looks] = [0, 0, 0];
  const tell = (fault: string) => {
    if (faults.length < MOST_TOLD) faults.push(`${fault}; after ${lately.join(' > ')}`);
  };
  try {
    const devtools = await page.context().newCDPSession(page);
    while (passed() < minutesAtMost && acts < actsAtMost) {
      const act = drawAct(random);
      try {
        lately.push(`${act.name} (${(await act.run(page, random)).slice(0, 60)})`);
        counts[act.name] = (counts[act.name] ?? 0) + 1;
      } catch (error) {
        missed++;
        lately.push(`${act.name} (missed: ${String(error).slice(0, 80)})`);
      }
      if (lately.length > ACTS_TOLD) lately.shift();
      acts++;
      for (const text of complaints.splice(0)) tell(`console: ${text}`);
      if (acts % LOOK_EVERY !== 0) continue;
      looks++;
      for (const fault of await faultsOfPage(page)) tell(fault);
      heaps.push(await heapOf(devtools));
      onLook(acts, heaps.at(-1)!);
    }
  } catch (error) {
    tell(`the soak ended: ${String(error).slice(0, 300)}`);
  } finally {
    await close();
  }
  const heapMB = [heaps[0] ?? Number.NaN, Math.max(...heaps), heaps.at(-1) ?? Number.NaN] as const;
  return { minutes: passed(), acts, counts, missed, looks, faults, heapMB };
}

async function faultsOfPage(page: Page): Promise<string[]> {
  const faults: string[] = [];
  const answered = '.figures[aria-busy="false"], .notices .is-trouble';
  const isThere = await page.waitForSelector(answered, { timeout: 60_000 }).then(
    () => true,
    () => false,
  );
  if (!isThere) faults.push('no figures and no reason within a minute');
  const shown = await page
    .locator('[data-figure]')
    .evaluateAll((figures) => figures.map((figure) => figure.getAttribute('data-value')));
  for (const value of shown) {
    if (value !== null && !Number.isFinite(Number(value))) faults.push(`a figure is ${value}`);
  }
  // Messages repeat the value that was wrong, whatever it is.
  const text = await page
    .locator('.sheet > :not(.notices)')
    .evaluateAll((parts) => parts.map((part) => part.textContent).join(' '));
  const hole = /\b(undefined|NaN|Infinity|\[object Object\])\b/.exec(text);
  if (hole !== null) faults.push(`the page says ${hole[0]}`);
  const kept = await page.evaluate(() => {
    window.dispatchEvent(new Event('pagehide'));
    return localStorage.getItem('daystone.sheet');
  });
  const read = kept === null ? null : designFromData((JSON.parse(kept) as { design?: unknown }).design);
  if (!read?.ok) faults.push(`what is kept would not be read back: ${read?.message ?? 'nothing is kept'}`);
  return faults;
}

async function heapOf(devtools: CDPSession): Promise<number> {
  await devtools.send('HeapProfiler.collectGarbage');
  const { usedSize } = await devtools.send('Runtime.getHeapUsage');
  return usedSize / 1e6;
}
