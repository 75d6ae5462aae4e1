// What the person types for the report, and the versions to set beside the design.

import type { Signal } from '@preact/signals';
import { useSession } from '../state/session-context.ts';
import { MOST_COMPARED } from '../state/version-list.ts';
import { MOST_BESIDE } from './report-content.ts';
import { MOST_CHARACTERS, type ReportField, type ReportWords } from './report-words.ts';

const LINES = [
  ['client', 'Who it is for'],
  ['place', 'Where the house will stand'],
  ['adviser', 'Prepared by'],
] as const;

export function ReportFields({ words }: { words: Signal<ReportWords> }) {
  const { list, workspace } = useSession();
  const versions = list.versions.value.filter(({ design }) => design !== workspace.design.value);
  const compared = list.compared.value;
  const set = (field: ReportField, text: string) => {
    words.value = { ...words.value, [field]: text };
  };
  return (
    <form class="report-fields" onSubmit={(event) => event.preventDefault()}>
      {LINES.map(([field, label]) => (
        <label key={field}>
          <span>{label}</span>
          <input
            type="text"
            data-report={field}
            maxLength={MOST_CHARACTERS[field]}
            value={words.value[field]}
            onInput={(event) => set(field, event.currentTarget.value)}
          />
        </label>
      ))}
      <label class="report-question">
        <span>The question it answers</span>
        <textarea
          rows={2}
          data-report="question"
          maxLength={MOST_CHARACTERS.question}
          value={words.value.question}
          onInput={(event) => set('question', event.currentTarget.value)}
        />
      </label>
      {versions.length > 0 && (
        <fieldset class="report-versions">
          <legend>Versions beside it, up to {MOST_BESIDE}</legend>
          {versions.map(({ id, name }) => (
            <label key={id}>
              <input
                type="checkbox"
                checked={compared.includes(id)}
                disabled={!compared.includes(id) && compared.length >= MOST_COMPARED}
                onChange={() => list.toggle(id)}
              />
              <span>{name}</span>
            </label>
          ))}
        </fieldset>
      )}
    </form>
  );
}
