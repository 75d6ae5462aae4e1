// Which covers hang on a pane and by what rule each is drawn. A design, its site and where the pane stands in; covers
// of the model out, outermost first. The front's night insulation and summer shade are two covers of their own standing
// on the pane (nightResistance, shading.seasonal): drawn without anyone's hand, they mean what they always did.

import { type CoverKind, coverKindById } from '../design/cover-catalogue.ts';
import type { Cover, CoverSide, Design } from '../design/design.ts';
import { glassById } from '../design/glass-catalogue.ts';
import type { Site } from '../weather/typical-year.ts';
import { warmMonths } from './compass.ts';
import type { PaneCover } from './model.ts';
import { roomBehindSunspace } from './rooms-of-design.ts';

/** Where a pane to outdoors stands. */
export interface PanePlace {
  readonly side: 'front' | 'end-east' | 'end-west' | 'pole' | 'east' | 'west';
  readonly inSunspace: boolean;
}

/** Sun on the window at which people and controls draw a shade; controls practice, from memory, medium confidence [W/m²]. */
const DRAWN_BY_SUN_W = 250;
/** In a room already warm, any plain sun does; common practice, no source [W/m²]. */
const DRAWN_BY_HEAT_W = 100;
/** A sunspace closed off is let grow this warm, since its warmth is wanted; common practice, no source [°C]. */
const SUNSPACE_WARM_C = 28;
/** No shade against heat while the room, or the rooms that want its warmth, are nearer than this to what they are heated to; common practice, no source [K]. */
const ABOVE_HEATING_K = 2;

const PLACES = ['outside', 'between', 'inside'] as const;

/** Covers on a pane to outdoors. */
export function coversOn(design: Design, site: Site, pane: PanePlace): PaneCover[] {
  return (design.covers ?? [])
    .map((cover, i) => ({ cover, i, kind: coverKindById(cover.kind) }))
    .filter(({ cover }) => hangsOn(cover.on, pane))
    .sort((one, other) => PLACES.indexOf(one.kind.place) - PLACES.indexOf(other.kind.place))
    .map(({ cover, i, kind }) => paneCover(design, site, pane, cover, kind, i));
}

/** Which of the design's covers a pane's cover is, by its place in the list: the number that its hand ends in. */
export function coverOf({ covers = [] }: Design, { hand }: PaneCover): Cover {
  return covers[Number(/\((\d+)\)$/.exec(hand)?.[1]) - 1]!;
}

function hangsOn(on: CoverSide, { side, inSunspace }: PanePlace): boolean {
  switch (on) {
    case 'all':
      return true;
    case 'sunspace':
      return inSunspace;
    case 'east-and-west':
      return side === 'east' || side === 'west';
    default:
      return side === on;
  }
}

function paneCover(
  design: Design,
  site: Site,
  pane: PanePlace,
  cover: Cover,
  kind: CoverKind,
  index: number,
): PaneCover {
  const { drawnBy } = cover;
  const isGrown = kind.leaf !== undefined;
  const aboveC = Math.max(cover.aboveC ?? warmAbove(design, pane), design.heating.dayC + ABOVE_HEATING_K);
  return {
    hand: `${kind.name}, ${pane.side} (${index + 1})`,
    // With a single sheet there is no between: the slats hang behind it.
    place: kind.place === 'between' && glassById(design.glass.type).sheets === 1 ? 'inside' : kind.place,
    transmittance: kind.transmittance,
    reflectance: kind.reflectance,
    scatters: kind.scatters,
    coverage: kind.coverage,
    resistance: kind.resistance,
    rule: {
      drawnBy,
      months: isGrown ? leafMonths(kind.leaf, site) : seasonMonths(cover.season, site),
      sunW: cover.sunW ?? (drawnBy === 'heat' ? DRAWN_BY_HEAT_W : DRAWN_BY_SUN_W),
      aboveC,
      ...(cover.aboveC === undefined && { coldAboveC: Math.max(aboveC, design.comfort.overheatC) }),
      ...(pane.inSunspace && {
        spares: { zone: roomBehindSunspace(design), belowC: design.heating.dayC + ABOVE_HEATING_K },
      }),
      mostWind: kind.mostWind,
    },
    // What grows needs no hand.
    control: isGrown ? 'automatic' : (cover.habit ?? design.vents.habit),
  };
}

function warmAbove({ vents, sunspace }: Design, { inSunspace }: PanePlace): number {
  const isClosedOff = inSunspace && sunspace.join === 'closed';
  return isClosedOff ? Math.max(SUNSPACE_WARM_C, vents.opensAboveC) : vents.opensAboveC;
}

function seasonMonths(season: Cover['season'], site: Site): readonly number[] {
  const warm = warmMonths(site);
  return warm.map((isWarm) => (season === 'year' ? 1 : season === 'warm' ? isWarm : 1 - isWarm));
}

/** Half a year later south of the equator. */
function leafMonths(leaf: readonly number[], { latitudeDeg }: Site): readonly number[] {
  return latitudeDeg >= 0 ? leaf : leaf.map((_, month) => leaf[(month + 6) % 12]!);
}
