import { describe, expect, it, vi } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { inputsOf } from '../../src/findings/inputs.ts';
import { type Block, type Report, type ReportOrder, reportOf } from '../../src/findings/report.ts';
import { errorsInShort } from '../../src/findings/trust.ts';
import errorsDo from '../../src/findings/what-errors-do.json' with { type: 'json' };
import { hours, wordingOf } from '../../src/findings/wording.ts';
import type { Figures } from '../../src/questions/figures.ts';
import type { Lever } from '../../src/questions/levers.ts';
import type { Help } from '../../src/questions/what-helps.ts';
import { madeFigures } from '../questions/made-figures.ts';
import { runExample } from './example-run.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const RUNS = {
  leaning: runExample('leaning').run,
  closed: runExample('closed').run,
  modest: runExample('modest').run,
};

function order(changes: Partial<ReportOrder> = {}): ReportOrder {
  return {
    client: 'The Quillens',
    place: 'Larkspur Bench',
    adviser: '',
    question: 'How much glass?',
    date: '3 May 2027',
    run: RUNS.leaning,
    others: [],
    answers: [],
    help: null,
    ...changes,
  };
}

function wordsOf(report: Report): string {
  const blockWords = (block: Block): string => {
    switch (block.kind) {
      case 'text':
        return block.text;
      case 'table':
        return [block.head, ...block.rows].flat().join(' ');
      case 'findings':
        return block.findings.map(({ text }) => text).join(' ');
      case 'picture':
        return block.caption;
    }
  };
  return report.sections.map(({ title, blocks }) => [title, ...blocks.map(blockWords)].join(' ')).join('\n');
}

describe('the report', () => {
  for (const [id, run] of Object.entries(RUNS)) {
    for (const units of ['metric', 'us'] as const) {
      it(`of ${id} in ${units} units is whole`, () => {
        const report = reportOf(order({ run: { ...run, units } }));
        const words = wordsOf(report);
        expect(words).not.toMatch(/undefined|NaN|null|Infinity|\[object/);
        expect(report.sections.every(({ blocks }) => blocks.length > 0)).toBe(true);
        expect(report.foot).toContain('3 May 2027');
        for (const { blocks } of report.sections) {
          for (const block of blocks) {
            if (block.kind !== 'table') continue;
            const widths = new Set(
              [...(block.head.length > 0 ? [block.head] : []), ...block.rows].map((row) => row.length),
            );
            expect(widths.size, block.head.join()).toBe(1);
          }
        }
        if (units === 'us') expect(words).not.toMatch(/\d °C/);
      });
    }
  }

  it('leaves out what nobody typed', () => {
    const words = wordsOf(reportOf(order({ client: '', place: '', question: '' })));
    expect(words).not.toContain('Prepared by');
    expect(words).not.toContain('Question');
    expect(reportOf(order({ client: '', place: '' })).subtitle).toBe('');
  });

  it('keeps findings and cautions apart, and loses none', () => {
    const sections = reportOf(order()).sections;
    const of = (title: string) =>
      sections
        .find((section) => section.title === title)!
        .blocks.flatMap((block) => (block.kind === 'findings' ? block.findings.map(({ id }) => id) : []));
    const [found, careful] = [of('What we find'), of('Take care')];
    expect(careful).toContain('caution-overhead-glass');
    expect(careful.every((id) => id.startsWith('caution-'))).toBe(true);
    expect(found.some((id) => id.startsWith('caution-'))).toBe(false);
    expect(found.length).toBeGreaterThan(5);
  });

  it('sets versions side by side when there are some', () => {
    const report = reportOf(order({ others: [RUNS.closed, RUNS.modest] }));
    const table = report.sections.find(({ title }) => title === 'Beside other versions')!.blocks[0]!;
    expect(table).toMatchObject({
      kind: 'table',
      head: ['', RUNS.leaning.design.name, RUNS.closed.design.name, RUNS.modest.design.name],
    });
    expect(reportOf(order()).sections.some(({ title }) => title === 'Beside other versions')).toBe(false);
  });

  it('says beside a comparison that the people differ, and only when they do', () => {
    expect(wordsOf(reportOf(order({ others: [RUNS.closed, RUNS.modest] })))).toContain(
      'The people differ too: people who forget now and then in "Larkspur Bench, the leaning one"; attentive people in "Larkspur Bench, the closed-off one" and "Larkspur Bench, the modest one".',
    );
    expect(wordsOf(reportOf(order({ run: RUNS.closed, others: [RUNS.modest] })))).not.toContain(
      'The people differ',
    );
  });

  it('says how far off a figure can be by what was run, and that money and some ranges are not known', () => {
    const words = wordsOf(reportOf(order({ run: { ...RUNS.modest, units: 'us' } })));
    const { rows } = errorsDo.houses.find(({ name }) => name === RUNS.modest.design.name)!;
    const valuesOf = (what: string) => rows.find((row) => row.what === what)!.values;
    const [hot, damp, heat] = valuesOf('all is as drawn');
    const [warmer] = valuesOf('every month is 1 °C warmer');
    const [colder] = valuesOf('every month is 1 °C colder');
    const [, dampLeaky, heatLeaky] = valuesOf('the house is twice as leaky as hoped');
    const { energy } = wordingOf('us');
    expect(words).toContain(
      `It is too hot for ${hours(hot!)}: ${hours(warmer!)} when every month is 1.8 °F warmer, ${hours(colder!)} when it is 1.8 °F colder. When the house is twice as leaky as hoped, damp goes from ${hours(damp!)} to ${hours(dampLeaky!)} and back-up heat from ${energy(heat!)} to ${energy(heatLeaky!)}.`,
    );
    expect(words).toContain('the cost of anything');
    expect(words).toContain('could not look up again');
    expect(words).not.toContain('recalled from memory');
    expect(errorsInShort('a house of ours', wordingOf('metric'))).toContain(
      'the modest one", with one thing',
    );
    expect(errorsInShort(RUNS.leaning.design.name, wordingOf('metric'))).toContain(
      `too hot for ${hours(errorsDo.houses[0]!.rows[0]!.values[0]!)}`,
    );
  });

  it('says in one paragraph what was tried and what it would do', () => {
    const figures = (overheatedHours: number, humidHours: number) =>
      madeFigures({ overheatedHours, humidHours, heatingKWh: 2000, worstMouldIndex: 0, staleAirHours: 0 });
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
      overheatedHours: 120,
      humidHours: 30,
      heatingKWh: 3000,
      warmestC: 26.5,
      worstMouldIndex: 0.3,
      staleAirHours: 900,
      ventMovesPerDay: 12,
    });
    const drawn = {
      ...then,
      overheatedHours: 1500,
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
    const worse = { ...step, figures: { ...then, overheatedHours: 2200 } };
    expect(said({ steps: [worse, mouldy] })).toContain(
      '2200 hours too hot (more than now: plants cool by the water they give off)',
    );
  });

  it('goes past heat and damp that are hardly there to the moves of the vents and stale air', () => {
    const figures = madeFigures({
      overheatedHours: 40,
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
    const words = wordsOf(reportOf(order({ run: RUNS.closed, help })));
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
    const figures = (overheatedHours: number): Figures =>
      madeFigures({
        overheatedHours,
        humidHours: 12,
        staleAirHours: 600,
        worstMouldIndex: 1.23,
        heatingKWh: 1500,
      });
    const of = (id: string, overheatedHours: number) => ({
      lever: { id, words: `${id} it`, size: () => 'so much', apply: (design: Design) => design },
      figures: figures(overheatedHours),
    });
    const [shade, openers] = [of('shade', 20), of('openers', 30)];
    const help = { drawn: figures(90), pulled: [shade, openers], steps: [shade, of('openers', 10)] };
    const section = reportOf(order({ help })).sections.find(({ title }) => title === 'What we tried')!;
    expect(section.blocks[1]).toEqual({
      kind: 'table',
      head: ['', 'Hours too hot', 'Hours too damp', 'Hours of stale air', 'Mould index', 'Back-up heat'],
      rows: [
        ['As drawn', '90'],
        ['Shade it (so much)', '20'],
        ['Openers it (so much)', '30'],
        ['The first two steps together', '10'],
      ].map((row) => [...row, '12', '600', '1.2', '1500 kWh']),
    });
    expect(reportOf(order()).sections.some(({ title }) => title === 'What we tried')).toBe(false);
  });

  it('gives the figures of a change beside the finding that speaks of it, and else says whom to ask', () => {
    const drawn = madeFigures({ overheatedHours: 440, humidHours: 380, heatingKWh: 670, staleAirHours: 430 });
    const of = (id: string, changes: Partial<Figures>) => ({
      lever: { id, words: id, apply: (design: Design) => design },
      figures: { ...drawn, worstMouldIndex: 0, ...changes },
    });
    const pulled = [
      of('openers', { overheatedHours: 330 }),
      of('purge', { overheatedHours: 360 }),
      of('more-mass', { overheatedHours: 300 }),
    ];
    const help = { drawn: { ...drawn, worstMouldIndex: 0 }, pulled, steps: [] };
    const words = wordsOf(reportOf(order({ run: RUNS.modest, help })));
    expect(words).toContain('We ran the year with openers: 330 hours too hot and 380 hours too damp.');
    expect(words).toContain('We ran it with a fan: 360 hours too hot instead of 440 hours.');
    expect(words).toContain('mass enough for the glass');
    expect(words).toContain('More still helps here: with it, 300 hours are too hot instead of 440 hours.');
    // A house that is cool enough is not told to add mass.
    const cool = {
      ...help,
      drawn: { ...help.drawn, overheatedHours: 60 },
      pulled: [of('more-mass', { overheatedHours: 30 })],
    };
    expect(wordsOf(reportOf(order({ run: RUNS.modest, help: cool })))).not.toContain('More still helps');
    const alone = wordsOf(reportOf(order({ run: RUNS.modest })));
    expect(alone).toContain('Ask whoever made this report to run the year with openers.');
    expect(alone).not.toContain('We ran the year');
  });

  it('has columns for hot nights, dangerous heat and stale air only where some row needs them', () => {
    const headOf = (drawn: Partial<Figures>, then: Partial<Figures>) => {
      const lever: Lever = { id: 'shade', words: 'shade it', apply: (design) => design };
      const help = {
        drawn: madeFigures(drawn),
        pulled: [{ lever, figures: madeFigures(then) }],
        steps: [],
      };
      const section = reportOf(order({ help })).sections.find(({ title }) => title === 'What we tried')!;
      const table = section.blocks[1]!;
      return table.kind === 'table' ? table.head : [];
    };
    const always = ['', 'Hours too hot', 'Hours too damp', 'Mould index', 'Back-up heat'];
    // CIBSE TM59 (2017) lets a bedroom have 32 hot hours of night in a year.
    expect(headOf({ hotNightHours: 32 }, { hotNightHours: 32 })).toEqual(always);
    expect(headOf({}, { hotNightHours: 33, feltHotHours: 1, staleAirHours: 1 })).toEqual([
      '',
      'Hours too hot',
      'Hours that feel like 32 °C',
      'Hours of night above 26 °C',
      'Hours too damp',
      'Hours of stale air',
      'Mould index',
      'Back-up heat',
    ]);
  });

  it('names the change that ends dangerous heat, or what does most against it', () => {
    const of = (id: string, changes: Partial<Figures>) => ({
      lever: { id, words: `take ${id}`, apply: (design: Design) => design },
      figures: madeFigures({ overheatedHours: 500, ...changes }),
    });
    const drawn = madeFigures({ overheatedHours: 1450, feltHotHours: 160 });
    const said = (pulled: ReturnType<typeof of>[]) =>
      wordsOf(reportOf(order({ run: RUNS.leaning, help: { drawn, pulled, steps: [] } })));
    // Both end it; the second leaves the drier house.
    const ended = said([of('shade', { humidHours: 5000 }), of('walls', { humidHours: 400 })]);
    expect(ended).toContain('One change would end such hours: take walls.');
    const eased = said([of('shade', { feltHotHours: 100 }), of('walls', { feltHotHours: 90 })]);
    expect(eased).toContain('This does most: take walls. It leaves 90 hours.');
    expect(said([of('shade', { feltHotHours: 150 })])).not.toContain('This does most');
    expect(wordsOf(reportOf(order({ run: RUNS.leaning })))).not.toContain('end such hours');
  });

  it('asks for every picture once, the weeks by their first hour', () => {
    const pictures = reportOf(order()).sections.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'picture' ? [block.picture] : [])),
    );
    expect(pictures.map(({ name }) => name)).toEqual(['section', 'year', 'week', 'week', 'balance']);
    for (const picture of pictures) if (picture.name === 'week') expect(picture.firstHour % 24).toBe(0);
  });
});

describe('the list of assumptions', () => {
  it('holds every input of a design with a sunspace and a wall', () => {
    const { version, name, note, climate, ...groups } = RUNS.closed.design;
    const inputs = Object.values(groups).reduce((count, group) => count + Object.keys(group).length, 0);
    const rows = inputsOf(RUNS.closed.design, wordingOf('metric')).flatMap((group) => group.rows);
    expect(rows).toHaveLength(inputs);
    for (const [label, value] of rows) {
      expect(label).not.toBe('');
      expect(value).not.toMatch(/undefined|NaN/);
    }
    expect([version, name, note, climate]).toHaveLength(4);
  });

  it('leaves out what has no meaning without a sunspace', () => {
    const labels = inputsOf(RUNS.modest.design, wordingOf('metric')).flatMap(({ rows }) =>
      rows.map(([label]) => label),
    );
    expect(labels).toContain('How it joins the rooms');
    expect(labels).not.toContain('Sunspace depth');
    expect(labels).not.toContain('Sunspace vents');
  });
});
