// A weather file that does not say where it is: asks for the place, then reads it.

import { useState } from 'preact/hooks';
import type { WeatherQuestion } from '../state/climate-intake.ts';
import { useSession } from '../state/session-context.ts';
import { useArrival } from './arrival.ts';
import { FaultList } from './FaultList.tsx';
import { SiteFields, siteHints, siteTexts } from './SiteFields.tsx';

export function PlaceQuestion({ question }: { question: WeatherQuestion }) {
  const { intake, workspace } = useSession();
  const system = workspace.units.value;
  const [texts, setTexts] = useState(() => siteTexts(null, system));
  const title = useArrival<HTMLParagraphElement>();
  const hints = siteHints(texts, system);
  return (
    <form
      class="place-question"
      aria-labelledby="place-question-title"
      onSubmit={(event) => {
        event.preventDefault();
        if (hints) void intake.answer(hints, {});
      }}
    >
      <p id="place-question-title" ref={title} tabIndex={-1}>
        {question.name} holds weather but does not say where it is from.
      </p>
      <SiteFields texts={texts} onChange={setTexts} system={system} />
      <FaultList faults={question.faults} />
      <button type="submit" disabled={!hints || intake.reading.value !== null}>
        Read the file
      </button>
      <button type="button" onClick={() => intake.leave()}>
        Leave it
      </button>
    </form>
  );
}
