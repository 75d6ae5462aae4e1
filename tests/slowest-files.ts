// Says at the end of a run which test files took longest, so that a suite that grows slow is seen growing. A file's time
// is what its worker spent on it: loading what it imports, and its tests.
import { relative } from 'node:path';
import type { Reporter, TestModule, Vitest } from 'vitest/node';

const SHOWN = 10;

export default class SlowestFiles implements Reporter {
  #vitest: Vitest | undefined;

  onInit(vitest: Vitest): void {
    this.#vitest = vitest;
  }

  onTestRunEnd(modules: readonly TestModule[]): void {
    const { logger, config } = this.#vitest!;
    const files = modules.map((module) => {
      const { collectDuration, duration, environmentSetupDuration, setupDuration } = module.diagnostic();
      return {
        file: relative(config.root, module.moduleId),
        seconds: (collectDuration + duration + environmentSetupDuration + setupDuration) / 1000,
      };
    });
    const slowest = files.toSorted((a, b) => b.seconds - a.seconds).slice(0, SHOWN);
    const all = files.reduce((sum, { seconds }) => sum + seconds, 0);
    logger.log(
      `\nThe ${slowest.length} slowest of ${files.length} files, ${all.toFixed(0)} s in all workers`,
    );
    for (const { file, seconds } of slowest) logger.log(`${seconds.toFixed(1).padStart(7)} s  ${file}`);
  }
}
