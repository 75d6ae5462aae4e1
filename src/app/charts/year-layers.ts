// What the year map can show: for each layer its hours, its colours, the numbers of its legend, and the sentence that
// says what to notice. In: a year, the weather, the design. Out: one layer.

import type { Design } from '../../design/design.ts';
import { roomPlanOf } from '../../design/room-plan.ts';
import type { Year } from '../../network/year.ts';
import { hotLimits } from '../../outcomes/hot-limits.ts';
import { ALL_HOURS, livedHoursOf } from '../../outcomes/lived-hours.ts';
import { MONTH_START_HOUR, type TypicalYear } from '../../weather/typical-year.ts';
import { MONTH_NAMES } from '../parts/calendar-words.ts';
import { type ColourScale, comfortScale, HUMIDITY_SCALE, heatScale } from '../parts/colour-scale.ts';
import type { ShownQuantity, UnitSystem } from '../parts/display-unit.ts';
import { quantityText } from '../parts/number-text.ts';
import { zoneOf } from './week-hours.ts';

export type LayerId =
  | 'house'
  | `room-${number}`
  | 'sunspace'
  | 'outdoor'
  | 'house-humidity'
  | 'sunspace-humidity'
  | 'heating';

export interface YearLayer {
  readonly id: LayerId;
  readonly label: string;
  readonly hours: Float64Array;
  readonly quantity: ShownQuantity;
  readonly digits: number;
  readonly scale: ColourScale;
  /** values marked in the legend */
  readonly ticks: readonly number[];
  /** of temperatures: lowest and highest limit above which an hour is too hot [°C] */
  readonly hot?: { readonly lowC: number; readonly highC: number };
  readonly sentence: string;
}

/** Layers this year has; of a divided house each room before their mean. */
export function layerChoices(
  year: Year,
  design: Design,
): readonly { readonly id: LayerId; readonly label: string }[] {
  const rooms = roomPlanOf(design)?.rooms ?? [];
  const run = new Set(year.rooms?.map(({ id }) => id));
  const sunspace = zoneOf(year, 'sunspace') !== undefined;
  return [
    ...rooms.filter(({ id }) => run.has(id)).map(({ id, room }) => ({ id: id as LayerId, label: room.name })),
    { id: 'house', label: run.size > 0 ? 'rooms, mean' : 'rooms' },
    ...(sunspace ? [{ id: 'sunspace' as const, label: 'sunspace' }] : []),
    { id: 'outdoor', label: 'outdoors' },
    { id: 'house-humidity', label: 'humidity, rooms' },
    ...(sunspace ? [{ id: 'sunspace-humidity' as const, label: 'humidity, sunspace' }] : []),
    { id: 'heating', label: 'back-up heat' },
  ];
}

/** One layer, ready to be drawn. */
export function yearLayer(
  id: LayerId,
  year: Year,
  climate: TypicalYear,
  design: Design,
  system: UnitSystem,
): YearLayer {
  const { underheatC, humidLimit } = design.comfort;
  const house = zoneOf(year, 'house')!;
  const placed = roomPlanOf(design)?.rooms.find((one) => one.id === id);
  const room = placed && year.rooms?.find((one) => one.id === id);
  const zone = id.startsWith('sunspace') ? (zoneOf(year, 'sunspace') ?? house) : (room ?? house);
  const where = zone === house ? 'The rooms' : 'The sunspace';
  const lived = placed ? livedHoursOf(placed.room.use) : ALL_HOURS;
  const hot = hotLimits(id === 'outdoor' ? withoutFans(design) : design, zone, climate, lived);
  const comfort = comfortScale(underheatC, hot.lowC);
  const comfortTicks = [-10, 0, underheatC, hot.lowC, hot.highC, 35, 45].filter(
    (t, i, all) => i === 0 || t > all[i - 1]!,
  );
  if (id === 'heating') {
    const most = house.heatingW.reduce((a, b) => Math.max(a, b), 0);
    return {
      id,
      label: 'back-up heat',
      hours: house.heatingW.map((w) => w / 1000),
      quantity: 'powerKW',
      digits: 1,
      scale: heatScale(most / 1000),
      ticks: [0, most / 2000, most / 1000],
      sentence: monthSentence(
        (hour) => house.heatingW[hour]! > 1,
        (month, hours) => `Back-up heat runs most in ${month}, in ${hours} of its hours.`,
        'No hour of the year needs back-up heat.',
      ),
    };
  }
  if (id.endsWith('humidity')) {
    return {
      id,
      label: 'humidity',
      hours: zone.relativeHumidity,
      quantity: 'share',
      digits: 0,
      scale: HUMIDITY_SCALE,
      ticks: [0.3, 0.5, 0.7, 0.85, 1],
      sentence: monthSentence(
        (hour) => zone.relativeHumidity[hour]! > humidLimit,
        (month, hours) =>
          `${where} are above ${quantityText(humidLimit, 'share', system, 0)} humidity most in ${month}, for ${hours} hours.`.replace(
            'sunspace are',
            'sunspace is',
          ),
        `${where} never pass ${quantityText(humidLimit, 'share', system, 0)} humidity.`.replace(
          'sunspace never pass',
          'sunspace never passes',
        ),
      ),
    };
  }
  const hours = id === 'outdoor' ? climate.dryBulbC : zone.operativeC;
  const subject =
    id === 'outdoor'
      ? 'Outdoors it is'
      : room
        ? `"${placed.room.name}" is`
        : where === 'The rooms'
          ? 'The rooms are'
          : 'The sunspace is';
  return {
    id,
    label: 'temperature',
    hours,
    quantity: 'temperature',
    digits: 1,
    scale: comfort,
    ticks: comfortTicks,
    hot: { lowC: hot.lowC, highC: hot.highC },
    sentence: monthSentence(
      (hour) => hours[hour]! > hot.limitC[hour]!,
      (month, count, total) => `${subject} too hot in ${total} hours, most of them in ${month} (${count}).`,
      `${subject} never too hot.`,
    ),
  };
}

/** Ceiling fans turn indoors. */
function withoutFans({ comfort: { airSpeedMs: _, ...comfort }, ...design }: Design): Design {
  return { ...design, comfort };
}

/** Counts hours that are meant and names the month with most. */
function monthSentence(
  isMeant: (hour: number) => boolean,
  some: (month: string, hours: number, total: number) => string,
  none: string,
): string {
  const counts = MONTH_NAMES.map((_, month) => {
    let count = 0;
    for (let hour = MONTH_START_HOUR[month]!; hour < MONTH_START_HOUR[month + 1]!; hour++)
      if (isMeant(hour)) count++;
    return count;
  });
  const total = counts.reduce((a, b) => a + b, 0);
  if (total === 0) return none;
  const most = counts.indexOf(Math.max(...counts));
  return some(MONTH_NAMES[most]!, counts[most]!, total);
}
