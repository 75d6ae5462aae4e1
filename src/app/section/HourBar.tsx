// Under the section: the hour it shows, in words, with steps, the extremes of the year, and playing a day or a week.

import { useEffect, useState } from 'preact/hooks';
import { roomPlanOf } from '../../design/room-plan.ts';
import { judgedHouse } from '../../outcomes/judged-house.ts';
import { HOURS } from '../../weather/typical-year.ts';
import { ColourKey } from '../parts/ColourKey.tsx';
import { hourText } from '../parts/calendar-words.ts';
import { comfortScale } from '../parts/colour-scale.ts';
import { quantityText } from '../parts/number-text.ts';
import { onScreen } from '../parts/screen-scale.ts';
import { useWorkspace } from '../state/session-context.ts';
import type { HourState } from './hour-state.ts';

const FRAME_MS = 110;
const CALM_FRAME_MS = 450;
const DAYS = 365;
/** of the first of January, where the sliders stand before an hour is chosen */
const NOON = 12;
/** end of the key of colours [°C] */
const HOT_END_C = 40;

export function HourBar({ state }: { state: HourState | null }) {
  const workspace = useWorkspace();
  const { hour } = workspace;
  const answer = workspace.answer.value;
  const { underheatC } = workspace.design.value.comfort;
  const [end, setEnd] = useState<number | null>(null);

  useEffect(() => {
    if (end === null) return;
    const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
    const timer = setInterval(
      () => {
        const now = hour.value ?? 0;
        if (now + 1 >= end) setEnd(null);
        hour.value = Math.min(HOURS - 1, now + 1);
      },
      calm ? CALM_FRAME_MS : FRAME_MS,
    );
    return () => clearInterval(timer);
  }, [end]);

  if (!answer) return null;
  const house = judgedHouse(answer.outcome);
  const { lowestLimitC } = house.tooHot;
  const names = new Map(roomPlanOf(answer.job.design)?.rooms.map(({ id, room }) => [id, room.name]));
  const play = (days: number) => {
    const from = Math.min(HOURS - days * 24, Math.floor((hour.value ?? house.coldestHour) / 24) * 24);
    hour.value = from;
    setEnd(from + days * 24);
  };
  const show = (at: number | null) => {
    setEnd(null);
    hour.value = at;
  };
  return (
    <div class="hour-bar">
      <p class="hour-words" aria-live={end === null ? 'polite' : 'off'}>
        {state
          ? hourSentence(state, names, workspace.units.value)
          : 'Noon sun at the solstices and the equinox.'}
      </p>
      <div class="hour-scrub">
        <label>
          <span>day</span>
          <input
            type="range"
            data-scrub="day"
            min={0}
            max={DAYS - 1}
            value={Math.floor((hour.value ?? NOON) / 24)}
            aria-valuetext={hour.value === null ? 'no hour chosen' : hourText(hour.value)}
            onInput={(event) => show(Number(event.currentTarget.value) * 24 + ((hour.value ?? NOON) % 24))}
          />
        </label>
        <label>
          <span>hour</span>
          <input
            type="range"
            data-scrub="hour"
            min={0}
            max={23}
            value={(hour.value ?? NOON) % 24}
            aria-valuetext={hour.value === null ? 'no hour chosen' : hourText(hour.value)}
            onInput={(event) =>
              show(Math.floor((hour.value ?? NOON) / 24) * 24 + Number(event.currentTarget.value))
            }
          />
        </label>
      </div>
      {state && (
        <ColourKey
          scale={onScreen(comfortScale(underheatC, lowestLimitC))}
          ticks={[0, underheatC, lowestLimitC, HOT_END_C]}
          quantity="temperature"
          digits={0}
          system={workspace.units.value}
        />
      )}
      <div class="hour-tools">
        <button type="button" onClick={() => show(house.hottestHour)}>
          Hottest hour
        </button>
        <button type="button" onClick={() => show(house.coldestHour)}>
          Coldest hour
        </button>
        {end === null ? (
          <>
            <button type="button" onClick={() => play(1)}>
              Play the day
            </button>
            <button type="button" onClick={() => play(7)}>
              Play the week
            </button>
          </>
        ) : (
          <button type="button" onClick={() => setEnd(null)}>
            Stop
          </button>
        )}
        {state && (
          <button type="button" onClick={() => show(null)}>
            Plain drawing
          </button>
        )}
      </div>
    </div>
  );
}

/** The hour in one sentence, the rooms of a divided house each by its name. */
function hourSentence(
  state: HourState,
  names: ReadonlyMap<string, string>,
  system: ReturnType<typeof useWorkspace>['units']['value'],
): string {
  const t = (celsius: number) => quantityText(celsius, 'temperature', system);
  const zone = (id: string) => state.zones.find((entry) => entry.id === id);
  const house = zone('house')!;
  const sunspace = zone('sunspace');
  const sun =
    state.sunElevationDeg <= 0
      ? 'the sun is down'
      : `the sun stands ${Math.round(state.sunElevationDeg)}° high, ${quantityText(state.globalHorizontal, 'irradiance', system)} on the level`;
  const dew = sunspace ?? house;
  const parts = [
    `${hourText(state.hour)}: ${sun}`,
    `outdoors ${t(state.outdoorC)}`,
    ...(names.size === 0
      ? [`rooms ${t(house.operativeC)}`]
      : [...names].map(([id, name]) => `${name} ${t(zone(id)!.operativeC)}`)),
    ...(sunspace ? [`sunspace ${t(sunspace.operativeC)}`] : []),
    ...(house.heatingW > 1 ? [`back-up heat ${quantityText(house.heatingW / 1000, 'powerKW', system)}`] : []),
    ...(dew.condensationG > 0.5
      ? [
          `water forming on the glass, ${quantityText(dew.condensationG / 1000, 'waterMass', system, 2)} in the hour`,
        ]
      : []),
  ];
  return `${parts.join('; ')}.`;
}
