import { expect, test } from 'vitest';
import { type Costed, inOrder } from '../../src/questions/change-order.ts';
import { USUAL_WEIGHTS } from '../../src/questions/weights.ts';
import { madeFigures } from './made-figures.ts';

const hot = (tooHotHours: number) =>
  madeFigures({ tooHotHours, tooHotLimitHours: 262, humidHours: 0, worstMouldIndex: 0, heatingKWh: 0 });
const change = (id: string, hours: number, days: number, money: number | null): Costed & { id: string } => ({
  id,
  figures: hot(hours),
  days,
  money,
});
/** From 1262 hours, 1000 beyond those allowed: what each takes off is plain. */
const drawn = hot(1262);
const changes = [
  change('dear and quick', 362, 1, 9000),
  change('cheap and slow', 862, 20, 100),
  change('worse', 1362, 0, 0),
  change('free', 1162, 0, 0),
  change('no price', 462, 10, null),
];
const ids = (order: Parameters<typeof inOrder>[2]) =>
  inOrder(changes, drawn, order, USUAL_WEIGHTS).map(({ id }) => id);

test('by weight the best house stands first, its work counted in', () => {
  expect(ids('weight')).toEqual(['dear and quick', 'no price', 'cheap and slow', 'free', 'worse']);
});

test('by days what takes most off a day of work, what asks for none first, what makes it worse last', () => {
  // 900 hours in a day, 80 in each of ten, 20 in each of twenty
  expect(ids('days')).toEqual(['free', 'dear and quick', 'no price', 'cheap and slow', 'worse']);
});

test('by money what takes most off for its price, what has none behind', () => {
  expect(ids('money')).toEqual(['free', 'cheap and slow', 'dear and quick', 'no price', 'worse']);
});
