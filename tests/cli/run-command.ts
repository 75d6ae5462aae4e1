// Runs a command inside the test, without a process: arguments are sorted as main.ts does, standard input is a
// list of lines, what the command writes as it goes is collected.
import { parseArguments } from '../../src/cli/arguments.ts';
import type { Command, CommandResult } from '../../src/cli/command.ts';

export interface RunOfCommand {
  readonly result: CommandResult;
  /** what was written before the result */
  readonly written: string;
}

export async function runCommand(
  command: Command,
  words: readonly string[],
  lines: readonly string[] = [],
): Promise<RunOfCommand> {
  let written = '';
  const parsed = parseArguments(words, command);
  if (!parsed.ok) return { result: parsed, written };
  const result = await command.run(parsed.args, {
    lines: async function* () {
      yield* lines;
    },
    write: async (text) => {
      written += text;
    },
    progress: () => {},
  });
  return { result, written };
}

export async function outputOf(command: Command, ...words: string[]): Promise<string> {
  const { result } = await runCommand(command, words);
  if (!result.ok) throw new Error(result.faults.join('\n'));
  return result.output;
}

export async function faultsOf(command: Command, ...words: string[]): Promise<readonly string[]> {
  const { result } = await runCommand(command, words);
  if (result.ok) throw new Error(`no fault, but ${result.output.slice(0, 100)}`);
  return result.faults;
}
