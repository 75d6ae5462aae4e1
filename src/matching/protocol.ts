// The page for the people of a house that shall be measured: what to hang where, what to keep shut, what to write down, and
// what must not be done for a test's sake. One page, as parts and as Markdown.

export interface ProtocolPart {
  readonly title: string;
  readonly points: readonly string[];
}

export const PROTOCOL_TITLE = 'Two weeks with loggers';
export const PROTOCOL_SAYS =
  'Your house will be run on a computer through these very days, to learn how it holds heat, lets in sun and leaks air. The more of this page is kept, the more can be told.';

export const BEFORE_DIARY: readonly ProtocolPart[] = [
  {
    title: 'Days',
    points: [
      'Two weeks in winter; four are better. Note the first day and the last: ________ to ________',
      'Windows, vents and the door to a sunspace stay shut. Where that cannot be, write down each time, to the minute.',
    ],
  },
  {
    title: 'Loggers',
    points: [
      'One in each room, best of a kind that writes humidity too, which tells leaks: on an inner wall, at breast height, in the shade, away from stove, lamp and screen.',
      'One outdoors, in the shade and out of the rain.',
      'A reading every 10 to 30 minutes. Set all clocks by one watch, and leave them alone when summer time comes or goes.',
    ],
  },
];

export const DIARY_TITLE = 'Diary';
export const DIARY_COLUMNS: readonly string[] = [
  'day',
  'stove lit from … to …, wood in kg',
  'opened: what, from … to …',
  'who was away',
];
export const DIARY_POINT =
  'One cold night without fire tells much, two days more: but only if nobody suffers by it and no pipe can freeze.';

/** What can hurt; told wherever somebody is asked to keep a house shut. */
export const TAKE_CARE: ProtocolPart = {
  title: 'Take care',
  points: [
    'A stove, a gas fire or an open flue needs its air. Never stop up an air inlet for a test. Keep a carbon monoxide alarm beside it, and if it sounds go out and call for help.',
    'Where it grows damp, stuffy or too warm, air the room and write it down. No test is worth mould, or somebody’s health.',
    'In areas with radon do not keep rooms shut for weeks without asking your radiation authority’s advice.',
  ],
};

const asText = ({ title, points }: ProtocolPart) =>
  `## ${title}\n${points.map((point) => `- ${point}`).join('\n')}`;
const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
const blank = `|${'  |'.repeat(DIARY_COLUMNS.length)}`;

/** All of it as Markdown. */
export const PROTOCOL = `${[
  `# ${PROTOCOL_TITLE}`,
  PROTOCOL_SAYS,
  ...BEFORE_DIARY.map(asText),
  `## ${DIARY_TITLE}\n${[row(DIARY_COLUMNS), row(DIARY_COLUMNS.map(() => '---')), blank, blank, blank].join('\n')}`,
  `- ${DIARY_POINT}`,
  asText(TAKE_CARE),
].join('\n\n')}\n`;
