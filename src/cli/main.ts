// The command line: finds the command, sorts its arguments, prints what it returns. Exit codes: 0 done, 2 the
// input is wrong (nothing on standard output, one line a fault on standard error), 1 a fault of the program.

import { ImpossibleYear } from '../outcomes/impossible-year.ts';
import { parseArguments } from './arguments.ts';
import { cappedLines } from './capped-lines.ts';
import { type Command, type CommandResult, type Console, refused } from './command.ts';
import { COMMANDS } from './commands.ts';
import { printable } from './printable.ts';
import { textTable } from './text-table.ts';

const HOW = 'npx daystone COMMAND …';

const CONSOLE: Console = {
  lines: () => cappedLines(process.stdin),
  write,
  progress: (done, wanted) => {
    if (process.stderr.isTTY)
      process.stderr.write(`\r${done} of ${wanted} runs${done === wanted ? '\n' : ''}`);
  },
};

// A reader that stops early (`| head`) is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : 1);
});

async function main(words: readonly string[]): Promise<number> {
  const [name, ...rest] = words;
  if (name === undefined || name === 'help' || name === '--help') {
    await write(`${help()}\n`);
    return 0;
  }
  const command = COMMANDS.find((entry) => entry.name === name);
  if (command === undefined) {
    return complain([`unknown command ${name}; allowed: ${COMMANDS.map((entry) => entry.name).join(', ')}`]);
  }
  if (rest.includes('--help')) {
    const lines = [command.line, ...(command.details ?? [])].map((line) => `  ${line}\n`);
    await write(`${command.usage}\n${lines.join('')}`);
    return 0;
  }
  const parsed = parseArguments(rest, command);
  if (!parsed.ok) return complain(parsed.faults);
  const result = await command.run(parsed.args, CONSOLE).catch(inputAtFault);
  if (!result.ok) return complain(result.faults);
  if (result.output !== '') await write(`${printable(result.output)}\n`);
  return 0;
}

/** A run may find out what no check of the design can know beforehand. */
function inputAtFault(error: unknown): CommandResult {
  if (error instanceof ImpossibleYear) return refused(error.message);
  throw error;
}

function write(text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    process.stdout.write(text, (error) => (error ? reject(error) : resolve()));
  });
}

function complain(faults: readonly string[]): number {
  for (const fault of faults) console.error(printable(fault));
  return 2;
}

function help(): string {
  const rows = COMMANDS.map((command: Command) => [command.usage, command.line]);
  return `${HOW}\n\n${textTable(rows)}`;
}

process.exitCode = await main(process.argv.slice(2)).catch((error: unknown) => {
  console.error(`a fault of the program, please report it: ${error instanceof Error ? error.stack : error}`);
  return 1;
});
