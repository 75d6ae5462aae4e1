#!/usr/bin/env node
// The command `daystone`. In the project it runs the sources as they stand, through the loader of TypeScript; in the
// package, which holds no sources, it runs the modules built from them.
import { existsSync } from 'node:fs';

const sources = new URL('../src/cli/main.ts', import.meta.url);
if (existsSync(sources)) {
  const { register } = await import('tsx/esm/api');
  register();
  await import(sources.href);
} else {
  await import('../lib/modules/command-line.js');
}
