import { describe, expect, it } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import type { Run } from '../../src/findings/context.ts';
import type { Figures } from '../../src/questions/figures.ts';
import type { Lever } from '../../src/questions/lever.ts';
import type { Help } from '../../src/questions/what-helps.ts';
import { reportOf } from '../../src/report/report.ts';
import { madeFigures } from '../questions/made-figures.ts';
import { order, RUNS, wordsOf } from './report-order.ts';

/** The run with more hours too hot than are allowed. */
const warm = (run: Run): Run => {
  const { house } = run.outcome.zones;
  const tooHot = { ...house.tooHot, hours: 440 };
  return { ...run, outcome: { ...run.outcome, zones: { house: { ...house, tooHot } } } };
};

describe('what was tried, in the report', () => {
  it('says in one paragraph what was tried and what it would do', () => {
    const figures = (tooHotHours: number, humidHours: number) =>
      madeFigures({ tooHotHours, humidHours, heatingKWh: 2000 });
    const lever = (words: string): Lever => ({ id: words, words, apply: (design) => design });
    const [shade, plants] = [lever('shade the glass'), lever('plant nothing indoors')];
    const pulled = [
      { lever: shade, figures: figures(80, 5600) },
      { lever: plants, figures: figures(2200, 1) },
    ];
    const help: Help = {
      drawn: figures(1512, 3638),
      pulled,
      steps: [
        { lever: plants, figures: figures(2200, 1) },
        { lever: shade, figures: figures(120, 30) },
      ],
    };
    const words = wordsOf(reportOf(order({ help })));
    expect(words).toContain(
      'We tried 2 changes on the house as drawn, each by itself, and then the best ones together.',
    );
    expect(words).toContain(
      'Do two things: plant nothing indoors; and shade the glass. Then the rooms are too hot for 120 hours and too damp for 30 hours, and the heater adds 2000 kWh. Mould does not start, then as now. The first alone would leave 2200 hours too hot (more than now) and 1 hour too damp.',
    );
    expect(wordsOf(reportOf(order({ help: { ...help, steps: [] } })))).toContain(
      'None of them alone helps much',
    );
    expect(wordsOf(reportOf(order({ help: { ...help, steps: help.steps.slice(0, 1) } })))).toContain(
      'One thing helps most: plant nothing indoors. Then the rooms are too hot for 2200 hours and too damp for 1 hour, and',
    );
    expect(wordsOf(reportOf(order())).includes('each by itself')).toBe(false);
  });

  it('says what becomes of mould, stale air, the hottest hour and heat, and of plants kept after all', () => {
    const then = madeFigures({
      tooHotHours: 120,
      humidHours: 30,
      heatingKWh: 3000,
      warmestC: 26.5,
      worstMouldIndex: 0.3,
      staleAirHours: 900,
      ventMovesPerDay: 12,
    });
    const drawn = {
      ...then,
      tooHotHours: 1500,
      heatingKWh: 2000,
      warmestC: 31,
      worstMouldIndex: 5,
      ventMovesPerDay: 5,
    };
    const lever: Lever = { id: 'no-plants', words: 'plant nothing indoors', apply: (design) => design };
    const milder: Lever = {
      id: 'smaller-bed',
      words: 'halve the bed',
      size: ({ area }) => `to ${area(8)}`,
      milderThan: 'no-plants',
      apply: (design) => design,
    };
    const step = { lever, figures: then };
    const said = (changes: Partial<Help>) =>
      wordsOf(reportOf(order({ help: { drawn, pulled: [step], steps: [step], ...changes } })));
    const words = said({ milder: { lever: milder, figures: { ...then, humidHours: 800 } } });
    for (const sentence of [
      'the heater adds 3000 kWh instead of 2000 kWh.',
      'The hottest hour falls from 31.0 °C to 26.5 °C.',
      'The mould index falls from 5.0 to 0.3, so mould does not even start.',
      'The air would be stale for 900 hours',
      'But somebody has to open or shut a vent or door 12.0 times a day in the busiest month (now 5.0), or openers do.',
      'If, in place of the first, you halve the bed (to 8.0 m²), then 120 hours are too hot and 800 hours too damp, with a mould index of 0.3.',
    ])
      expect(words).toContain(sentence);
    const mouldy = { ...step, figures: { ...then, worstMouldIndex: 3.2, heatingKWh: 2100 } };
    expect(said({ steps: [mouldy] })).toContain('Mould would still show: its index goes from 5.0 to 3.2');
    expect(said({ steps: [mouldy] })).toContain('the heater adds 2100 kWh. ');
    expect(said({ steps: [step, mouldy] })).toContain(
      'The first alone would leave 120 hours too hot and 30 hours too damp.',
    );
    const worse = { ...step, figures: { ...then, tooHotHours: 2200 } };
    expect(said({ steps: [worse, mouldy] })).toContain(
      '2200 hours too hot (more than now: plants cool by the water they give off)',
    );
  });

  it('goes past heat and damp that are hardly there to the moves of the vents and stale air', () => {
    const figures = madeFigures({
      tooHotHours: 40,
      humidHours: 370,
      heatingKWh: 1300,
      staleAirHours: 270,
      worstMouldIndex: 0.6,
    });
    const of = (id: string, changes: Partial<Figures> = {}) => ({
      lever: {
        id,
        words: id,
        apply: (design: Design) => design,
      },
      figures: { ...figures, ...changes },
    });
    const pulled = [
      of('openers'),
      of('fresh-air-fan', { staleAirHours: 0, heatingKWh: 2200 }),
      of('night-cover'),
    ];
    const help = { drawn: figures, pulled, steps: [] };
    // The closed house in the hands of people who let its air go stale.
    const { outcome } = RUNS.closed;
    const { house } = outcome.zones;
    const stale = { ...house, freshAir: { ...house.freshAir, staleAirHours: 600 } };
    const run = { ...RUNS.closed, outcome: { ...outcome, zones: { ...outcome.zones, house: stale } } };
    const words = wordsOf(reportOf(order({ run, help })));
    expect(words).toContain('Neither heat nor damp is worth a change');
    expect(words).toContain(
      'Two other things are worth one. Openers that work the vents would spare you those',
    );
    expect(words).toContain('the air is stale for 270 hours instead of 600 hours.');
    expect(words).toContain(
      'would leave no hours of stale air instead of 600 hours. The heater then adds 2200 kWh instead of 1300 kWh.',
    );
    expect(words).not.toContain('helps most');
  });

  it('shows what every change did by itself, and the steps together, only when changes were run', () => {
    const figures = (tooHotHours: number): Figures =>
      madeFigures({
        tooHotHours,
        humidHours: 12,
        staleAirHours: 600,
        worstMouldIndex: 1.23,
        heatingKWh: 1500,
      });
    const of = (id: string, tooHotHours: number, days: number) => ({
      lever: { id, words: `${id} it`, size: () => 'so much', apply: (design: Design) => design },
      figures: figures(tooHotHours),
      days,
    });
    const [shade, openers] = [of('shade', 20, 2), of('openers', 30, 11.4)];
    const help = { drawn: figures(90), pulled: [shade, openers], steps: [shade, of('openers', 10, 13)] };
    const section = reportOf(order({ help })).sections.find(({ title }) => title === 'What we tried')!;
    expect(section.blocks[1]).toEqual({
      kind: 'table',
      head: [
        '',
        'Hours too hot',
        'Hours too damp',
        'Hours of stale air',
        'Mould index',
        'Back-up heat',
        'Days of work',
      ],
      rows: [
        ['As drawn', '90', ''],
        ['Shade it (so much)', '20', '2.0'],
        ['Openers it (so much)', '30', '11'],
        ['The first two steps together', '10', '13'],
      ].map(([label, hot, days]) => [label, hot, '12', '600', '1.2', '1500 kWh', days]),
    });
    expect(reportOf(order()).sections.some(({ title }) => title === 'What we tried')).toBe(false);
  });

  it('gives the figures of a change beside the finding that speaks of it, and else says whom to ask', () => {
    const drawn = madeFigures({ tooHotHours: 440, humidHours: 380, heatingKWh: 670, staleAirHours: 430 });
    const of = (id: string, changes: Partial<Figures>) => ({
      lever: { id, words: id, apply: (design: Design) => design },
      figures: { ...drawn, ...changes },
    });
    const pulled = [
      of('openers', { tooHotHours: 330 }),
      of('purge', { tooHotHours: 360 }),
      of('more-mass', { tooHotHours: 300 }),
    ];
    const help = { drawn, pulled, steps: [] };
    const words = wordsOf(reportOf(order({ run: warm(RUNS.modest), help })));
    expect(words).toContain('We ran the year with openers: 330 hours too hot and 380 hours too damp.');
    expect(words).toContain('We ran it with a fan: 360 hours too hot instead of 440 hours.');
    expect(words).toContain('mass enough for the glass');
    expect(words).toContain('More still helps here: with it, 300 hours are too hot instead of 440 hours.');
    // A house that is cool enough is not told to add mass.
    const cool = {
      ...help,
      drawn: { ...help.drawn, tooHotHours: 60 },
      pulled: [of('more-mass', { tooHotHours: 30 })],
    };
    expect(wordsOf(reportOf(order({ run: RUNS.modest, help: cool })))).not.toContain('More still helps');
    const alone = wordsOf(reportOf(order({ run: RUNS.modest })));
    expect(alone).toContain('Ask whoever made this report to run the year with openers.');
    expect(alone).not.toContain('We ran the year');
  });

  it('has columns for hot nights, heat stress and stale air only where some row needs them', () => {
    const headOf = (drawn: Partial<Figures>, then: Partial<Figures>, milder?: Partial<Figures>) => {
      const lever: Lever = { id: 'shade', words: 'shade it', apply: (design) => design };
      const help = {
        drawn: madeFigures(drawn),
        pulled: [{ lever, figures: madeFigures(then) }],
        steps: [],
        ...(milder ? { milder: { lever, figures: madeFigures(milder) } } : {}),
      };
      const section = reportOf(order({ help })).sections.find(({ title }) => title === 'What we tried')!;
      const table = section.blocks[1]!;
      return table.kind === 'table' ? table.head : [];
    };
    const always = ['', 'Hours too hot', 'Hours too damp', 'Mould index', 'Back-up heat', 'Days of work'];
    // CIBSE TM59 (2017) lets a bedroom have 32 hot hours of night in a year.
    expect(headOf({ hotNightHours: 32 }, { hotNightHours: 32 })).toEqual(always);
    // The last row, a step in its milder form, is one of them.
    expect(headOf({}, {}, { staleAirHours: 1 })).toContain('Hours of stale air');
    expect(headOf({}, { hotNightHours: 33, feltHotHours: 1, staleAirHours: 1 })).toEqual([
      '',
      'Hours too hot',
      'Hours that feel like 32 °C',
      'Hours of night above 26 °C',
      'Hours too damp',
      'Hours of stale air',
      'Mould index',
      'Back-up heat',
      'Days of work',
    ]);
  });

  it('names the change that ends heat stress, or what does most against it', () => {
    const of = (id: string, changes: Partial<Figures>) => ({
      lever: { id, words: `take ${id}`, apply: (design: Design) => design },
      figures: madeFigures({ tooHotHours: 500, ...changes }),
    });
    const drawn = madeFigures({ tooHotHours: 1450, feltHotHours: 160 });
    const said = (pulled: ReturnType<typeof of>[]) =>
      wordsOf(reportOf(order({ run: RUNS.leaning, help: { drawn, pulled, steps: [] } })));
    // Both end it; the second leaves the drier house.
    const ended = said([of('shade', { humidHours: 5000 }), of('walls', { humidHours: 400 })]);
    expect(ended).toContain('In a typical year one change would end such hours: take walls.');
    // Halving the bed is the milder form of having none; where it alone ends the heat, it is named all the same.
    const bed = of('bed', {});
    const mild = { ...bed, lever: { ...bed.lever, milderThan: 'no-plants' } };
    expect(said([of('shade', { feltHotHours: 100 }), mild])).toContain('would end such hours: take bed.');
    const eased = said([of('shade', { feltHotHours: 100 }), of('walls', { feltHotHours: 90 })]);
    expect(eased).toContain('This does most: take walls. It leaves 90 hours.');
    expect(said([of('shade', { feltHotHours: 150 })])).not.toContain('This does most');
    expect(wordsOf(reportOf(order({ run: RUNS.leaning })))).not.toContain('end such hours');
  });
});
