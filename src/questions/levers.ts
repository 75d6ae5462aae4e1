// The single changes an adviser would try first, each to be run as a design of its own, so that "what would help most"
// is computed and not guessed. A design in, levers out; with the figures of each pulled lever, the one that moves a figure most.

import { MOST_COVERS } from '../design/cover-rules.ts';
import type { Cover, Design } from '../design/design.ts';
import { geometryOf } from '../design/geometry.ts';
import { materialById } from '../design/materials.ts';
import type { FigureKey, Figures } from './figures.ts';
import { heatLevers } from './heat-levers.ts';
import type { Lever, Pulled } from './lever.ts';
import { roomForMass } from './room-for-mass.ts';
import { roomLevers } from './room-levers.ts';
import { type Changes, varied, withGlassM2 } from './variation.ts';
import type { Words } from './words.ts';

/** Sizes of the moves: what people do build. House rules. */
const LESS_GLASS = 0.7;
const OVERHANG_M = 0.6;
const SUMMER_SHADE = 0.7;
const NIGHT_RESISTANCE = 1;
/** or what the house has room for, from so much on [m²] */
const MORE_MASS_M2 = 30;
const LEAST_MORE_MASS_M2 = 5;
const PURGE_ACH = 5;
/** air at people below a fan at middling speed [m/s]: 0.5 to 0.8, common practice, no source */
const FAN_MS = 0.6;
/** windows that open, as a share of the floor; a twentieth is common practice, no source */
const OPENABLE_SHARE = 0.05;
const FRESH_ACH50_LEAST = 1;
/** Outdoor air a person needs at least, for health [m³/h]: 4 L/s, EN 16798-1; from memory, medium confidence. */
const FRESH_M3H_EACH = 14.4;
const SMALLER_BED = 0.5;
/** Other windows, as a share of the floor, from which shade on them is worth a try. */
const SIDE_WINDOWS_SHARE = 0.02;
const WALL_RESISTANCE = 6;
const ROOF_RESISTANCE = 10;
const FLOOR_RESISTANCE = 2.5;

/**
 * Levers that this design has not pulled already.
 *
 * @param design a checked design
 */
export function leversOf(design: Design): readonly Lever[] {
  const { glass, sunspace, mass, floor, envelope, air, vents, ventilation, people, plants, house, comfort } =
    design;
  const hasSunspace = sunspace.join !== 'none';
  const { glassM2, houseVolumeM3 } = geometryOf(design);
  const openableM2 = OPENABLE_SHARE * house.floorAreaM2;
  const moreMassM2 = Math.min(MORE_MASS_M2, roomForMass(house, mass.thicknessM) - mass.areaM2);
  const freshM3H = FRESH_M3H_EACH * people.count;
  const fansM3H = (vents.extractAch + ventilation.recoveryAch) * houseVolumeM3;
  const lever = (
    id: string,
    when: boolean,
    words: string,
    changes: Changes,
    size?: Lever['size'],
  ): Lever[] => (when ? [{ id, words, apply: (to) => varied(to, changes), ...(size && { size }) }] : []);
  return [
    ...(glassM2 > 1
      ? [
          {
            id: 'less-glass',
            words: 'take away nearly a third of the equator-facing glass',
            size: ({ area }: Words) => `to ${area(LESS_GLASS * glassM2)}`,
            apply: (to: Design) => withGlassM2(to, LESS_GLASS * glassM2),
          },
        ]
      : []),
    ...lever('upright', glass.tiltDeg < 85, 'stand the glass upright under an overhang', {
      'glass.tiltDeg': 90,
      'glass.overhangM': Math.max(OVERHANG_M, glass.overhangM),
    }),
    ...lever(
      'overhang',
      glass.tiltDeg >= 85 && glass.overhangM < 0.3,
      'put an overhang over the glass',
      {
        'glass.overhangM': OVERHANG_M,
      },
      ({ length }) => length(OVERHANG_M),
    ),
    ...lever(
      'shade',
      glass.summerShade < 0.5,
      'shade the glass from outside in summer',
      {
        'glass.summerShade': SUMMER_SHADE,
      },
      () => `${Math.round(100 * SUMMER_SHADE)} % of the sun kept off`,
    ),
    ...coverLevers(design),
    ...roomLevers(design),
    ...heatLevers(design),
    ...lever(
      'night-cover',
      glass.nightResistance < 0.5,
      'cover the glass at night with insulation',
      {
        'glass.nightResistance': NIGHT_RESISTANCE,
      },
      ({ resistance }) => resistance(NIGHT_RESISTANCE),
    ),
    ...lever(
      'better-glass',
      glass.type === 'double-clear' || glass.type === 'single-clear',
      'use better glass',
      {
        'glass.type': 'double-low-e',
      },
    ),
    ...lever(
      'close-off',
      sunspace.join === 'open',
      'shut the sunspace off from the rooms by a wall and a door',
      { 'sunspace.join': 'closed' },
    ),
    ...lever(
      'more-mass',
      mass.areaM2 < 60 && moreMassM2 >= LEAST_MORE_MASS_M2,
      mass.areaM2 > 0 && mass.place === 'shaded'
        ? 'move the mass into the sun, and add to it'
        : 'add mass where the sun falls',
      { 'mass.place': 'sunlit', 'mass.areaM2': mass.areaM2 + moreMassM2 },
      ({ area, thickness }) =>
        `${area(moreMassM2)} more, ${thickness(mass.thicknessM)} of ${materialById(mass.material).name.toLowerCase()}`,
    ),
    ...lever(
      'bare-floor',
      floor.cover === 'carpet' || floor.cover === 'wood',
      'leave the sunlit floor bare or tiled',
      { 'floor.cover': 'tile' },
    ),
    ...lever(
      'floor-insulation',
      floor.resistance < 1.5,
      'insulate under the floor',
      {
        'floor.resistance': FLOOR_RESISTANCE,
        'floor.edgeResistance': Math.max(1.5, floor.edgeResistance),
      },
      ({ resistance }) => resistance(FLOOR_RESISTANCE),
    ),
    ...lever(
      'wall-insulation',
      envelope.wallResistance < 4,
      'insulate the walls better',
      {
        'envelope.wallResistance': WALL_RESISTANCE,
      },
      ({ resistance }) => resistance(WALL_RESISTANCE),
    ),
    ...lever(
      'roof-insulation',
      envelope.roofResistance < 7,
      'insulate the roof better',
      {
        'envelope.roofResistance': ROOF_RESISTANCE,
      },
      ({ resistance }) => resistance(ROOF_RESISTANCE),
    ),
    ...lever(
      'tighter',
      air.ach50 > 2,
      `build the house more tightly${fansM3H > 0 ? '' : ', with no fan for fresh air'}`,
      {
        'air.ach50': Math.max(FRESH_ACH50_LEAST, air.ach50 / 2),
      },
    ),
    ...lever('openers', vents.habit !== 'automatic', 'let openers work the vents', {
      'vents.habit': 'automatic',
    }),
    ...lever(
      'windows',
      vents.houseM2 < openableM2,
      'make more of the windows open',
      {
        'vents.houseM2': openableM2,
      },
      ({ area }) => area(openableM2),
    ),
    ...lever(
      'sunspace-vents',
      hasSunspace && vents.sunspaceM2 < glassM2 / 6,
      'make the sunspace vents larger',
      {
        'vents.sunspaceM2': glassM2 / 6,
      },
      ({ area }) => area(glassM2 / 6),
    ),
    ...lever(
      'purge',
      vents.nightPurgeAch === 0,
      'blow cool night air through the house',
      {
        'vents.nightPurgeAch': PURGE_ACH,
      },
      () => `${PURGE_ACH} air changes an hour`,
    ),
    ...lever(
      'ceiling-fans',
      people.count > 0 && (comfort.airSpeedMs ?? 0) < FAN_MS,
      'hang ceiling fans, which cool people and not the air',
      { 'comfort.airSpeedMs': FAN_MS },
      ({ speed }) => speed(FAN_MS),
    ),
    ...lever(
      'fresh-air-fan',
      people.count > 0 && fansM3H < 0.9 * freshM3H,
      'run a small fan all day for fresh air',
      { 'vents.extractAch': freshM3H / houseVolumeM3 },
      ({ volume }) => `${volume(freshM3H)} an hour`,
    ),
    ...lever(
      'heat-recovery',
      people.count > 0 && ventilation.recoveryAch * houseVolumeM3 < 0.9 * freshM3H,
      `bring fresh air in through a unit that gives its heat back${vents.extractAch > 0 ? ', in place of the fan' : ''}`,
      { 'ventilation.recoveryAch': freshM3H / houseVolumeM3, 'vents.extractAch': 0 },
      ({ volume }) => `${volume(freshM3H)} an hour`,
    ),
    ...lever('dry-living', people.living !== 'dry', 'cook under a hood and dry no washing in the rooms', {
      'people.living': 'dry',
    }),
    ...lever(
      'smaller-bed',
      plants.bedM2 > 0 && plants.soil !== 'mulched',
      'halve the planted bed and mulch it',
      { 'plants.bedM2': SMALLER_BED * plants.bedM2, 'plants.soil': 'mulched' },
      ({ area }) => `to ${area(SMALLER_BED * plants.bedM2)}`,
    ).map((milder) => ({ ...milder, milderThan: 'no-plants' })),
    ...lever('no-plants', plants.bedM2 > 0, 'plant nothing indoors', { 'plants.bedM2': 0 }),
  ];
}

/** Covers worth a try, each a lever where nothing like it hangs there yet. */
function coverLevers({ covers = [], glass, sunspace }: Design): readonly Lever[] {
  const hangs = (kind: string, on: readonly Cover['on'][]) =>
    covers.some((cover) => cover.kind === kind && on.includes(cover.on));
  const lever = (id: string, when: boolean, words: string, cover: Cover): readonly Lever[] =>
    when && covers.length < MOST_COVERS
      ? [{ id, words, apply: (to) => ({ ...to, covers: [...(to.covers ?? []), cover] }) }]
      : [];
  return [
    ...lever(
      'side-blinds',
      glass.otherShareOfFloor >= SIDE_WINDOWS_SHARE &&
        !hangs('outside-blind', ['east-and-west', 'east', 'west', 'all']),
      'hang outside blinds on the east and west windows, drawn when it gets hot',
      { kind: 'outside-blind', on: 'east-and-west', drawnBy: 'heat', season: 'year' },
    ),
    // Open to the rooms, its glass is the house's front: the seasonal shade is that lever.
    ...lever(
      'shade-cloth',
      sunspace.join === 'closed' && !hangs('shade-cloth', ['sunspace', 'front', 'all']),
      'hang shade cloth over the sunspace in the warm months',
      { kind: 'shade-cloth', on: 'sunspace', drawnBy: 'season', season: 'warm' },
    ),
    ...lever(
      'leaves',
      glass.value > 0 && glass.tiltDeg >= 85 && !hangs('leaves', ['front', 'sunspace', 'all']),
      'grow leaves on a trellis before the glass',
      { kind: 'leaves', on: 'front', drawnBy: 'season', season: 'year' },
    ),
  ];
}

/** Figures of which more is better. */
const MORE_IS_BETTER: readonly FigureKey[] = ['coldestC', 'sunspaceColdestC'];

export interface BestLever {
  readonly lever: Lever;
  readonly figures: Figures;
  readonly from: number;
  readonly to: number;
}

/**
 * The lever that moves a figure most to the better.
 *
 * @param least smallest move worth a word, in the figure's unit
 * @returns null when none moves it so far
 */
export function bestLever(
  drawn: Figures,
  pulled: readonly Pulled[],
  key: FigureKey,
  least: number,
): BestLever | null {
  const from = drawn[key];
  if (from === null) return null;
  const sign = MORE_IS_BETTER.includes(key) ? 1 : -1;
  let best: BestLever | null = null;
  for (const { lever, figures } of pulled) {
    const to = figures[key];
    if (to === null || sign * (to - from) < least) continue;
    if (best === null || sign * (to - best.to) > 0) best = { lever, figures, from, to };
  }
  return best;
}
