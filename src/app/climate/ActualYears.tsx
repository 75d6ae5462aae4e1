// The design in the actual years of its place whose files are kept in this browser: a line a year, and in how many of them
// it stays within what is too hot.

import { useEffect, useId, useState } from 'preact/hooks';
import type { Design } from '../../design/design.ts';
import { withChoiceKept } from '../../design/too-hot-criterion.ts';
import { wordingOf } from '../../findings/wording.ts';
import { distanceKm } from '../../places/earth.ts';
import { actualYearsInWords, type InYear } from '../../questions/actual-years.ts';
import { figuresOf } from '../../questions/figures.ts';
import { actualYearOf } from '../../weather/actual-year.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { type KeptClimate, keptClimates } from '../keeping/own-climates.ts';
import { messageOf } from '../parts/message-of.ts';
import { numberText, quantityText } from '../parts/number-text.ts';
import { ScrollTable } from '../parts/ScrollTable.tsx';
import { useSession } from '../state/session-context.ts';

/** Farther off than this it is another place [km]. House rule. */
const SAME_PLACE_KM = 50;

interface Ran {
  readonly of: Design;
  readonly years: readonly InYear[];
  readonly wanted: number;
}

export function ActualYears() {
  const { workspace, answerOf, tell } = useSession();
  const climate = workspace.climate.value;
  const design = workspace.design.value;
  const system = workspace.units.value;
  const kept = useActualYears(climate.key, climate.state === 'ready' ? climate.typical : null);
  const [ran, setRan] = useState<Ran | null>(null);
  const id = useId();
  const run = async () => {
    const judged = withChoiceKept(design);
    const years: InYear[] = [];
    const show = () => setRan({ of: design, years: [...years], wanted: kept.length });
    show();
    try {
      for (const { key, actualYear } of kept) {
        const answer = await answerOf({ ...judged, climate: key });
        if (answer) years.push({ year: String(actualYear), figures: figuresOf(answer.outcome) });
        show();
      }
    } catch (reason) {
      setRan(null);
      tell('trouble', messageOf(reason));
    }
  };
  const isWhole = ran !== null && ran.years.length === ran.wanted;
  return (
    <section aria-labelledby={`${id}-title`} data-actual-years={kept.length}>
      <h3 id={`${id}-title`}>In actual years</h3>
      <p>
        {kept.length === 0
          ? 'Open files of actual years of this place, several at once, and the design can be run in each.'
          : `Actual years of this place kept here: ${kept.map(({ actualYear }) => actualYear).join(', ')}.`}
      </p>
      {kept.length > 0 && (
        <p>
          <button
            type="button"
            data-act="actual-years"
            disabled={ran !== null && !isWhole}
            onClick={() => void run()}
          >
            Run the design in {kept.length === 1 ? 'it' : `all ${kept.length}`}
          </button>
        </p>
      )}
      {ran !== null && (
        <>
          {ran.of !== design && <p class="ask-old">Of an earlier state of the design. Run it again.</p>}
          <p role="status" class="chart-sentence">
            {isWhole
              ? actualYearsInWords(ran.years, wordingOf(system))
              : `${ran.years.length} of ${ran.wanted} years run`}
          </p>
          <ScrollTable label="The design in actual years">
            <table>
              <thead>
                <tr>
                  {['year', 'hours too hot', 'allowed', 'humid hours', 'back-up heat'].map((head) => (
                    <th key={head} scope="col">
                      {head}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {ran.years.map(({ year, figures }) => (
                  <tr key={year}>
                    <th scope="row">{year}</th>
                    <td>{numberText(figures.tooHotHours, 0)}</td>
                    <td>{numberText(figures.tooHotLimitHours, 0)}</td>
                    <td>{numberText(figures.humidHours, 0)}</td>
                    <td>{quantityText(figures.heatingKWh, 'energy', system)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </ScrollTable>
        </>
      )}
    </section>
  );
}

/** Files of actual years kept here that are of the place the design stands in, by year. */
function useActualYears(key: string, year: TypicalYear | null): readonly KeptClimate[] {
  const [kept, setKept] = useState<readonly KeptClimate[]>([]);
  useEffect(() => {
    if (year === null) return;
    let current = true;
    void keptClimates().then((all) => {
      if (!current) return;
      // The one just opened may not be in the browser's store yet.
      const own = { key, site: year.site, actualYear: actualYearOf(year) };
      const here = [...all.filter((one) => one.key !== key), own].filter(
        ({ actualYear, site }) => actualYear !== null && distanceKm(site, year.site) <= SAME_PLACE_KM,
      );
      setKept(here.toSorted((one, other) => one.actualYear! - other.actualYear!));
    });
    return () => {
      current = false;
    };
  }, [key, year]);
  return kept;
}
