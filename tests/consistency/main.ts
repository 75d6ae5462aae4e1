// `npm run consistent [-- WORD …]`: every question over the examples in six climates, and every house that an answer
// proposes run anew. A word names a climate, an example or a question, and only what is named of its kind is asked; so the
// whole can be run in parts. Prints a line an answer; leaves with 1 where a promise is not kept. About an hour on one core.
import { EXAMPLES } from '../../src/design/examples.ts';
import { QUESTIONS } from '../../src/questions/registry.ts';
import { CLIMATES } from './climates-asked.ts';
import { answerFor, brokenPromises } from './promises.ts';

const words = process.argv.slice(2);
const idOf = ({ id }: { readonly id: string }) => id;
const known: readonly string[] = [...CLIMATES, ...EXAMPLES.map(idOf), ...QUESTIONS.map(idOf)];
const unknown = words.filter((word) => !known.includes(word));
if (unknown.length > 0) {
  console.error(`consistent: ${unknown.join(', ')}; allowed: ${known.join(', ')}`);
  process.exit(2);
}

/** Those of a kind that were named; all where none was. */
function asked<T>(all: readonly T[], id: (one: T) => string): readonly T[] {
  const named = all.filter((one) => words.includes(id(one)));
  return named.length > 0 ? named : all;
}

let broken = 0;
for (const climate of asked(CLIMATES, (id) => id)) {
  for (const { id, design } of asked(EXAMPLES, idOf)) {
    for (const question of asked(QUESTIONS, idOf)) {
      const answer = await answerFor(question, { ...design, climate });
      const faults = brokenPromises(answer);
      broken += faults.length;
      console.log(
        `${climate}, ${id}, ${question.id}: ${answer.proposals.length} houses, ${faults.length} promises not kept`,
      );
      for (const fault of faults.slice(0, 5)) console.log(`  ${fault}`);
    }
  }
}
process.exitCode = broken > 0 ? 1 : 0;
