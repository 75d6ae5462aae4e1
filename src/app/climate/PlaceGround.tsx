// What a place's looked-up normals rest on: its stations, what is assumed, what makes them doubtful; and how the place lies
// to the wind, which only a person there knows.

import type { LocalNormals } from '../../places/local-normals.ts';
import { type ExposureId, WIND_EXPOSURES } from '../../places/wind-exposure.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';
import { ScrollTable } from '../parts/ScrollTable.tsx';

interface PlaceGroundProps {
  readonly local: LocalNormals;
  readonly exposure: ExposureId | null;
  readonly onExposure: (exposure: ExposureId | null) => void;
  readonly system: UnitSystem;
}

export function PlaceGround({ local, exposure, onExposure, system }: PlaceGroundProps) {
  const { normals, stations, assumed, warnings } = local;
  return (
    <div class="place-ground">
      <h4>{normals.name}: looked up, not measured there</h4>
      {warnings.length > 0 && (
        <ul class="doubt-list">
          {warnings.map((text) => (
            <li key={text} class="is-serious">
              {text}
            </li>
          ))}
        </ul>
      )}
      <label>
        How does the place lie to the wind?{' '}
        <select
          data-exposure
          value={exposure ?? ''}
          onChange={(event) => onExposure((event.currentTarget.value || null) as ExposureId | null)}
        >
          <option value="">not said</option>
          {WIND_EXPOSURES.map(({ id, words }) => (
            <option key={id} value={id}>
              {words}
            </option>
          ))}
        </select>
      </label>
      <ul class="ask-notes">
        {assumed.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <ScrollTable label="Stations the normals are from">
        <table class="place-stations">
          <thead>
            <tr>
              <th scope="col">station</th>
              <th scope="col">away</th>
              <th scope="col">higher or lower</th>
              <th scope="col">weight</th>
            </tr>
          </thead>
          <tbody>
            {stations.map(({ name, country, distanceKm, aboveM, share }) => (
              <tr key={`${name} ${distanceKm}`}>
                <th scope="row">
                  {name}, {country}
                </th>
                <td>{quantityText(distanceKm, 'distance', system)}</td>
                <td>
                  {quantityText(Math.abs(aboveM), 'elevation', system)} {aboveM < 0 ? 'lower' : 'higher'}
                </td>
                <td>{Math.round(100 * share)} %</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollTable>
    </div>
  );
}
