// Heat in a sunspace that can kill, whatever the rooms do: people go in, and children, pets and the old are left there. Felt
// heat by the US National Weather Service, in the shade; in the sun behind glass it is hotter yet.

import { heatBand } from '../../physics/heat-index.ts';
import type { Context } from '../context.ts';
import { caution, type Rule } from '../rule.ts';
import { hours } from '../wording.ts';
import { feltFigures } from './felt-heat.ts';

/** Whether the sunspace comes to what the service calls "danger". */
export function sunspaceIsDangerous({ sunspace }: Pick<Context, 'sunspace'>): boolean {
  const worstC = sunspace?.feltHeat.maxC ?? null;
  return worstC !== null && ['danger', 'extreme danger'].includes(heatBand(worstC));
}

export const SUNSPACE_CAUTIONS: readonly Rule[] = [
  caution({
    id: 'caution-hot-sunspace',
    severity: (context) => (sunspaceIsDangerous(context) ? 'danger' : 'warning'),
    applies: ({ sunspace }) => (sunspace?.feltHeat.hours ?? 0) > 0,
    figures: ({ sunspace }) => ({
      ...feltFigures(sunspace!.feltHeat),
      source:
        'US National Weather Service, heat index, in the shade; hot cars: the same service (from memory, high confidence)',
    }),
    says: (f, { words }) =>
      `The sunspace feels like ${words.temperature(f.fromC)} or more for ${hours(f.hours)} a year, and like ${words.temperature(f.worstC)}${f.beyondChart === 'yes' ? ' or worse' : ''} on ${f.worst}, in the shade; in the sun it is hotter. Like a parked car it can kill: never leave a child, a pet, or an old or sick person in it while the sun shines, and let none of them be shut in. The US weather service calls that "${f.band}". Give it vents that open by themselves, and ask a doctor or your health department if you are in doubt.`,
  }),
];
