// `examples` lists the bundled designs; `examples ID` prints one as JSON, to be saved and changed.

import { ALL_EXAMPLES } from '../design/stove-examples.ts';
import { type Command, refused } from './command.ts';
import { textTable } from './text-table.ts';

export const examplesCommand: Command = {
  name: 'examples',
  usage: 'examples [ID]',
  line: 'the bundled designs; with an ID, that design as JSON to start from',
  valued: [],
  switches: ['json'],
  positionals: [0, 1],
  run: async ({ positionals, switches }) => {
    const [id] = positionals;
    if (id === undefined) {
      const list = ALL_EXAMPLES.map((example) => ({ id: example.id, line: example.line }));
      const output = switches.has('json')
        ? JSON.stringify(list)
        : textTable(list.map((entry) => [entry.id, entry.line]));
      return { ok: true, output };
    }
    const example = ALL_EXAMPLES.find((entry) => entry.id === id);
    if (example === undefined) {
      return refused(
        `examples: no example ${id}; allowed: ${ALL_EXAMPLES.map((entry) => entry.id).join(', ')}`,
      );
    }
    return { ok: true, output: JSON.stringify(example.design, null, 2) };
  },
};
