// One scale of type, one of spaces, one set of colours: the rules of style name tokens, and scripts the palette.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { APP, tokenBlocks, withoutComments } from './token-blocks.ts';

const COLOUR = /#[0-9a-f]{3,8}\b|\b(?:rgba?|hsla?|hwb|lab|lch|oklab|oklch|color|color-mix)\(/i;
const COLOUR_WORD = /^(?:white|black|gr[ae]y|red|green|blue|orange|brown|yellow|silver|gold|tan)$/;
const SPACING = /^(?:margin|padding|gap|row-gap|column-gap)(?:-|$)/;

/** What a spacing may say without a token: nothing, the browser's own, a share of the room, a hairline. */
const FREE_SPACE = /^(?:0|auto|inherit|-?[\d.]+(?:%|v[wh])|1px)$/;

/** A page box of print takes no tokens from the page: its margins and its foot stand as they are. */
const PAGE_BOX = /@page \{(?:[^{}]|\{[^{}]*\})*\}/g;

interface Declaration {
  readonly property: string;
  readonly value: string;
}

function declarationsOf(css: string): Declaration[] {
  const rules = withoutComments(css).replace(PAGE_BOX, '');
  return [...rules.matchAll(/([\w-]+)\s*:\s*([^;{}]+);/g)].map(([, property, value]) => ({
    property: property!,
    value: value!.trim(),
  }));
}

/** Words of a value with the functions around them taken off. */
function wordsOf(value: string): string[] {
  return value
    .replace(/calc\(-1 \* (var\([^)]*\))\)/g, '$1')
    .replace(/clamp\(((?:[^()]|\([^()]*\))*)\)/g, '$1')
    .split(/[\s,/]+/)
    .filter((word) => word !== '');
}

function faultsOfRules(css: string): string[] {
  return declarationsOf(css)
    .filter(({ property, value }) => {
      if (COLOUR.test(value) || wordsOf(value).some((word) => COLOUR_WORD.test(word))) return true;
      if (property === 'font-size') return !/^var\(--(?:sheet-)?(?:type|drawn)[a-z-]*\)$/.test(value);
      if (property === 'font') return value !== 'inherit' && !/\bvar\(--type-/.test(value);
      if (!SPACING.test(property)) return false;
      return wordsOf(value).some((word) => !FREE_SPACE.test(word) && !/^var\(--[a-z0-9-]+\)$/.test(word));
    })
    .map(({ property, value }) => `${property}: ${value}`);
}

function faultsOfScript(text: string): string[] {
  const code = withoutComments(text);
  const colours = code.match(/['"`>=(]#[0-9a-f]{3,8}\b|\b(?:rgba?|hsla?|oklch)\(\s*\d/gi) ?? [];
  const inline = (code.match(/style=\{\{[^}]*\}/g) ?? []).join('\n');
  const spaces = inline.match(/\b(?:fontSize|margin\w*|padding\w*|gap):\s*['"`\d][^,}\n]*/g) ?? [];
  return [...colours, ...spaces];
}

const sheets = readdirSync(join(APP, 'style')).filter((name) => name !== 'tokens.css');
const read = (name: string) => readFileSync(join(APP, name), 'utf8');

test('no rule of style has a size of type, a spacing or a colour of its own', () => {
  expect(sheets.length).toBeGreaterThanOrEqual(11);
  expect(sheets.filter((name) => !name.endsWith('.css'))).toEqual([]);
  for (const name of sheets) expect(faultsOfRules(read(`style/${name}`)), name).toEqual([]);
});

test('no script has a colour, a size of type or a spacing of its own but the palette', () => {
  const scripts = readdirSync(APP, { recursive: true, encoding: 'utf8' }).filter((name) =>
    /\.tsx?$/.test(name),
  );
  expect(scripts.length).toBeGreaterThan(100);
  for (const name of scripts) {
    if (name !== 'parts/palette.ts') expect(faultsOfScript(read(name)), name).toEqual([]);
  }
});

test('values of a rule’s own are found', () => {
  expect(faultsOfRules('a { color: #fff; }')).toHaveLength(1);
  expect(faultsOfRules('a { border: 1px solid rgb(0 0 0); }')).toHaveLength(1);
  expect(faultsOfRules('a { background: white; }')).toHaveLength(1);
  expect(faultsOfRules('a { font-size: 0.9rem; font: 500 12px serif; }')).toHaveLength(2);
  expect(faultsOfRules('a { padding: 0 2px; margin-top: -0.5rem; gap: var(--space-2) 3mm; }')).toHaveLength(
    3,
  );
  expect(faultsOfRules('a { padding: clamp(8px, 4vw, var(--space-9)); }')).toHaveLength(1);
  expect(
    faultsOfRules(
      'a { margin: 0 auto calc(-1 * var(--space-9)); padding: clamp(var(--space-6), 4vw, var(--space-9)) 1px; }',
    ),
  ).toEqual([]);
  expect(faultsOfRules('a { font-size: var(--type-small); color: var(--ink); width: 7px; }')).toEqual([]);
  expect(faultsOfScript("const red = '#a00';")).toHaveLength(1);
  expect(faultsOfScript('const red = `rgb(1 2 3)`;')).toHaveLength(1);
  expect(faultsOfScript("<p style={{ fontSize: '12px', marginTop: 4 }} />")).toHaveLength(2);
  expect(faultsOfScript("location.hash = '#report';")).toEqual([]);
});

test('every token that is named is there, and every token there is named', () => {
  const { light } = tokenBlocks();
  const sources = [
    ...[...sheets, 'tokens.css'].map((name) => withoutComments(read(`style/${name}`))),
    read('parts/palette.ts'),
    readFileSync(join(APP, '../../index.html'), 'utf8'),
  ];
  const named = new Set(
    sources.flatMap((text) => text.match(/(?<=var\()--[a-z0-9-]+|(?<=')--[a-z-]+(?=')/g) ?? []),
  );
  const local = new Set(['--cause']);
  expect([...named].filter((name) => !light.has(name) && !local.has(name))).toEqual([]);
  expect([...light.keys()].filter((name) => !named.has(name))).toEqual([]);
});

test('the scales are short and rise', () => {
  const { light } = tokenBlocks();
  for (const [start, most] of [
    ['--type-', 7],
    ['--space-', 9],
  ] as const) {
    const steps = [...light].filter(([name]) => name.startsWith(start)).map(([, value]) => value);
    expect(steps.every((value) => /^[\d.]+rem$/.test(value))).toBe(true);
    const sizes = steps.map((value) => Number.parseFloat(value));
    expect(sizes.length).toBe(most);
    expect(sizes).toEqual(sizes.toSorted((a, b) => a - b));
    expect(new Set(sizes).size).toBe(most);
  }
});
