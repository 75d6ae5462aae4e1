// The house as a client sees it first: drawn, judged in a sentence, with what helps most and the report; the versions one
// press away, and the workshop another. Nothing here changes the design but the choice of a version, which can be undone.

import '../style/client.css';
import { geometryOf } from '../../design/geometry.ts';
import { wordingOf } from '../../findings/wording.ts';
import { actsOf, actTitle } from '../../report/acts.ts';
import { verdictOf } from '../../report/verdict.ts';
import { headlineFigures } from '../figures/headline-figures.ts';
import { useFocusedHeading } from '../parts/focused-heading.ts';
import { quantityText } from '../parts/number-text.ts';
import { StillSection } from '../section/StillSection.tsx';
import { useSession } from '../state/session-context.ts';
import { helpOf } from '../why/pulled-levers.ts';
import { useRunFor } from '../why/run-for.ts';

const SHOWN = ['house-overheated', 'house-coldest', 'house-humid', 'heating'];

export function ClientView() {
  const { workspace, list } = useSession();
  const heading = useFocusedHeading();
  const design = workspace.design.value;
  const climate = workspace.climate.value;
  const system = workspace.units.value;
  const answer = workspace.answer.value?.job.design === design ? workspace.answer.value : null;
  const help = useRunFor(answer, climate.state === 'ready' ? climate.typical : null, helpOf);
  const words = wordingOf(system);
  const acts = typeof help === 'string' ? [] : actsOf(help, words);
  const latitudeDeg = climate.state === 'ready' ? climate.year.site.latitudeDeg : 40;
  const figures = answer
    ? headlineFigures(answer.outcome, design, system).filter(({ id }) => SHOWN.includes(id))
    : [];
  return (
    <main class="client-view" aria-busy={answer === null}>
      <div class="client-head">
        <div>
          <h1 ref={heading} tabIndex={-1}>
            {design.name}
          </h1>
          <p>
            {climate.state === 'ready' && `${climate.year.site.name}. `}
            {quantityText(design.house.floorAreaM2, 'area', system, 0)} of heated floor,{' '}
            {quantityText(geometryOf(design).glassM2, 'area', system, 0)} of glass to the sun.
          </p>
        </div>
        <p class="client-ways">
          <a class="button is-main" href="#report">
            Report
          </a>
          <a class="button" href="#sheet" data-client="workshop">
            Open the workshop
          </a>
        </p>
      </div>
      {list.versions.value.length > 0 && (
        <fieldset class="client-versions">
          <legend>Versions</legend>
          {list.versions.value.map((version) => (
            <button
              key={version.id}
              type="button"
              aria-pressed={JSON.stringify(version.design) === JSON.stringify(design)}
              onClick={() => workspace.replace(version.design)}
            >
              {version.name}
            </button>
          ))}
        </fieldset>
      )}
      <div class="client-house">
        <StillSection design={design} latitudeDeg={latitudeDeg} system={system} />
      </div>
      <p class="verdict-line" role="status">
        {answer ? verdictOf(answer.outcome, design, words) : 'Computing the year…'}
      </p>
      <ul class="client-figures">
        {figures.map((figure) => (
          <li key={figure.id} class={`is-${figure.verdict}`}>
            <b>{quantityText(figure.value, figure.quantity, system, figure.digits)}</b> {figure.label}
          </li>
        ))}
      </ul>
      <h2>What helps most</h2>
      {help === 'running' && <p>Trying what would help most…</p>}
      {help === 'failed' && <p>What would help could not be computed.</p>}
      {typeof help !== 'string' && acts.length === 0 && <p>Neither heat nor damp is worth a change.</p>}
      <ol class="acts" data-acts={acts.length}>
        {acts.map((act, i) => (
          <li key={act.id}>
            <p>
              <b>{actTitle(act, i)}</b>
              <span class="acts-brings">{act.brings}</span>
            </p>
          </li>
        ))}
      </ol>
      <p class="start-note">
        A typical year is not next year, and this is a computed house: your building code and the people
        licensed to design and build come first. The report holds the cautions for this design.
      </p>
    </main>
  );
}
