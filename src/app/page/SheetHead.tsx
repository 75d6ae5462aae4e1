// The heading of the sheet: what is drawn, where it stands, undo and redo, units.

import { ALL_EXAMPLES } from '../../design/stove-examples.ts';
import { BUNDLED_CLIMATES, bundledClimate } from '../climate/bundled-climates.ts';
import { openClimate } from '../climate/ClimatePanel.tsx';
import { UNIT_SYSTEMS, type UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';
import { exampleAt, exampleOf } from '../state/example-place.ts';
import { useWorkspace } from '../state/session-context.ts';
import { KeepTools } from './KeepTools.tsx';

const SYSTEM_WORDS: Readonly<Record<UnitSystem, string>> = {
  metric: 'metric',
  us: 'US',
  'us-therms': 'US, therms',
};

export function SheetHead() {
  const workspace = useWorkspace();
  const { design, history, units } = workspace;
  return (
    <header class="sheet-head">
      <h1 class="brand">Daystone</h1>
      <label class="head-field head-name">
        <span>Design</span>
        <input
          type="text"
          maxLength={120}
          value={design.value.name}
          onInput={(event) => workspace.set('name', event.currentTarget.value)}
        />
      </label>
      <PlacePicker />
      <label class="head-field head-example">
        <span>Example</span>
        <select
          value={exampleOf(design.value)?.id ?? ''}
          onChange={(event) => {
            const chosen = ALL_EXAMPLES.find(({ id }) => id === event.currentTarget.value);
            if (chosen) workspace.replace(exampleAt(chosen.design, design.value));
          }}
        >
          <option value="" disabled>
            changed
          </option>
          {ALL_EXAMPLES.map((example) => (
            <option key={example.id} value={example.id}>
              {example.line}
            </option>
          ))}
        </select>
      </label>
      <div class="head-tools">
        <button
          type="button"
          class="is-quiet"
          disabled={!history.canUndo.value}
          onClick={() => history.undo()}
        >
          Undo
        </button>
        <button
          type="button"
          class="is-quiet"
          disabled={!history.canRedo.value}
          onClick={() => history.redo()}
        >
          Redo
        </button>
        <button type="button" class="is-quiet" onClick={openClimate}>
          Climate
        </button>
        <KeepTools />
        <fieldset class="units">
          <legend class="visually-hidden">Units</legend>
          {UNIT_SYSTEMS.map((system) => (
            <label key={system} class="chip">
              <input
                type="radio"
                name="units"
                checked={units.value === system}
                onChange={() => {
                  units.value = system;
                }}
              />
              <span title={system === 'us-therms' ? 'US units with heat in therms' : undefined}>
                {SYSTEM_WORDS[system]}
              </span>
            </label>
          ))}
        </fieldset>
      </div>
    </header>
  );
}

function PlacePicker() {
  const workspace = useWorkspace();
  const key = workspace.design.value.climate;
  const climate = workspace.climate.value;
  const row = bundledClimate(key);
  const site = climate.state === 'ready' ? climate.typical.site : null;
  const hotter = workspace.design.value.hotter ? ', hotter year' : '';
  const about = site
    ? `${Math.abs(site.latitudeDeg).toFixed(1)}° ${site.latitudeDeg >= 0 ? 'N' : 'S'}, ${quantityText(site.elevationM, 'elevation', workspace.units.value)} up${hotter}`
    : climate.state === 'loading'
      ? 'loading…'
      : '';
  return (
    <label class="head-field head-place">
      <span>Place</span>
      <select
        data-path="climate"
        value={key}
        onChange={(event) => workspace.set('climate', event.currentTarget.value, '')}
      >
        {!row && <option value={key}>{site?.name ?? key}</option>}
        {BUNDLED_CLIMATES.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
      <small>{about}</small>
    </label>
  );
}
