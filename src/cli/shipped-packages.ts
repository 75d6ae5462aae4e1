// What other people's code is inside the built page and the package, with its licence. In: the folder of the project.
// Out: the packages that the sources use, theirs in turn, and the few that the build itself puts in.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  /** SPDX id as the package says, or as its text reads */
  readonly licence: string;
  /** the whole text of its licence file */
  readonly text: string;
}

/**
 * Packages whose code or type the sources use. The builds take them in whole, so that what is built needs no package
 * and package.json names none as a dependency; the builds are held to this list.
 */
const USED = [
  '@fontsource-variable/jost',
  '@preact/signals',
  'comlink',
  'd3-contour',
  'idb-keyval',
  'ml-matrix',
  'papaparse',
  'preact',
  'suncalc',
  'uplot',
  'valibot',
];

/** Parts of the offline copy, and the loader of chunks, that the build adds. */
const ADDED_BY_BUILD = [
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
  'workbox-strategies',
  'workbox-window',
  'vite-plugin-pwa',
  'vite',
];

/** All of them, by name; throws where one has no licence file, since then it must not ship. */
export function shippedPackages(root: string): readonly ShippedPackage[] {
  const names = new Set<string>();
  const enter = (name: string) => {
    // Types leave nothing in a build.
    if (names.has(name) || name.startsWith('@types/')) return;
    names.add(name);
    for (const next of Object.keys(packageAt(folderOf(root, name)).dependencies ?? {})) enter(next);
  };
  for (const name of USED) enter(name);
  for (const name of ADDED_BY_BUILD) names.add(name);
  return [...names].sort().map((name) => shipped(root, name));
}

/** The list as a page of docs. */
export function licencePage(packages: readonly ShippedPackage[]): string {
  const rows = [['package', 'version', 'licence'], ...packages.map((p) => [p.name, p.version, p.licence])];
  const widths = [0, 1, 2].map((column) => Math.max(...rows.map((row) => row[column]!.length)));
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell, i) => cell.padEnd(widths[i]!)).join(' | ')} |`;
  const [head = [], ...body] = rows;
  const table = [line(head), line(widths.map((width) => '-'.repeat(width))), ...body.map(line)];
  return `${PAGE_HEAD}\n\n${table.join('\n')}\n`;
}

const PAGE_HEAD = `# What ships, and under which licence

Written by \`npm run licences\` from the installed packages; a test fails when it is out of date, and another when the
built page holds a package that is not listed. The texts themselves lie beside the built page as \`licences.txt\`, and at
the end of the one-file build. Daystone itself is under the MIT licence, its weather under the terms listed in
\`climates/SOURCES.md\`, its places, stations and outline of land under those in \`places/README.md\`.`;

/** One text of all licences, to lie beside the built page. */
export function licenceText(packages: readonly ShippedPackage[]): string {
  const head =
    'Daystone is under the MIT licence. What is built of it also holds code, and a typeface, of the following packages.';
  const parts = packages.map(
    ({ name, version, licence, text }) => `${'='.repeat(72)}\n${name} ${version}: ${licence}\n\n${text}`,
  );
  return `${[head, ...parts].join('\n\n')}\n`;
}

function shipped(root: string, name: string): ShippedPackage {
  const folder = folderOf(root, name);
  const { version, license } = packageAt(folder);
  const file = readdirSync(folder).find((entry) => /^(licen[cs]e|copying)/i.test(entry));
  if (file === undefined) throw new Error(`${name} ${version} has no licence file`);
  const text = readFileSync(join(folder, file), 'utf8')
    .replace(/\r\n/g, '\n')
    .replace(/[ \t]+$/gm, '')
    // A build tool's own dependencies do not ship.
    .split(/^# Licenses of bundled dependencies/m)[0]!
    .trim();
  return { name, version, licence: license ?? licenceOfText(text), text };
}

function licenceOfText(text: string): string {
  const isBsd = text.includes('Redistribution and use in source and binary forms');
  if (!isBsd) return 'see its text';
  return text.includes('Neither the name') ? 'BSD-3-Clause' : 'BSD-2-Clause';
}

function folderOf(root: string, name: string): string {
  const folder = join(root, 'node_modules', name);
  if (!existsSync(folder)) throw new Error(`${name} is not installed; run npm ci`);
  return folder;
}

function packageAt(folder: string): {
  readonly version: string;
  readonly license?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
} {
  return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
}
