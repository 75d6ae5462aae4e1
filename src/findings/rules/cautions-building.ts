// Dangers of building such a house: thrust of the earth, weight on the roof, water in tall containers, damp behind
// the berm, heavy work. Sources on each rule; local codes and licensed practice come first.

import { materialById } from '../../design/materials.ts';
import { TYRE_PRACTICE } from '../../physics/labour.ts';
import type { Context } from '../context.ts';
import { caution, type Rule } from '../rule.ts';

/** Retained earth above which most codes want an engineer [m] (from memory, medium confidence). */
const ENGINEER_ABOVE_M = 1.2;
/** The same against walls laid up loose, of tyres, earth or stone: allotted to dry-laid walls (from memory, medium confidence). */
const ENGINEER_ABOVE_LOOSE_M = 0.9;
const LOOSE = ['earth-tyres', 'rammed-earth', 'adobe', 'stone'];
const WATER_KG_PER_M3 = 1000;
/** Masonry and earth, not board [kg/m³]; as the mass of a house is counted, with a margin. House rule. */
const HEAVY_KG_PER_M3 = 1200;

function retainedM({ design, geometry }: Context): number {
  return design.envelope.bermShare * geometry.heightM;
}

function engineerAboveM({ design }: Context): number {
  return LOOSE.includes(design.envelope.wallLining) ? ENGINEER_ABOVE_LOOSE_M : ENGINEER_ABOVE_M;
}

function usesTyres({ design: { mass, envelope, sunspace } }: Context): boolean {
  return (
    envelope.wallLining === 'earth-tyres' ||
    (mass.areaM2 > 0 && mass.material === 'earth-tyres') ||
    (sunspace.join === 'closed' && sunspace.commonWallMaterial === 'earth-tyres')
  );
}

/** Walls of the design that stand up heavy; filled drums have a caution of their own. */
function heavyWalls({ design: { mass, envelope, sunspace } }: Context): readonly string[] {
  return [
    ...(mass.areaM2 > 0 && mass.material !== 'water' ? [mass.material] : []),
    ...(sunspace.join === 'closed' ? [sunspace.commonWallMaterial] : []),
    envelope.wallLining,
  ].filter((material) => materialById(material).density >= HEAVY_KG_PER_M3);
}

function poundsEarth({ design }: Context): boolean {
  const { mass, envelope } = design;
  const pounded = ['earth-tyres', 'rammed-earth'];
  return pounded.includes(envelope.wallLining) || (mass.areaM2 > 0 && pounded.includes(mass.material));
}

/** The usual buried house, whose roof may carry earth, or a sunspace with a roof of its own. */
function roofIsHeavy({ design, geometry }: Context): boolean {
  return design.envelope.bermShare === 1 || geometry.sunspaceRoofM2 > 0;
}

export const BUILDING_CAUTIONS: readonly Rule[] = [
  caution({
    id: 'caution-retaining',
    severity: 'danger',
    applies: (context) => retainedM(context) >= engineerAboveM(context),
    figures: (context) => ({
      retainedM: retainedM(context),
      engineerAboveM: engineerAboveM(context),
      source:
        'common to building codes, dry-laid walls from 3 feet up (from memory, medium confidence); local codes decide',
    }),
    says: (f, { words }) =>
      `The walls hold back ${words.length(f.retainedM)} of earth. Wet earth pushes hard, and such walls have fallen on people. From about ${words.aboutLength(f.engineerAboveM)} up most codes want an engineer's design for such a wall. Ask a structural engineer before you dig, and never work under an unpropped bank.`,
  }),
  caution({
    id: 'caution-berm-damp',
    severity: 'warning',
    applies: ({ design }) => design.envelope.bermShare > 0,
    figures: () => ({
      fallShare: 0.05,
      fallM: 3,
      source: 'model dwelling code: ground falls 5 % for 3 m (from memory, high confidence)',
    }),
    says: (f, { words }) =>
      `Keep water away from the earth wall. Let the ground fall away from it by ${Math.round(100 * f.fallShare)} % for ${words.aboutLength(f.fallM)}, and dig a ditch above the berm. Lay a drain below floor level that runs out in the open. Put a membrane on the wall and the insulation outside it. Dry earth also keeps the house warmer. Once it is buried you cannot mend it, so have a drainage engineer, or a builder used to buried walls, check it before you fill.`,
  }),
  caution({
    id: 'caution-foundation-damp',
    severity: 'note',
    applies: ({ design }) => design.envelope.bermShare === 0,
    figures: () => ({
      source: 'usual building practice; ISO 13793 for frost; local codes decide',
    }),
    says: () =>
      'Lead rain away from the foot of the walls, put a sheet against damp under the slab, and take the footing below frost or insulate it as your code says.',
  }),
  caution({
    id: 'caution-roof-load',
    severity: 'warning',
    applies: roofIsHeavy,
    figures: () => ({ source: 'usual building practice; local codes decide' }),
    says: () =>
      "Beams over wide rooms, snow, and above all any earth on the roof are a structural engineer's matter. Rain makes dry earth a third heavier. This tool knows heat and damp; it knows nothing of strength.",
  }),
  caution({
    id: 'caution-beams',
    severity: 'note',
    applies: (context) => !roofIsHeavy(context),
    figures: () => ({ source: 'usual building practice; local codes decide' }),
    says: () =>
      'This tool knows heat and damp; it knows nothing of strength. Take the beams over wide rooms and windows from the span tables of your code, or ask a structural engineer. So too for snow and wind on the roof. Earth on a roof always wants the engineer.',
  }),
  caution({
    id: 'caution-water-weight',
    severity: 'warning',
    applies: ({ design }) => design.mass.areaM2 > 0 && design.mass.material === 'water',
    figures: ({ design }) => ({
      waterKg: design.mass.areaM2 * design.mass.thicknessM * WATER_KG_PER_M3,
      source: 'usual building practice; local codes decide',
    }),
    says: (f, { words }) =>
      `The water weighs ${words.weight(f.waterKg)}. Tall containers can tip, burst or crush a child, so stand them on the slab, tie them to the wall, and treat the water against rot. Where the ground can shake, ask an engineer how to hold them.`,
  }),
  caution({
    id: 'caution-pounding',
    severity: 'note',
    applies: poundsEarth,
    figures: () => ({
      tyreKg: TYRE_PRACTICE.earthKg,
      perDayLeast: TYRE_PRACTICE.tyresPerDayRange[0],
      perDayMost: TYRE_PRACTICE.tyresPerDayRange[1],
      source: 'common practice, no source',
    }),
    says: (f, { words }) =>
      `Ramming earth is hard on backs, wrists and ears: a rammed tyre holds about ${words.weight(f.tyreKg)}, and ${f.perDayLeast} to ${f.perDayMost} a day is a full day. Take turns, lift in pairs, wear ear and dust protection. Ask your building office early: tyre and raw-earth walls need its consent nearly everywhere.`,
  }),
  caution({
    id: 'caution-heavy-walls',
    severity: 'danger',
    applies: (context) => heavyWalls(context).length > 0,
    figures: ({ design }) => ({
      heightM: design.house.ceilingHeightM,
      source:
        'New Zealand standards for earth buildings, Eurocode 8 (from memory, high confidence); local codes decide',
    }),
    says: (f, { words }) =>
      `A heavy wall ${words.length(f.heightM)} high can crack, lean or fall on people, most of all when the ground shakes. It wants a footing of its own on firm ground, ties to floor and roof, and steel or a ring beam where earthquakes come. Have a structural engineer size the wall and its footing, and ask your building office how your ground is zoned.`,
  }),
  caution({
    id: 'caution-tyres',
    severity: 'danger',
    applies: usesTyres,
    figures: () => ({
      source:
        'fire services on stored tyres, builders of tyre walls (from memory, medium confidence); local codes decide',
    }),
    says: () =>
      'A stack of tyres that catches fire can hardly be put out, and its smoke is poison. Keep the stock small, far from the house and from any flame, and cover each wall soon after it is filled. Plaster tyres without gaps, inside and out: bare they burn, smell when warm, and let in mice. Ask the fire service about the stock and your building office about the wall.',
  }),
];
