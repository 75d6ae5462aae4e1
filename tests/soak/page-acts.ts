// What a restless person does with the page, one act at a time, drawn at random: drags, keys, numbers and nonsense
// typed, choices, undo, versions, files good and bad, questions asked and stopped, links, reloads.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import type { RandomNumbers } from '../../src/weather/synthetic/random-numbers.ts';

export interface Act {
  readonly name: string;
  /** how often beside the others */
  readonly weight: number;
  /** what was done, for the log */
  readonly run: (page: Page, random: RandomNumbers) => Promise<string>;
}

const HOSTILE = join(import.meta.dirname, '../data/hostile');
const WEATHER = join(import.meta.dirname, '../data/weather');
const CLIMATES = join(import.meta.dirname, '../../climates');
const NONSENSE = ['', '-', 'many', '1e9', '-40', '0', '3,5', '٣', '<b>', '=1+1', '  12  ', '1e-9'];
const SHORT = { timeout: 3000 };

const below = (random: RandomNumbers, count: number) => Math.floor(random.uniform() * count);
const oneOf = <T>(random: RandomNumbers, list: readonly T[]): T => list[below(random, list.length)]!;

/** One of what a selector finds in sight, or null. */
async function any(page: Page, random: RandomNumbers, selector: string): Promise<Locator | null> {
  const all = page.locator(`${selector} >> visible=true`);
  const count = await all.count();
  return count === 0 ? null : all.nth(below(random, count));
}

/** Does something to one of the elements a selector finds. */
function onAny(
  selector: string,
  act: (element: Locator, random: RandomNumbers, page: Page) => Promise<string>,
): Act['run'] {
  return async (page, random) => {
    const element = await any(page, random, selector);
    if (element === null) return 'nothing there';
    await element.scrollIntoViewIfNeeded(SHORT);
    return act(element, random, page);
  };
}

const click = (selector: string) =>
  onAny(selector, async (element) => {
    if (await element.isDisabled()) return 'disabled';
    await element.click(SHORT);
    return 'clicked';
  });

const open =
  (folder: string, suffix: string): Act['run'] =>
  async (page, random) => {
    const name = oneOf(
      random,
      readdirSync(folder).filter((file) => file.endsWith(suffix)),
    );
    await page.setInputFiles('input[type="file"]', {
      name,
      mimeType: 'application/octet-stream',
      buffer: readFileSync(join(folder, name)),
    });
    return name;
  };

async function drag(element: Locator, random: RandomNumbers, page: Page): Promise<string> {
  const box = await element.boundingBox(SHORT);
  if (box === null) return 'out of sight';
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const [dx, dy] = [(random.uniform() - 0.5) * 300, (random.uniform() - 0.5) * 200];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 6; step++) await page.mouse.move(x + (dx * step) / 6, y + (dy * step) / 6);
  await page.mouse.up();
  return `${dx.toFixed(0)}, ${dy.toFixed(0)}`;
}

async function choose(element: Locator, random: RandomNumbers): Promise<string> {
  const values = await element
    .locator('option:not([disabled])')
    .evaluateAll((options) => options.map((option) => (option as HTMLOptionElement).value));
  if (values.length === 0) return 'no choice';
  const value = oneOf(random, values);
  await element.selectOption(value, SHORT);
  return value;
}

export const ACTS: readonly Act[] = [
  { name: 'drag a handle', weight: 10, run: onAny('[data-handle] .handle-knob', drag) },
  {
    name: 'press keys on a handle',
    weight: 6,
    run: onAny('[data-handle]', async (element, random, page) => {
      await element.focus(SHORT);
      const key = oneOf(random, ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'PageUp', 'PageDown', 'Home', 'End']);
      for (let i = 0; i <= below(random, 5); i++) await page.keyboard.press(key);
      return key;
    }),
  },
  {
    name: 'type a number',
    weight: 10,
    run: onAny('input[data-path]', async (element, random) => {
      const text = (random.uniform() * 10 ** below(random, 4)).toFixed(below(random, 3));
      await element.fill(text, SHORT);
      return `${await element.getAttribute('data-path')} ${text}`;
    }),
  },
  {
    name: 'type nonsense',
    weight: 3,
    run: onAny('input[data-path], .head-name input', async (element, random) => {
      const text = oneOf(random, NONSENSE);
      await element.fill(text, SHORT);
      return text;
    }),
  },
  {
    name: 'move a slider',
    weight: 6,
    run: onAny('input[data-slider]', async (element, random) => {
      await element.focus(SHORT);
      const key = oneOf(random, ['ArrowRight', 'ArrowLeft', 'PageUp', 'PageDown', 'Home', 'End']);
      for (let i = 0; i <= below(random, 8); i++) await element.press(key, SHORT);
      return key;
    }),
  },
  { name: 'choose', weight: 8, run: onAny('select', choose) },
  { name: 'click a choice', weight: 3, run: click('label.chip, .hour-tools button') },
  { name: 'undo', weight: 8, run: click('button:text-is("Undo")') },
  { name: 'redo', weight: 4, run: click('button:text-is("Redo")') },
  { name: 'fold', weight: 3, run: click('summary') },
  { name: 'keep a version', weight: 2, run: click('.version-keep button') },
  { name: 'use a version', weight: 3, run: click('.version-list button') },
  { name: 'compare', weight: 2, run: click('.version-check input') },
  { name: 'ask', weight: 2, run: click('.ask-form button') },
  { name: 'close a message', weight: 2, run: click('.notices button') },
  { name: 'open a bad design', weight: 2, run: open(HOSTILE, '.json') },
  { name: 'open weather', weight: 1, run: open(WEATHER, '.gz') },
  { name: 'open a climate as a file', weight: 1, run: open(CLIMATES, '.txt') },
  { name: 'copy the link', weight: 1, run: click('button:text-is("Copy link")') },
  {
    name: 'follow a link',
    weight: 1,
    run: async (page, random) => {
      const hash = await page.evaluate(() => location.hash);
      const next = hash === '' || random.uniform() < 0.3 ? '#design=broken' : hash;
      await page.evaluate((to) => {
        location.hash = '';
        location.hash = to;
      }, next);
      return next.slice(0, 20);
    },
  },
  {
    name: 'scroll',
    weight: 3,
    run: async (page, random) => {
      const share = random.uniform();
      await page.evaluate((to) => scrollTo(0, to * document.body.scrollHeight), share);
      return share.toFixed(2);
    },
  },
  {
    name: 'turn or shrink the window',
    weight: 1,
    run: async (page, random) => {
      const size = oneOf(random, [
        { width: 390, height: 844 },
        { width: 844, height: 390 },
        { width: 1280, height: 900 },
      ]);
      await page.setViewportSize(size);
      return `${size.width} px`;
    },
  },
  {
    name: 'reload',
    weight: 1,
    run: async (page) => {
      await page.reload();
      return '';
    },
  },
];

/** An act by weight. */
export function drawAct(random: RandomNumbers): Act {
  let left = random.uniform() * ACTS.reduce((sum, { weight }) => sum + weight, 0);
  for (const act of ACTS) {
    left -= act.weight;
    if (left < 0) return act;
  }
  return ACTS[0]!;
}
