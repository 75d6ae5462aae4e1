// All inputs of a design: the dozen that matter most stand open, the rest in groups behind "more", with a count of what is
// not as usual. A search finds any of them by its name or by what it means. What has no meaning for the design is not shown.

import { useComputed } from '@preact/signals';
import { useId, useState } from 'preact/hooks';
import { browserStore } from '../keeping/browser-store.ts';
import { useWorkspace } from '../state/session-context.ts';
import { ChoiceInput } from './ChoiceInput.tsx';
import { CoverList } from './CoverList.tsx';
import { HEAT_SOURCE_WORDS, HeatSourceFields } from './HeatSourceFields.tsx';
import { InputNotes } from './InputNotes.tsx';
import { INPUT_GROUPS, type InputEntry, type InputGroup } from './input-groups.ts';
import { INPUT_HELP } from './input-help.ts';
import { inputWords } from './input-words.ts';
import { NumberInput } from './NumberInput.tsx';
import { RoomList } from './RoomList.tsx';
import { unusualPaths } from './unusual.ts';

/** What a house lives or dies by, in the order in which it is thought of. */
const FIRST = [
  'house.floorAreaM2',
  'glass.value',
  'glass.tiltDeg',
  'glass.type',
  'glass.overhangM',
  'sunspace.join',
  'sunspace.depthM',
  'mass.areaM2',
  'envelope.wallResistance',
  'envelope.roofResistance',
  'air.ach50',
  'vents.habit',
];

/** What the lists of a group are found by, beside their group's title. */
const LIST_WORDS: Readonly<Record<string, string>> = {
  covers: 'shades covers blinds curtains shutters awnings nets leaves',
  house: 'divide into rooms, room, bedroom, kitchen, partition, stairs, doors, windows of a room, fan',
  comfort: HEAT_SOURCE_WORDS,
};

const ALL = INPUT_GROUPS.flatMap(({ entries }) => entries);
const FIRST_ENTRIES = FIRST.map((path) => ALL.find((entry) => entry.path === path)!);
const GROUPS = INPUT_GROUPS.map((group) => ({
  ...group,
  entries: group.entries.filter(({ path }) => !FIRST.includes(path)),
}));

const store = browserStore(() => localStorage);
const MORE_KEY = 'daystone-more';
const OPEN = 'open';

/** Which inputs are asked for: by words, and whether only those that are not as usual. */
interface Sought {
  readonly words: string;
  readonly onlyUnusual: boolean;
}

export function InputPanel() {
  const { design, units } = useWorkspace();
  const [sought, setSought] = useState<Sought>({ words: '', onlyUnusual: false });
  const [more, setMore] = useState(() => store.getItem(MORE_KEY) === OPEN);
  const id = useId();
  const unusual = useComputed(() => unusualPaths(design.value).join(' ')).value.split(' ');
  const folded = unusual.filter((path) => path !== '' && !FIRST.includes(path));
  const count = useComputed(
    () => GROUPS.flatMap(({ entries }) => entries).filter(({ when }) => !when || when(design.value)).length,
  ).value;
  const isSeeking = sought.words.trim() !== '' || sought.onlyUnusual;
  const holdsWords = (text: string) =>
    sought.words
      .toLowerCase()
      .split(/\s+/)
      .every((word) => text.toLowerCase().includes(word));
  const isSought = (entry: InputEntry, title: string) => {
    if (sought.onlyUnusual && !unusual.includes(entry.path)) return false;
    const { label, value } = inputWords(entry, design.peek(), units.peek());
    return holdsWords(`${label} ${value} ${title} ${INPUT_HELP[entry.path] ?? ''}`);
  };
  const isListSought = ({ id, title }: InputGroup) =>
    LIST_WORDS[id] !== undefined && !sought.onlyUnusual && holdsWords(`${title} ${LIST_WORDS[id]}`);
  const first = isSeeking ? FIRST_ENTRIES.filter((entry) => isSought(entry, '')) : FIRST_ENTRIES;
  const groups = GROUPS.map((group) => ({
    group,
    entries: isSeeking ? group.entries.filter((entry) => isSought(entry, group.title)) : group.entries,
  })).filter(({ group, entries }) => !isSeeking || entries.length > 0 || isListSought(group));
  const isNothingFound = isSeeking && first.length === 0 && groups.length === 0;
  return (
    <section class="inputs" aria-labelledby="inputs-title">
      <h2 id="inputs-title" class="visually-hidden">
        What can be changed
      </h2>
      <div class="inputs-tools">
        <label for={id} class="visually-hidden">
          Find an input
        </label>
        <input
          id={id}
          type="search"
          data-inputs="search"
          placeholder="find an input"
          autocomplete="off"
          value={sought.words}
          onInput={(event) => setSought({ ...sought, words: event.currentTarget.value })}
        />
        <label class="chip">
          <input
            type="checkbox"
            data-inputs="unusual"
            checked={sought.onlyUnusual}
            onChange={(event) => setSought({ ...sought, onlyUnusual: event.currentTarget.checked })}
          />
          <span>only what is unusual</span>
        </label>
      </div>
      <p class="inputs-none" role="status">
        {isNothingFound &&
          (sought.words.trim() === ''
            ? 'Every input is as usual.'
            : 'No input has these words. Try one, such as roof, vent or plants.')}
      </p>
      <div class="inputs-first">
        <Entries entries={first} />
      </div>
      <details
        class="inputs-more"
        open={more || isSeeking}
        onToggle={({ currentTarget }) => {
          if (isSeeking || currentTarget.open === more) return;
          setMore(currentTarget.open);
          try {
            store.setItem(MORE_KEY, currentTarget.open ? OPEN : 'folded');
          } catch {
            // A browser that keeps nothing folds them again next time.
          }
        }}
      >
        <summary data-inputs="more">
          More: {count} inputs, {folded.length} not as usual
        </summary>
        {groups.map(({ group, entries }) => (
          <Group
            key={group.id}
            group={{ ...group, entries }}
            isOpen={isSeeking || group.open}
            unusual={group.entries.filter(({ path }) => unusual.includes(path)).length}
          />
        ))}
      </details>
    </section>
  );
}

interface GroupProps {
  readonly group: InputGroup;
  readonly isOpen: boolean;
  /** how many of it are not as usual */
  readonly unusual: number;
}

function Group({ group, isOpen, unusual }: GroupProps) {
  return (
    <details class="input-group" data-group={group.id} open={isOpen}>
      <summary>
        {group.title}
        {unusual > 0 && <small> · {unusual} not as usual</small>}
      </summary>
      <Entries entries={group.entries} />
      {group.id === 'covers' && <CoverList />}
      {group.id === 'house' && <RoomList />}
      {group.id === 'comfort' && <HeatSourceFields />}
    </details>
  );
}

/** Of some inputs those that have a meaning for the design. */
function Entries({ entries }: { entries: readonly InputEntry[] }) {
  const { design } = useWorkspace();
  // Of all inputs and not of these, which a search changes while the design stays.
  const meaningful = useComputed(() =>
    ALL.filter(({ when }) => !when || when(design.value))
      .map(({ path }) => path)
      .join(' '),
  ).value.split(' ');
  return (
    <div class="input-fields">
      {entries
        .filter(({ path }) => meaningful.includes(path))
        .map((entry) => (
          <div key={entry.path} class="input-place">
            {entry.kind === 'number' ? <NumberInput path={entry.path} /> : <ChoiceInput path={entry.path} />}
            <InputNotes entry={entry} />
          </div>
        ))}
    </div>
  );
}
