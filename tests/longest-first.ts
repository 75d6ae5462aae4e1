// The order of test files: those of one project together, for a worker is handed on, with all that it has loaded and
// compiled, only to a file of its project. The engine's come first, while the pages for the browser's are built. Of each
// project those that take longest begin, so that no core ends with one of them alone.
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** As the list says that closes a run. A file that is not here comes after those of its project that are. */
const LONGEST = [
  'package',
  'consistency/promises',
  'scans/scans',
  'cli/report',
  'matching/match',
  'published/monthly-normals-houses',
  'network/books/books',
  'published/typical-years',
  'faults/extremes',
  'cli/run-pool',
  'network/simulate',
  'network/covers/cover-scans',
  'soak/soak',
  'network/year-start',
  'cli/ask',
  'browser/faults',
  'browser/weather',
  'browser/questions',
  'browser/report',
  'browser/rooms',
  'browser/everyone',
  'browser/places',
  'browser/question-pool',
  'browser/keeping',
  'browser/from-the-sheet',
  'browser/found',
  'browser/first-visit',
  'browser/newcomer',
  'browser/door',
  'browser/handles',
  'browser/build',
  'browser/covers',
  'browser/soak',
  'browser/phone',
  'browser/numbers',
  'browser/one-file',
];
const PROJECTS = ['unit', 'browser'];

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) => {
      const found = LONGEST.findIndex((name) => moduleId.endsWith(`/tests/${name}.test.ts`));
      return found < 0 ? LONGEST.length : found;
    };
    const turn = ({ project }: TestSpecification) => PROJECTS.indexOf(project.name);
    return (await super.sort(files)).toSorted(
      (one, other) => turn(one) - turn(other) || place(one) - place(other),
    );
  }
}
