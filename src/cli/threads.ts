// Worker threads of the command line: starts a module written in TypeScript as a thread and speaks to what it
// exposes through comlink. A thread that ends without being told to has died, and the pool gives its work away.

/// <reference path="./comlink-node.d.ts" />
import { Worker } from 'node:worker_threads';
import { type Remote, wrap } from 'comlink/dist/esm/comlink.mjs';
import nodeEndpoint from 'comlink/dist/esm/node-adapter.mjs';
import { threadCode } from './thread-code.ts';

export interface StartedThread<Service> {
  readonly service: Remote<Service>;
  /** rejects when the thread dies of itself */
  readonly died: Promise<never>;
  readonly end: () => void;
}

/**
 * Start a thread.
 *
 * @param script module that exposes its service on its parent port
 */
export function startThread<Service>(script: URL): StartedThread<Service> {
  const worker = new Worker(threadCode(script), { eval: true });
  const died = new Promise<never>((_, reject) => {
    worker.on('error', reject);
    worker.on('exit', (code) => reject(new Error(`the thread ended with code ${code}`)));
  });
  died.catch(() => {});
  return { service: wrap<Service>(nodeEndpoint(worker)), died, end: () => void worker.terminate() };
}
