// A year from twelve monthly normals, for a place without a weather file. What is typed is kept in this browser while
// it is unfinished; a refused number is marked in its cell.

import { useEffect, useRef, useState } from 'preact/hooks';
import type { FoundPlace } from '../../places/looked-up.ts';
import type { ExposureId } from '../../places/wind-exposure.ts';
import type { Fault } from '../../weather/read-result.ts';
import { NORMALS_ERROR, NORMALS_LIMITS, type NormalsKey } from '../../weather/synthetic/normals-limits.ts';
import { MONTH_NAMES, MONTH_SHORT } from '../parts/calendar-words.ts';
import { toShown, unitOf } from '../parts/display-unit.ts';
import { numberText } from '../parts/number-text.ts';
import { ScrollTable } from '../parts/ScrollTable.tsx';
import { useSession } from '../state/session-context.ts';
import { FaultList } from './FaultList.tsx';
import { keepDraft, keptDraft } from './kept-draft.ts';
import type { LookedUpPlace } from './looked-up-place.ts';
import {
  cellsOfFaults,
  draftColumns,
  draftOf,
  emptyDraft,
  inUnits,
  type NormalsDraft,
  normalsOf,
  QUANTITIES,
  withCell,
  withPaste,
  withWindOf,
  wrongCells,
} from './normals-draft.ts';
import { PlaceGround } from './PlaceGround.tsx';
import { SiteFields } from './SiteFields.tsx';

const HEADS: Readonly<Record<NormalsKey, string>> = {
  meanDailyHighC: 'mean daily high',
  meanDailyLowC: 'mean daily low',
  humidityPercent: 'humidity',
  sunshineHours: 'sunshine a day',
  dailyGlobalKWh: 'sun a day, level ground',
  windSpeed: 'wind at 10 m',
};

interface NormalsFormProps {
  /** a place whose normals fill the form when it is chosen */
  readonly looked: LookedUpPlace | null;
  readonly onExposure: (exposure: ExposureId | null) => void;
  /** it is filled behind its fold, since the place is stood in already */
  readonly staysFolded?: true;
}

export function NormalsForm({ looked, onExposure, staysFolded }: NormalsFormProps) {
  const { intake, workspace } = useSession();
  const system = workspace.units.value;
  const [typed, setTyped] = useState<NormalsDraft>(() => keptDraft(localStorage) ?? emptyDraft(system));
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const [asked, setAsked] = useState(false);
  const draft = inUnits(typed, system);
  useEffect(() => keepDraft(localStorage, typed), [typed]);
  const form = useRef<HTMLDetailsElement>(null);
  const filledFor = useRef<FoundPlace | null>(null);
  useEffect(() => {
    if (!looked) return;
    const { place, local } = looked;
    const filled = draftOf(local.normals, system);
    if (filledFor.current === place) {
      // only the wind was asked anew: what was corrected by hand stays
      setTyped((now) => withWindOf(inUnits(now, system), filled));
      return;
    }
    filledFor.current = place;
    setTyped(filled);
    setFaults([]);
    if (!form.current || staysFolded) return;
    form.current.open = true;
    form.current.scrollIntoView({ block: 'start' });
  }, [looked]);
  const change = (next: NormalsDraft) => {
    setTyped(next);
    setFaults([]);
  };
  const normals = normalsOf(draft);
  const wrong = wrongCells(draft);
  const isWrong = (key: NormalsKey, month: number) => {
    const inMaker = cellsOfFaults(faults).some((cell) => cell.key === key && cell.month === month);
    const isTyped = asked || draft.cells[key][month] !== '';
    return inMaker || (isTyped && wrong.some((cell) => cell.key === key && cell.month === month));
  };
  const make = async () => {
    setAsked(true);
    if (normals) setFaults(await intake.takeNormals(normals));
  };
  return (
    <details class="normals-form" ref={form}>
      <summary>
        <h3>No weather file? Make a year from twelve monthly normals</h3>
      </summary>
      <p>
        Normals are printed by weather services and in almanacs. Type them, or paste a column, a row of
        twelve, or several columns at once into a cell.
      </p>
      <p class="normals-error">
        A made year is no measured one: its monthly means are yours, its days and hours are made up.{' '}
        {NORMALS_ERROR} It knows no wind direction, no rain, for which vents are shut, no snow and no habit of
        the place such as morning fog.{' '}
        {draft.sunAs === 'sunshineHours' &&
          'Radiation out of sunshine hours is an estimate of its own, 10 % and more off at single places.'}
      </p>
      {looked && (
        <PlaceGround
          local={looked.local}
          exposure={looked.exposure}
          onExposure={onExposure}
          system={system}
        />
      )}
      <form
        onSubmit={(event) => {
          event.preventDefault();
          // a form around it is not sent off as well
          event.stopPropagation();
          void make();
        }}
      >
        <div class="question-fields">
          <SiteFields
            texts={draft.site}
            onChange={(site) => change({ ...draft, site })}
            system={system}
            needsElevation
          />
          <label>
            Sun given as
            <select
              data-normals="sun"
              value={draft.sunAs === 'sunshineHours' && draft.sunOfMonth ? 'sunshineOfMonth' : draft.sunAs}
              onChange={({ currentTarget: { value } }) =>
                change({
                  ...draft,
                  sunAs: value === 'dailyGlobalKWh' ? value : 'sunshineHours',
                  sunOfMonth: value === 'sunshineOfMonth',
                })
              }
            >
              <option value="sunshineHours">hours of bright sunshine a day</option>
              <option value="sunshineOfMonth">hours of bright sunshine in the month</option>
              <option value="dailyGlobalKWh">radiation on level ground a day</option>
            </select>
          </label>
        </div>
        <Cells draft={draft} isWrong={isWrong} onChange={change} />
        <FaultList faults={faults} />
        <p class="question-buttons">
          <button type="submit" disabled={intake.reading.value !== null}>
            Make the year
          </button>
          <button type="button" onClick={() => change(emptyDraft(system))}>
            Empty the form
          </button>
          {asked && !normals && <span role="alert">{missing(wrong.length)}</span>}
        </p>
      </form>
    </details>
  );
}

interface CellsProps {
  readonly draft: NormalsDraft;
  readonly isWrong: (key: NormalsKey, month: number) => boolean;
  readonly onChange: (draft: NormalsDraft) => void;
}

function Cells({ draft, isWrong, onChange }: CellsProps) {
  const keys = draftColumns(draft);
  return (
    <ScrollTable label="Monthly normals">
      <table class="normals-table">
        <thead>
          <tr>
            <td />
            {keys.map((key) => (
              <th key={key} scope="col">
                {key === 'sunshineHours' && draft.sunOfMonth ? 'sunshine in the month' : HEADS[key]}
                <small class="normals-limits">{limitsOf(key, draft)}</small>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {MONTH_NAMES.map((name, month) => (
            <tr key={name}>
              <th scope="row">{MONTH_SHORT[month]}</th>
              {keys.map((key) => (
                <td key={key}>
                  <input
                    type="text"
                    inputMode="decimal"
                    autocomplete="off"
                    aria-label={`${HEADS[key]}, ${name}`}
                    aria-invalid={isWrong(key, month)}
                    data-normal={`${key} ${month}`}
                    value={draft.cells[key][month]}
                    onInput={(event) => onChange(withCell(draft, key, month, event.currentTarget.value))}
                    onPaste={(event) => {
                      const text = event.clipboardData?.getData('text/plain') ?? '';
                      if (!/\S\s+\S|;/.test(text)) return;
                      event.preventDefault();
                      onChange(withPaste(draft, key, month, text));
                    }}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollTable>
  );
}

/** Hours of the longest month. */
const MONTH_HOURS = 744;

function limitsOf(key: NormalsKey, { system, sunOfMonth }: NormalsDraft): string {
  if (key === 'sunshineHours' && sunOfMonth) return `0 to ${MONTH_HOURS} h`;
  const { low, high } = NORMALS_LIMITS.find((limit) => limit.key === key)!;
  const quantity = QUANTITIES[key];
  const sign = key === 'humidityPercent' ? '%' : unitOf(quantity, system).sign;
  const shown = (value: number) => {
    const number = toShown(value, quantity, system);
    return numberText(number, Number.isInteger(number) ? 0 : 1);
  };
  return `${shown(low)} to ${shown(high)} ${sign}`;
}

function missing(wrong: number): string {
  if (wrong === 0)
    return 'It needs latitude, longitude and elevation, and what else is given of the place, within their limits.';
  return `${wrong} ${wrong === 1 ? 'cell has' : 'cells have'} no number within the limits; they are marked.`;
}
