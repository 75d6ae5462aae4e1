// The named versions: keep the present state, go back to one, choose two to four to compare.

import { useState } from 'preact/hooks';
import { useSession } from '../state/session-context.ts';
import { MOST_COMPARED } from '../state/version-list.ts';

export function VersionStrip() {
  const { workspace, list, tell } = useSession();
  const [name, setName] = useState('');
  const versions = list.versions.value;
  const compared = list.compared.value;
  const keep = () => {
    const version = list.keep(name, workspace.design.value);
    setName('');
    tell('news', `Kept as "${version.name}".`);
  };
  return (
    <section class="versions" aria-labelledby="versions-title">
      <h2 id="versions-title">Versions</h2>
      <form
        class="version-keep"
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <label>
          <span class="visually-hidden">Name of the version</span>
          <input
            type="text"
            maxLength={60}
            placeholder="name this state"
            value={name}
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </label>
        <button type="submit">Keep</button>
      </form>
      <ul class="version-list">
        {versions.map((version) => (
          <li key={version.id}>
            <label class="version-check">
              <input
                type="checkbox"
                checked={compared.includes(version.id)}
                disabled={!compared.includes(version.id) && compared.length >= MOST_COMPARED}
                onChange={() => list.toggle(version.id)}
              />
              <span>{version.name}</span>
            </label>
            <button
              type="button"
              aria-label={`Go back to ${version.name}`}
              disabled={workspace.design.value === version.design}
              onClick={() => workspace.replace(version.design)}
            >
              Go back
            </button>
            <button
              type="button"
              aria-label={`Rename ${version.name}`}
              onClick={() => {
                const next = window.prompt('New name of the version', version.name);
                if (next !== null) list.rename(version.id, next);
              }}
            >
              Rename
            </button>
            <button
              type="button"
              aria-label={`Remove ${version.name}`}
              onClick={() => list.remove(version.id)}
            >
              Remove
            </button>
          </li>
        ))}
      </ul>
      {versions.length > 1 && compared.length < 2 && (
        <p class="chart-note">Tick two to four versions to see them side by side.</p>
      )}
      <p class="chart-note">
        Does the house stand already? <a href="#found">Hold it against a logger’s record</a>.
      </p>
    </section>
  );
}
