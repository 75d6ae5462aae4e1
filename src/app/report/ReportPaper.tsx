// The paper: the report's sections with their tables, sentences and pictures, as they are printed.

import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import type { NumberedAnswer } from '../../../workers/bridge.ts';
import { SEVERITY_WORDS } from '../../findings/severity-words.ts';
import type { Block, Picture as PictureName, Section } from '../../report/block.ts';
import type { Report } from '../../report/report.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { unbroken } from '../parts/unbroken.ts';
import { PictureView } from '../pictures/PictureView.tsx';
import { sheetPicture } from '../pictures/sheet-picture.ts';

/** Pictures whose own sentence says what the caption does not. */
const SAYS_MORE: readonly PictureName['name'][] = ['week', 'balance'];

/** Columns that stand side by side on a phone; with more, the first takes a line of its own there. */
const MOST_ON_PHONE = 4;

export interface PaperProps {
  readonly report: Report;
  readonly answer: NumberedAnswer;
  readonly climate: TypicalYear;
  readonly system: UnitSystem;
}

export function ReportPaper(props: PaperProps) {
  const { report } = props;
  return (
    <article class="paper">
      <header class="paper-head">
        <h1>{report.title}</h1>
        {report.subtitle !== '' && <p>{report.subtitle}</p>}
      </header>
      {report.sections.map((section) => (
        <PaperSection key={section.title} section={section} {...props} />
      ))}
      <p class="paper-foot">{report.foot}</p>
    </article>
  );
}

function PaperSection({ section, ...props }: PaperProps & { section: Section }) {
  const id = `paper-${section.title.toLowerCase().replace(/[^a-z]+/g, '-')}`;
  const [first, ...rest] = section.blocks;
  const isList = section.blocks.every(({ kind }) => kind === 'table') && section.blocks.length > 2;
  // The heading and what follows it are one piece that no page break divides.
  const isPiece = !isList && (first?.kind === 'picture' || first?.kind === 'table');
  return (
    <section class={`paper-section ${id} ${section.appendix ? 'is-appendix' : ''}`} aria-labelledby={id}>
      <div class={isPiece ? 'paper-piece' : undefined}>
        <h2 id={id}>{section.title}</h2>
        {isList ? (
          <div class="paper-columns">
            {section.blocks.map((block, i) => (
              <PaperBlock key={i} block={block} {...props} />
            ))}
          </div>
        ) : (
          first && <PaperBlock block={first} {...props} />
        )}
      </div>
      {!isList && rest.map((block, i) => <PaperBlock key={i} block={block} {...props} />)}
    </section>
  );
}

function PaperBlock({ block, ...props }: PaperProps & { block: Block }): JSX.Element {
  switch (block.kind) {
    case 'text':
      return <p class="paper-text">{unbroken(block.text)}</p>;
    case 'table':
      return <PaperTable head={block.head} rows={block.rows} />;
    case 'findings':
      return (
        <ul class="paper-findings">
          {block.findings.map(({ id, severity, text }) => (
            <li key={id}>
              <strong>{SEVERITY_WORDS[severity]}</strong>
              <p>{unbroken(text)}</p>
            </li>
          ))}
        </ul>
      );
    case 'picture':
      return <PaperPicture name={block.picture} caption={block.caption} {...props} />;
  }
}

function PaperTable({ head, rows }: { head: readonly string[]; rows: readonly (readonly string[])[] }) {
  return (
    <table
      class={`paper-table ${head.length > 2 ? 'is-wide' : ''} ${head.length > MOST_ON_PHONE ? 'is-many' : ''}`}
    >
      {head.length > 0 && (
        <thead>
          <tr>
            {head.map((cell, i) => (
              <th key={i} scope="col">
                {cell}
              </th>
            ))}
          </tr>
        </thead>
      )}
      <tbody>
        {rows.map(([label = '', ...cells]) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            {cells.map((cell, i) => (
              <td key={i}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function PaperPicture({
  name,
  caption,
  answer,
  climate,
  system,
}: PaperProps & { name: PictureName; caption: string }) {
  // Drawn anew when its data change, not with every letter typed.
  const { picture, drawn } = useMemo(() => {
    const made = sheetPicture(name, { answer, climate, system });
    return { picture: made, drawn: <PictureView picture={made} /> };
  }, [JSON.stringify(name), answer, climate, system]);
  return (
    <figure class="paper-figure">
      <figcaption>
        {caption} {SAYS_MORE.includes(name.name) ? picture.words : ''}
      </figcaption>
      {drawn}
    </figure>
  );
}
