// Comlink ships its Node adapter as .mjs with types beside it under another extension; this joins the two.

declare module 'comlink/dist/esm/node-adapter.mjs' {
  export { default } from 'comlink/dist/esm/node-adapter';
}
