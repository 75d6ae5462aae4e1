// An answer on the page: the closing sentence first, then what it proposes, map, curves, tables, notes.

import type { Design } from '../../design/design.ts';
import { hasPrices } from '../../quantities/prices.ts';
import { CHANGE_ORDERS, type ChangeOrder } from '../../questions/change-order.ts';
import type { GlassMassMap } from '../../questions/glass-mass-grid.ts';
import type { Answer } from '../../questions/question.ts';
import { HotterMark } from '../climate/HotterMark.tsx';
import type { UnitSystem } from '../parts/display-unit.ts';
import { orderChoice, pricesChoice } from '../state/prices-choice.ts';
import { AnswerChart } from './AnswerChart.tsx';
import { AnswerMap } from './AnswerMap.tsx';
import { AnswerTable } from './AnswerTable.tsx';

/** Longer tables stand folded. */
const MOST_ROWS_OPEN = 12;

const ORDER_LABELS: Readonly<Record<ChangeOrder, string>> = {
  weight: 'what weighs least',
  days: 'what does most for a day of work',
  money: 'what does most for its money',
};

interface AnswerViewProps {
  readonly answer: Answer;
  readonly design: Design;
  /** the limit's name in the units on screen */
  readonly limit: string;
  readonly system: UnitSystem;
  /** where the design on screen stands on a map */
  readonly drawn: GlassMassMap['drawn'];
  readonly isOld: boolean;
  readonly onPropose: (design: Design) => void;
  readonly onMove: (glassM2: number, massM2: number) => void;
}

export function AnswerView({
  answer,
  design,
  limit,
  system,
  drawn,
  isOld,
  onPropose,
  onMove,
}: AnswerViewProps) {
  const { proposal } = answer;
  const drawerOf = (run: string) => {
    const house = answer.proposals.find(({ id }) => id === run);
    return house === undefined ? null : () => onPropose(house.design);
  };
  return (
    <div class="ask-answer" data-answer={answer.complete ? 'whole' : 'part'} data-runs={answer.runs.length}>
      <h3>{answer.title}</h3>
      <HotterMark design={design} />
      {isOld && <p class="ask-old">Asked of an earlier state of the design or its climate. Ask again.</p>}
      {answer.finding && <p class="ask-finding">{answer.finding.text}</p>}
      {answer.sure && <p class="ask-sure">{answer.sure.text}</p>}
      {proposal && (
        <p>
          <button type="button" data-ask="proposal" onClick={() => onPropose(proposal.design)}>
            {proposal.text}
          </button>
        </p>
      )}
      {answer.map && <AnswerMap map={{ ...answer.map, drawn }} system={system} onMove={onMove} />}
      {answer.charts
        .filter(({ curves }) => curves.some(({ points }) => points.length > 1))
        .map((chart) => (
          <AnswerChart key={chart.id} chart={chart} limitHours={answer.criterion.hours} system={system} />
        ))}
      {answer.question === 'what-helps' && <OrderChoice />}
      {answer.tables.map((table) =>
        table.rows.length > MOST_ROWS_OPEN ? (
          <details key={table.id}>
            <summary>{table.title}</summary>
            <AnswerTable table={table} system={system} drawerOf={drawerOf} />
          </details>
        ) : (
          <AnswerTable key={table.id} table={table} system={system} drawerOf={drawerOf} />
        ),
      )}
      {answer.notes.length > 0 && (
        <ul class="ask-notes">
          {answer.notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      <p class="ask-source">
        Limit: {limit}. {answer.criterion.source}.
      </p>
    </div>
  );
}

/** In what order changes stand; by money once there are prices. */
function OrderChoice() {
  const isPriced = hasPrices(pricesChoice.list.value);
  return (
    <p class="ask-order">
      <label>
        First{' '}
        <select
          data-ask="order"
          value={orderChoice.value}
          onChange={({ currentTarget }) => {
            orderChoice.value = CHANGE_ORDERS.find((order) => order === currentTarget.value)!;
          }}
        >
          {CHANGE_ORDERS.map((order) => (
            <option key={order} value={order} disabled={order === 'money' && !isPriced}>
              {ORDER_LABELS[order]}
            </option>
          ))}
        </select>
      </label>{' '}
      <a href="#build">{isPriced ? 'Your prices' : 'Give your own prices'}</a>
    </p>
  );
}
