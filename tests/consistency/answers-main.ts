// `npm run answers`: prints docs/answers.md, every question over the examples in six climates; with `-- --write` it
// writes the file. `[CLIMATE …]` asks in some of them. About forty minutes on one core. Standard error tells where it is.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { EXAMPLES } from '../../src/design/examples.ts';
import { QUESTIONS } from '../../src/questions/registry.ts';
import { type AnsweredFor, answersPage } from './answers-page.ts';
import { CLIMATES } from './climates-asked.ts';
import { answerFor, climateById } from './promises.ts';

/** Lines of the map are not told here, so few of its cells are run. */
const MAP_SIDE = 5;

const words = process.argv.slice(2).filter((word) => word !== '--write');
const climates = words.length === 0 ? CLIMATES : CLIMATES.filter((id) => words.includes(id));
if (words.length > climates.length) {
  console.error(`answers: ${words.join(', ')}; allowed: ${CLIMATES.join(', ')}`);
  process.exit(2);
}
const all: AnsweredFor[] = [];
for (const { design } of EXAMPLES) {
  for (const question of QUESTIONS) {
    for (const climate of climates) {
      console.error(`${design.name}, ${question.id}, ${climate}`);
      const answer = await answerFor(question, { ...design, climate }, { mapSide: MAP_SIDE });
      all.push({ climate: climateById(climate).year.site.name, house: design.name, answer });
    }
  }
}
const page = answersPage(all);
if (process.argv.includes('--write')) {
  writeFileSync(join(import.meta.dirname, '../../docs/answers.md'), page);
} else console.log(page);
