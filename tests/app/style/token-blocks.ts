// Reads the tokens of the page out of style/tokens.css: what holds in every scheme, what the dark scheme and print
// put in its place.
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

export const APP = resolve(import.meta.dirname, '../../../src/app');

export type Tokens = ReadonlyMap<string, string>;

export interface TokenBlocks {
  readonly light: Tokens;
  readonly dark: Tokens;
  readonly print: Tokens;
}

/** A style sheet or a script without its comments. */
export function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1');
}

export function tokenBlocks(): TokenBlocks {
  const css = withoutComments(readFileSync(join(APP, 'style/tokens.css'), 'utf8'));
  const inside = (query: RegExp) => declarations(query.exec(css)?.[0] ?? '');
  const dark = /@media \(prefers-color-scheme: dark\) \{[^{}]*\{[^{}]*\}\s*\}/;
  const print = /@media print \{[^{}]*\{[^{}]*\}\s*\}/;
  return {
    light: declarations(css.replace(dark, '').replace(print, '')),
    dark: inside(dark),
    print: inside(print),
  };
}

function declarations(css: string): Tokens {
  return new Map([...css.matchAll(/(--[a-z0-9-]+):\s*([^;]+);/g)].map(([, name, value]) => [name!, value!]));
}
