// Under the heading while weather is taken in: what is being read, and what the person has to say about a file.

import { useSession } from '../state/session-context.ts';
import { PlaceQuestion } from './PlaceQuestion.tsx';
import { TableQuestion } from './TableQuestion.tsx';

export function WeatherQuestions() {
  const { intake } = useSession();
  const reading = intake.reading.value;
  const question = intake.question.value;
  return (
    <>
      <div role="status">
        {reading && (
          <p class="reading">
            <progress value={reading.share} max={1} aria-label={`Reading ${reading.name}`} /> {reading.name}:{' '}
            {reading.words}…
          </p>
        )}
      </div>
      {question?.table === null && <PlaceQuestion key={question.id} question={question} />}
      {question?.table && <TableQuestion key={question.id} question={question} table={question.table} />}
    </>
  );
}
