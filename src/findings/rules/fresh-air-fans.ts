// Fans for fresh air: what a unit with heat recovery gives and takes, where it does not pay, and the dangers of fans that
// pull on a house. Sources on each rule.

import type { Context } from '../context.ts';
import { caution, finding, type Rule } from '../rule.ts';

/** Air that leaks at 50 Pa through each m² of the shell, above which a unit gives little [m³/(h·m²)]: UK advice to builders, medium confidence. */
const TIGHT_M3H_M2 = 3;
/** The most an extract fan may pull on a room with a stove in it [Pa]: a German rule; from memory, high confidence. */
const STOVE_PA = 4;
/** Outdoors below this a unit that turns room air round brings none in at times [°C]: physics/heat-recovery.ts. */
const THAW_BELOW_C = -5;
/** Changes of filter a year; common practice, no source. */
const FILTER_CHANGES = 2;

const hasUnit = ({ design }: Context) => design.ventilation.recoveryAch > 0;

/** Air through each m² of the shell at 50 Pa [m³/(h·m²)]. */
function leakage({ design, geometry }: Context): number {
  const { houseVolumeM3, roofM2, groundFloorM2, equatorWallM2, poleWallM2, sideWallM2 } = geometry;
  const shellM2 = roofM2 + groundFloorM2 + equatorWallM2 + poleWallM2 + 2 * sideWallM2;
  return (design.air.ach50 * houseVolumeM3) / shellM2;
}

export const FRESH_AIR_FAN_RULES: readonly Rule[] = [
  finding({
    id: 'recovery-gives',
    severity: 'note',
    applies: hasUnit,
    figures: ({ outcome }) => ({
      recoveredKWh: outcome.ventilation.recoveredKWh,
      electricityKWh: outcome.ventilation.fansKWh + outcome.ventilation.frostHeaterKWh,
      heaterKWh: outcome.ventilation.frostHeaterKWh,
    }),
    says: (f, { words }) =>
      `The ventilation unit gives back ${words.energy(f.recoveredKWh)} of heat a year. Its fans${f.heaterKWh > 5 ? ' and its heater against ice' : ''} take ${words.electricity(f.electricityKWh)} of power. Not all it gives back is wanted: in mild weather the sun would have warmed the rooms without it.`,
  }),
  finding({
    id: 'recovery-leaky',
    severity: 'note',
    applies: (context) => hasUnit(context) && leakage(context) > TIGHT_M3H_M2,
    figures: (context) => ({
      leakageM3H: leakage(context),
      tightM3H: TIGHT_M3H_M2,
      timesTight: leakage(context) / TIGHT_M3H_M2,
      source: 'UK building practice, 3 m³ an hour through each m² at 50 Pa (medium confidence)',
    }),
    says: () =>
      'The house leaks more than is usual with such a unit. What blows through the cracks brings no heat back. Seal the cracks first: then the unit has all the air to itself.',
  }),
  caution({
    id: 'caution-extract-fan',
    severity: 'warning',
    applies: ({ design }) => design.vents.extractAch > 0 || design.vents.nightPurgeAch > 0,
    figures: ({ design }) => ({
      mostPa: STOVE_PA,
      fan: design.vents.extractAch > 0 ? 'An extract fan' : 'A fan that blows out the warm air at night',
      source:
        'German rule for stoves and fans in one flat (from memory, high confidence); local codes decide',
    }),
    says: (f) =>
      `${f.fan} pulls air in wherever it can: down a flue and out of the ground. It can bring back smoke and carbon monoxide from a stove, and draw radon up through the floor. Give it inlets of its own. Where a stove stands it must not pull more than ${f.mostPa} Pa: have that measured with all doors and windows shut. Fit carbon monoxide alarms, and test for radon with the fan running.`,
  }),
  caution({
    id: 'caution-ventilation-unit',
    severity: 'note',
    applies: (context) => hasUnit(context),
    figures: ({ design, climate }) => ({
      filterChanges: FILTER_CHANGES,
      thaws:
        design.ventilation.frost === 'recirculate' &&
        climate.year.dryBulbC.some((outdoorC) => outdoorC < THAW_BELOW_C)
          ? 'yes'
          : 'no',
      thawBelowC: THAW_BELOW_C,
      source: 'usual building practice; a maker’s sheet for frost; local codes decide',
    }),
    says: (f, { words }) =>
      `A ventilation unit needs care, or it grows mould and moves no air. Change its filters at least ${f.filterChanges} times a year and keep its drain clear. Have both flows measured when it is new: a unit out of balance pulls on the house. A stove beside it needs air of its own, and a carbon monoxide alarm.${f.thaws === 'yes' ? ` Below ${words.temperature(f.thawBelowC)} outside this one brings no fresh air while it thaws.` : ''}`,
  }),
];
