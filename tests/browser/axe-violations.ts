// What axe finds on a page against WCAG 2.2 AA, as lines of text.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** One line a violation, of the whole page or of one part: rule and the first element it is about. */
export async function violations(page: Page, part = 'html'): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(
    async ({ tags, part }) => {
      const { axe } = globalThis as unknown as {
        axe: {
          run: (
            part: string,
            o: object,
          ) => Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
        };
      };
      const { violations: found } = await axe.run(part, {
        runOnly: { type: 'tag', values: tags },
        // What passes is not described element by element.
        resultTypes: ['violations'],
      });
      return found.map(
        ({ id, nodes }) =>
          `${id} (${nodes.length}): ${nodes[0]!.html.slice(0, 160)} ${nodes[0]!.failureSummary.slice(0, 300)}`,
      );
    },
    { tags: TAGS, part },
  );
}
