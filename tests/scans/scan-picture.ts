// A knob's scans as one small picture: a panel a house and place, a line a habit, heat upwards. Scans in, SVG text out.
import { HABITS, type Knob, PLACES, type Scan, type ScanPoint } from './scan.ts';

export interface RunScan {
  readonly scan: Scan;
  readonly points: readonly ScanPoint[];
}

const PANEL = { width: 190, height: 110, gap: 14, left: 14, top: 40 };
/** A line is told by its dashes as well as its colour. */
const LINES = [
  { colour: '#1b1b1b', dash: '' },
  { colour: '#1f6f8b', dash: '6 3' },
  { colour: '#a4541c', dash: '2 3' },
  { colour: '#6b5b95', dash: '8 3 2 3' },
] as const;
const INK = '#333';

/** The picture of all scans of a knob. */
export function scanPicture(knob: Knob, scans: readonly RunScan[]): string {
  const houses = [...new Set(scans.map(({ scan }) => scan.house))];
  const columns = PLACES.length;
  const width = 2 * PANEL.left + columns * (PANEL.width + PANEL.gap) - PANEL.gap;
  const height = PANEL.top + houses.length * (PANEL.height + PANEL.gap + 14) + 26;
  const panels = houses.flatMap((house, row) =>
    PLACES.map((place, column) => {
      const x = PANEL.left + column * (PANEL.width + PANEL.gap);
      const y = PANEL.top + row * (PANEL.height + PANEL.gap + 14);
      const of = scans.filter(({ scan }) => scan.house === house && scan.place === place);
      return `<g transform="translate(${x} ${y})">${panel(`${house}, ${place}`, of)}</g>`;
    }),
  );
  const legend = (knob.habits ?? HABITS).map((habit, n) => {
    const x = PANEL.left + n * 130;
    return `${stroke(`M${x} 26h26`, HABITS.indexOf(habit))}<text x="${x + 32}" y="30">${habit}</text>`;
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="sans-serif" font-size="11" fill="${INK}">`,
    `<title>Heat of the year along: ${knob.words}</title>`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    `<text x="${PANEL.left}" y="14">Heat of the year, kWh, along: ${knob.words} (${knob.from} to ${knob.to} by ${knob.step})</text>`,
    ...legend,
    ...panels,
    '</svg>',
    '',
  ].join('\n');
}

function panel(title: string, scans: readonly RunScan[]): string {
  const heats = scans.flatMap(({ points }) => points.map(({ heatKWh }) => heatKWh));
  const [least, most] = [Math.min(...heats), Math.max(...heats)];
  const span = Math.max(most - least, 1);
  const lines = scans.map(({ scan, points }) => {
    const at = points.map(({ heatKWh }, n) => {
      const x = (PANEL.width * n) / (points.length - 1);
      const y = PANEL.height - (PANEL.height * (heatKWh - least)) / span;
      return `${x.toFixed(1)} ${y.toFixed(1)}`;
    });
    return stroke(`M${at.join('L')}`, HABITS.indexOf(scan.habit));
  });
  return [
    `<rect width="${PANEL.width}" height="${PANEL.height}" fill="none" stroke="#bbb"/>`,
    ...lines,
    `<text x="0" y="${PANEL.height + 13}">${title}: ${least.toFixed(0)} to ${most.toFixed(0)} kWh</text>`,
  ].join('');
}

function stroke(path: string, n: number): string {
  const { colour, dash } = LINES[n]!;
  return `<path d="${path}" fill="none" stroke="${colour}" stroke-width="1.3" stroke-dasharray="${dash}"/>`;
}
