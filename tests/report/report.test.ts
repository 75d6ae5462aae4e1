import { describe, expect, it } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { hours, wordingOf } from '../../src/findings/wording.ts';
import { inputsOf } from '../../src/report/inputs.ts';
import { reportOf } from '../../src/report/report.ts';
import { errorsInShort } from '../../src/report/trust.ts';
import errorsDo from '../../src/report/what-errors-do.json' with { type: 'json' };
import { runExample } from '../findings/example-run.ts';
import { madeFigures } from '../questions/made-figures.ts';
import { order, RUNS, wordsOf } from './report-order.ts';

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
    const front = of('What matters most');
    const [found, careful] = [of('What else we find'), of('Take care of this too')];
    const isCare = (id: string) => id.startsWith('caution-');
    // Three findings and every serious caution stand on the second page, the rest behind it, and each once.
    expect(front.filter((id) => !isCare(id))).toHaveLength(3);
    expect(front).toContain('caution-overhead-glass');
    expect(new Set([...front, ...found, ...careful]).size).toBe(front.length + found.length + careful.length);
    expect(careful.every(isCare)).toBe(true);
    expect(found.some(isCare)).toBe(false);
    expect(found.length).toBeGreaterThan(3);
    const all = runExample('leaning')
      .findings.map(({ id }) => id)
      .filter((id) => id !== 'how-sure');
    expect(new Set([...front, ...found, ...careful])).toEqual(new Set(all));
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

  it('gives heat stress and hot nights a row only where a room has them', () => {
    const labelsOf = (changes: Parameters<typeof order>[0]) =>
      reportOf(order(changes)).sections.flatMap(({ blocks }) =>
        blocks.flatMap((block) => (block.kind === 'table' ? block.rows.map(([label]) => label) : [])),
      );
    const rows = ['Feels like 32 °C or more', 'Above 26 °C at night'];
    const { outcome } = RUNS.leaning;
    const { zones } = outcome;
    const hot = {
      ...RUNS.leaning,
      outcome: { ...outcome, zones: { ...zones, house: { ...zones.house, hotNightHours: 200 } } },
    };
    expect(labelsOf({ run: hot })).toEqual(expect.arrayContaining(rows));
    for (const row of rows) expect(labelsOf({ run: RUNS.modest })).not.toContain(row);
    const beside = labelsOf({ run: RUNS.modest, others: [hot] });
    expect(beside).toEqual(expect.arrayContaining(rows));
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
    expect(words).toContain('prices, but those you enter yourself');
    expect(words).toContain('know from memory alone');
    expect(words).not.toContain('recalled from memory');
    expect(errorsInShort('a house of ours', wordingOf('metric'))).toContain(
      'the modest one", with one thing',
    );
    expect(errorsInShort(RUNS.leaning.design.name, wordingOf('metric'))).toContain(
      `too hot for ${hours(errorsDo.houses[0]!.rows[0]!.values[0]!)}`,
    );
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
  it('holds every input of a design with a sunspace, a wall and every fan', () => {
    const { design } = RUNS.closed;
    const full: Design = {
      ...design,
      vents: { ...design.vents, extractAch: 0.3 },
      ventilation: { ...design.ventilation, extractRuns: 'humidity', recoveryAch: 0.3 },
    };
    const { version, name, note, climate, ...groups } = full;
    const inputs = Object.values(groups).reduce((count, group) => count + Object.keys(group).length, 0);
    const rows = inputsOf(full, wordingOf('metric')).flatMap((group) => group.rows);
    expect(rows).toHaveLength(inputs);
    expect(inputsOf(design, wordingOf('metric')).flatMap((group) => group.rows)).toHaveLength(inputs - 5);
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

describe('the first page', () => {
  it('stands alone: verdict, drawing, acts with what each brings, range, and what was asked', () => {
    const lever = { id: 'shade', words: 'shade the glass', apply: (design: Design) => design };
    const figures = madeFigures({ tooHotHours: 500, humidHours: 100, heatingKWh: 900 });
    const help = {
      drawn: figures,
      pulled: [],
      steps: [{ lever, figures: { ...figures, tooHotHours: 100 } }],
    };
    const [first, ...rest] = reportOf(
      order({ help, sure: { drawn: figures, turned: [] }, answers: ['How much glass? Stop at 20 m².'] }),
    ).sections;
    expect(first!.title).toBe('In short');
    const blocks = JSON.stringify(first!.blocks);
    for (const said of [
      'where 262 are allowed',
      '"section"',
      'Shade the glass',
      'Hours too hot 500 → 100.',
      'How sure is this? Too hot for 500 hours',
      'How much glass? Stop at 20 m².',
    ])
      expect(blocks).toContain(said);
    expect(rest.slice(0, 2).map(({ appendix }) => appendix ?? false)).toEqual([false, false]);
    expect(rest.slice(2).every(({ appendix }) => appendix === true)).toBe(true);
  });

  it('tells a note of one’s own, and never a sample’s as the client’s', () => {
    expect(wordsOf(reportOf(order()))).not.toContain(RUNS.leaning.design.note);
    const own = { ...RUNS.leaning, design: { ...RUNS.leaning.design, note: 'Our hill faces south.' } };
    expect(wordsOf(reportOf(order({ run: own })))).toContain('Our hill faces south.');
  });
});
