import { expect, test } from 'vitest';
import { keptReportWords } from '../../../src/app/report/report-words.ts';

function memory(start?: string) {
  const kept = new Map<string, string>(start === undefined ? [] : [['daystone.report', start]]);
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
  };
}

test('what was typed for the report is there after a reload', () => {
  const store = memory();
  const words = keptReportWords(store);
  words.value = { ...words.value, client: 'The Quillens', question: 'How much glass?' };
  expect(keptReportWords(store).value).toEqual({
    client: 'The Quillens',
    place: '',
    adviser: '',
    question: 'How much glass?',
  });
});

test.each(['', 'null', '[]', '{"client": 7}', '{'])(
  'kept text %j gives empty fields, not a fault',
  (text) => {
    expect(keptReportWords(memory(text)).value).toEqual({ client: '', place: '', adviser: '', question: '' });
  },
);

test('a store that refuses loses only the keeping', () => {
  const refuse = () => {
    throw new Error('full');
  };
  const words = keptReportWords({ getItem: refuse, setItem: refuse });
  words.value = { ...words.value, place: 'Larkspur Bench' };
  expect(words.value.place).toBe('Larkspur Bench');
});

test('a kept text longer than its field is cut to it', () => {
  const store = memory(JSON.stringify({ client: 'x'.repeat(500) }));
  expect(keptReportWords(store).value.client).toHaveLength(120);
});
