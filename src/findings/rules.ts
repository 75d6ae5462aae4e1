// All rules, in the order in which findings of equal gravity are told: the rooms first, then what makes them so,
// then the cautions. A new topic is a new file under rules/ and a line here.

import type { Rule } from './rule.ts';
import { BUILDING_CAUTIONS } from './rules/cautions-building.ts';
import { GLASS_CAUTIONS } from './rules/cautions-glass.ts';
import { LIVING_CAUTIONS } from './rules/cautions-living.ts';
import { RADON_CAUTIONS } from './rules/cautions-radon.ts';
import { SUNSPACE_CAUTIONS } from './rules/cautions-sunspace.ts';
import { COVER_CAUTIONS, COVER_RULES } from './rules/covers.ts';
import { FRESH_AIR_FAN_RULES } from './rules/fresh-air-fans.ts';
import { GLASS_RULES } from './rules/glass.ts';
import { HEAT_SOURCE_CAUTIONS, HEAT_SOURCE_RULES } from './rules/heat-source.ts';
import { HOTTER_YEAR_RULES } from './rules/hotter-year.ts';
import { HOW_SURE_RULES } from './rules/how-sure.ts';
import { MASS_RULES } from './rules/mass.ts';
import { MOULD_RULES } from './rules/mould.ts';
import { MOVING_AIR_RULES } from './rules/moving-air.ts';
import { SUNSPACE_RULES } from './rules/sunspace.ts';
import { TALL_ROOM_RULES } from './rules/tall-room.ts';
import { TOO_COLD_RULES } from './rules/too-cold.ts';
import { TOO_DAMP_RULES } from './rules/too-damp.ts';
import { TOO_HOT_RULES } from './rules/too-hot.ts';
import { VENT_RULES } from './rules/vents.ts';

export const RULES: readonly Rule[] = [
  ...HOTTER_YEAR_RULES,
  ...TOO_HOT_RULES,
  ...MOVING_AIR_RULES,
  ...TALL_ROOM_RULES,
  ...TOO_COLD_RULES,
  ...HEAT_SOURCE_RULES,
  ...TOO_DAMP_RULES,
  ...MOULD_RULES,
  ...GLASS_RULES,
  ...MASS_RULES,
  ...SUNSPACE_RULES,
  ...VENT_RULES,
  ...FRESH_AIR_FAN_RULES,
  ...COVER_RULES,
  ...HOW_SURE_RULES,
  ...SUNSPACE_CAUTIONS,
  ...LIVING_CAUTIONS,
  ...HEAT_SOURCE_CAUTIONS,
  ...BUILDING_CAUTIONS,
  ...GLASS_CAUTIONS,
  ...COVER_CAUTIONS,
  ...RADON_CAUTIONS,
];
