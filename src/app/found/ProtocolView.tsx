// The page for the people of the house, to be printed: what to hang where, what to keep shut, what to write down.

import '../style/found.css';
import {
  BEFORE_DIARY,
  DIARY_COLUMNS,
  DIARY_POINT,
  DIARY_TITLE,
  PROTOCOL_SAYS,
  PROTOCOL_TITLE,
  type ProtocolPart,
  TAKE_CARE,
} from '../../matching/protocol.ts';
import { useFocusedHeading } from '../parts/focused-heading.ts';
import { ScrollTable } from '../parts/ScrollTable.tsx';

/** Days of the diary that fit on the page. */
const DIARY_ROWS = 14;

export function ProtocolView() {
  const heading = useFocusedHeading();
  return (
    <main class="protocol-view">
      <p class="protocol-tools">
        <a class="button" href="#found">
          Back to the house as it is
        </a>
        <button type="button" class="is-main" onClick={() => window.print()}>
          Print, or save as PDF
        </button>
      </p>
      <article class="protocol-paper">
        <h1 ref={heading} tabIndex={-1}>
          {PROTOCOL_TITLE}
        </h1>
        <p>{PROTOCOL_SAYS}</p>
        {BEFORE_DIARY.map((part) => (
          <Part key={part.title} part={part} />
        ))}
        <h2>{DIARY_TITLE}</h2>
        <ScrollTable label={DIARY_TITLE}>
          <table>
            <thead>
              <tr>
                {DIARY_COLUMNS.map((name) => (
                  <th key={name} scope="col">
                    {name}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {Array.from({ length: DIARY_ROWS }, (_, day) => (
                <tr key={day}>
                  <th scope="row">{day + 1}</th>
                  {DIARY_COLUMNS.slice(1).map((name) => (
                    <td key={name} />
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollTable>
        <ul>
          <li>{DIARY_POINT}</li>
        </ul>
        <Part part={TAKE_CARE} />
      </article>
    </main>
  );
}

function Part({ part: { title, points } }: { part: ProtocolPart }) {
  return (
    <>
      <h2>{title}</h2>
      <ul>
        {points.map((point) => (
          <li key={point}>{point}</li>
        ))}
      </ul>
    </>
  );
}
