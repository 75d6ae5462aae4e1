// `npm run answers`: prints docs/answers.md, every question over the examples in six climates; with `-- --write` it
// writes the file. `[CLIMATE …]` asks in some of them. `--kept FILE` keeps each answer as a line of a file and asks none
// that is there already: so it can be stopped and go on, and several can work side by side, each in climates of its own,
// before one puts the page together; after a change of questions or engine begin another file. About forty minutes on one
// core. Standard error tells where it is.
import { appendFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { EXAMPLES } from '../../src/design/examples.ts';
import { QUESTIONS } from '../../src/questions/registry.ts';
import { type AnsweredFor, answersPage, type ToldAnswer } from './answers-page.ts';
import { CLIMATES } from './climates-asked.ts';
import { answerFor, climateById } from './promises.ts';

/** Lines of the map are not told here, so few of its cells are run. */
const MAP_SIDE = 5;

const words = process.argv.slice(2).filter((word) => word !== '--write');
const at = words.indexOf('--kept');
const keptIn = at < 0 ? null : (words.splice(at, 2)[1] ?? '');
const climates = words.length === 0 ? CLIMATES : CLIMATES.filter((id) => words.includes(id));
if (words.length > climates.length || keptIn === '') {
  console.error(
    `answers: ${process.argv.slice(2).join(' ')}; allowed: ${CLIMATES.join(', ')}, --kept FILE, --write`,
  );
  process.exit(2);
}
/** Lines that are whole: one that a stop cut short is asked again. */
const kept: readonly AnsweredFor[] =
  keptIn === null || !existsSync(keptIn)
    ? []
    : readFileSync(keptIn, 'utf8')
        .split('\n')
        .filter((line) => line.endsWith('}'))
        .map((line) => JSON.parse(line));
const all: AnsweredFor[] = [];
for (const { design } of EXAMPLES) {
  for (const question of QUESTIONS) {
    for (const id of climates) {
      const climate = climateById(id).year.site.name;
      const known = kept.find(
        (one) => one.climate === climate && one.house === design.name && one.answer.question === question.id,
      );
      if (known === undefined) console.error(`${design.name}, ${question.id}, ${id}`);
      const answered = known ?? {
        climate,
        house: design.name,
        answer: toldPart(await answerFor(question, { ...design, climate: id }, { mapSide: MAP_SIDE })),
      };
      all.push(answered);
      if (known === undefined && keptIn !== null) appendFileSync(keptIn, `${JSON.stringify(answered)}\n`);
    }
  }
}
const page = answersPage(all);
if (process.argv.includes('--write')) {
  writeFileSync(join(import.meta.dirname, '../../docs/answers.md'), page);
} else console.log(page);

function toldPart({ question, title, finding, sure }: ToldAnswer): ToldAnswer {
  return { question, title, finding, sure };
}
