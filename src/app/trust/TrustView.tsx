// How far to trust it: every outside check with reference, ours and verdict, what is not in the model, what an error in
// weather, airtightness or habits does to the answer. Made from the files `npm run published` writes, as docs/checks.md.

import '../style/report.css';
import '../style/trust.css';
import listed from '../../report/checks-listed.json' with { type: 'json' };
import {
  CHECKS,
  type CheckLine,
  checksInShort,
  type ErrorTable,
  LEFT_OUT,
  type ListedChecks,
  MEASURED_SAYS,
  measuredInWords,
  NOT_MODELLED,
  OWN_SAYS,
  TRUST,
} from '../../report/trust.ts';
import errors from '../../report/what-errors-do.json' with { type: 'json' };
import { useFocusedHeading } from '../parts/focused-heading.ts';
import { numberText } from '../parts/number-text.ts';
import { ScrollTable } from '../parts/ScrollTable.tsx';

const LISTED = listed as unknown as ListedChecks;
const ERRORS: ErrorTable = errors;

export function TrustView() {
  const heading = useFocusedHeading();
  return (
    <main class="trust-view">
      <div class="report-bar">
        <h1 ref={heading} tabIndex={-1}>
          How far to trust it
        </h1>
        <a class="button" href="#sheet">
          Back to the sheet
        </a>
      </div>
      {TRUST.filter((text) => text !== LEFT_OUT).map((text) => (
        <p key={text}>{text}</p>
      ))}
      <h2>What is not in the model</h2>
      <ul class="trust-list">
        {NOT_MODELLED.map((what) => (
          <li key={what}>{what}</li>
        ))}
      </ul>
      <h2>What an error does to the answer</h2>
      <p>{ERRORS.says}</p>
      {ERRORS.houses.map(({ name, rows }) => (
        <ScrollTable key={name} label={`What an error does: ${name}`}>
          <table>
            <caption>{name}</caption>
            <thead>
              <tr>
                <th scope="col">if</th>
                {ERRORS.figures.map((figure) => (
                  <th key={figure} scope="col">
                    {figure}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ what, values }) => (
                <tr key={what}>
                  <th scope="row">{what}</th>
                  {values.map((value, i) => (
                    <td key={ERRORS.figures[i]}>{numberText(value, 0)}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollTable>
      ))}
      <h2>Houses that were measured</h2>
      <p>{MEASURED_SAYS}</p>
      {measuredInWords(LISTED).map(({ kind, says, told }) => (
        <section key={kind}>
          <h3>{kind}</h3>
          <p>{says}</p>
          <ul class="trust-list">
            {told.map((said) => (
              <li key={said}>{said}</li>
            ))}
          </ul>
        </section>
      ))}
      <h2>What was checked</h2>
      <p>{checksInShort(CHECKS)}</p>
      <h3>What is no plain pass</h3>
      {LISTED.odd.length === 0 ? (
        <p>Nothing.</p>
      ) : (
        <CheckTable
          label="What is no plain pass"
          rows={LISTED.odd.map(({ source, line }) => ({ source, line }))}
        />
      )}
      <h3>Source by source</h3>
      <p>
        Where a source has many rows of one quantity, the row that comes nearest to what was allowed stands
        for all of them. A number is from a document that was open, computed anew from the published formula
        (by hand or with a library), recalled from memory (published, and not looked up again), measured in a
        house by its people or by a field study, or common practice without a source. Where it says “reference
        only”, no run uses the formula that was checked.
      </p>
      {CHECKS.sources.map(({ source, checks, pass, note, fail, marks, use }) => (
        <details key={source} class="trust-source">
          <summary>
            <span>{source}</span>{' '}
            <small>
              {checks} checked, {pass} pass{note > 0 && `, ${note} noted`}
              {fail > 0 && `, ${fail} FAIL`}; numbers: {marks}; {use === 'a run' ? 'used by a run' : use}
            </small>
          </summary>
          <CheckTable
            label={source}
            rows={(LISTED.sources.find((entry) => entry.source === source)?.lines ?? []).map((line) => ({
              line,
            }))}
          />
        </details>
      ))}
      <h3>Our own code against itself</h3>
      <p>{OWN_SAYS}</p>
      <details class="trust-own">
        <summary>{LISTED.own.length} comparisons</summary>
        <CheckTable label="Our own code against itself" rows={LISTED.own} />
      </details>
    </main>
  );
}

function CheckTable({
  label,
  rows,
}: {
  label: string;
  rows: readonly { readonly source?: string; readonly line: CheckLine }[];
}) {
  const isMixed = rows.some(({ source }) => source !== undefined);
  return (
    <ScrollTable label={label}>
      <table class="check-table">
        <thead>
          <tr>
            {isMixed && <th scope="col">source</th>}
            {['case', 'quantity', 'reference', 'ours', 'verdict', 'rows'].map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ source, line }, i) => (
            <tr key={i}>
              {isMixed && <td>{source}</td>}
              {line.map((cell, column) => (
                <td key={column}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollTable>
  );
}
