// The words after a command, sorted into flags and the rest. Unknown flags, missing values and flags given
// twice are faults, each with what is allowed. `--flag value` and `--flag=value` both work; `--` ends flags.

/** What a command may be given. */
export interface Flags {
  /** of the command, for the faults */
  readonly name: string;
  readonly usage: string;
  /** flags that take a value, and flags that stand alone, both without dashes */
  readonly valued: readonly string[];
  readonly switches: readonly string[];
  /** of the flags that take a value, those that may come more than once */
  readonly repeated?: readonly string[];
  /** fewest and most arguments that are no flags */
  readonly positionals: readonly [number, number];
}

export interface ParsedArguments {
  readonly positionals: readonly string[];
  readonly values: ReadonlyMap<string, string>;
  /** flags that may come more than once, with their values in order */
  readonly lists: ReadonlyMap<string, readonly string[]>;
  readonly switches: ReadonlySet<string>;
}

export type ArgumentResult =
  | { readonly ok: true; readonly args: ParsedArguments }
  | { readonly ok: false; readonly faults: readonly string[] };

/**
 * Sort the words of a command line.
 *
 * @param words what follows the command's name
 * @param command the flags and the number of arguments it knows
 */
export function parseArguments(words: readonly string[], command: Flags): ArgumentResult {
  const positionals: string[] = [];
  const values = new Map<string, string>();
  const lists = new Map<string, string[]>();
  const switches = new Set<string>();
  const faults: string[] = [];
  const known = [
    ...command.valued.map((flag) => `--${flag} VALUE`),
    ...command.switches.map((f) => `--${f}`),
  ];
  const allowed = known.length === 0 ? 'no flags' : known.join(', ');

  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    if (word === '--') {
      positionals.push(...words.slice(i + 1));
      break;
    }
    // a number may be negative, and so may a latitude
    if (!word.startsWith('-') || word === '-' || /^-\.?\d/.test(word)) {
      positionals.push(word);
      continue;
    }
    const equals = word.indexOf('=');
    const flag = word.slice(2, equals < 0 ? undefined : equals);
    const isLong = word.startsWith('--');
    if (isLong && command.switches.includes(flag) && equals < 0) {
      switches.add(flag);
    } else if (isLong && command.valued.includes(flag)) {
      const next = words[i + 1];
      const value = equals >= 0 ? word.slice(equals + 1) : next;
      if (value === undefined || value === '' || (equals < 0 && value.startsWith('--'))) {
        faults.push(`${command.name}: --${flag} has no value; allowed: --${flag} VALUE`);
        continue;
      }
      if (equals < 0) i++;
      if (command.repeated?.includes(flag)) {
        lists.set(flag, [...(lists.get(flag) ?? []), value]);
        continue;
      }
      if (values.has(flag)) faults.push(`${command.name}: --${flag} is given twice; allowed: once`);
      values.set(flag, value);
    } else {
      faults.push(`${command.name}: unknown flag ${word}; allowed: ${allowed}`);
    }
  }

  const [fewest, most] = command.positionals;
  if (faults.length === 0 && (positionals.length < fewest || positionals.length > most)) {
    const given = positionals.length === 0 ? 'nothing' : positionals.join(' ');
    faults.push(`${command.name}: ${given} given; allowed: ${command.usage}`);
  }
  return faults.length > 0
    ? { ok: false, faults }
    : { ok: true, args: { positionals, values, lists, switches } };
}
