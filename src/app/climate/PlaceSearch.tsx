// Any place by its name: a field with a list under it, for keys and for touch. The list of places is fetched when the field
// is first used. What is chosen, a place or a climate near it, goes to the one who asked.

import '../style/places.css';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { titleOf } from '../../places/local-normals.ts';
import type { FoundPlace } from '../../places/looked-up.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { messageOf } from '../parts/message-of.ts';
import { quantityText } from '../parts/number-text.ts';
import { useWorkspace } from '../state/session-context.ts';
import { climatesNear, type NearClimate } from './climates-near.ts';
import { NO_PLACES } from './place-files.ts';
import { findPlaces } from './place-index.ts';

export type PlaceChoice =
  | { readonly kind: 'place'; readonly place: FoundPlace }
  | { readonly kind: 'climate'; readonly climate: NearClimate };

export interface PlaceSearchProps {
  readonly label: string;
  readonly onChoose: (choice: PlaceChoice) => void;
}

interface Found {
  readonly choices: readonly PlaceChoice[];
  /** what stands where no list does */
  readonly words: string;
}

/** The list is ours, not the browser's. */
const NO_LIST = { list: undefined };

const NOTHING: Found = { choices: [], words: '' };

export function PlaceSearch({ label, onChoose }: PlaceSearchProps) {
  const id = useId();
  const system = useWorkspace().units.value;
  const [text, setText] = useState('');
  const [found, setFound] = useState<Found>(NOTHING);
  const [open, setOpen] = useState(false);
  const [at, setAt] = useState(0);
  const newest = useRef(0);
  const looking = useRef<Promise<Found>>(Promise.resolve(NOTHING));
  const list = useRef<HTMLDivElement>(null);
  // a long list is moved under the keys
  useEffect(() => {
    if (open) list.current?.children[at]?.scrollIntoView({ block: 'nearest' });
  }, [at, open]);
  if (NO_PLACES !== null) return <p>{NO_PLACES}</p>;

  const look = async (asked: string) => {
    const turn = ++newest.current;
    looking.current =
      asked.trim() === ''
        ? Promise.resolve(NOTHING)
        : foundFor(asked).catch((reason): Found => ({ choices: [], words: messageOf(reason) }));
    const waiting = setTimeout(() => {
      if (turn === newest.current) setFound({ choices: [], words: 'Fetching the list of places…' });
    }, WAIT_SHOWN_MS);
    const next = await looking.current;
    clearTimeout(waiting);
    if (turn !== newest.current) return;
    setFound(next);
    setAt(0);
  };
  const choose = (choice: PlaceChoice | undefined) => {
    if (choice === undefined) return;
    setOpen(false);
    setText(choice.kind === 'place' ? titleOf(choice.place) : choice.climate.name);
    onChoose(choice);
  };
  /** What is marked in the list; of a list still on its way, the first. */
  const chooseMarked = async () => {
    const turn = newest.current;
    const { choices } = await looking.current;
    if (turn === newest.current) choose(choices[choices === found.choices ? at : 0]);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    // keys that put a word of another script together are its keyboard's
    if (event.isComposing) return;
    const last = found.choices.length - 1;
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault();
      setOpen(true);
      if (open) setAt(Math.min(Math.max(at + (event.key === 'ArrowDown' ? 1 : -1), 0), Math.max(last, 0)));
    } else if (event.key === 'Enter') {
      // a form around it is not sent off by choosing a place
      event.preventDefault();
      if (open) void chooseMarked();
    } else if (event.key === 'Escape' && open) {
      event.stopPropagation();
      setOpen(false);
    }
  };
  const isListed = open && found.choices.length > 0;
  return (
    <div class="place-search">
      <label for={`${id}-field`}>{label}</label>
      <input
        id={`${id}-field`}
        type="search"
        role="combobox"
        {...NO_LIST}
        data-place-search
        autocomplete="off"
        spellcheck={false}
        maxLength={80}
        placeholder="a name, or 46.2, 7.4"
        value={text}
        aria-expanded={isListed}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        {...(isListed ? { 'aria-activedescendant': `${id}-${at}` } : {})}
        onInput={(event) => {
          setText(event.currentTarget.value);
          setOpen(true);
          void look(event.currentTarget.value);
        }}
        onFocus={() => void findPlaces('').catch(() => undefined)}
        // where there are no arrows, a touch brings the list back
        onClick={() => setOpen(true)}
        onBlur={() => setOpen(false)}
        onKeyDown={onKeyDown}
      />
      <div
        ref={list}
        id={`${id}-list`}
        role="listbox"
        aria-label={label}
        class="place-list"
        hidden={!isListed}
      >
        {found.choices.map((choice, i) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the field takes the keys
          // biome-ignore lint/a11y/useFocusableInteractive: focus stays in the field
          <div
            key={keyOf(choice)}
            id={`${id}-${i}`}
            role="option"
            aria-selected={i === at}
            // pressed, not clicked: the field would lose the focus and the list close under the finger
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => choose(choice)}
          >
            <ChoiceWords choice={choice} system={system} />
          </div>
        ))}
      </div>
      <p role="status" class="place-words">
        {open && found.choices.length === 0 ? found.words : ''}
      </p>
    </div>
  );
}

/** A list that is there within this needs no word [ms]. */
const WAIT_SHOWN_MS = 250;

async function foundFor(asked: string): Promise<Found> {
  const result = await findPlaces(asked);
  if (!result.ok) return { choices: [], words: `${result.fault}.` };
  const [first] = result.places;
  if (first === undefined) {
    const words =
      'No such place among those known. Try the name alone, a larger place nearby, or coordinates such as 46.2, 7.4.';
    return { choices: [], words };
  }
  const near = await climatesNear(first);
  return {
    choices: [
      ...result.places.map((place): PlaceChoice => ({ kind: 'place', place })),
      ...near.map((climate): PlaceChoice => ({ kind: 'climate', climate })),
    ],
    words: '',
  };
}

function ChoiceWords({ choice, system }: { choice: PlaceChoice; system: UnitSystem }) {
  if (choice.kind === 'climate') {
    const { name, kind, distanceKm } = choice.climate;
    return (
      <>
        <b>{name}</b>{' '}
        <small>
          {kind === 'bundled' ? 'measured climate of the page' : 'file kept here'},{' '}
          {quantityText(distanceKm, 'distance', system)}
        </small>
      </>
    );
  }
  const { name, region, country, elevationM } = choice.place;
  return (
    <>
      <b>{name}</b>{' '}
      <small>
        {[region, country].filter((part) => part !== '').join(', ')},{' '}
        {quantityText(elevationM, 'elevation', system)}
      </small>
    </>
  );
}

function keyOf(choice: PlaceChoice): string {
  if (choice.kind === 'climate') return choice.climate.key;
  const { name, latitudeDeg, longitudeDeg } = choice.place;
  return `${name} ${latitudeDeg} ${longitudeDeg}`;
}
