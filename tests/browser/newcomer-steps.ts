// A newcomer's whole job on the built page, act by act: an own house out of five answers, its verdict, what clients ask,
// the report. An act is a press, a choice, or one field typed. A page in; the acts, told, out.
import type { Page } from 'playwright-core';
import { settledFigure } from './served-page.ts';

export interface Act {
  readonly kind: 'press' | 'choose' | 'type';
  readonly what: string;
}

export interface NewcomerJob {
  readonly acts: readonly Act[];
  /** acts until the first answer of the own house */
  readonly toFirstAnswer: number;
  readonly verdict: string;
}

/**
 * @param questions ids of questions to ask; each runs many years
 * @param seen called at the end of each part, to look at the page
 */
export async function newcomer(
  page: Page,
  questions: readonly string[],
  seen: (part: 'first screen' | 'five answers' | 'own house' | 'report') => Promise<void> = async () => {},
): Promise<NewcomerJob> {
  const acts: Act[] = [];
  const press = async (selector: string, what: string) => {
    await page.click(selector);
    acts.push({ kind: 'press', what });
  };
  const choose = async (option: string, what: string) => {
    await page.locator(`label:has([data-start="${option}"])`).click();
    acts.push({ kind: 'choose', what });
  };
  const type = async (selector: string, text: string, what: string) => {
    await page.click(selector);
    await page.keyboard.press('Control+A');
    await page.keyboard.type(text);
    await page.keyboard.press('Tab');
    acts.push({ kind: 'type', what });
  };

  await settledFigure(page, 'house-overheated');
  await seen('first screen');
  await press('[data-act="own"]', 'start with your own');
  await page.waitForSelector('[data-start="go"]');
  await type('[data-start="place"]', '46.6 N, 112 W', 'where: latitude and longitude');
  await type('[data-field="start-floor"]', '120', 'how large: 120 m²');
  await choose('glass much', 'glass: a fifth of the floor');
  await choose('join closed', 'a sunspace behind a wall with a door');
  await choose('build earth', 'built of adobe or rammed earth');
  await seen('five answers');
  await press('[data-start="go"]', 'see its year');
  await page.waitForSelector('.sheet:not([hidden])');
  await settledFigure(page, 'house-overheated');
  const verdict = (await page.textContent('.verdict-line')) ?? '';
  const toFirstAnswer = acts.length;
  await seen('own house');
  if (questions.length > 0) await press('[data-act="ask"]', 'ask a question');
  for (const question of questions) {
    await page.waitForSelector('[data-ask="question"]');
    if ((await page.inputValue('[data-ask="question"]')) !== question) {
      await page.selectOption('[data-ask="question"]', question);
      acts.push({ kind: 'choose', what: `the question "${question}"` });
    }
    await press('.ask-form button[type="submit"]', 'ask');
    await page.waitForSelector('.ask-progress', { state: 'detached' });
    await page.waitForSelector('[data-answer="whole"]');
  }
  await press('.keep-tools >> text=Report', 'the report');
  await page.waitForSelector('.report-view[aria-busy="false"] .paper-what-we-tried td');
  await seen('report');
  return { acts, toFirstAnswer, verdict };
}
