// The files of the design on the sheet: hourly numbers, months, outcome, design, and every picture as SVG or PNG. They
// are made of the answer on screen; while a newer one is being computed the buttons wait.

import { hourlyFile } from '../../outcomes/hourly-file.ts';
import { saveFile } from '../keeping/save-file.ts';
import { messageOf } from '../parts/message-of.ts';
import { pictureText } from '../pictures/picture-text.ts';
import { useSession } from '../state/session-context.ts';
import { monthsFile } from './months-file.ts';
import { pictureList, type TakenPicture } from './picture-list.ts';
import { pngOf } from './png-of.ts';

export function TakeList() {
  const { workspace, fileOf, toldNow, tell } = useSession();
  const answer = workspace.answer.value;
  const climate = workspace.climate.value;
  if (answer === null || workspace.stale.value || climate.state !== 'ready')
    return <p role="status">Computing the year…</p>;
  const { design } = answer.job;
  const file = fileOf(design);
  const stem = file.name.replace(/\.daystone\.json$/, design.hotter ? '-hotter-year' : '');
  const save = (ending: string, type: string, text: string) =>
    saveFile(`${stem}.${ending}`, new Blob([text], { type }));
  const files = [
    {
      title: 'Every hour of the year',
      says: 'Comma-separated, 8760 rows: weather, and for each zone temperatures, humidity, sun, heating, air and water. Each head ends in its unit (Rh is a share of 1, Ach air changes an hour); hours end at their stamp, in standard time.',
      button: 'CSV',
      take: () => save('hourly.csv', 'text/csv', hourlyFile({ year: climate.year }, answer.year)),
    },
    {
      title: 'Heat and water by month and cause',
      says: 'Comma-separated, in kWh and kg.',
      button: 'CSV',
      take: () => save('months.csv', 'text/csv', monthsFile(design.name, answer.year)),
    },
    {
      title: 'The outcome',
      says: 'Every figure and finding as one JSON object, each figure with its unit in its name.',
      button: 'JSON',
      take: () => save('outcome.json', 'application/json', `${JSON.stringify(answer.outcome, null, 2)}\n`),
    },
    {
      title: 'The design',
      says: 'All that was drawn; this page opens it again.',
      button: 'JSON',
      take: () => saveFile(file.name, new Blob([file.text], { type: 'application/json' })),
    },
  ];
  const pictures = pictureList({ answer, climate: climate.year, system: workspace.units.value }, toldNow());
  const savePicture = async ({ draw }: TakenPicture, kind: 'svg' | 'png') => {
    const picture = draw();
    if (kind === 'svg') return save(`${picture.id}.svg`, 'image/svg+xml', pictureText(picture));
    await pngOf(picture).then(
      (blob) => saveFile(`${stem}.${picture.id}.png`, blob),
      (reason) => tell('trouble', messageOf(reason)),
    );
  };
  return (
    <div class="take-list">
      <ul>
        {files.map(({ title, says, button, take }) => (
          <li key={title}>
            <span>
              {title}
              <small>{says}</small>
            </span>
            <button type="button" aria-label={`${title}: ${button}`} onClick={take}>
              {button}
            </button>
          </li>
        ))}
      </ul>
      <h3>Pictures</h3>
      <ul>
        {pictures.map((picture) => (
          <li key={picture.title}>
            <span>{picture.title}</span>
            {(['svg', 'png'] as const).map((kind) => (
              <button
                key={kind}
                type="button"
                aria-label={`${picture.title}: ${kind.toUpperCase()}`}
                onClick={() => void savePicture(picture, kind)}
              >
                {kind.toUpperCase()}
              </button>
            ))}
          </li>
        ))}
      </ul>
    </div>
  );
}
