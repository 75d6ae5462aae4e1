// The question of the worst room on outcomes made by hand: it finds the rooms, tries what could help each, and names the best.
import { expect, test } from 'vitest';
import { USUAL_STOVE } from '../../src/design/heat-source.ts';
import type { RoomOutcome } from '../../src/outcomes/outcome.ts';
import { worstRooms } from '../../src/outcomes/room-outcomes.ts';
import { ask } from '../../src/questions/ask.ts';
import type { RunJob, RunResult } from '../../src/questions/run-job.ts';
import { whichRoom } from '../../src/questions/which-room.ts';
import { example, fourRooms } from '../design/divided.ts';
import { madeBasis, madeResult, plausible, runnerOf } from './made-runner.ts';

/** Cold grows with every door shut, a fan takes off half, a wide opening more; damp falls with the extract fan alone. */
function resultOf(job: RunJob): RunResult {
  const made = madeResult(job, plausible);
  const { house } = made.outcome.zones;
  const { rooms, vents } = job.design;
  if (rooms === undefined) return made;
  const outcomes = rooms.list.map(({ name, use, door, heated, fanM3H = 0 }, i): RoomOutcome => {
    const cold = heated ? 0 : door === 'shut' ? 2000 : door === 'wide' ? 100 : 800;
    return {
      ...house,
      id: `room-${i + 1}`,
      name,
      use,
      floorAreaM2: 27,
      tooHot: { ...house.tooHot, hours: 10 },
      humidHours: use === 'kitchen' ? (vents.extractAch > 0 ? 50 : 5000) : 0,
      mouldIndexMax: 0,
      windowMoves: 0,
      lived: {
        hoursPerDay: use === 'bedroom' ? 9 : 15,
        overheatedHours: 0,
        underheatedHours: (fanM3H > 0 ? 0.5 : 1) * cold + (name === 'Back bedroom' ? 5 : 0),
      },
    };
  });
  return { ...made, outcome: { ...made.outcome, rooms: outcomes, worst: worstRooms(outcomes) } };
}

const runner = () => runnerOf(resultOf);

test('names the coldest and the dampest room and what helps each most', async () => {
  const { finding, tables } = await ask(whichRoom, madeBasis(fourRooms({ door: 'shut' })), runner());
  expect(finding!.text).toContain('The coldest room is "Back bedroom": too cold for 2005 hours a year.');
  expect(finding!.text).toContain('A heater in it too leaves 5.');
  expect(finding!.text).toContain('The dampest room is "Kitchen"');
  expect(finding!.text).toContain('An extract fan in kitchen and bath, 0.4 air changes an hour leaves 50.');
  expect(finding!.figures).toMatchObject({ coldHours: 2005, coldHelpHours: 5, dampHours: 5000 });
  expect(tables.map(({ id }) => id)).toEqual(['rooms', 'helps', 'changes']);
});

test('nobody is told to light a stove where people sleep', async () => {
  const made = runner();
  const stove = { ...fourRooms({ door: 'shut' }) };
  const design = { ...stove, heating: { ...stove.heating, capacityKW: 6, source: USUAL_STOVE } };
  const { finding } = await ask(whichRoom, madeBasis(design), made);
  expect(finding!.text).toContain('The coldest room is "Back bedroom"');
  expect(made.ran.filter(({ at }) => /stove|heater/.test(String(at.change)) && at.room === 'room-4')).toEqual(
    [],
  );
  expect(made.ran.some(({ at }) => at.change === 'the stove in it' && at.room === 'room-2')).toBe(true);
  // Nor to sleep without a door.
  const wide = made.ran.filter(({ at }) => /wide opening/.test(String(at.change)));
  expect(wide.map(({ at }) => at.room)).toEqual(['room-2']);
});

test('a change that costs more than it helps is not told, and hours that are allowed are no trouble', async () => {
  // An extract fan takes the damp of the kitchen off, and here asks for forty thousand kilowatt hours.
  const dear = runnerOf((job) => {
    const result = resultOf(job);
    const energyKWh = job.design.vents.extractAch > 0 ? 50_000 : 1000;
    const { outcome } = result;
    return { ...result, outcome: { ...outcome, heating: { ...outcome.heating, energyKWh } } };
  });
  const { finding } = await ask(whichRoom, madeBasis(fourRooms({ door: 'wide' })), dear);
  expect(finding!.text).toContain(
    'too damp for 5000 hours a year. What helps it costs as much in other hours',
  );
  expect(finding!.text).not.toContain('hottest');
});

test('a house of one room is divided for the answer, and that is said', async () => {
  const made = runner();
  const { finding, notes } = await ask(whichRoom, madeBasis(example('modest')), made);
  expect(made.ran[0]!.design.rooms?.list).toHaveLength(2);
  expect(finding!.text).toMatch(/was divided for this answer\.$/);
  expect(notes.at(-1)).toContain('drawn as one room');
});
