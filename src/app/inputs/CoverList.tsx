// The list of shades and covers: each a sentence, its details behind a fold, and a button that adds one. Every change is
// one step of undo.

import { COVER_KINDS, coverKindById } from '../../design/cover-catalogue.ts';
import { COVER_LIMITS, MOST_COVERS } from '../../design/cover-rules.ts';
import type { Cover, Design } from '../../design/design.ts';
import {
  COVER_HABIT_WORDS,
  coverWords,
  DRAWN_BY_WORDS,
  SEASON_WORDS,
  SIDE_WORDS,
} from '../../findings/cover-words.ts';
import { useWorkspace } from '../state/session-context.ts';
import { EntryNumber } from './EntryNumber.tsx';
import { LabelledMenu } from './LabelledMenu.tsx';

const FIRST: Cover = { kind: 'outside-blind', on: 'east-and-west', drawnBy: 'heat', season: 'year' };

export function CoverList() {
  const workspace = useWorkspace();
  const design = workspace.design.value;
  const covers = design.covers ?? [];
  const put = (next: readonly Cover[], gesture = '') =>
    workspace.replace(withCovers(workspace.design.value, next), [], gesture);
  return (
    <div class="cover-list">
      {covers.length === 0 && <p>No blinds, curtains or other covers hang at the windows.</p>}
      {covers.length > 0 && (
        <ol>
          {covers.map((cover, i) => (
            // Covers have no name of their own; their place in the list is theirs.
            <li key={i} data-cover={i}>
              <CoverItem
                cover={cover}
                design={design}
                change={(next, gesture) =>
                  put(
                    covers.map((one, j) => (j === i ? next : one)),
                    gesture,
                  )
                }
                remove={() => put(covers.filter((_, j) => j !== i))}
              />
            </li>
          ))}
        </ol>
      )}
      <button
        type="button"
        data-action="add-cover"
        disabled={covers.length >= MOST_COVERS}
        onClick={() => put([...covers, FIRST])}
      >
        Add a shade or cover
      </button>
    </div>
  );
}

/** The design with such covers; without any as it was before there were covers. */
function withCovers(design: Design, covers: readonly Cover[]): Design {
  const { covers: _, ...plain } = design;
  return covers.length === 0 ? plain : { ...plain, covers };
}

interface ItemProps {
  readonly cover: Cover;
  readonly design: Design;
  readonly change: (next: Cover, gesture?: string) => void;
  readonly remove: () => void;
}

function CoverItem({ cover, design, change, remove }: ItemProps) {
  const { drawnBy: possible, leaf } = coverKindById(cover.kind);
  const isDrawn = leaf === undefined;
  const setKind = (kind: string) => {
    const { drawnBy } = coverKindById(kind);
    change({ ...cover, kind, drawnBy: drawnBy.includes(cover.drawnBy) ? cover.drawnBy : drawnBy[0]! });
  };
  const setHabit = (habit: string) => {
    const { habit: _, ...rest } = cover;
    change(habit === '' ? rest : { ...rest, habit: habit as NonNullable<Cover['habit']> });
  };
  const bySun = cover.drawnBy === 'sun' || cover.drawnBy === 'heat';
  return (
    <details>
      <summary>{coverWords(cover, design)}</summary>
      <LabelledMenu
        known={{ 'data-cover-field': 'kind' }}
        label="Kind"
        value={cover.kind}
        options={COVER_KINDS.map(({ id, name }) => [id, name])}
        choose={setKind}
      />
      <LabelledMenu
        known={{ 'data-cover-field': 'on' }}
        label="Hangs"
        value={cover.on}
        options={Object.entries(SIDE_WORDS)}
        choose={(on) => change({ ...cover, on: on as Cover['on'] })}
      />
      {isDrawn && (
        <>
          <LabelledMenu
            known={{ 'data-cover-field': 'drawnBy' }}
            label="Drawn"
            value={cover.drawnBy}
            options={possible.map((by) => [by, DRAWN_BY_WORDS[by]])}
            choose={(drawnBy) => change({ ...cover, drawnBy: drawnBy as Cover['drawnBy'] })}
          />
          <LabelledMenu
            known={{ 'data-cover-field': 'season' }}
            label="In use"
            value={cover.season}
            options={Object.entries(SEASON_WORDS)}
            choose={(season) => change({ ...cover, season: season as Cover['season'] })}
          />
          <LabelledMenu
            known={{ 'data-cover-field': 'habit' }}
            label="Who"
            value={cover.habit ?? ''}
            options={[['', 'by whoever moves the vents'], ...Object.entries(COVER_HABIT_WORDS)]}
            choose={setHabit}
          />
        </>
      )}
      {isDrawn && bySun && (
        <EntryNumber
          name="sunW"
          limit={COVER_LIMITS.sunW}
          value={cover.sunW}
          quantity="irradiance"
          change={(sunW, gesture) => change(withNumber(cover, 'sunW', sunW), gesture)}
        />
      )}
      {isDrawn && cover.drawnBy === 'heat' && (
        <EntryNumber
          name="aboveC"
          limit={COVER_LIMITS.aboveC}
          value={cover.aboveC}
          quantity="temperature"
          change={(aboveC, gesture) => change(withNumber(cover, 'aboveC', aboveC), gesture)}
        />
      )}
      <button type="button" data-action="remove-cover" onClick={remove}>
        Take it away
      </button>
    </details>
  );
}

/** The cover with a number of its own, or with the usual one where none is given. */
function withNumber(cover: Cover, key: 'sunW' | 'aboveC', value: number | undefined): Cover {
  const { [key]: _, ...rest } = cover;
  return value === undefined ? rest : { ...rest, [key]: value };
}
