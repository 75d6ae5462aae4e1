// The order of test files. Those that take longest begin, so that no core ends with one of them alone; files of the engine
// come before the browser's, whose pages are built meanwhile. After them file by file of one project and one environment,
// for a worker is handed on, with all that it has loaded and compiled, only to a file that wants one like it.
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
  'browser/report',
  'browser/questions',
  'browser/everyone',
  'browser/rooms',
  'browser/keeping',
  'browser/newcomer',
  'browser/places',
  'browser/found',
  'browser/build',
  'browser/door',
  'browser/first-visit',
  'browser/verdict',
  'browser/handles',
  'browser/phone',
  'browser/numbers',
];
/** Of the projects, after the longest files of the engine; the unit files, most of which are short, fill the cores at the end. */
const PROJECTS = ['browser', 'unit'];

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) => {
      const found = LONGEST.findIndex((name) => moduleId.endsWith(`/tests/${name}.test.ts`));
      return found < 0 ? LONGEST.length : found;
    };
    const turn = (file: TestSpecification) =>
      file.project.name === 'unit' && place(file) < LONGEST.length ? -1 : PROJECTS.indexOf(file.project.name);
    return (await super.sort(files)).toSorted(
      (one, other) => turn(one) - turn(other) || place(one) - place(other),
    );
  }
}
