// What the person types for the report: who it is for, where the house will stand, who prepared it, what was asked.
// Kept in the browser beside the sheet, a moment after each change and when the page is left.

import { effect, type Signal, signal } from '@preact/signals';
import type { Store } from '../keeping/browser-store.ts';

const REPORT_FIELDS = ['client', 'place', 'adviser', 'question'] as const;
export type ReportField = (typeof REPORT_FIELDS)[number];
export type ReportWords = Readonly<Record<ReportField, string>>;

export const MOST_CHARACTERS: Readonly<Record<ReportField, number>> = {
  client: 120,
  place: 120,
  adviser: 120,
  question: 600,
};

const KEY = 'daystone.report';
const NONE: ReportWords = { client: '', place: '', adviser: '', question: '' };

/**
 * The words as they were left, and kept from now on.
 *
 * @param store the browser's local storage; one that refuses loses nothing but the keeping
 */
export function keptReportWords(store: Pick<Store, 'getItem' | 'setItem'>): Signal<ReportWords> {
  const words = signal(readWords(store));
  effect(() => {
    const text = JSON.stringify(words.value);
    try {
      store.setItem(KEY, text);
    } catch {
      // The words stay on the sheet; the sheet itself tells that the browser keeps nothing.
    }
  });
  return words;
}

function readWords(store: Pick<Store, 'getItem'>): ReportWords {
  try {
    const data: unknown = JSON.parse(store.getItem(KEY) ?? '{}');
    const read = (field: ReportField) => {
      const value = typeof data === 'object' && data !== null ? (data as Record<string, unknown>)[field] : '';
      return typeof value === 'string' ? value.slice(0, MOST_CHARACTERS[field]) : '';
    };
    return {
      client: read('client'),
      place: read('place'),
      adviser: read('adviser'),
      question: read('question'),
    };
  } catch {
    return NONE;
  }
}
