// Any picture of the sheet by its name, for the report and for files. In: the name, the newest answer, the weather, the
// units. Out: the picture, with the sentence that says what to notice.

import type { NumberedAnswer } from '../../../workers/bridge.ts';
import { heatByMonth, moistureByMonth, waterTogether } from '../../outcomes/balances.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { heatSentence, moistureSentence } from '../charts/balance-words.ts';
import { weekColumns, weekSentence } from '../charts/week-hours.ts';
import { type LayerId, yearLayer } from '../charts/year-layers.ts';
import { type ShownQuantity, toShown, type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { barsPicture } from './bars-picture.ts';
import type { Picture } from './picture.ts';
import { planPicture } from './plan-picture.ts';
import { sectionPicture } from './section-picture.ts';
import { weekPicture } from './week-picture.ts';
import { yearBands } from './year-bands.ts';
import { yearPicture } from './year-picture.ts';

export type SheetPictureName =
  | { readonly name: 'section' | 'plan' | 'balance' }
  | { readonly name: 'year'; readonly layer?: LayerId }
  | { readonly name: 'week'; readonly kind: 'hot' | 'cold'; readonly firstHour: number }
  | { readonly name: 'months'; readonly of: 'heat' | 'moisture'; readonly zone: string };

export interface Sheet {
  readonly answer: NumberedAnswer;
  readonly climate: TypicalYear;
  readonly system: UnitSystem;
}

/** The picture of that name. */
export function sheetPicture(name: SheetPictureName, sheet: Sheet): Picture {
  const { answer, climate, system } = sheet;
  const { year, job } = answer;
  switch (name.name) {
    case 'section':
      return sectionPicture(job.design, climate.site.latitudeDeg, system);
    case 'plan':
      return planPicture(job.design, climate.site.latitudeDeg, system);
    case 'year': {
      const layer = yearLayer(name.layer ?? 'house', year, climate, job.design, system);
      return yearPicture(
        `year-${layer.id}`,
        layer.hours,
        yearBands(layer, job.design, system),
        layer.sentence,
      );
    }
    case 'week':
      return weekOf(name.firstHour, name.kind, sheet);
    case 'balance':
      return monthsOf('heat', 'house', sheet);
    case 'months':
      return monthsOf(name.of, name.zone, sheet);
  }
}

function weekOf(firstHour: number, kind: 'hot' | 'cold', { answer, climate, system }: Sheet): Picture {
  const { design } = answer.job;
  return weekPicture({
    id: `week-${kind}`,
    columns: weekColumns(answer.year, climate, firstHour, system, design, kind),
    system,
    cold: toShown(design.comfort.underheatC, 'temperature', system),
    words: weekSentence(answer.year, climate, firstHour, kind, system, design),
  });
}

function monthsOf(of: 'heat' | 'moisture', zone: string, { answer, system }: Sheet): Picture {
  const { year } = answer;
  const quantity: ShownQuantity = of === 'heat' ? 'energy' : 'waterMass';
  const other = zone === 'house' ? 'sunspace' : 'rooms';
  const rows = (of === 'heat' ? heatByMonth(year) : moistureByMonth(year))
    .filter((row) => row.zone === zone)
    .map((row) => (row.cause === 'other zones' ? { ...row, cause: other } : row));
  const drained = year.zones.find(({ id }) => id === zone)?.drainedKg ?? 0;
  const shown = rows.map((row) => ({
    ...row,
    months: row.months.map((value) => toShown(value, quantity, system)),
    year: toShown(row.year, quantity, system),
  }));
  return barsPicture(
    `${of}-${zone}`,
    shown,
    unitOf(quantity, system).sign,
    of === 'heat' ? heatSentence(rows, system) : moistureSentence(rows, drained, system, waterTogether(year)),
  );
}
