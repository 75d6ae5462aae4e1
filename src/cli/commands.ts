// The commands of the command line, in the order of its help.

import { asFoundCommand } from './as-found.ts';
import { askCommand } from './ask.ts';
import { batchCommand } from './batch.ts';
import { climateCommand } from './climate.ts';
import { climatesCommand } from './climates.ts';
import type { Command } from './command.ts';
import { examplesCommand } from './examples.ts';
import { placesCommand } from './places.ts';
import { quantitiesCommand } from './quantities.ts';
import { questionsCommand } from './questions.ts';
import { reportCommand } from './report.ts';
import { yearCommand } from './year.ts';
import { yearsCommand } from './years.ts';

export const COMMANDS: readonly Command[] = [
  yearCommand,
  yearsCommand,
  askCommand,
  quantitiesCommand,
  asFoundCommand,
  reportCommand,
  climateCommand,
  climatesCommand,
  placesCommand,
  examplesCommand,
  questionsCommand,
  batchCommand,
];
