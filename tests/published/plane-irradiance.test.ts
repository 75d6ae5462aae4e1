// Source: Perez et al. 1990 (all-sites composite), Kasten-Young 1989, Spencer 1971: table plane-irradiance.csv, 200
// hours of two TMY3 stations on six planes, computed with an independent library and again from the formulas.
import { describe, expect, test } from 'vitest';
import { relativeAirMass } from '../../src/physics/air-mass.ts';
import { extraterrestrialNormal } from '../../src/physics/extraterrestrial.ts';
import { cosIncidence, planeNormal } from '../../src/physics/incidence.ts';
import { groundOnPlane } from '../../src/physics/sky-on-plane.ts';
import { sunPosition, sunVector } from '../../src/physics/sun-position.ts';
import { skyOnPlane } from '../reference/whole-formulas.ts';
import { check } from './ledger.ts';
import { readTable, type TableRow } from './reference-table.ts';

/** Allowed errors. */
const ALLOWED = {
  /** W/m², fed with the row's own sun and extraterrestrial irradiance: rounding of the printed inputs */
  sameSun: 0.005,
  /** W/m², fed with our sun, which is off by up to 0.012° */
  ownSun: 0.5,
  /** W/m², the column is printed to 0.01 */
  extra: 0.0051,
  /** the column is printed to 1e-5 at an elevation printed to 1e-4°: steep near the horizon */
  airMassRel: 2e-5,
  /** the column is printed to 1e-6, from angles printed to 1e-4° */
  cosIncidence: 5e-6,
};

/** Site coordinates, from the table's head. */
const SITES: Record<string, readonly [number, number]> = {
  greensboro: [36.1, -79.95],
  albuquerque: [35.04, -106.62],
};

const SOURCE = 'Perez 1990 tilted irradiance table';
const rows = readTable('plane-irradiance.csv');

function dayOfYear(utc: string): number {
  const instant = Date.parse(utc);
  return Math.floor((instant - Date.UTC(new Date(instant).getUTCFullYear(), 0, 1)) / 86_400_000) + 1;
}

function caseName(row: TableRow): string {
  return `${row.text('site')} row ${row.text('row')} ${row.text('plane')}`;
}

/** Cosine of incidence by the angles of the sun and of the plane [°]. */
function incidence(elevationDeg: number, azimuthDeg: number, tiltDeg: number, facingDeg: number): number {
  const { east, north, up } = sunVector(elevationDeg, azimuthDeg);
  return cosIncidence(planeNormal(tiltDeg, facingDeg), east, north, up);
}

/** Beam, sky and ground irradiance of a row's plane under the given sun. */
function onPlane(row: TableRow, elevationDeg: number, azimuthDeg: number, extraNormal: number) {
  const tiltDeg = row.number('tilt');
  const cosInc = incidence(elevationDeg, azimuthDeg, tiltDeg, row.number('plane_az'));
  const { isotropic, circumsolar, horizon } = skyOnPlane({
    beamNormal: row.number('dni'),
    diffuseHorizontal: row.number('dhi'),
    extraNormal,
    zenithDeg: 90 - elevationDeg,
    cosIncidence: cosInc,
    tiltDeg,
  });
  return {
    beam: row.number('dni') * Math.max(cosInc, 0),
    sky: isotropic + circumsolar + horizon,
    ground: groundOnPlane(row.number('ghi'), 0.2, tiltDeg),
  };
}

function checkRow(row: TableRow, ours: ReturnType<typeof onPlane>, allowed: number, whose: string): void {
  const columns = { beam: 'beam', sky: 'sky_perez1990', ground: 'ground' } as const;
  for (const part of ['beam', 'sky', 'ground'] as const) {
    check({
      source: SOURCE,
      case: caseName(row),
      quantity: `${part}, ${whose}`,
      reference: row.number(columns[part]),
      ours: ours[part],
      allowed,
      unit: 'W/m²',
      mark: 'computed',
    });
  }
}

describe('irradiance of 200 hours on six planes', () => {
  test('the table has 1200 rows, 600 of each site', () => {
    expect(rows).toHaveLength(1200);
    for (const site of Object.keys(SITES)) {
      expect(rows.filter((row) => row.text('site') === site)).toHaveLength(600);
    }
  });

  test('with the sun of the row, beam, sky and ground agree', () => {
    for (const row of rows) {
      const ours = onPlane(row, row.number('sun_elev'), row.number('sun_az'), row.number('dni_extra'));
      checkRow(row, ours, ALLOWED.sameSun, 'sun given');
    }
  });

  test('with our own sun and extraterrestrial irradiance they still agree to half a watt', () => {
    for (const row of rows) {
      const utc = row.text('sun_utc');
      const [latitude, longitude] = SITES[row.text('site')]!;
      const sun = sunPosition(Date.parse(utc), latitude, longitude);
      const ours = onPlane(row, sun.elevationDeg, sun.azimuthDeg, extraterrestrialNormal(dayOfYear(utc)));
      checkRow(row, ours, ALLOWED.ownSun, 'own sun');
    }
  });

  test('extraterrestrial irradiance, air mass and incidence agree with their columns', () => {
    for (const row of rows) {
      const elevation = row.number('sun_elev');
      const base = { source: SOURCE, case: caseName(row), mark: 'computed' } as const;
      check({
        ...base,
        quantity: 'extraterrestrial normal irradiance',
        reference: row.number('dni_extra'),
        ours: extraterrestrialNormal(dayOfYear(row.text('sun_utc'))),
        allowed: ALLOWED.extra,
        unit: 'W/m²',
      });
      check({
        ...base,
        quantity: 'relative air mass',
        kind: 'rel',
        reference: row.number('airmass'),
        ours: relativeAirMass(90 - elevation),
        allowed: ALLOWED.airMassRel,
        unit: '',
      });
      check({
        ...base,
        quantity: 'cosine of incidence',
        reference: row.number('cos_aoi'),
        ours: incidence(elevation, row.number('sun_az'), row.number('tilt'), row.number('plane_az')),
        allowed: ALLOWED.cosIncidence,
        unit: '',
      });
    }
  });
});
