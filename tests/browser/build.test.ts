// What it takes to build, as a person with prices uses it: from the sheet to the bill, prices in a currency, in feet too, a table
// to take along; then money beside the changes, and in the order of an answer.
import { expect, test } from 'vitest';
import { violations } from './axe-violations.ts';
import { openPage, settledFigure } from './served-page.ts';
import { bytesOf, sharedSite } from './shared-browser.ts';

const served = await sharedSite('plain');

test('prices stand beside quantities, and money beside changes', async () => {
  const { page, complaints, close } = await openPage(served, { left: 'closed', acts: 'open' });
  await settledFigure(page, 'house-overheated');
  await page.waitForSelector('.acts li');
  // Days stand before there is any price.
  for (const asked of await page.locator('.acts-asks').allTextContents()) expect(asked).toMatch(/work\.$/);
  await page.locator('a[href="#build"]').first().click();
  await page.waitForSelector('.bill li');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('What it takes to build');
  expect(await page.textContent('.build-total')).toContain('of which none are given');
  const field = (name: string) => page.locator(`[data-price="${name}"]`);
  await page.fill('[data-prices="currency"]', 'CHF');
  await field('concrete floor').fill('cheap');
  await field('concrete floor').press('Tab');
  expect(await field('concrete floor').getAttribute('aria-invalid')).toBe('true');
  // The slab of the example: (110 + 9 × 2.2 − 6) m² × 0.1 m = 12.38 m³; at 200 a cubic metre 2476.
  await field('concrete floor').fill('200');
  await field('concrete floor').press('Enter');
  const cost = page.locator('[data-item="concrete floor"] .bill-cost');
  expect(await cost.textContent()).toBe('CHF 2,480');
  await field('concrete floor').fill('300');
  await page.waitForFunction(
    () => document.querySelector('[data-item="concrete floor"] .bill-cost')!.textContent === 'CHF 3,710',
  );
  await field('concrete floor').press('Escape');
  expect(await cost.textContent()).toBe('CHF 2,480');
  for (const item of await page
    .locator('.bill li')
    .evaluateAll((rows) => rows.map((row) => row.dataset.item!))) {
    if (item === 'concrete floor') continue;
    await field(item).fill('10');
    await field(item).press('Tab');
  }
  expect(await page.textContent('.build-total')).toMatch(/In money: CHF [\d,]+/);
  expect(await violations(page)).toEqual([]);
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('[data-prices="save"]')]);
  const table = (await bytesOf(download)).toString('utf8');
  expect(table).toContain('concrete floor,Concrete slab,12.38,m³,200,2476');
  expect(table).toContain('CHF');
  await page.setInputFiles('input[aria-label="Open a table of prices"]', {
    name: 'bad.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from('item,price\nmarble,3\n'),
  });
  await page.locator('.notices', { hasText: 'bad.csv: line 2: item is marble' }).waitFor();
  await page.setViewportSize({ width: 390, height: 800 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.setViewportSize({ width: 1280, height: 900 });
  await page.click('text=Back to the sheet');
  await page.waitForFunction(() =>
    [...document.querySelectorAll('.acts-asks')].some(({ textContent }) => textContent!.includes('CHF')),
  );
  // The price of a cubic metre is told for a cubic yard, 0.764555 of it.
  await page.locator('.units label', { hasText: /^US$/ }).click();
  await page.locator('a[href="#build"]').first().click();
  await page.waitForSelector('.bill li');
  expect(await field('concrete floor').inputValue()).toBe('152.911');
  expect(await cost.textContent()).toBe('CHF 2,480');
  await page.click('text=Back to the sheet');

  // A link holds the prices only where that is asked for, and then they are offered.
  const linked = await page.evaluate(async () => {
    const copied: string[] = [];
    Object.defineProperty(navigator, 'clipboard', {
      value: { writeText: async (text: string) => void copied.push(text) },
    });
    const press = (button: Element | undefined) => (button as HTMLElement).click();
    const settle = async (count: number) => {
      while (copied.length < count) await new Promise(requestAnimationFrame);
    };
    press(
      [...document.querySelectorAll('.keep-tools button')].find((one) => one.textContent === 'Copy link'),
    );
    await settle(1);
    location.hash = '#build';
    while (!document.querySelector('[data-prices="link"]')) await new Promise(requestAnimationFrame);
    press(document.querySelector('[data-prices="link"]')!);
    await settle(2);
    return copied;
  });
  expect(linked[0]).not.toContain('prices=');
  expect(linked[1]).toContain('prices=');
  await field('concrete floor').fill('1');
  await field('concrete floor').press('Enter');
  await page.evaluate((hash) => {
    location.hash = hash;
  }, new URL(linked[1]!).hash);
  await page.click('.notices >> text=Put them in place of mine');
  await page.waitForSelector('.notices >> text=The prices of the link stand.');
  await page.locator('a[href="#build"]').first().click();
  await page.waitForSelector('.bill li');
  expect(await field('concrete floor').inputValue()).toBe('152.911');
  await page.click('text=Back to the sheet');

  // A house that wants no change is soon asked.
  await page.selectOption('.head-example select', 'modest');
  await settledFigure(page, 'house-overheated');
  await page.click('button[data-act="ask"]');
  await page.selectOption('[data-ask="question"]', 'what-helps');
  await page.click('.ask-form button[type="submit"]');
  await page.waitForSelector('[data-answer="whole"]');
  const titles = async () => (await page.locator('.ask-answer summary').allTextContents()).join(' ');
  expect(await titles()).toContain('the one that weighs least first');
  await page.selectOption('[data-ask="order"]', 'money');
  expect(await titles()).toContain('the one that does most for its money first');
  expect(await page.textContent('.ask-answer')).toContain('taken off for CHF 100');
  expect(complaints).toEqual([]);
  await close();
});
