// The sun meter of a weather table that stood on a slope or a wall: which column it wrote, how it was tilted, where it faced.
// Another choice reads the file again.

import type { PlaneMeter } from '../../weather/real/real-table.ts';
import { EntryNumber } from '../inputs/EntryNumber.tsx';

interface SunMeterProps {
  /** what the fields are told apart by from those of another file */
  readonly file: string;
  /** columns that it may have written */
  readonly columns: readonly string[];
  readonly plane: PlaneMeter | null;
  /** of the place, for where a wall to the sun faces */
  readonly latitudeDeg: number;
  readonly choose: (plane: PlaneMeter | null) => void;
}

const TILT = { label: 'its tilt, 0° flat, 90° upright', min: 0, max: 180 };
const FACES = { label: 'it faces, 0° north, 90° east, 180° south', min: 0, max: 360 };

export function SunMeterFields({ file, columns, plane, latitudeDeg, choose }: SunMeterProps) {
  const all = plane === null || columns.includes(plane.header) ? columns : [plane.header, ...columns];
  if (all.length === 0) return null;
  const upright = { tiltDeg: 90, azimuthDeg: latitudeDeg < 0 ? 0 : 180 };
  return (
    <div class="found-sun-meter">
      <label>
        <span>A sun meter on a slope or a wall wrote</span>
        <select
          data-choice="plane"
          value={plane?.header ?? ''}
          onChange={(event) => {
            const header = event.currentTarget.value;
            choose(header === '' ? null : { ...upright, ...plane, header });
          }}
        >
          <option value="">none of the columns</option>
          {all.map((header) => (
            <option key={header} value={header}>
              “{header}”, in W/m²
            </option>
          ))}
        </select>
      </label>
      {plane !== null && (
        <>
          <EntryNumber
            name={`${file} tilt`}
            limit={TILT}
            quantity="angle"
            value={plane.tiltDeg}
            change={(tiltDeg) => tiltDeg !== undefined && choose({ ...plane, tiltDeg })}
            required
            known={{ 'data-plane': 'tilt' }}
          />
          <EntryNumber
            name={`${file} azimuth`}
            limit={FACES}
            quantity="angle"
            value={plane.azimuthDeg}
            change={(azimuthDeg) => azimuthDeg !== undefined && choose({ ...plane, azimuthDeg })}
            required
            known={{ 'data-plane': 'azimuth' }}
          />
        </>
      )}
    </div>
  );
}
