// Before the browser tests of a run: one host for all of them, ended after the last. It builds while other tests run; a
// browser test asks for it (`browserHost` of shared-browser.ts) and is answered once it stands.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import type { BrowserHost } from './host.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** tells the host as JSON once it stands, or why it does not */
    hostAddress: string;
  }
}

export default async function startHost(project: TestProject): Promise<() => Promise<void>> {
  // The environment of a test run would make another build than a person gets.
  const { NODE_ENV: _, ...env } = process.env;
  // As the workers of a run are started; see SHARED of vite.config.ts.
  const words = ['--single-threaded', '--import', 'tsx/esm', join(import.meta.dirname, 'host.ts')];
  const child = spawn(process.execPath, words, {
    cwd: join(import.meta.dirname, '../..'),
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
    env,
  });
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const standing = Promise.race([
    new Promise<BrowserHost>((resolve) => child.once('message', (said) => resolve(said as BrowserHost))),
    ended.then(() => null),
  ]);
  const desk = createServer(async (_request, response) => {
    const host = await standing;
    response.statusCode = host === null ? 500 : 200;
    response.end(JSON.stringify(host));
  }).listen(0, '127.0.0.1');
  await once(desk, 'listening');
  project.provide('hostAddress', `http://127.0.0.1:${(desk.address() as AddressInfo).port}/`);
  return async () => {
    desk.close();
    if (child.connected) child.disconnect();
    await ended;
  };
}
