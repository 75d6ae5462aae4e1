// The commands of the command line, in the order of its help.

import { batchCommand } from './batch.ts';
import { climateCommand } from './climate.ts';
import { climatesCommand } from './climates.ts';
import type { Command } from './command.ts';
import { examplesCommand } from './examples.ts';
import { yearCommand } from './year.ts';

export const COMMANDS: readonly Command[] = [
  yearCommand,
  climateCommand,
  climatesCommand,
  examplesCommand,
  batchCommand,
];
