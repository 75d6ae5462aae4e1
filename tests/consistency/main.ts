// `npm run consistent`: every question over the three examples in six climates, and every house that an answer proposes run
// anew. Prints a line an answer; leaves with 1 where a promise is not kept. About ten minutes on one core.
import { EXAMPLES } from '../../src/design/examples.ts';
import { QUESTIONS } from '../../src/questions/registry.ts';
import { answerFor, brokenPromises } from './promises.ts';

const CLIMATES = ['denver', 'anchorage', 'tucson', 'belfast', 'quillayute', 'southern-chile'];

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
