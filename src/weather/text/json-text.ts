// JSON of unknown origin: parsed, or refused with the cause. Long texts are refused unparsed, because a parser can
// spend ten seconds on 50 MB of opening brackets.
import type { Fault } from '../read-result.ts';
import { withoutByteOrderMark } from './byte-order-mark.ts';

/** Ten times a typical year as JSON [characters]. */
const MOST_JSON = 10_000_000;

export function jsonOf(text: string): { readonly content: unknown } | { readonly faults: readonly Fault[] } {
  const fault = (value: string, expected: string) => ({
    faults: [{ line: null, column: '', value, expected }],
  });
  if (text.length > MOST_JSON) {
    return fault(`${Math.round(text.length / 1e6)} MB of JSON`, `at most ${MOST_JSON / 1e6} MB of JSON`);
  }
  try {
    return { content: JSON.parse(withoutByteOrderMark(text)) };
  } catch (error) {
    return fault(error instanceof Error ? error.message : '', 'complete JSON');
  }
}
