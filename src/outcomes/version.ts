// The version that outcomes and reports carry. It repeats package.json's, so that the page does not have to
// bundle that file; tests/outcomes/version.test.ts keeps the two equal.

export const VERSION = '0.1.0';
