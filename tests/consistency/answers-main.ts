// `npm run answers`: prints docs/answers.md, every question over the three examples in six climates; with `-- --write` it
// writes the file. About a quarter of an hour on one core. It tells on standard error which answer it is at.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { EXAMPLES } from '../../src/design/examples.ts';
import { QUESTIONS } from '../../src/questions/registry.ts';
import { type AnsweredFor, answersPage } from './answers-page.ts';
import { CLIMATES } from './climates-asked.ts';
import { answerFor, climateById } from './promises.ts';

const all: AnsweredFor[] = [];
for (const { design } of EXAMPLES) {
  for (const question of QUESTIONS) {
    for (const climate of CLIMATES) {
      console.error(`${design.name}, ${question.id}, ${climate}`);
      const answer = await answerFor(question, { ...design, climate });
      all.push({ climate: climateById(climate).year.site.name, house: design.name, answer });
    }
  }
}
const page = answersPage(all);
if (process.argv.includes('--write')) {
  writeFileSync(join(import.meta.dirname, '../../docs/answers.md'), page);
} else console.log(page);
