// What axe finds on a page against WCAG 2.2 AA, as lines of text.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
/** The rules of those tags that look at colours. */
const COLOUR_RULES = ['color-contrast', 'link-in-text-block'];
const RUN_ONLY = {
  all: { runOnly: { type: 'tag', values: TAGS } },
  colours: { runOnly: { type: 'rule', values: COLOUR_RULES } },
  every: {},
};

/**
 * One line a violation, of the whole page or of one part: rule and the first element it is about.
 *
 * @param rules all of WCAG, or those of them that look at colours, for a look that differs from one seen before by its colours
 * only; or every rule that axe has, good practice too
 */
export async function violations(
  page: Page,
  part = 'html',
  rules: 'all' | 'colours' | 'every' = 'all',
): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(AXE);
  return page.evaluate(
    async ({ runOnly, part }) => {
      const { axe } = globalThis as unknown as {
        axe: {
          run: (
            part: string,
            o: object,
          ) => Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
        };
      };
      const { violations: found } = await axe.run(part, {
        ...runOnly,
        // What passes is not described element by element.
        resultTypes: ['violations'],
      });
      return found.map(
        ({ id, nodes }) =>
          `${id} (${nodes.length}): ${nodes[0]!.html.slice(0, 160)} ${nodes[0]!.failureSummary.slice(0, 300)}`,
      );
    },
    {
      runOnly: RUN_ONLY[rules],
      part,
    },
  );
}
