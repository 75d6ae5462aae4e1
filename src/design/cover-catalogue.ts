// Catalogue of shades and covers by what their makers and standards state: place, solar values of the drawn cover at
// normal incidence, share of the glass it stands before, resistance it adds when drawn, and what can draw it.
// Solar values: typical blinds of EN 13363-1's annex by colour and openness (from memory, medium confidence), slats by
// its formula. Resistances: ISO 10077-1 for shutters; for blinds and curtains the heat loss they cut in chamber tests of
// a sash window in 2008 (second-hand), as added resistance at U 4.5. What has no source says so.

import { type BlindOptics, type BlindPlace, slatsAt45 } from '../physics/shaded-glazing.ts';
import { shutterResistance } from '../physics/shutter-resistance.ts';
import type { DrawnBy } from './design.ts';

export interface CoverKind extends BlindOptics {
  readonly id: string;
  /** as begun in a list: "Outside slatted blinds" */
  readonly name: string;
  readonly place: BlindPlace;
  /** share of the glass it stands before when drawn, 0…1 */
  readonly coverage: number;
  /** added when drawn [m²K/W] */
  readonly resistance: number;
  /** light comes through scattered, and no longer as a beam */
  readonly scatters: boolean;
  /** taken in above this wind at 10 m [m/s] */
  readonly mostWind: number;
  readonly drawnBy: readonly DrawnBy[];
  /** share by month north of the equator of something that grows, January first; absent for what is drawn */
  readonly leaf?: readonly number[];
  readonly source: string;
}

const NO_WIND_LIMIT = 100;
/** Wind classes 2 and 3 of EN 13561 and EN 13659: up to Beaufort 5 and 6; from memory, high confidence [m/s]. */
const WIND_CLASS_2 = 10.6;
const WIND_CLASS_3 = 13.6;
const BY_HAND: readonly DrawnBy[] = ['heat', 'sun', 'night', 'season'];
const BY_DAY: readonly DrawnBy[] = ['heat', 'sun', 'season'];
const LIGHT_SLATS = slatsAt45({ transmittance: 0, reflectance: 0.7 });

/** A vine that sheds its leaves: bare shoots and wires keep off about a quarter of what the leaves do. */
const VINE = [0.27, 0.27, 0.27, 0.45, 0.85, 1, 1, 1, 1, 0.75, 0.4, 0.27];

export const COVER_KINDS: readonly CoverKind[] = [
  {
    id: 'outside-blind',
    name: 'Outside slatted blinds',
    place: 'outside',
    ...LIGHT_SLATS,
    coverage: 1,
    resistance: shutterResistance(0, 'very high'),
    scatters: true,
    mostWind: WIND_CLASS_3,
    drawnBy: BY_HAND,
    source: 'light slats at 45°, EN 13363-1; resistance ISO 10077-1',
  },
  {
    id: 'outside-screen',
    name: 'Outside fabric screens',
    place: 'outside',
    transmittance: 0.2,
    reflectance: 0.6,
    coverage: 1,
    resistance: shutterResistance(0, 'very high'),
    scatters: true,
    mostWind: WIND_CLASS_3,
    drawnBy: BY_HAND,
    source: 'white screen, EN 13363-1; resistance ISO 10077-1',
  },
  {
    id: 'shutter',
    name: 'Outside shutters',
    place: 'outside',
    transmittance: 0.08,
    reflectance: 0.5,
    coverage: 1,
    resistance: shutterResistance(0.2, 'average'),
    scatters: true,
    mostWind: NO_WIND_LIMIT,
    drawnBy: BY_HAND,
    source:
      'pastel, EN 13363-1, with so much light at edges and louvres that the gain comes to the trade’s table; 25 mm of wood (0.2 m²K/W), ISO 10077-1',
  },
  {
    id: 'insulated-shutter',
    name: 'Insulated inside shutters',
    place: 'inside',
    transmittance: 0,
    reflectance: 0.7,
    coverage: 1,
    resistance: shutterResistance(0.7, 'low'),
    scatters: true,
    mostWind: NO_WIND_LIMIT,
    drawnBy: BY_HAND,
    source: 'white, opaque, EN 13363-1; panel of 0.7 m²K/W with seals, ISO 10077-1',
  },
  {
    id: 'awning',
    name: 'Awnings',
    place: 'outside',
    transmittance: 0.2,
    reflectance: 0.4,
    coverage: 0.75,
    resistance: 0,
    scatters: true,
    mostWind: WIND_CLASS_2,
    drawnBy: BY_DAY,
    source:
      'pastel cloth, EN 13363-1; three quarters of the light met, so that the whole keeps off half or more: trade tables',
  },
  {
    id: 'inside-blind',
    name: 'Inside roller blinds',
    place: 'inside',
    transmittance: 0.2,
    reflectance: 0.6,
    coverage: 1,
    resistance: 0.063,
    scatters: true,
    mostWind: NO_WIND_LIMIT,
    drawnBy: BY_HAND,
    source: 'white, EN 13363-1; cuts a sash window’s loss by 22 %, chamber tests of 2008',
  },
  {
    id: 'honeycomb',
    name: 'Honeycomb blinds',
    place: 'inside',
    transmittance: 0.2,
    reflectance: 0.6,
    coverage: 1,
    resistance: 0.125,
    scatters: true,
    mostWind: NO_WIND_LIMIT,
    drawnBy: BY_HAND,
    source: 'white, EN 13363-1; cuts a sash window’s loss by 36 %, chamber tests of 2008',
  },
  {
    id: 'curtain',
    name: 'Curtains',
    place: 'inside',
    transmittance: 0.2,
    reflectance: 0.4,
    coverage: 1,
    resistance: 0.036,
    scatters: true,
    mostWind: NO_WIND_LIMIT,
    drawnBy: BY_HAND,
    source: 'pastel, EN 13363-1; cuts a sash window’s loss by 14 %, chamber tests of 2008',
  },
  {
    id: 'sealed-curtain',
    name: 'Lined curtains with a pelmet',
    place: 'inside',
    transmittance: 0,
    reflectance: 0.5,
    coverage: 1,
    resistance: 0.26,
    scatters: true,
    mostWind: NO_WIND_LIMIT,
    drawnBy: BY_HAND,
    source:
      'pastel, opaque, EN 13363-1; to the floor and close to the wall: cuts up to 60 % of single glass’s loss, public advice of New Zealand',
  },
  {
    id: 'between-blind',
    name: 'Slats between the panes',
    place: 'between',
    ...LIGHT_SLATS,
    coverage: 1,
    resistance: 0,
    scatters: true,
    mostWind: NO_WIND_LIMIT,
    drawnBy: BY_DAY,
    source: 'light slats at 45°, EN 13363-1; resistance left out',
  },
  {
    id: 'shade-cloth',
    name: 'Shade cloth',
    place: 'outside',
    transmittance: 0.4,
    reflectance: 0.1,
    coverage: 1,
    resistance: 0,
    scatters: false,
    mostWind: NO_WIND_LIMIT,
    drawnBy: BY_DAY,
    source: 'growers’ cloth that keeps off 60 %, dark; common practice, no source',
  },
  {
    id: 'leaves',
    name: 'Leaves on a trellis',
    place: 'outside',
    transmittance: 0.25,
    reflectance: 0.2,
    coverage: 1,
    resistance: 0,
    scatters: false,
    mostWind: NO_WIND_LIMIT,
    drawnBy: ['season'],
    leaf: VINE,
    source:
      'a vine that keeps off three quarters in full leaf and a fifth when bare; common practice, no source',
  },
];

/**
 * Look a kind of cover up by id.
 *
 * @returns the row; throws RangeError for an unknown id, since the schema has already refused those
 */
export function coverKindById(id: string): CoverKind {
  const found = COVER_KINDS.find((kind) => kind.id === id);
  if (!found) throw new RangeError(`cover is '${id}'; allowed ${COVER_KINDS.map((k) => k.id).join(', ')}`);
  return found;
}
