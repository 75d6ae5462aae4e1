// What came of a match, in words: the verdict with its number, what the house seems to be, what the record could not tell,
// what is left; the misfits as a table; and the house as found, to be kept.

import type { MatchAnswer } from '../../../workers/match-desk.ts';
import {
  draughtWords,
  heatLossWords,
  heldWords,
  inUnits,
  nothingKeptWords,
  tieWords,
  unknownWords,
  verdictWords,
} from '../../matching/words.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { changeText } from '../parts/number-text.ts';
import { ScrollTable } from '../parts/ScrollTable.tsx';
import { unbroken } from '../parts/unbroken.ts';

interface VerdictProps {
  readonly answer: MatchAnswer;
  readonly system: UnitSystem;
  /** files, places, days or the design have changed since */
  readonly isOld: boolean;
  readonly isKept: boolean;
  readonly keep: () => void;
}

export function FoundVerdict({
  answer: { match, notes, cautions, kept },
  system,
  isOld,
  isKept,
  keep,
}: VerdictProps) {
  const say = (sentence: string) => unbroken(inUnits(sentence, system));
  const heat = heatLossWords(match);
  const draughts = draughtWords(match);
  const misfits = [
    ['days it was fitted on', match.misfitK],
    ['days it had not seen, at the end', match.unseenMisfitK],
    ['days it had not seen, every fourth', match.otherUnseenMisfitK],
    ['as drawn, same days', match.drawnMisfitK],
    ['yesterday’s same hour, same days', match.yesterdayMisfitK],
  ] as const;
  return (
    <section class="found-verdict" aria-labelledby="found-verdict-title" data-verdict={match.verdict}>
      <h2 id="found-verdict-title">What came of it</h2>
      {isOld && (
        <p class="found-old">Something was changed since; hold it against the days again to be told anew.</p>
      )}
      <p class="found-says">{say(verdictWords(match))}</p>
      {cautions.map((note) => (
        <p key={note} class="found-caution">
          {note}
        </p>
      ))}
      <h3>What the house seems to be</h3>
      <ul class="found-list">
        {heat !== null && (
          <li>
            <b>{unbroken(heat)}</b>
          </li>
        )}
        {draughts !== null && <li>{unbroken(draughts)}</li>}
        {match.unknowns.map((found) => (
          <li key={found.id} data-unknown={found.id} data-learnt={found.learnt}>
            {unbroken(unknownWords(found, system))}
          </li>
        ))}
      </ul>
      <Told title="What the record cannot tell">
        {[...match.ties.map(tieWords), ...match.held.map(heldWords)].map(say)}
      </Told>
      <Told title="What is left that nothing explains">{match.patterns.map(({ words }) => say(words))}</Told>
      <h3>How far off</h3>
      <ScrollTable label="How far off">
        <table>
          <thead>
            <tr>
              <th scope="col">against the first logger’s temperature</th>
              <th scope="col">off by</th>
            </tr>
          </thead>
          <tbody>
            {misfits.map(([words, kelvin]) => (
              <tr key={words}>
                <th scope="row">{words}</th>
                <td>{changeText(kelvin, 'temperatureStep', system, 2).replace('+', '')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollTable>
      <Told title="Notes">{notes}</Told>
      <h3>Keep it as a design</h3>
      {kept === null ? (
        <p>{nothingKeptWords(match)}</p>
      ) : (
        <>
          <p>
            The house as found becomes a version and the design on the sheet. Its numbers are the found ones,
            and how well each is known goes into the ranges of its figures, “what matters most” and the
            report.
            {match.verdict === 'not' && ' It does not match its record: decide nothing on it.'}
          </p>
          <p>
            <button type="button" class="is-main" data-found="keep" disabled={isKept} onClick={keep}>
              {isKept ? 'Kept' : 'Keep as a design'}
            </button>
          </p>
          <p class="found-small">
            A house that matches two weeks is still a computed house. Your building code and the people
            licensed to design and build come before it.
          </p>
        </>
      )}
    </section>
  );
}

function Told({ title, children }: { title: string; children: readonly string[] }) {
  if (children.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul class="found-list">
        {children.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}
