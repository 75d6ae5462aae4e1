// What a command is: its name, one line of help, how its arguments look, and the function that does it. A
// command returns what to print and the exit code, or the faults in its input; main.ts prints either, so that
// nothing reaches standard output when the input is wrong.

import type { Flags, ParsedArguments } from './arguments.ts';

/** Done, or the input is wrong: one line a fault, each naming the place, the value and what is allowed. */
export type CommandResult =
  | { readonly ok: true; readonly output: string }
  | { readonly ok: false; readonly faults: readonly string[] };

export interface Console {
  /** lines of standard input */
  readonly lines: () => AsyncIterable<string>;
  /** for commands that print as they go; returns when the text is taken */
  readonly write: (text: string) => Promise<void>;
  /** how far a long command is; shown on a terminal only */
  readonly progress: (done: number, wanted: number) => void;
}

export interface Command extends Flags {
  readonly line: string;
  /** more flags, one line each, for the help of this command alone */
  readonly details?: readonly string[];
  readonly run: (args: ParsedArguments, console: Console) => Promise<CommandResult>;
}

/** A result that says what is wrong, in one line a fault. */
export function refused(...faults: readonly string[]): CommandResult {
  return { ok: false, faults };
}
