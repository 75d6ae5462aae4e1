import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { wordingOf } from '../../src/findings/wording.ts';
import type { Figures } from '../../src/questions/figures.ts';
import type { Pulled } from '../../src/questions/lever.ts';
import type { Help } from '../../src/questions/what-helps.ts';
import { actsOf } from '../../src/report/acts.ts';

const figures = (tooHotHours: number, humidHours: number) =>
  ({
    tooHotHours,
    tooHotLimitHours: 262,
    humidHours,
    shortHours: 0,
    worstMouldIndex: 0,
    heatingKWh: 1000,
  }) as Figures;

/** A lever that only leaves its name on the design. */
const pulled = (id: string, hot: number, damp: number, milderThan?: string): Pulled => ({
  lever: {
    id,
    words: `do ${id}`,
    apply: (design) => ({ ...design, name: `${design.name} ${id}` }),
    ...(milderThan !== undefined && { milderThan }),
  },
  figures: figures(hot, damp),
});

const drawn = figures(2000, 0);
const house = { name: 'house' } as Design;
const of = (help: Partial<Help>) => actsOf({ drawn, pulled: [], steps: [], ...help }, wordingOf('metric'));

test('each step is told from the one before it, and is made with those before it', () => {
  const acts = of({ steps: [pulled('a', 1000, 0), pulled('b', 500, 0), pulled('c', 200, 0)] });
  expect(acts.map(({ brings }) => brings)).toEqual([
    'Hours too hot 2000 → 1000.',
    'Hours too hot 1000 → 500.',
    'Hours too hot 500 → 200.',
  ]);
  expect(acts[2]!.apply(house).name).toBe('house a b c');
});

test('what a change brings is told in one short sentence, what stays left out, a unit said once', () => {
  const one = (before: Partial<Figures>, after: Partial<Figures>, units: 'metric' | 'us-therms') =>
    actsOf(
      {
        drawn: { ...figures(805, 1924), ...before },
        pulled: [],
        steps: [{ ...pulled('a', 0, 389), figures: { ...figures(0, 389), ...after } }],
      },
      wordingOf(units),
    )[0]!.brings;
  expect(one({ worstMouldIndex: 3.8 }, { heatingKWh: 900 }, 'metric')).toBe(
    'Hours too hot 805 → 0, damp 1924 → 389; mould 3.8 → 0.0; back-up heat 1000 → 900 kWh.',
  );
  // 29.3 kWh a therm
  expect(one({ tooHotHours: 0 }, { heatingKWh: 400 }, 'us-therms')).toBe(
    'Hours damp 1924 → 389; back-up heat 34 → 14 therms.',
  );
  expect(one({ tooHotHours: 0, humidHours: 389 }, { heatingKWh: 400 }, 'metric')).toBe(
    'Back-up heat 1000 → 400 kWh.',
  );
});

test('cold is told where it is worth a change', () => {
  const cold = (id: string, shortHours: number): Pulled => {
    const one = pulled(id, 0, 0);
    return { ...one, figures: { ...one.figures, shortHours } };
  };
  const told = (before: number, after: number) =>
    of({ drawn: cold('', before).figures, steps: [cold('a', after)] })[0]!.brings;
  // 95 are minded by nobody, nor a quarter more.
  expect(told(900, 80)).toBe('Hours too cold 900 → 80.');
  expect(told(110, 0)).not.toContain('cold');
});

test('where one step is enough, others that help alone fill up to three, the best first, milder forms and idle ones not', () => {
  const acts = of({
    steps: [pulled('a', 100, 0)],
    pulled: [
      pulled('a', 100, 0),
      pulled('mild', 120, 0, 'a'),
      pulled('idle', 1990, 0),
      pulled('worse', 100, 5000),
      pulled('c', 900, 0),
      pulled('b', 400, 0),
      pulled('d', 1200, 0),
    ],
  });
  expect(acts.map(({ id, onTopOf }) => [id, onTopOf])).toEqual([
    ['a', 0],
    ['b', null],
    ['c', null],
  ]);
  expect(acts[1]!.apply(house).name).toBe('house b');
});
