// The colours of scripts against the tokens of the page: light and dark, screen and paper. Contrast by WCAG 2.2,
// success criteria 1.4.3 (text, 4.5 to 1) and 1.4.11 (what a picture needs to be understood, 3 to 1).
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import * as palette from '../../../src/app/parts/palette.ts';
import { APP, tokenBlocks } from './token-blocks.ts';

const { light, dark, print } = tokenBlocks();
const kebab = (name: string) => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** Relative luminance of '#rrggbb', WCAG 2.2. */
function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const c = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

function contrast(one: string, other: string): number {
  const [low, high] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return (high! + 0.05) / (low! + 0.05);
}

test('every role has a colour in the dark, but those that lie on what no scheme changes', () => {
  const inEveryScheme = /^--(?:typeface|type-|space-|drawn|sheet|mark|cause-|clock-width|earth-solid)/;
  const roles = [...light.keys()].filter((name) => !inEveryScheme.test(name));
  expect(roles.length).toBeGreaterThan(20);
  expect([...dark.keys()].toSorted()).toEqual(roles.toSorted());
  expect([...print.keys()].filter((name) => !light.has(name))).toEqual([]);
});

test('roles that a script asks for have a colour in both schemes', () => {
  const text = readFileSync(join(APP, 'parts/palette.ts'), 'utf8');
  const asked = text.match(/(?<=\| ')--[a-z-]+(?=')/g) ?? [];
  expect(asked.length).toBe(7);
  for (const role of asked) {
    expect(light.get(role), role).toMatch(/^#[0-9a-f]{6}/);
    expect(dark.get(role), role).toMatch(/^#[0-9a-f]{6}/);
  }
});

test('hues that paper shares with the light screen are the same', () => {
  for (const [name, colour] of Object.entries(palette.SHARED))
    expect(light.get(`--${kebab(name)}`), name).toBe(colour);
});

test('the sheet of the report has the colours of the pictures on it, in every scheme and in print', () => {
  const { ground, ...others } = palette.SHEET;
  expect(light.get('--sheet')).toBe(ground);
  for (const [name, colour] of Object.entries(others)) {
    const token = `--sheet-${kebab(name)}`;
    expect(light.get(token), token).toBe(colour);
    expect(dark.has(token) || print.has(token), token).toBe(false);
  }
  expect(print.get('--paper')).toBe(ground);
});

test('a cause has a colour on screen and on paper, and on paper the same or a paler one', () => {
  const slots = [...light.keys()].flatMap((name) => /^--cause-(.+)$/.exec(name)?.[1] ?? []);
  expect(slots.toSorted()).toEqual(Object.keys(palette.CAUSE).toSorted());
  for (const [slot, onPaper] of Object.entries(palette.CAUSE)) {
    const onScreen = light.get(`--cause-${slot}`)!;
    expect(luminance(onPaper), slot).toBeGreaterThanOrEqual(luminance(onScreen));
  }
});

test('words stand out from what they are written on, light and dark, screen and paper', () => {
  const pairs = (tokens: ReadonlyMap<string, string>) => {
    const of = (name: string) => tokens.get(name) ?? light.get(name)!;
    return ['--ink', '--ink-soft', '--good', '--fair', '--poor'].flatMap((word) =>
      ['--paper', '--paper-raised'].map((ground) => [of(word), of(ground), `${word} on ${ground}`] as const),
    );
  };
  const { ground, ink, inkSoft } = palette.SHEET;
  const all = [
    ...pairs(light),
    ...pairs(dark),
    ...pairs(print),
    [ink, ground, 'ink on the sheet'] as const,
    [inkSoft, ground, 'soft ink on the sheet'] as const,
  ];
  expect(all.length).toBe(32);
  for (const [word, on, what] of all) expect(contrast(word, on), what).toBeGreaterThanOrEqual(4.5);
});

test('lines of a chart stand out from their ground, light and dark, screen and paper', () => {
  for (const role of ['--ink', '--clay', '--sky-deep', '--moss', '--glass']) {
    expect(contrast(light.get(role)!, light.get('--paper')!), role).toBeGreaterThanOrEqual(3);
    expect(contrast(dark.get(role)!, dark.get('--paper')!), role).toBeGreaterThanOrEqual(3);
  }
  const { clay, skyDeep, moss, fair } = palette.SHARED;
  for (const line of [clay, skyDeep, moss, fair, palette.SHEET.ink])
    expect(contrast(line, palette.SHEET.ground), line).toBeGreaterThanOrEqual(3);
});

test('what the browser and the home screen put around the page has the colour of its paper', () => {
  const root = join(APP, '../..');
  const head = readFileSync(join(root, 'index.html'), 'utf8');
  const around = [...head.matchAll(/content="(#\w+)" media="\(prefers-color-scheme: (light|dark)\)"/g)];
  expect(around.map(([, colour, scheme]) => [scheme, colour])).toEqual([
    ['light', light.get('--paper')],
    ['dark', dark.get('--paper')],
  ]);
  const manifest = readFileSync(join(root, 'vite.config.ts'), 'utf8').match(/(?<=_color: ')#\w+/g);
  expect(manifest).toEqual([light.get('--paper'), light.get('--paper')]);
});

test('every colour of the palette is written out in six figures', () => {
  const { screenColour: _, ...groups } = palette;
  const colours = Object.values(groups).flatMap((group) => Object.values(group));
  expect(colours.length).toBeGreaterThan(50);
  for (const colour of colours) expect(colour).toMatch(/^#[0-9a-f]{6}$/);
});
