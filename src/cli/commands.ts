// The commands of the command line, in the order of its help.

import { climateCommand } from './climate.ts';
import { climatesCommand } from './climates.ts';
import type { Command } from './command.ts';
import { examplesCommand } from './examples.ts';

export const COMMANDS: readonly Command[] = [climateCommand, climatesCommand, examplesCommand];
