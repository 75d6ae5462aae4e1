// The order of test files: those that take longest begin, so that no core ends with one of them alone. Files of the engine
// come before the browser's, whose pages are built meanwhile. The rest as Vitest has it, which is by size.
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** As the list says that closes a run. A file that is not here comes after those that are. */
const LONGEST = [
  'package',
  'consistency/promises',
  'scans/scans',
  'cli/report',
  'cli/ask',
  'browser/faults',
  'browser/weather',
  'browser/report',
  'browser/questions',
  'browser/everyone',
  'browser/keeping',
  'browser/newcomer',
  'browser/door',
  'browser/first-visit',
  'browser/verdict',
  'browser/handles',
  'browser/places',
  'browser/phone',
  'browser/numbers',
];

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) => {
      const found = LONGEST.findIndex((name) => moduleId.endsWith(`/tests/${name}.test.ts`));
      return found < 0 ? LONGEST.length : found;
    };
    return (await super.sort(files)).toSorted((one, other) => place(one) - place(other));
  }
}
