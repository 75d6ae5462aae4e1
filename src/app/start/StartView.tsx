// Start with your own: five answers, the house they make drawn beside them, and all else that it was given, listed. It takes
// the sheet's place; the sheet is changed when the house is taken, as one step of undo.

import '../style/view-head.css';
import '../style/start.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { LIMITS } from '../../design/limits.ts';
import { ANSWERED } from '../../design/usual-house.ts';
import { LimitedField } from '../climate/LimitedField.tsx';
import { INPUT_GROUPS } from '../inputs/input-groups.ts';
import { inputWords } from '../inputs/input-words.ts';
import { useFocusedHeading } from '../parts/focused-heading.ts';
import { StillSection } from '../section/StillSection.tsx';
import { useSession } from '../state/session-context.ts';
import {
  BUILDS,
  FIRST_GIVEN,
  type Given,
  GLASS_AMOUNTS,
  houseOf,
  JOINS,
  STOREYS,
  TILTS,
} from './house-answers.ts';
import { PlaceField } from './PlaceField.tsx';

const FLOOR = LIMITS.find(({ path }) => path === 'house.floorAreaM2')!;

/** What was answered last, for whoever comes back in the same visit. */
let lastGiven = FIRST_GIVEN;
/** The climate chosen last, and that of the sheet then. */
let lastPlace: { readonly chosen: string; readonly sheet: string } | null = null;

export function StartView() {
  const { workspace, tell } = useSession();
  const heading = useFocusedHeading();
  const [given, setGiven] = useState<Given>(lastGiven);
  const system = workspace.units.value;
  // Weather that is taken in here moves the sheet, and this house with it.
  const sheetClimate = workspace.design.value.climate;
  const [place, setPlace] = useState(lastPlace);
  const climate = place?.sheet === sheetClimate ? place.chosen : sheetClimate;
  const choosePlace = (chosen: string) => {
    lastPlace = { chosen, sheet: sheetClimate };
    setPlace(lastPlace);
  };
  const answer = (change: Partial<Given>) => {
    lastGiven = { ...given, ...change };
    setGiven(lastGiven);
  };
  const design = houseOf(given, climate);
  const year = workspace.yearFor(design);
  useEffect(() => void workspace.climateReady(climate), [climate]);

  const form = useRef<HTMLFormElement>(null);
  const take = (path?: string) => {
    // Pressed twice in a row, it is taken once.
    if (location.hash !== '#own') return;
    // A number that stands there wrong, and says so beside it, is not passed over.
    const wrong = form.current?.querySelector<HTMLElement>('[aria-invalid="true"]');
    if (wrong) return wrong.focus();
    workspace.replace(design);
    tell('news', 'Your house stands on the sheet. Undo brings back the one before.');
    location.hash = '#sheet';
    if (path !== undefined) requestAnimationFrame(() => showInput(path));
  };
  return (
    <main class="start-view">
      <div class="view-head">
        <h1 ref={heading} tabIndex={-1}>
          Your own house, in five answers
        </h1>
        <a class="button" href="#sheet">
          Back to the sheet
        </a>
      </div>
      <div class="start-body">
        <div class="start-form">
          <fieldset>
            <legend>1. Where does it stand?</legend>
            <PlaceField climate={climate} choose={choosePlace} />
          </fieldset>
          {/* The normals of question 1 are a form of their own. */}
          <form
            ref={form}
            class="start-form"
            onSubmit={(event) => {
              event.preventDefault();
              take();
            }}
          >
            <fieldset>
              <legend>2. How large is it?</legend>
              <LimitedField
                name="start-floor"
                label="Heated floor, all storeys together"
                quantity="area"
                value={given.floorAreaM2}
                min={FLOOR.min}
                max={FLOOR.max}
                whole={false}
                system={system}
                disabled={false}
                onChange={(floorAreaM2) => answer({ floorAreaM2 })}
              />
              <Choices
                name="storeys"
                of={STOREYS}
                value={given.storeys}
                choose={(storeys) => answer({ storeys })}
              />
            </fieldset>
            <fieldset>
              <legend>3. How much glass toward the sun, and how does it stand?</legend>
              <Choices
                name="glass"
                of={GLASS_AMOUNTS.map(([id, words]) => [id, words] as const)}
                value={given.glass}
                choose={(glass) => answer({ glass })}
              />
              <Choices
                name="tilt"
                of={TILTS}
                value={given.tiltDeg}
                choose={(tiltDeg) => answer({ tiltDeg })}
              />
            </fieldset>
            <fieldset>
              <legend>4. A sunspace?</legend>
              <Choices name="join" of={JOINS} value={given.join} choose={(join) => answer({ join })} />
            </fieldset>
            <fieldset>
              <legend>5. What is it built of?</legend>
              <Choices name="build" of={BUILDS} value={given.build} choose={(build) => answer({ build })} />
            </fieldset>
            <p class="start-go">
              <button type="submit" class="is-main" data-start="go">
                See its year
              </button>
            </p>
          </form>
        </div>
        <aside class="start-house" aria-label="The house of these answers">
          <StillSection design={design} latitudeDeg={year?.site.latitudeDeg ?? 40} system={system} />
          <h2>Taken as usual</h2>
          <p class="start-note">
            What you were not asked is as it is usually built. Press one to change it on the sheet.
          </p>
          {INPUT_GROUPS.map(({ id, title, entries }) => {
            const rows = entries
              .filter(({ path, when }) => !ANSWERED.includes(path) && (!when || when(design)))
              .map((entry) => ({ path: entry.path, ...inputWords(entry, design, system) }));
            if (rows.length === 0) return null;
            return (
              <details key={id} class="start-usual" open={OPEN_FIRST.includes(id)}>
                <summary>
                  {title}: {rows.length} taken as usual
                </summary>
                <ul>
                  {rows.map(({ path, label, value }) => (
                    <li key={path}>
                      <button type="button" data-usual={path} onClick={() => take(path)}>
                        {label}: <b>{value}</b>
                      </button>
                    </li>
                  ))}
                </ul>
              </details>
            );
          })}
        </aside>
      </div>
    </main>
  );
}

const OPEN_FIRST = ['glass', 'envelope'];

/** Unfolds what an input stands in and goes there. */
function showInput(path: string): void {
  const field = document.querySelector<HTMLElement>(`[data-path="${path}"]`);
  for (let at = field?.parentElement; at; at = at.parentElement) {
    if (at instanceof HTMLDetailsElement) at.open = true;
  }
  field?.scrollIntoView({ block: 'center' });
  field?.focus({ preventScroll: true });
}

interface ChoicesProps<T extends string | number> {
  readonly name: string;
  readonly of: readonly (readonly [T, string])[];
  readonly value: T;
  readonly choose: (value: T) => void;
}

function Choices<T extends string | number>({ name, of, value, choose }: ChoicesProps<T>) {
  return (
    <div class="start-choices">
      {of.map(([each, words]) => (
        <label key={each} class="chip">
          <input
            type="radio"
            name={`start-${name}`}
            data-start={`${name} ${each}`}
            checked={each === value}
            onChange={() => choose(each)}
          />
          <span>{words}</span>
        </label>
      ))}
    </div>
  );
}
