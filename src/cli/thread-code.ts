// Code that starts a module of this folder on a worker thread. In the sources that is a module written in TypeScript:
// Node 20 does not read it, and a thread does not inherit the loader of its parent, so it registers its own first. In
// the built package it is a module of JavaScript beside this one.

/** The thread's module by its name, as it stands beside this one. */
export function threadScript(name: 'batch-thread' | 'simulation-thread'): URL {
  const file = `./${name}${isSource(import.meta.url) ? '.ts' : '.js'}`;
  return new URL(file, import.meta.url);
}

/** Text for `new Worker(text, { eval: true })`. */
export function threadCode(script: URL): string {
  const start = `import(${JSON.stringify(script.href)})`;
  if (!isSource(script.href)) return start;
  // By its whole address, for code given as text looks for packages from the folder the person stands in.
  const loader = JSON.stringify(import.meta.resolve('tsx/esm/api'));
  return `import(${loader}).then(({ register }) => { register(); return ${start}; })`;
}

function isSource(address: string): boolean {
  return address.endsWith('.ts');
}
