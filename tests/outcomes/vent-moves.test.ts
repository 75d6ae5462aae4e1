import { describe, expect, it } from 'vitest';
import { ventMoves } from '../../src/outcomes/vent-moves.ts';
import { madeOpening } from './made-year.ts';

describe('what the vents ask', () => {
  it('adds the moves of all openings and finds the busiest month and day', () => {
    const vents = madeOpening('vents', (day) => (day >= 181 && day < 212 ? 2 : 0), 100);
    const door = madeOpening('door', (day) => (day === 200 ? 5 : 0), 250);
    expect(ventMoves([vents, door])).toEqual({
      moves: 62 + 5,
      movesPerDayInBusiestMonth: 67 / 31,
      busiestMonth: 6,
      movesOnBusiestDay: 7,
      neglectedShare: 250 / 8760,
      airings: 0,
      heatedWhileOpenHours: 0,
      heatedWhileOpenKWh: 0,
    });
  });

  it('asks nothing of a house without openings', () => {
    expect(ventMoves([])).toEqual({
      moves: 0,
      movesPerDayInBusiestMonth: 0,
      busiestMonth: 0,
      movesOnBusiestDay: 0,
      neglectedShare: 0,
      airings: 0,
      heatedWhileOpenHours: 0,
      heatedWhileOpenKWh: 0,
    });
  });
});
