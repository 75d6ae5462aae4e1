// The order of test files: those of one project together, for a worker is handed on, with all that it has loaded and
// compiled, only to a file of its project. The engine's come first, while the pages for the browser's are built. Of each
// project those that take longest begin, so that no core ends with one of them alone.
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** As the list says that closes a run. A file that is not here comes after those of its project that are. */
const LONGEST = [
  'package',
  'matching/match',
  'consistency/promises',
  'scans/scans',
  'cli/report',
  'network/air/vents',
  'cli/run-pool',
  'published/monthly-normals-houses',
  'network/covers/cover-scans',
  'places/local-normals',
  'network/people/household',
  'faults/extremes',
  'published/greenhouse-vents',
  'cli/as-found',
  'cli/year',
  'published/typical-years',
  'weather/reader',
  'soak/soak',
  'network/books/books',
  'network/simulate',
  'network/year-start',
  'cli/years',
  'cli/ask',
  'browser/faults',
  'browser/report',
  'browser/places',
  'browser/weather',
  'browser/questions',
  'browser/rooms',
  'browser/first-visit',
  'browser/everyone',
  'browser/question-pool',
  'browser/found',
  'browser/keeping',
  'browser/from-the-sheet',
  'browser/door',
  'browser/newcomer',
  'browser/numbers',
  'browser/build',
  'browser/covers',
  'browser/handles',
  'browser/soak',
  'browser/phone',
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
