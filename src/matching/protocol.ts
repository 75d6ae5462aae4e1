// The page for the people of a house that shall be measured: what to hang where, what to keep shut, what to write down, and
// what must not be done for a test's sake. Markdown, one page.

export const PROTOCOL = `# Two weeks with loggers

Your house will be run on a computer through these very days, to learn how it holds heat, lets in sun and leaks air. The more of this page is kept, the more can be told.

## Days
- Two weeks in winter; four are better. Note the first day and the last: ________ to ________
- Windows, vents and the door to a sunspace stay shut. Where that cannot be, write down each time, to the minute.

## Loggers
- One in each room, on an inner wall, at breast height, in the shade, away from stove, lamp and screen.
- One outdoors, in the shade and out of the rain.
- A reading every 10 to 30 minutes. Set all clocks by one watch, and leave them alone when summer time comes or goes.

## Diary
| day | stove lit from … to …, wood | opened: what, from … to … | who was away |
| --- | --- | --- | --- |
|  |  |  |  |
|  |  |  |  |
|  |  |  |  |

- One cold night without fire tells much, two days more: but only if nobody suffers by it and no pipe can freeze.

## Take care
- A stove, a gas fire or an open flue needs its air. Never stop up an air inlet for a test. Keep a carbon monoxide alarm beside it, and if it sounds go out and call for help.
- Where it grows damp, stuffy or too warm, air the room and write it down. No test is worth mould, or somebody’s health.
- In areas with radon do not keep rooms shut for weeks without asking your radiation authority’s advice.
`;
