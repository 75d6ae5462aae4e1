// Expected numbers by hand from the rule: twice what a change did alone, no more than is left; all of it where half the hours
// are gone. Weights are the usual ones: an hour beyond those allowed is one, 10 kWh are one, a day of work is three.
import { describe, expect, it } from 'vitest';
import type { Figures } from '../../src/questions/figures.ts';
import { type Hope, hopedFigures, isEnoughWhateverFollows, worthARun } from '../../src/questions/hopes.ts';
import type { Lever, Pulled } from '../../src/questions/lever.ts';
import { USUAL_WEIGHTS, type WeighedChange } from '../../src/questions/weights.ts';

const figures = (tooHotHours: number, humidHours = 0, heatingKWh = 0, more: Partial<Figures> = {}) =>
  ({
    tooHotHours,
    tooHotLimitHours: 100,
    humidHours,
    shortHours: 0,
    underheatedHours: 0,
    worstMouldIndex: 0,
    heatingKWh,
    ...more,
  }) as Figures;
const lever = (id: string, milderThan?: string): Lever => ({
  id,
  words: id,
  apply: (to) => to,
  ...(milderThan !== undefined && { milderThan }),
});
const pulled = (id: string, of: Figures, days = 0): Pulled => ({ lever: lever(id), figures: of, days });
const hope = (id: string, of: Figures, days = 0, milderThan?: string): Hope => ({
  lever: lever(id, milderThan),
  figures: of,
  days,
});

describe('what a change may do at best on top of others', () => {
  const drawn = figures(1000, 600, 3000, { worstMouldIndex: 2, shortHours: 200 });
  const hoped = (alone: Figures, left: Figures) =>
    hopedFigures('change', left, { drawn, pulled: [pulled('change', alone)] });

  it('is twice what it did alone, and no more than is left', () => {
    const left = figures(600, 500, 2500, { worstMouldIndex: 1.5, shortHours: 150 });
    // 100 hours, 200 damp hours, 500 kWh and 60 cold hours alone.
    const alone = figures(900, 400, 2500, { worstMouldIndex: 2, shortHours: 140 });
    expect(hoped(alone, left)).toMatchObject({
      tooHotHours: 400,
      humidHours: 100,
      heatingKWh: 1500,
      shortHours: 30,
      worstMouldIndex: 0,
    });
    expect(hoped(figures(0, 600, 3000, { worstMouldIndex: 2, shortHours: 200 }), left)).toMatchObject({
      tooHotHours: 0,
      humidHours: 500,
      heatingKWh: 2500,
      shortHours: 150,
      worstMouldIndex: 1.5,
    });
  });

  it('is all that is left of hours of which others took half, where it took any; of heat it is not', () => {
    const left = figures(500, 300, 1400, { shortHours: 100 });
    const alone = figures(990, 600, 2900, { worstMouldIndex: 2, shortHours: 199 });
    expect(hoped(alone, left)).toMatchObject({
      tooHotHours: 0,
      humidHours: 300,
      shortHours: 0,
      heatingKWh: 1200,
    });
    expect(hoped(alone, figures(501, 300)).tooHotHours).toBe(481);
  });

  it('leaves as it is what the change made worse alone', () => {
    const worse = figures(1200, 700, 4000, { worstMouldIndex: 3, shortHours: 300 });
    expect(hoped(worse, drawn)).toMatchObject({
      tooHotHours: 1000,
      humidHours: 600,
      heatingKWh: 3000,
      shortHours: 200,
      worstMouldIndex: 2,
    });
  });

  it('is everything where the change could not be made alone', () => {
    expect(hopedFigures('new', drawn, { drawn, pulled: [] })).toMatchObject({
      tooHotHours: 0,
      humidHours: 0,
      heatingKWh: 0,
      shortHours: 0,
      worstMouldIndex: 0,
    });
  });

  it('counts cold by all hours below the limit in a house without heat, and hopes for all of it from a first stove', () => {
    const bare = figures(0, 0, 0, { shortHours: null, underheatedHours: 800 });
    // Twice a hundred hours.
    const at = (alone: Figures) => hopedFigures('x', bare, { drawn: bare, pulled: [pulled('x', alone)] });
    expect(at(figures(0, 0, 0, { shortHours: null, underheatedHours: 700 }))).toMatchObject({
      shortHours: null,
      underheatedHours: 600,
    });
    expect(at(figures(0, 0, 500, { shortHours: 50, underheatedHours: 100 })).shortHours).toBe(0);
  });
});

describe('of changes on top of others', () => {
  const told = () => true;

  it('the most hopeful are run first, and none that cannot be better than the best that was', () => {
    const hopes = [9, 3, 7, 1, 5, 2].map((n) => hope(`to ${n}00`, figures(100 + 100 * n)));
    const ids = (
      run: readonly string[],
      best: Pulled | null,
      isTold: (change: WeighedChange) => boolean = told,
    ) => worthARun(hopes, ({ id }) => run.includes(id), best, isTold, USUAL_WEIGHTS).map(({ id }) => id);
    const first = ['to 100', 'to 200', 'to 300', 'to 500'];
    expect(ids([], null)).toEqual(first);
    expect(ids(first, pulled('to 100', figures(850)))).toEqual(['to 700']);
    expect(ids(first, pulled('to 100', figures(790)))).toEqual([]);
    // Worth a word is only what leaves less than 250 hours beyond those allowed.
    expect(ids([], null, ({ figures: of }) => of.tooHotHours < 350)).toEqual(['to 100', 'to 200']);
  });

  it('work counts, and a milder form is run with the change it is milder than', () => {
    const hopes = [
      hope('much work', figures(100), 200),
      hope('little', figures(500), 1),
      hope('mild', figures(200), 0, 'hard'),
      hope('hard', figures(900), 0),
    ];
    const run = worthARun(hopes, () => false, pulled('little', figures(520), 1), told, USUAL_WEIGHTS);
    expect(run.map(({ id }) => id)).toEqual(['mild', 'little', 'hard']);
  });
});

describe('steps are enough whatever follows', () => {
  const drawn = figures(1100);
  const enough = (steps: readonly Pulled[], hopes: readonly Hope[], left = 2) =>
    isEnoughWhateverFollows(steps, hopes, drawn, { share: 0.9, left, weights: USUAL_WEIGHTS });

  it('where all that is left together could not add a tenth', () => {
    // 1000 hours beyond those allowed; 920 are won, and 80 more may be.
    const first = pulled('first', figures(180));
    expect(enough([first], [hope('a', figures(100)), hope('b', figures(150))])).toBe(true);
    // 880 won: two hopes of 60 and 70 hours might bring 130 more, of which 120 are there; alone neither would.
    const less = pulled('first', figures(220));
    expect(enough([less], [hope('a', figures(160)), hope('b', figures(150))])).toBe(false);
    expect(enough([less], [hope('a', figures(160))])).toBe(true);
  });

  it('work that a change spares counts too, of so many as may follow', () => {
    const first = pulled('first', figures(180), 40);
    // 800 won; 24 days less are 72 hours more, 48 are 144.
    const sparing = (id: string) => hope(id, figures(180), 16);
    expect(enough([first], [sparing('a')])).toBe(true);
    expect(enough([first], [sparing('a'), sparing('b')])).toBe(false);
    expect(enough([first], [sparing('a'), sparing('b')], 1)).toBe(true);
  });

  it('unless it is not sure how many of them are told', () => {
    const first = pulled('first', figures(240));
    const second = pulled('second', figures(190));
    expect(enough([first, second], [])).toBe(false);
    expect(enough([pulled('first', figures(400)), second], [])).toBe(true);
  });
});
