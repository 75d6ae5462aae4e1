// A small map of the world: land, the stations, the bundled climates, where the design stands and the place looked up.
// Stations come with the normals and are drawn once asked for.

import { useState } from 'preact/hooks';
import type { Position } from '../../places/earth.ts';
import { messageOf } from '../parts/message-of.ts';
import { useSession } from '../state/session-context.ts';
import { BUNDLED_CLIMATES } from './bundled-climates.ts';
import { NO_PLACES } from './place-files.ts';
import { LAND, stationPositions } from './place-index.ts';

/** Degrees are drawn as they are, the flat way: east to the right, north up; the far south is cut off. */
const SOUTH_DEG = -58;
const NORTH_DEG = 84;

const LAND_PATH = LAND.map((ring) => {
  const points: string[] = [];
  for (let i = 0; i < ring.length; i += 2)
    points.push(`${ring[i]!.toFixed(1)} ${(-ring[i + 1]!).toFixed(1)}`);
  return `M${points.join('L')}Z`;
}).join('');

export function WorldMap({ chosen }: { chosen: Position | null }) {
  const { workspace, tell } = useSession();
  const climate = workspace.climate.value;
  const [stations, setStations] = useState<string | null>(null);
  const stand = climate.state === 'ready' ? climate.year.site : null;
  const show = () =>
    stationPositions().then(
      (positions) => setStations(dots(positions)),
      (reason) => tell('trouble', messageOf(reason)),
    );
  return (
    <figure class="world-map">
      <svg
        viewBox={`-180 ${-NORTH_DEG} 360 ${NORTH_DEG - SOUTH_DEG}`}
        role="img"
        aria-label={`Map of the world with ${BUNDLED_CLIMATES.length} bundled climates${stand ? ` and ${stand.name}` : ''}`}
      >
        <path class="world-land" d={LAND_PATH} />
        {stations && <path class="world-station" d={stations} />}
        {BUNDLED_CLIMATES.map(({ id, name, latitudeDeg, longitudeDeg }) => (
          <circle key={id} class="world-bundled" cx={longitudeDeg} cy={-latitudeDeg} r={2}>
            <title>{name}</title>
          </circle>
        ))}
        {stand && <circle class="world-stand" cx={stand.longitudeDeg} cy={-stand.latitudeDeg} r={3.4} />}
        {chosen && <circle class="world-chosen" cx={chosen.longitudeDeg} cy={-chosen.latitudeDeg} r={3.4} />}
      </svg>
      <figcaption>
        Dots: the climates that come with the page. Ring: where the design stands
        {chosen ? '; broken ring: the place looked up' : ''}.{' '}
        {NO_PLACES === null && stations === null && (
          <button type="button" onClick={() => void show()}>
            Show the stations
          </button>
        )}
      </figcaption>
    </figure>
  );
}

/** Every station as a dot: a line of no length with a round end. */
function dots(positions: Float32Array): string {
  const parts: string[] = [];
  for (let i = 0; i < positions.length; i += 2)
    parts.push(`M${positions[i]!.toFixed(1)} ${(-positions[i + 1]!).toFixed(1)}h0`);
  return parts.join('');
}
