// Every picture that can be taken along, by the name a person knows it by. In: the sheet and the answers given. Out:
// names, each with a function that draws when it is asked to.

import { weekAround } from '../../outcomes/extremes.ts';
import { judgedHouse } from '../../outcomes/judged-house.ts';
import type { Answer } from '../../questions/question.ts';
import { layerChoices } from '../charts/year-layers.ts';
import { answerMapPicture } from '../pictures/answer-map-picture.ts';
import { answerPicture } from '../pictures/answer-picture.ts';
import type { Picture } from '../pictures/picture.ts';
import { type Sheet, sheetPicture } from '../pictures/sheet-picture.ts';

export interface TakenPicture {
  readonly title: string;
  readonly draw: () => Picture;
}

const ZONES: Readonly<Record<string, string>> = { house: 'rooms', sunspace: 'sunspace' };

/** The list. */
export function pictureList(sheet: Sheet, answers: readonly Answer[]): readonly TakenPicture[] {
  const { year, outcome } = sheet.answer;
  const { hottestHour, coldestHour } = judgedHouse(outcome);
  const week = (kind: 'hot' | 'cold', hour: number) =>
    sheetPicture({ name: 'week', kind, firstHour: weekAround(hour) }, sheet);
  return [
    { title: 'The section, with its dimensions', draw: () => sheetPicture({ name: 'section' }, sheet) },
    ...(sheet.answer.job.design.rooms
      ? [{ title: 'The plan of every storey', draw: () => sheetPicture({ name: 'plan' }, sheet) }]
      : []),
    ...layerChoices(year, sheet.answer.job.design).map(({ id, label }) => ({
      title: `The year, hour by hour: ${label}`,
      draw: () => sheetPicture({ name: 'year', layer: id }, sheet),
    })),
    { title: 'The hottest week', draw: () => week('hot', hottestHour) },
    { title: 'The coldest week', draw: () => week('cold', coldestHour) },
    ...(['heat', 'moisture'] as const).flatMap((of) =>
      year.zones.map(({ id }) => ({
        title: `${of === 'heat' ? 'Heat' : 'Moisture'} by month and cause: ${ZONES[id] ?? id}`,
        draw: () => sheetPicture({ name: 'months', of, zone: id }, sheet),
      })),
    ),
    ...answers.flatMap(({ title, map, charts, criterion }) => [
      ...(map ? [{ title: `${title} The map`, draw: () => answerMapPicture(map, sheet.system) }] : []),
      ...charts
        .filter(({ curves }) => curves.some(({ points }) => points.length > 1))
        .map((chart) => ({
          title: `${title} ${chart.title}`,
          draw: () => answerPicture(chart, criterion.hours, sheet.system),
        })),
    ]),
  ];
}
