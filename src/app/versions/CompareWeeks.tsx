// The hottest or the coldest week of the compared versions over each other: the rooms of each and the air outdoors,
// told apart by dash and letter, with what to notice above and the numbers below.

import { useState } from 'preact/hooks';
import type { NumberedAnswer } from '../../../workers/bridge.ts';
import { weekAround } from '../../outcomes/extremes.ts';
import { hotLimits } from '../../outcomes/hot-limits.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { zoneOf } from '../charts/week-hours.ts';
import { dayText } from '../parts/calendar-words.ts';
import { toShown, type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { useElementWidth } from '../parts/element-width.ts';
import { NumbersFold } from '../parts/NumbersFold.tsx';
import { numberText } from '../parts/number-text.ts';
import { useWorkspace } from '../state/session-context.ts';
import { VERSION_LETTERS } from '../state/version-list.ts';
import { OVERLAY_HEIGHT, overlaidWeek, WEEK_HOURS } from './overlaid-weeks.ts';

const DASHES = ['none', '9 4', '3 3', '11 3 2 3'] as const;
const OUTDOOR_DASH = '1 4';

interface CompareWeeksProps {
  readonly names: readonly string[];
  readonly answers: readonly (NumberedAnswer | null)[];
}

interface Line {
  readonly mark: string;
  readonly name: string;
  readonly isOutdoors: boolean;
  readonly dash: string;
  readonly values: Float64Array;
}

export function CompareWeeks({ names, answers }: CompareWeeksProps) {
  const workspace = useWorkspace();
  const [kind, setKind] = useState<'hot' | 'cold'>('hot');
  const { ref, width } = useElementWidth<HTMLDivElement>();
  const system = workspace.units.value;
  const known = answers.flatMap((answer) => answer ?? []);
  const years = known.map(({ job }) => workspace.yearFor(job.design));
  const isReady = known.length === names.length && years.every((year) => year !== null);
  const at = isReady ? extremeOf(known, kind) : null;
  const lines = at === null ? [] : linesOf(known, years as TypicalYear[], names, at.from, system);
  const limits =
    at === null ? [] : limitsOf(known[0]!, years[0]!, at.from).map((c) => toShown(c, 'temperature', system));
  const drawn = at && width ? overlaidWeek(lines, at.from, width, limits) : null;
  const { sign } = unitOf('temperature', system);
  const sentence =
    at === null
      ? 'Computing the years to compare…'
      : weeksSentence(lines, at.from, kind, sign, names[at.of]!);
  return (
    <div class="compare-weeks">
      <div class="chart-head">
        <h3>Their weeks over each other</h3>
        <div class="chips" role="radiogroup" aria-label="Week shown for all versions">
          {(['hot', 'cold'] as const).map((each) => (
            <label key={each} class="chip">
              <input
                type="radio"
                name="compared-week"
                checked={kind === each}
                onChange={() => setKind(each)}
              />
              <span>{each === 'hot' ? 'hottest week' : 'coldest week'}</span>
            </label>
          ))}
        </div>
      </div>
      <p class="chart-sentence">{sentence}</p>
      <div ref={ref} style={{ minHeight: `${OVERLAY_HEIGHT}px` }}>
        {drawn && width && (
          <svg viewBox={`0 0 ${width} ${OVERLAY_HEIGHT}`} role="img" aria-label={sentence}>
            {drawn.yTicks.map(({ at: y, value }, i) => (
              <g key={value}>
                <line class="week-grid" x1={drawn.frame.left} x2={drawn.frame.right} y1={y} y2={y} />
                <text x={drawn.frame.left - 6} y={y + 4} text-anchor="end">
                  {numberText(value, 0)}
                  {i === drawn.yTicks.length - 1 && ` ${sign}`}
                </text>
              </g>
            ))}
            {drawn.days.map(({ at: x, text }) => (
              <g key={text}>
                <line class="week-grid" x1={x} x2={x} y1={drawn.frame.top} y2={drawn.frame.bottom} />
                <text x={x} y={drawn.frame.bottom + 17} text-anchor="start">
                  {text}
                </text>
              </g>
            ))}
            {drawn.limits.map(({ at: y, value }) => (
              <line
                key={value}
                class="week-limit"
                x1={drawn.frame.left}
                x2={drawn.frame.right}
                y1={y}
                y2={y}
              />
            ))}
            {drawn.lines.map((line, i) => (
              <g key={line.mark} class={lineClass(lines[i]!)}>
                <polyline points={line.points} stroke-dasharray={lines[i]!.dash} />
                <line
                  x1={drawn.frame.right}
                  x2={drawn.frame.right + 8}
                  y1={line.endY}
                  y2={line.markY}
                  class="week-lead"
                />
                <text x={drawn.frame.right + 11} y={line.markY + 4}>
                  {line.mark}
                </text>
              </g>
            ))}
          </svg>
        )}
      </div>
      <ul class="week-key">
        {lines.map((line) => (
          <li key={line.mark} class={lineClass(line)}>
            <svg viewBox="0 0 40 8" aria-hidden="true">
              <line x1="1" x2="39" y1="4" y2="4" stroke-dasharray={line.dash} />
            </svg>
            <span>
              <b>{line.mark}</b> {line.name}
            </span>
          </li>
        ))}
      </ul>
      {lines.length > 0 && (
        <NumbersFold label="The week of each version, as numbers">
          <table>
            <thead>
              <tr>
                <th scope="col">in this week, {sign}</th>
                <th scope="col">coldest hour</th>
                <th scope="col">mean</th>
                <th scope="col">hottest hour</th>
              </tr>
            </thead>
            <tbody>
              {lines.map(({ mark, name, values }) => (
                <tr key={mark}>
                  <th scope="row">{name}</th>
                  <td>{Math.min(...values).toFixed(1)}</td>
                  <td>{(values.reduce((a, b) => a + b, 0) / values.length).toFixed(1)}</td>
                  <td>{Math.max(...values).toFixed(1)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </NumbersFold>
      )}
    </div>
  );
}

function lineClass({ mark, isOutdoors }: Line): string {
  return isOutdoors ? 'week-line is-outdoors' : `week-line is-${VERSION_LETTERS.indexOf(mark)}`;
}

/** Too cold and, on the mean of the week, too hot, as the first version counts it [°C]. */
function limitsOf(
  { job: { design }, year }: NumberedAnswer,
  climate: TypicalYear,
  from: number,
): readonly number[] {
  const { limitC } = hotLimits(design, zoneOf(year, 'house')!, climate);
  const week = limitC.subarray(from, from + WEEK_HOURS).filter(Number.isFinite);
  const mean = week.reduce((sum, limit) => sum + limit, 0) / week.length;
  return week.length === 0 ? [design.comfort.underheatC] : [design.comfort.underheatC, mean];
}

/** The week around the hottest or coldest hour that any version has, and whose hour it is. */
function extremeOf(answers: readonly NumberedAnswer[], kind: 'hot' | 'cold'): { from: number; of: number } {
  const houses = answers.map(({ outcome }) => outcome.zones.house);
  const heights = houses.map((house) => (kind === 'hot' ? house.maxOperativeC : -house.minOperativeC));
  const of = heights.indexOf(Math.max(...heights));
  return { of, from: weekAround(kind === 'hot' ? houses[of]!.hottestHour : houses[of]!.coldestHour) };
}

function linesOf(
  answers: readonly NumberedAnswer[],
  years: readonly TypicalYear[],
  names: readonly string[],
  from: number,
  system: UnitSystem,
): readonly Line[] {
  const week = (hours: Float64Array) =>
    hours.slice(from, from + WEEK_HOURS).map((value) => toShown(value, 'temperature', system));
  // Versions in one place share their weather; only what differs gets a line of its own.
  const places = new Map<string, number[]>();
  answers.forEach(({ job: { design } }, i) => {
    const place = JSON.stringify([design.climate, design.hotter ?? null]);
    places.set(place, [...(places.get(place) ?? []), i]);
  });
  const outdoors = [...places.values()].map((shared): Line => {
    const letters = places.size > 1 ? shared.map((i) => VERSION_LETTERS[i]).join('') : '';
    return {
      mark: `out${letters && ` ${letters}`}`,
      name: `outdoors${letters && `, ${years[shared[0]!]!.site.name}`}`,
      isOutdoors: true,
      dash: OUTDOOR_DASH,
      values: week(years[shared[0]!]!.dryBulbC),
    };
  });
  const rooms = answers.map(
    ({ year }, i): Line => ({
      mark: VERSION_LETTERS[i]!,
      name: names[i]!,
      isOutdoors: false,
      dash: DASHES[i]!,
      values: week(zoneOf(year, 'house')!.operativeC),
    }),
  );
  return [...rooms, ...outdoors];
}

function weeksSentence(
  lines: readonly Line[],
  from: number,
  kind: 'hot' | 'cold',
  sign: string,
  whose: string,
): string {
  const peak = ({ values }: Line) => (kind === 'hot' ? Math.max(...values) : Math.min(...values));
  const told = lines
    .map(
      (line) =>
        `${line.isOutdoors ? line.name : `${line.mark}, "${line.name}",`} ${numberText(peak(line), 1)}\u202f${sign}`,
    )
    .join('; ');
  const span = `${dayText(from)} to ${dayText(from + WEEK_HOURS - 1)}`;
  return `The ${kind === 'hot' ? 'hottest' : 'coldest'} week of "${whose}", ${span}. In it the ${kind === 'hot' ? 'hottest' : 'coldest'} hour is: ${told}.`;
}
