// One year of a divided house with its doors shut: what is told of each room, of the worst, and of the house as a whole.
import { expect, test } from 'vitest';
import { hourlyFile, runYear } from '../../src/daystone.ts';
import { wordingOf } from '../../src/findings/wording.ts';
import { heatByMonth, moistureByMonth, withRoomsApart } from '../../src/outcomes/balances.ts';
import { judgedHouse } from '../../src/outcomes/judged-house.ts';
import { figuresOf } from '../../src/questions/figures.ts';
import { verdictOf } from '../../src/report/verdict.ts';
import { fourRooms } from '../design/divided.ts';
import { bundledYear } from '../weather/bundled-climates.ts';

const design = fourRooms({ door: 'shut' });
const { year, outcome, climate } = runYear(design, bundledYear('denver'));
const rooms = outcome.rooms!;
const coldest = rooms.reduce((worst, room) =>
  room.lived.underheatedHours > worst.lived.underheatedHours ? room : worst,
);
const byName = (name: string) => rooms.find((room) => room.name === name)!;

test('the year holds the rooms, and the house as all of them together', () => {
  expect(year.zones.map(({ id }) => id)).toEqual(['house', 'sunspace']);
  expect(year.rooms!.map(({ id }) => id)).toEqual(['room-1', 'room-2', 'room-3', 'room-4']);
  const [house] = year.zones;
  const floors = rooms.map(({ floorAreaM2 }) => floorAreaM2);
  for (const hour of [0, 1234, 8759]) {
    const mean = year.rooms!.reduce((sum, { airC }, i) => sum + airC[hour]! * floors[i]!, 0) / 110;
    expect(house!.airC[hour]).toBeCloseTo(mean, 9);
    expect(house!.heatingW[hour]).toBeCloseTo(
      year.rooms!.reduce((sum, { heatingW }) => sum + heatingW[hour]!, 0),
      6,
    );
  }
  const heatOf = (zone: string, cause: string) =>
    [...year.heat, ...year.roomHeat!]
      .filter((row) => row.zone === zone && row.cause === cause)
      .flatMap(({ monthJ }) => monthJ)
      .reduce((sum, joule) => sum + joule, 0);
  const sun = year.rooms!.reduce((sum, { id }) => sum + heatOf(id, 'sun'), 0);
  expect(heatOf('house', 'sun') / sun).toBeCloseTo(1, 12);
});

test('the worst room is named by every measure, and the house is never better than it', () => {
  const worst = outcome.worst!;
  for (const { room } of Object.values(worst)) expect(rooms.map(({ id }) => id)).toContain(room);
  // Rooms shut off from the stove: never the living room. Steam and no fan: the kitchen.
  expect(worst.underheated).toEqual({ room: coldest.id, value: coldest.lived.underheatedHours });
  expect(coldest.name).not.toBe('Living room');
  expect(byName('Living room').lived.underheatedHours).toBe(0);
  expect(worst.humid.room).toBe(byName('Kitchen').id);
  const judged = judgedHouse(outcome);
  expect(judged.underheatedHours).toBe(worst.underheated.value);
  // Rooms count in the hours they are lived in, the mean in all: hours do not compare, temperatures do.
  expect(judged.minOperativeC).toBeLessThan(outcome.zones.house.minOperativeC);
  expect(judged.maxOperativeC).toBeGreaterThan(outcome.zones.house.maxOperativeC);
  expect(figuresOf(outcome).humidHours).toBe(worst.humid.value);
  expect(outcome.zones.house.mouldIndexMax).toBe(worst.mould.value);
});

test('bedrooms count by night and others by day', () => {
  expect(byName('Kitchen').lived.hoursPerDay).toBe(15);
  expect(byName('Back bedroom').lived.hoursPerDay).toBe(9);
  const { operativeC } = year.rooms![3]!;
  let night = 0;
  operativeC.forEach((value, hour) => {
    const ofDay = hour % 24;
    if ((ofDay >= 22 || ofDay < 7) && value < design.comfort.underheatC) night++;
  });
  expect(byName('Back bedroom').lived.underheatedHours).toBe(night);
});

test('findings, verdict and hourly file speak of the room', () => {
  const cold = outcome.findings.find(({ id }) => id === 'too-cold')!;
  expect(cold.text).toContain(`The room "${coldest.name}" is below`);
  expect(cold.figures).toMatchObject({ room: coldest.name, heated: 'no' });
  expect(outcome.findings.find(({ id }) => id === 'too-damp')!.text).toContain(
    'The air in the room "Kitchen"',
  );
  expect(verdictOf(outcome, design, wordingOf('metric'))).toContain(`too cold in "${coldest.name}"`);
  const [head = ''] = hourlyFile(climate, year).split('\n', 1);
  const columns = head.split(',');
  // Old columns stay where they were.
  expect(columns.indexOf('houseAirC')).toBe(6);
  expect(columns.indexOf('room-1AirC')).toBeGreaterThan(columns.indexOf('sunspaceAirWaterGPerH'));
});

test('each room counts the moves of its own windows, and the house those of all', () => {
  for (const { id, windowMoves } of rooms)
    expect(windowMoves).toBe(year.openings.find((opening) => opening.id === `${id} windows`)!.moves);
  const own = rooms.reduce((sum, { windowMoves }) => sum + windowMoves, 0);
  expect(own).toBeGreaterThan(0);
  expect(outcome.vents.moves).toBeGreaterThanOrEqual(own);
});

test('the books of the rooms, read apart, add up to those of the house', () => {
  const apart = withRoomsApart(year);
  const sum = (rows: readonly { zone: string; cause: string; year: number }[], cause: string, of: RegExp) =>
    rows.filter((row) => row.cause === cause && of.test(row.zone)).reduce((all, row) => all + row.year, 0);
  for (const rows of [heatByMonth(apart), moistureByMonth(apart)])
    for (const { cause } of rows.filter(({ zone }) => zone === 'house'))
      expect(sum(rows, cause, /^room-/)).toBeCloseTo(sum(rows, cause, /^house$/), 6);
});
