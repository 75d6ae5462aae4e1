// Makes climates/*.txt and climates/index.json from a folder of source files: npm run climates -- FOLDER.
// Each year goes through the same reader as a person's file, then into the compact form of bundle-form.ts.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeBundle } from '../weather/formats/bundle-form.ts';
import { describeFault } from '../weather/read-result.ts';
import { readWeather } from '../weather/reader.ts';
import { CLIMATE_CHOICES, type ClimateChoice } from './climate-list.ts';

const TARGET = join(import.meta.dirname, '../../climates');

/** What the page and the list command need to know before a climate is loaded. */
interface IndexEntry {
  readonly id: string;
  readonly name: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  readonly character: string;
  readonly source: string;
  readonly credit: string;
}

async function bundle(folder: string, choice: ClimateChoice): Promise<IndexEntry> {
  const plain = join(folder, choice.file);
  const path = existsSync(plain) ? plain : `${plain}.gz`;
  const { elevationM, file, id, name, character } = choice;
  const hints = { name, fileName: file, ...(elevationM === undefined ? {} : { elevationM }) };
  const result = await readWeather(readFileSync(path), hints);
  if (!result.ok) throw new Error(`${path}\n${result.faults.map(describeFault).join('\n')}`);
  const year = { ...result.year, id, site: { ...result.year.site, name } };
  const text = writeBundle(year);
  writeFileSync(join(TARGET, `${id}.txt`), text);
  process.stdout.write(`${id.padEnd(16)} ${(text.length / 1000).toFixed(0).padStart(4)} kB  ${name}\n`);
  const { latitudeDeg, longitudeDeg } = year.site;
  const { source, credit } = year;
  return { id, name, latitudeDeg, longitudeDeg, elevationM: year.site.elevationM, character, source, credit };
}

const folder = process.argv[2];
if (folder === undefined) {
  process.stderr.write('Give the folder with the source files: npm run climates -- FOLDER\n');
  process.exitCode = 2;
} else {
  const entries: IndexEntry[] = [];
  for (const choice of CLIMATE_CHOICES) entries.push(await bundle(folder, choice));
  writeFileSync(join(TARGET, 'index.json'), `${JSON.stringify(entries, null, 2)}\n`);
}
