// The list of words at the end of a report: a word stands there when the report uses it, and only then.
import { describe, expect, it } from 'vitest';
import { contextOf } from '../../src/findings/context.ts';
import type { Section } from '../../src/report/block.ts';
import { ENTRIES, wordsSection } from '../../src/report/glossary.ts';
import { type Report, reportOf } from '../../src/report/report.ts';
import { runExample } from '../findings/example-run.ts';
import { madeRun } from '../findings/made-run.ts';

const context = contextOf(madeRun());
const wordsIn = (text: string, of = context) =>
  wordsSection(of, [{ title: 'Made up', blocks: [{ kind: 'text', text }] }]).blocks.flatMap((block) =>
    block.kind === 'table' ? block.rows.map(([word]) => word!) : [],
  );

/** A sentence that uses the word and no other of the list. */
const USES: Readonly<Record<string, string>> = {
  'Added mass': 'Move the added mass into the sun.',
  'Air changes': 'A fan of 0.3 air changes an hour.',
  'Back-up heat': 'It needs back-up heat.',
  Berm: 'Dig a ditch above the berm.',
  'Bq/m³': 'At 148 Bq/m³ act.',
  'Common wall': 'A common wall of adobe.',
  'EN 16798-1': 'Too hot (EN 16798-1, category II).',
  'Equator-facing': 'The equator-facing glass is large.',
  'Frame share': 'Frame share 12 %.',
  'Inner leaf': 'Inner leaf of brick.',
  'Leaf area index': 'Leaf area index 3.',
  'Low-e': 'Double low-e, high gain.',
  'Mould index': 'The mould index reaches 5.',
  ppm: 'More than 1775 ppm.',
  R: 'Wall insulation R 4.5 m²K/W.',
  'Shelter class': 'Shelter class 3.',
  'Stale air': 'The air is stale.',
  'Ventilation unit': 'The ventilation unit is new.',
  Sunspace: 'The sunspace is warm.',
};

describe('the list of words', () => {
  for (const [word, sentence] of Object.entries(USES)) {
    it(`has "${word}" where it is used, and nothing else`, () => {
      expect(wordsIn(sentence)).toEqual(word === 'Equator-facing' ? ['Equator-facing'] : [word]);
    });
  }

  it('tells of more than a whole wall of glass only where there is more', () => {
    const over = 'More than 100 % of the wall';
    expect(wordsIn('It is 108 % of the equator-facing wall.')).toEqual(['Equator-facing', over]);
    for (const share of ['51', '100'])
      expect(wordsIn(`It is ${share} % of the equator-facing wall.`)).toEqual(['Equator-facing']);
    expect(Object.keys(USES).concat(over).sort()).toEqual(ENTRIES.map(({ word }) => word).sort());
  });

  it('has no section where no word is used', () => {
    expect(wordsIn('A house is a house.')).toEqual([]);
  });

  it('says the side of the sun and the R of the packs as the reader knows them', () => {
    const meaning = (word: string, made: Parameters<typeof madeRun>[0]) =>
      ENTRIES.find((entry) => entry.word === word)!.means(contextOf(madeRun(made)));
    expect(meaning('Equator-facing', {})).toContain('south');
    expect(meaning('Equator-facing', { climate: { latitudeDeg: -38, longitudeDeg: -72 } })).toContain(
      'north',
    );
    // 1 m²K/W is 5.678 ft²·°F·h/Btu (NIST SP 811, appendix B)
    expect(meaning('R', {})).toContain('5.7 times');
    expect(meaning('R', { units: 'us' })).not.toMatch(/m²|times/);
    expect(meaning('Leaf area index', { units: 'us' })).not.toContain('metre');
  });
});

describe('the words of the examples', () => {
  const reportFor = (id: string): Report =>
    reportOf({
      client: '',
      place: '',
      adviser: '',
      question: '',
      date: '',
      run: runExample(id).run,
      others: [],
      answers: [],
      help: null,
    });
  const listedIn = (report: Report) => {
    const section: Section = report.sections.at(-1)!;
    expect(section.title).toBe('Words');
    return section.blocks.flatMap((block) =>
      block.kind === 'table' ? block.rows.map(([word]) => word) : [],
    );
  };

  it('differ as the reports do', () => {
    const [leaning, closed, modest] = ['leaning', 'closed', 'modest'].map((id) => listedIn(reportFor(id)));
    expect(leaning).toContain('More than 100 % of the wall');
    expect(closed).not.toContain('More than 100 % of the wall');
    expect(closed).toContain('Common wall');
    expect(modest).not.toContain('Common wall');
    expect(leaning).not.toContain('Low-e');
    expect(modest).toContain('Low-e');
    // Both are aired before their air is stale for long.
    expect(closed).not.toContain('ppm');
    expect(modest).not.toContain('ppm');
  });
});
