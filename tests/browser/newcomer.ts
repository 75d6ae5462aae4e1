// Prints docs/newcomer.md and its pictures: a newcomer's whole job on the built page, in counted acts, and the first screen
// at four widths. `npx tsx tests/browser/newcomer.ts` writes them; with `--house` it asks no questions, which run many years.
import { writeFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { newcomer } from './newcomer-steps.ts';
import { servePage } from './served-page.ts';

const QUESTIONS = ['how-much-glass', 'upright-or-leaning', 'how-much-mass', 'open-or-closed'];
const WIDTHS = [390, 768, 1024, 1440];
const DOCS = new URL('../../docs/', import.meta.url);

async function picture(page: Page, name: string): Promise<void> {
  const wire = await page.context().newCDPSession(page);
  const { data } = await wire.send('Page.captureScreenshot', { format: 'webp', quality: 55 });
  writeFileSync(new URL(`first-screen/${name}.webp`, DOCS), Buffer.from(data, 'base64'));
  await wire.detach();
}

const wanted = process.argv.includes('--house') ? [] : QUESTIONS;
const served = await servePage();
const page = await served.browser.newPage({ viewport: { width: 1280, height: 900 } });
page.setDefaultTimeout(600_000);
await page.goto(served.address);
const { acts, toFirstAnswer, verdict } = await newcomer(page, wanted, async (part) => {
  if (part === 'five answers') await picture(page, 'five-answers');
  if (part !== 'first screen') return;
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: width < 600 ? 844 : 900 });
    await picture(page, `${width}`);
  }
  await page.setViewportSize({ width: 1280, height: 900 });
});
await served.close();

const lines = acts.map(({ kind, what }, i) => `| ${i + 1} | ${kind} | ${what} |`);
writeFileSync(
  new URL('newcomer.md', DOCS),
  `# A newcomer's whole job

Written by \`npx tsx tests/browser/newcomer.ts\`, which does it on the page with mouse and keys: a house of one's own,
${wanted.length === 0 ? 'and' : `${wanted.length} questions,`} the report. An act is a press, a choice, or one field typed: ${toFirstAnswer} acts to the first answer,
${acts.length} for the whole job. \`tests/browser/newcomer.test.ts\` holds the page to the acts that make house and report.

The first answer was: "${verdict}"

| # | act | what |
| --: | --- | --- |
${lines.join('\n')}

The first screen at ${WIDTHS.join(', ')} px, and the five answers:

${[...WIDTHS.map(String), 'five-answers'].map((name) => `![${name}](first-screen/${name}.webp)`).join('\n\n')}
`,
);
console.log(`${toFirstAnswer} acts to the first answer, ${acts.length} for the whole job`);
