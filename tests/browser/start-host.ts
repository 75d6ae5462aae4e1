// Before the browser tests of a run: one host for all of them, ended after the last.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import type { BrowserHost } from './host.ts';

declare module 'vitest' {
  interface ProvidedContext {
    browserHost: BrowserHost;
  }
}

export default async function startHost(project: TestProject): Promise<() => Promise<void>> {
  // The environment of a test run would make another build than a person gets.
  const { NODE_ENV: _, ...env } = process.env;
  const child = spawn(process.execPath, ['--import', 'tsx', join(import.meta.dirname, 'host.ts')], {
    cwd: join(import.meta.dirname, '../..'),
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
    env,
  });
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const host = await Promise.race([
    new Promise<BrowserHost>((resolve) => child.once('message', (said) => resolve(said as BrowserHost))),
    ended.then(() =>
      Promise.reject(new Error('the pages for the browser tests could not be built or served')),
    ),
  ]);
  project.provide('browserHost', host);
  return async () => {
    child.disconnect();
    await ended;
  };
}
