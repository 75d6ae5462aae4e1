// The foot of every printed page: what the report is of, and the page's number. Only a rule for pages can print there,
// and it holds the report's own text; the page's policy forbids inline styles, so the rule is a sheet made by script.

import { useEffect } from 'preact/hooks';

/** Print a foot on every page as long as the calling component is there; none for null. */
export function usePageFoot(text: string | null): void {
  useEffect(() => {
    if (text === null) return;
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(pageFoot(text));
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
  }, [text]);
}

function pageFoot(text: string): string {
  const quoted = text.replace(/[\\"<]/g, ' ').replace(/\s+/g, ' ');
  return `@page { @bottom-left { content: "${quoted}"; } @bottom-right { content: counter(page) " / " counter(pages); } }`;
}
