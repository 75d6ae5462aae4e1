// Comlink ships what Node loads as .mjs with types beside it under another extension; this joins the two. The plain name
// is its older form, which the loader of TypeScript makes of what slows the thread (DEVELOPERS.md).

declare module 'comlink/dist/esm/comlink.mjs' {
  export * from 'comlink';
}

declare module 'comlink/dist/esm/node-adapter.mjs' {
  export { default } from 'comlink/dist/esm/node-adapter';
}
