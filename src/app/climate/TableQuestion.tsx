// A table of unknown origin, before it is read: what each column is taken for, why, and what to change. The guesses are
// made again after each change, in the worker, so that reasons and units follow.

import { useState } from 'preact/hooks';
import type { TableChoices, TableInspection } from '../../weather/table/hourly-table.ts';
import type { StampMeaning } from '../../weather/table/table-clock.ts';
import type { ColumnGuess } from '../../weather/table/table-columns.ts';
import { ROLE_WORDS, ROLES, type Role, UNITS } from '../../weather/table/table-roles.ts';
import { NumbersFold } from '../parts/NumbersFold.tsx';
import { numberText } from '../parts/number-text.ts';
import type { WeatherQuestion } from '../state/climate-intake.ts';
import { useSession } from '../state/session-context.ts';
import { useArrival } from './arrival.ts';
import { FaultList } from './FaultList.tsx';
import { SiteFields, siteHints, siteTexts } from './SiteFields.tsx';
import { withRole, withUnit } from './table-answers.ts';

const SEPARATORS: Readonly<Record<string, string>> = {
  ',': 'commas',
  ';': 'semicolons',
  '\t': 'tabs',
  '|': 'bars',
};

interface TableQuestionProps {
  readonly question: WeatherQuestion;
  readonly table: TableInspection;
}

export function TableQuestion({ question, table }: TableQuestionProps) {
  const { intake, workspace } = useSession();
  const system = workspace.units.value;
  const [choices, setChoices] = useState<TableChoices>({});
  const [texts, setTexts] = useState(() => siteTexts(table, system));
  const hints = siteHints(texts, system);
  const title = useArrival<HTMLHeadingElement>();
  const choose = (next: TableChoices) => {
    setChoices(next);
    void intake.lookAgain(next);
  };
  return (
    <form
      class="table-question"
      aria-labelledby="table-question-title"
      onSubmit={(event) => {
        event.preventDefault();
        if (hints) void intake.answer(hints, choices);
      }}
    >
      <h2 id="table-question-title" ref={title} tabIndex={-1}>
        Is this what the columns of {question.name} are?
      </h2>
      <p>
        {numberText(table.rows, 0)} rows, cells parted by{' '}
        {SEPARATORS[table.separator] ?? 'a sign of their own'}
        {table.decimalComma ? ', decimals with a comma' : ''}. Change what is wrong, then read it.
      </p>
      <div class="column-list">
        {table.columns.map((column) => (
          <ColumnRow
            key={column.index}
            column={column}
            preview={table.preview.map((row) => row[column.index] ?? '')}
            isWrong={question.faults.some((fault) => fault.column === column.header)}
            onRole={(role) => choose(withRole(choices, table.columns, column.header, role))}
            onUnit={(unit) => choose(withUnit(choices, column.header, unit))}
          />
        ))}
      </div>
      <Preview table={table} />
      <fieldset class="question-fields">
        <legend>Its clock</legend>
        <label>
          A time stands for
          <select
            data-table="stamp"
            value={choices.stamp ?? ''}
            onChange={(event) => setChoices(withStamp(choices, event.currentTarget.value))}
          >
            <option value="">what the sun of clear days shows</option>
            <option value="start">the hour that begins then</option>
            <option value="end">the hour that ends then</option>
            <option value="instant">a reading at that moment</option>
          </select>
        </label>
        <label>
          Times are in
          <select
            data-table="utc"
            value={choices.utc === undefined ? '' : choices.utc ? 'utc' : 'local'}
            onChange={(event) => setChoices(withZone(choices, event.currentTarget.value))}
          >
            <option value="">what the sun of clear days shows</option>
            <option value="local">local standard time</option>
            <option value="utc">UTC</option>
          </select>
        </label>
      </fieldset>
      <fieldset class="question-fields">
        <legend>Its place</legend>
        <SiteFields texts={texts} onChange={setTexts} system={system} />
      </fieldset>
      <FaultList faults={question.faults} />
      <p class="question-buttons">
        <button type="submit" disabled={!hints || intake.reading.value !== null}>
          Read the table
        </button>
        <button type="button" onClick={() => intake.leave()}>
          Leave it
        </button>
        {!hints && <span>It needs latitude and longitude within their limits first.</span>}
      </p>
    </form>
  );
}

interface ColumnRowProps {
  readonly column: ColumnGuess;
  readonly preview: readonly string[];
  readonly isWrong: boolean;
  readonly onRole: (role: Role | null) => void;
  readonly onUnit: (unit: string) => void;
}

function ColumnRow({ column, preview, isWrong, onRole, onUnit }: ColumnRowProps) {
  const units = column.role === null ? undefined : UNITS[column.role];
  return (
    <div class={`column-row${isWrong ? ' is-wrong' : ''}`}>
      <p class="column-name">
        <b>{column.header}</b> <span>{preview.slice(0, 3).join(' · ')}</span>
      </p>
      <select
        aria-label={`${column.header} is`}
        data-column={column.header}
        value={column.role ?? ''}
        onChange={(event) => onRole((event.currentTarget.value || null) as Role | null)}
      >
        <option value="">not used</option>
        {ROLES.map((role) => (
          <option key={role} value={role}>
            {ROLE_WORDS[role]}
          </option>
        ))}
      </select>
      {units && units.length > 1 ? (
        <select
          aria-label={`${column.header} is in`}
          data-unit={column.header}
          value={column.unit?.name ?? ''}
          onChange={(event) => onUnit(event.currentTarget.value)}
        >
          {units.map(({ name }) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      ) : (
        <span class="column-unit">{units?.[0]?.name}</span>
      )}
      <p class="column-reason">{column.reason}</p>
    </div>
  );
}

function Preview({ table }: { table: TableInspection }) {
  return (
    <NumbersFold
      label="The first rows of the file"
      summary={`The first ${table.preview.length} rows as they stand in the file`}
    >
      <table>
        <thead>
          <tr>
            {table.columns.map(({ index, header }) => (
              <th key={index} scope="col">
                {header}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.preview.map((row, i) => (
            <tr key={i}>
              {table.columns.map(({ index }) => (
                <td key={index}>{row[index]}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </NumbersFold>
  );
}

function withStamp({ stamp: _, ...others }: TableChoices, text: string): TableChoices {
  return text === '' ? others : { ...others, stamp: text as StampMeaning };
}

function withZone({ utc: _, ...others }: TableChoices, text: string): TableChoices {
  return text === '' ? others : { ...others, utc: text === 'utc' };
}
