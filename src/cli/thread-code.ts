// Code that starts a module of this folder on a worker thread. In the sources that is a module written in TypeScript:
// Node 20 does not read it, and a thread does not inherit the loader of its parent, so it registers its own first. In
// the built package it is a module of JavaScript under the same name beside this one.

/** Text for `new Worker(text, { eval: true })`; the script is named as in the sources. */
export function threadCode(script: URL): string {
  if (!import.meta.url.endsWith('.ts')) {
    return `import(${JSON.stringify(script.href.replace(/\.ts$/, '.js'))})`;
  }
  // By its whole address, for code given as text looks for packages from the folder the person stands in.
  const loader = JSON.stringify(import.meta.resolve('tsx/esm/api'));
  return `import(${loader}).then(({ register }) => { register(); return import(${JSON.stringify(script.href)}); })`;
}
