// The choices of a design that are words, not numbers: label, options in plain words and what each means. The screen
// builds its menus from this; the schema knows the same values.

import { GLASS } from '../../design/glass-catalogue.ts';
import { MATERIALS } from '../../design/materials.ts';

export interface Choice {
  readonly path: string;
  readonly label: string;
  readonly options: readonly { readonly value: string | boolean; readonly label: string }[];
}

/** The value of an option that leaves the key out of the design. */
export const ABSENT = '';

const choice = (
  path: string,
  label: string,
  ...pairs: readonly (readonly [string | boolean, string])[]
): Choice => ({
  path,
  label,
  options: pairs.map(([value, text]) => ({ value, label: text })),
});

const massMaterials = MATERIALS.filter((material) => material.mass).map(
  ({ id, name }) => [id, name] as const,
);
const linings = MATERIALS.filter(
  ({ id }) => !['carpet', 'soil', 'tile', 'cellulose', 'mineral-wool', 'xps', 'water'].includes(id),
).map(({ id, name }) => [id, name] as const);
const floors = MATERIALS.filter(
  ({ id }) =>
    !['carpet', 'plasterboard', 'soil', 'cellulose', 'mineral-wool', 'straw', 'xps', 'water'].includes(id),
).map(({ id, name }) => [id, name] as const);

const CHOICES: readonly Choice[] = [
  choice(
    'glass.basis',
    'Glass given as',
    ['area', 'area'],
    ['share-of-wall', 'share of the wall'],
    ['share-of-floor', 'share of the floor'],
  ),
  choice('glass.type', 'Kind of glass', ...GLASS.map(({ id, name }) => [id, name] as const)),
  choice(
    'sunspace.join',
    'Sunspace',
    ['none', 'none, sun straight into the rooms'],
    ['open', 'open to the rooms'],
    ['closed', 'closed off by a wall'],
  ),
  choice('sunspace.endWalls', 'End walls', ['insulated', 'insulated'], ['glazed', 'glazed']),
  choice('sunspace.commonWallMaterial', 'Common wall of', ...massMaterials),
  choice(
    'sunspace.doorRule',
    'The door between stands',
    ['by-need', 'open when the rooms want heat'],
    ['open', 'always open'],
    ['shut', 'always shut'],
  ),
  choice('mass.material', 'Extra mass of', ...massMaterials),
  choice('mass.place', 'It stands', ['sunlit', 'in the sun'], ['shaded', 'out of the sun']),
  choice('floor.material', 'Floor of', ...floors),
  choice(
    'floor.cover',
    'Floor finish',
    ['bare', 'bare'],
    ['tile', 'tile'],
    ['wood', 'wood'],
    ['carpet', 'carpet'],
  ),
  choice('envelope.wallLining', 'Inner leaf of', ...linings),
  choice(
    'vents.habit',
    'Vents are moved',
    ['automatic', 'by an automatic opener'],
    ['attentive', 'by attentive people'],
    ['away', 'by people away on workdays'],
    ['forgetful', 'by forgetful people'],
    ['never', 'by nobody, ever'],
  ),
  choice(
    'ventilation.aired',
    'Rooms are aired for some minutes',
    ['by-need', 'when they are damp or stale'],
    ['by-habit', 'every day, whatever the air is like'],
    ['never', 'never'],
  ),
  choice(
    'ventilation.extractRuns',
    'The extract fan runs',
    ['always', 'all the time'],
    ['hours', 'in the hours of cooking and washing'],
    ['humidity', 'as the rooms grow damp'],
  ),
  choice(
    'ventilation.frost',
    'Against ice in the unit',
    ['preheat', 'an electric heater before it'],
    ['recirculate', 'it turns room air round for a while'],
  ),
  choice(
    'people.living',
    'They live',
    ['dry', 'dry: little cooking, no drying indoors'],
    ['moist', 'as most do'],
    ['wet', 'wet: much cooking, laundry indoors'],
  ),
  choice('people.awayWorkdays', 'On workdays', [false, 'somebody is at home'], [true, 'everybody is away']),
  choice('people.awayWeekends', 'At weekends', [ABSENT, 'somebody is at home'], [true, 'everybody is away']),
  choice(
    'plants.soil',
    'Soil of the bed',
    ['mulched', 'mulched'],
    ['bare', 'bare and moist'],
    ['open-water', 'open water'],
  ),
  choice(
    'comfort.criterion',
    'Too hot means',
    [ABSENT, 'by the weather where windows are opened, else above one limit'],
    ['adaptive-II', 'by the weather, as most people bear it (EN 16798-1, II)'],
    ['adaptive-I', 'by the weather, for the old and the sick (EN 16798-1, I)'],
    ['adaptive-III', 'by the weather, for people who bear more (EN 16798-1, III)'],
    ['tm59-open', 'the British test for homes whose windows open (TM59)'],
    ['tm59-3-percent', 'the British test for homes whose windows stay shut (TM59)'],
    ['practice-10-percent', 'as low-energy houses are certified: a tenth of the year'],
    ['guide-a-living', 'the older British guide for living rooms (Guide A, 2006)'],
    ['fixed', 'above one limit of your own'],
  ),
];

/** The choice at a path. */
export function choiceOf(path: string): Choice {
  const found = CHOICES.find((entry) => entry.path === path);
  if (!found) throw new RangeError(`path is '${path}'; allowed: a choice of the design`);
  return found;
}
