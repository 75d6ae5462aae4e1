// Where the house stands: any place by its name, by latitude and longitude the nearest climates that come with the page, or
// one of the list, a weather file, or twelve normals. In: the climate chosen. Out: another one.

import { useEffect, useRef, useState } from 'preact/hooks';
import { coordinatesIn } from '../../places/coordinates.ts';
import type { Position } from '../../places/earth.ts';
import { BUNDLED_CLIMATES, bundledClimate, characterIn } from '../climate/bundled-climates.ts';
import { useLookedUpPlace } from '../climate/looked-up-place.ts';
import { NormalsForm } from '../climate/NormalsForm.tsx';
import { nearestClimates } from '../climate/nearest-climates.ts';
import { PlaceSearch } from '../climate/PlaceSearch.tsx';
import { FilePicker } from '../parts/FilePicker.tsx';
import { quantityText } from '../parts/number-text.ts';
import { useSession } from '../state/session-context.ts';

interface PlaceFieldProps {
  readonly climate: string;
  readonly choose: (climate: string) => void;
}

/** Beyond this the weather is another place's [km]; a house rule. */
const FAR_KM = 150;
const OFFERED = 3;

/** What was typed last, for whoever comes back in the same visit. */
let lastText = '';

export function PlaceField({ climate, choose }: PlaceFieldProps) {
  const { workspace, openFile, intake } = useSession();
  const file = useRef<HTMLInputElement>(null);
  const [text, setText] = useState(lastText);
  const { looked, choose: search, expose } = useLookedUpPlace(choose);
  // Who names a place means to build there: its year is made at once, of what was looked up.
  useEffect(() => {
    if (looked) void intake.takeNormals(looked.local.normals);
  }, [looked]);
  const near = typedPlace(text);
  const found = near === null ? [] : nearestClimates(near).slice(0, OFFERED);
  const row = bundledClimate(climate);
  const own = row ? null : climate;
  const shown = workspace.climate.value;
  const ownName = shown.state === 'ready' && shown.key === own ? shown.typical.site.name : own;
  const character = row ? characterIn(workspace.units.value, row) : 'Your own weather.';
  return (
    <>
      <PlaceSearch label="Any place by its name" onChoose={search} />
      {looked && (
        <div class="start-note" data-looked-up>
          <p>
            The year of {looked.local.normals.name} is made of normals looked up, not measured there. What
            they rest on stands below, to be corrected.
          </p>
          {looked.local.warnings.map((text) => (
            <p key={text}>{text}</p>
          ))}
        </div>
      )}
      <label class="start-line">
        <span>Latitude and longitude</span>
        <input
          type="text"
          inputMode="text"
          autocomplete="off"
          data-start="place"
          placeholder="39.7 N, 105 W"
          maxLength={60}
          value={text}
          onInput={({ currentTarget: { value } }) => {
            lastText = value;
            setText(value);
            const place = typedPlace(value);
            if (place) choose(nearestClimates(place)[0]!.climate.id);
          }}
        />
      </label>
      {text.trim() !== '' && near === null && (
        <p class="start-note">Latitude first, then longitude: 39.7 N, 105 W, or 39.7, −105.</p>
      )}
      {found.length > 0 && (
        <fieldset class="start-choices">
          <legend class="visually-hidden">Nearest climates</legend>
          {found.map(({ climate: { id, name }, distanceKm }) => (
            <label key={id} class="chip">
              <input type="radio" name="near" checked={id === climate} onChange={() => choose(id)} />
              <span>
                {name}, {quantityText(distanceKm, 'distance', workspace.units.value)}
              </span>
            </label>
          ))}
        </fieldset>
      )}
      {found.length > 0 && found[0]!.distanceKm > FAR_KM && (
        <p class="start-note">
          The nearest is {quantityText(found[0]!.distanceKm, 'distance', workspace.units.value)} away: good
          for a first look. A weather file or the normals of your place are better.
        </p>
      )}
      <label class="start-line">
        <span>Or one of the list</span>
        <select data-start="climate" value={climate} onChange={(event) => choose(event.currentTarget.value)}>
          {own !== null && <option value={own}>{ownName}</option>}
          {BUNDLED_CLIMATES.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <p class="start-note">{character}</p>
      <p>
        <button type="button" onClick={() => file.current?.click()}>
          A weather file…
        </button>
        <FilePicker
          input={file}
          label="Open a weather file"
          accept=".csv,.tm2,.tmy,.txt,.gz,.json"
          onFiles={([file]) => void openFile(file!)}
        />
      </p>
      <NormalsForm looked={looked} onExposure={expose} staysFolded />
    </>
  );
}

/** A latitude and a longitude in one text; null for what is none. */
function typedPlace(text: string): Position | null {
  const found = coordinatesIn(text);
  return found !== null && 'latitudeDeg' in found ? found : null;
}
