// `npm run consistent [-- CLIMATE …]`: every question over the examples in six climates or some of them, and every house
// that an answer proposes run anew. Prints a line an answer; leaves with 1 where a promise is not kept. About ten minutes on one core.
import { EXAMPLES } from '../../src/design/examples.ts';
import { QUESTIONS } from '../../src/questions/registry.ts';
import { CLIMATES as ALL } from './climates-asked.ts';
import { answerFor, brokenPromises } from './promises.ts';

const asked = process.argv.slice(2);
const unknown = asked.filter((id) => !(ALL as readonly string[]).includes(id));
if (unknown.length > 0) {
  console.error(`consistent: ${unknown.join(', ')}; allowed: ${ALL.join(', ')}`);
  process.exit(2);
}
const CLIMATES = asked.length > 0 ? asked : ALL;

let broken = 0;
for (const climate of CLIMATES) {
  for (const { id, design } of EXAMPLES) {
    for (const question of QUESTIONS) {
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
