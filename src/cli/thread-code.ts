// Code that starts a module written in TypeScript on a worker thread. Node 20 does not read TypeScript, and a thread
// does not inherit the loader of its parent: it registers its own first.

/** Text for `new Worker(text, { eval: true })`. */
export function threadCode(script: URL): string {
  return `import('tsx/esm/api').then(({ register }) => { register(); return import(${JSON.stringify(script.href)}); })`;
}
