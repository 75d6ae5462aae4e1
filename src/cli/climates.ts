// `climates`: the bundled climates, id and one line each.

import { bundledClimates } from './bundled-climates.ts';
import type { Command } from './command.ts';
import { textTable } from './text-table.ts';

export const climatesCommand: Command = {
  name: 'climates',
  usage: 'climates',
  line: 'the bundled climates',
  valued: [],
  switches: ['json'],
  positionals: [0, 0],
  run: async ({ switches }) => {
    const climates = await bundledClimates();
    const output = switches.has('json')
      ? JSON.stringify(climates)
      : textTable(climates.map(({ id, name, character }) => [id, name, character]));
    return { ok: true, output };
  },
};
