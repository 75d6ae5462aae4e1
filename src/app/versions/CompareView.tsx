// Two to four versions side by side: their sections at one scale, their headline figures with the best marked, the
// year of the rooms as a small map, and a table of what differs in the designs.

import { useEffect, useState } from 'preact/hooks';
import type { NumberedAnswer } from '../../../workers/bridge.ts';
import { zoneOf } from '../charts/week-hours.ts';
import { YearPicture } from '../charts/YearPicture.tsx';
import { bundledClimate } from '../climate/bundled-climates.ts';
import { HotterMark } from '../climate/HotterMark.tsx';
import { type HeadlineFigure, headlineFigures } from '../figures/headline-figures.ts';
import type { KeptVersion } from '../keeping/kept-record.ts';
import { comfortScale } from '../parts/colour-scale.ts';
import { toShown, type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { changeText, numberText, quantityText } from '../parts/number-text.ts';
import { ScrollTable } from '../parts/ScrollTable.tsx';
import { onScreen } from '../parts/screen-scale.ts';
import { StillSection } from '../section/StillSection.tsx';
import { pricesChoice } from '../state/prices-choice.ts';
import { useSession } from '../state/session-context.ts';
import { VERSION_LETTERS } from '../state/version-list.ts';
import { CompareWeeks } from './CompareWeeks.tsx';
import { designDifferences } from './design-differences.ts';

export function CompareView() {
  const { list, workspace } = useSession();
  const versions = list.comparedVersions.value;
  const answers = useAnswers(versions);
  if (versions.length < 2) return null;
  return (
    <section class="compare" id="compare" aria-labelledby="compare-title">
      <div class="chart-head">
        <h2 id="compare-title">Side by side</h2>
        <button
          type="button"
          onClick={() => {
            list.compared.value = [];
          }}
        >
          Close
        </button>
      </div>
      <p class="chart-sentence">{compareSentence(versions, answers, workspace.units.value)}</p>
      <CompareWeeks answers={answers} names={versions.map(({ name }) => name)} />
      <CompareTable versions={versions} answers={answers} />
    </section>
  );
}

function CompareTable({
  versions,
  answers,
}: {
  versions: readonly KeptVersion[];
  answers: readonly (NumberedAnswer | null)[];
}) {
  const { workspace } = useSession();
  const system = workspace.units.value;
  const climate = workspace.climate.value;
  const latitude = climate.state === 'ready' ? climate.year.site.latitudeDeg : 40;
  const figures = answers.map((answer) =>
    answer
      ? headlineFigures(answer.outcome, answer.job.design, system, pricesChoice.list.value)
      : ([] as readonly HeadlineFigure[]),
  );
  const ids = [...new Map(figures.flat().map((figure) => [figure.id, figure])).values()];
  const differences = designDifferences(
    versions.map(({ design }) => design),
    (id) => bundledClimate(id)?.name ?? id,
    system,
  );
  return (
    <ScrollTable label="Versions side by side">
      <table class="compare-table">
        <thead>
          <tr>
            <td />
            {versions.map((version, i) => (
              <th key={version.id} scope="col">
                {VERSION_LETTERS[i]} · {version.name}
                <HotterMark design={version.design} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">section</th>
            {versions.map((version, i) => (
              <td key={version.id}>
                <StillSection
                  design={version.design}
                  latitudeDeg={answers[i]?.outcome.site.latitudeDeg ?? latitude}
                  system={system}
                  among={versions.map((one) => one.design)}
                />
              </td>
            ))}
          </tr>
          <tr>
            <th scope="row">rooms through the year</th>
            {answers.map((answer, i) => (
              <td key={versions[i]!.id}>
                {answer && (
                  <YearPicture
                    hours={zoneOf(answer.year, 'house')!.operativeC}
                    scale={onScreen(
                      comfortScale(
                        answer.job.design.comfort.underheatC,
                        answer.outcome.zones.house.tooHot.lowestLimitC,
                      ),
                    )}
                  />
                )}
              </td>
            ))}
          </tr>
          {ids.map((example) => (
            <FigureRow
              key={example.id}
              id={example.id}
              example={example}
              figures={figures}
              versions={versions}
              system={system}
            />
          ))}
          {differences.map((row) => (
            <tr key={row.path} class="differs">
              <th scope="row">{row.label}</th>
              {row.values.map((value, i) => (
                <td key={versions[i]!.id}>{value}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollTable>
  );
}

interface FigureRowProps {
  readonly id: string;
  readonly example: HeadlineFigure;
  readonly figures: readonly (readonly HeadlineFigure[])[];
  readonly versions: readonly KeptVersion[];
  readonly system: UnitSystem;
}

function FigureRow({ id, example, figures, versions, system }: FigureRowProps) {
  const row = figures.map((list) => list.find((figure) => figure.id === id));
  const values = row.flatMap((figure) => (figure ? [figure.value] : []));
  const best =
    example.better === 'less' ? Math.min(...values) : example.better === 'more' ? Math.max(...values) : null;
  // What reads the same is the same: a hair's difference is no better.
  const shown = (value: number) => numberText(toShown(value, example.quantity, system), example.digits);
  const all = values.every((value) => shown(value) === shown(values[0]!));
  const isTie = !all && best !== null && values.filter((value) => shown(value) === shown(best)).length > 1;
  const isBest = (value: number) => best !== null && !all && shown(value) === shown(best);
  const { sign } = unitOf(example.quantity, system);
  const zone = example.zone === 'sunspace' ? 'sunspace: ' : '';
  return (
    <tr>
      <th scope="row">
        {zone}
        {example.label}
        {sign !== '' && `, ${sign}`}
        {all && values.length > 1 && <small> · alike</small>}
      </th>
      {row.map((figure, i) => (
        <td key={versions[i]!.id} class={figure && isBest(figure.value) ? 'is-best' : ''}>
          {figure ? (
            <>
              <span class="compare-number">
                {numberText(toShown(figure.value, figure.quantity, system), figure.digits)}
              </span>
              {isBest(figure.value) &&
                (isTie ? <small> tied best</small> : <span class="visually-hidden"> best</span>)}
              {i > 0 && row[0] && shown(figure.value) !== shown(row[0].value) && (
                <small>
                  {' '}
                  {changeText(figure.value - row[0].value, figure.quantity, system, figure.digits)}
                </small>
              )}
              <span class={`compare-verdict is-${figure.verdict}`}>{figure.verdictWords}</span>
            </>
          ) : (
            '–'
          )}
        </td>
      ))}
    </tr>
  );
}

/** Years of the versions, asked for when the choice changes. */
function useAnswers(versions: readonly KeptVersion[]): readonly (NumberedAnswer | null)[] {
  const session = useSession();
  const [answers, setAnswers] = useState<ReadonlyMap<string, NumberedAnswer>>(new Map());
  useEffect(() => {
    let current = true;
    for (const { id, design } of versions) {
      void session.answerOf(design).then((answer) => {
        if (current && answer) setAnswers((known) => new Map(known).set(id, answer));
      });
    }
    return () => {
      current = false;
    };
  }, [versions]);
  return versions.map(({ id, design }) => {
    const answer = answers.get(id);
    return answer?.job.design === design ? answer : null;
  });
}

/** Names the version with the fewest hours too hot and what it costs in heat. */
function compareSentence(
  versions: readonly KeptVersion[],
  answers: readonly (NumberedAnswer | null)[],
  system: UnitSystem,
): string {
  const heat = (kWh: number) => quantityText(kWh, 'energy', system);
  const known = versions.flatMap((version, i) => {
    const outcome = answers[i]?.outcome;
    return outcome
      ? [{ name: version.name, hot: outcome.zones.house.tooHot, heat: outcome.heating.energyKWh }]
      : [];
  });
  if (known.length < versions.length) return 'Computing the years to compare…';
  const isAlike = known.every(
    ({ hot }) => hot.criterion === known[0]!.hot.criterion && hot.limitC === known[0]!.hot.limitC,
  );
  const unlike = isAlike ? '' : ' They are not judged by the same limit: see "Too hot means" in each.';
  const least = Math.min(...known.map(({ hot }) => hot.hours));
  const tied = known.filter(({ hot }) => hot.hours === least);
  const coolest = known.reduce((a, b) => (b.hot.hours < a.hot.hours ? b : a));
  const hottest = known.reduce((a, b) => (b.hot.hours > a.hot.hours ? b : a));
  if (coolest.hot.hours === hottest.hot.hours)
    return `All of them are too hot for the same number of hours.${unlike}`;
  if (tied.length > 1)
    return `${tied.map(({ name, heat: kWh }) => `"${name}" (${heat(kWh)} of back-up heat)`).join(' and ')} overheat least and alike, in ${least} hours against ${hottest.hot.hours} of "${hottest.name}".${unlike}`;
  return `"${coolest.name}" overheats least, in ${coolest.hot.hours} hours against ${hottest.hot.hours} of "${hottest.name}"; it needs ${heat(coolest.heat)} of back-up heat against ${heat(hottest.heat)}.${unlike}`;
}
