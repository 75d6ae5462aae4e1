// `questions`: what can be asked of a design, id and one line each.

import { QUESTIONS } from '../questions/registry.ts';
import type { Command } from './command.ts';
import { textTable } from './text-table.ts';

export const questionsCommand: Command = {
  name: 'questions',
  usage: 'questions',
  line: 'what can be asked of a design',
  valued: [],
  switches: ['json'],
  positionals: [0, 0],
  run: async ({ switches }) => {
    const list = QUESTIONS.map(({ id, title, asks }) => ({ id, title, asks }));
    const output = switches.has('json')
      ? JSON.stringify(list)
      : textTable(list.map(({ id, asks }) => [id, asks]));
    return { ok: true, output };
  },
};
