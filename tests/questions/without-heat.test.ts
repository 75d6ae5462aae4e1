// Houses without heat: the coldest days found, and what a house does in them when heat or power fails; the smallest stove that
// does, and the first that is too big, by outcomes known beforehand.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { USUAL_STOVE } from '../../src/design/heat-source.ts';
import { modelOf } from '../../src/model/from-design.ts';
import type { Year } from '../../src/network/year.ts';
import { shortHoursOf } from '../../src/outcomes/short-hours.ts';
import { ask } from '../../src/questions/ask.ts';
import { coldestRow, coldSpellOf } from '../../src/questions/cold-spell.ts';
import { doWithout } from '../../src/questions/do-without.ts';
import { howBigAStove } from '../../src/questions/how-big-a-stove.ts';
import { unknownsOf } from '../../src/questions/what-nobody-knows.ts';
import type { PreparedClimate } from '../../src/weather/prepared/prepared-climate.ts';
import { bundledClimate } from '../weather/bundled-climates.ts';
import { madeBasis, madeResult, madeRunner, mainJobs, plausible, runnerOf } from './made-runner.ts';

const [, , MODEST, DIVIDED] = EXAMPLES.map(({ design }) => design) as [Design, Design, Design, Design];
const [climate, grey] = ['denver', 'quillayute'].map((id) => bundledClimate(id)) as [
  PreparedClimate,
  PreparedClimate,
];
const heatedBy = (design: Design, source: NonNullable<Design['heating']['source']>): Design => ({
  ...design,
  heating: { ...design.heating, capacityKW: 3, source },
});

test('the coldest three days are found, over new year too', () => {
  const year = (coldDays: readonly number[]) =>
    Float64Array.from({ length: 8760 }, (_, hour) => (coldDays.includes(Math.floor(hour / 24)) ? -10 : 5));
  expect(coldestRow(year([40, 41, 42]))).toBe(40 * 24);
  expect(coldestRow(year([364, 0, 1]))).toBe(364 * 24);
  // Two cold days alone make as cold a mean from one day before them on.
  expect(coldestRow(year([100, 101]))).toBe(99 * 24);
});

test('a heavy house stays warm for longer than a light one, and a power cut is the colder where heat needs power', () => {
  const light: Design = {
    ...MODEST,
    mass: { ...MODEST.mass, areaM2: 0 },
    floor: { ...MODEST.floor, cover: 'carpet' },
  };
  const heavy: Design = { ...MODEST, mass: { ...MODEST.mass, areaM2: 80 } };
  const [one, other] = [coldSpellOf(light, climate), coldSpellOf(heavy, climate)];
  expect(other.noHeat.nextMorningC).toBeGreaterThan(one.noHeat.nextMorningC + 0.5);
  expect(other.noHeat.warmHours ?? 999).toBeGreaterThan(one.noHeat.warmHours!);
  for (const spell of [one, other]) {
    expect(spell.noPower.lowestC).toBeLessThan(spell.noHeat.lowestC);
    expect(spell.noHeat.lowestC).toBeLessThanOrEqual(spell.noHeat.nextMorningC);
    expect(spell.noHeat.lowestC).toBeGreaterThan(spell.outdoorLowestC);
  }
});

test('a stove warms a house through a power cut, and what a masonry heater holds softens the morning nobody lit it', () => {
  // On a grey coast: after a sunny day nobody has fired the masonry heater that morning.
  const light = coldSpellOf(heatedBy(MODEST, USUAL_STOVE), grey);
  const masonry = coldSpellOf(heatedBy(MODEST, { ...USUAL_STOVE, stove: 'masonry' }), grey);
  expect(light.noPower.lowestC).toBeGreaterThan(light.noHeat.lowestC + 1);
  expect(masonry.noHeat.nextMorningC).toBeGreaterThan(light.noHeat.nextMorningC + 0.5);
});

test('of a divided house the coldest room counts', () => {
  const spell = coldSpellOf(DIVIDED, climate);
  const whole = coldSpellOf({ ...DIVIDED, rooms: undefined as never, version: 1 }, climate);
  expect(spell.noHeat.nextMorningC).toBeLessThan(whole.noHeat.nextMorningC);
});

test('the smallest stove that does is found, of the kind drawn and of the other', async () => {
  // 1000/(1 + kW²) hours short: 100 at 3 kW, 75 at 3.5 kW.
  const answer = await ask(howBigAStove, madeBasis(heatedBy(MODEST, USUAL_STOVE)), madeRunner(plausible));
  expect(answer.finding!.figures).toMatchObject({ kW: 3.5, shortHours: 75, otherKW: 3.5, woodKg: 310 });
  expect(answer.tables.map(({ advised }) => advised)).toEqual(['steel, 3.5 kW', 'masonry, 3.5 kW']);
  expect(answer.notes.join(' ')).not.toMatch(/No stove is drawn/);
  const none = await ask(howBigAStove, madeBasis(MODEST), madeRunner(plausible));
  expect(none.notes[0]).toMatch(/^No stove is drawn/);
  expect(none.tables.map(({ id }) => id)).toEqual(['sizes-steel', 'sizes-masonry']);
});

test('hours fall short where somebody is up and there; of weekends away none do', () => {
  const cold = { zones: [{ id: 'house', airC: new Float64Array(8760).fill(15) }] } as unknown as Year;
  const houseOf = (people: object) => {
    const stove = heatedBy(MODEST, USUAL_STOVE);
    return modelOf({ ...stove, people: { ...stove.people, ...people } }, climate.year.site, climate.ground);
  };
  // 13 hours a day; a year is 52 weeks and a day, which may be of a weekend.
  expect(shortHoursOf(houseOf({}), cold, climate.calendar)).toBe(365 * 13);
  const away = shortHoursOf(houseOf({ awayWeekends: true }), cold, climate.calendar)! / 13;
  expect([260, 261]).toContain(away);
});

test('the smallest stove is tried over what nobody can know, size by size until one does, or no longer does', async () => {
  const design = heatedBy(MODEST, USUAL_STOVE);
  // Twice as leaky asks for twice the heat: 1000/(1 + (kW/2)²) hours short, so 6.2 kW and more. Half of it is done by 1.6 kW,
  // and the smallest made is 3 kW.
  const runner = madeRunner((one, job) => ({
    ...plausible(one, job),
    heatTimes: one.air.ach50 > design.air.ach50 ? 2 : one.air.ach50 < design.air.ach50 ? 0.5 : 1,
  }));
  const { finding } = await ask(howBigAStove, madeBasis(design), runner);
  const unknowns = unknownsOf(design, false);
  expect(finding!.figures).toMatchObject({
    kW: 3.5,
    coldYearKW: 3.5,
    leakyKW: 7.5,
    leastKW: 3,
    mostKW: 7.5,
    trials: unknowns.length,
    turnedTrials: 2,
  });
  expect(finding!.text).toContain(
    ` How sure? If it is built a third tighter, it takes 3.0 kW. If it is built twice as leaky, it takes 7.5 kW. It is the same in the other ${unknowns.length - 2} of ${unknowns.length} trials.`,
  );
  const tried = (id: string) => runner.ran.filter(({ at }) => at.doubt === id).map(({ at }) => at.kW);
  expect(tried('leaky')).toEqual([3.5, 5, 7.5]);
  expect(tried('tight')).toEqual([3.5, 3]);
  expect(tried('cold-year')).toEqual([3.5, 3]);
});

test('where no size does, nothing is said of a bigger one but to insulate', async () => {
  const runner = madeRunner((design, job) => ({ ...plausible(design, job), heatTimes: 100 }));
  const { finding } = await ask(howBigAStove, madeBasis(heatedBy(MODEST, USUAL_STOVE)), runner);
  expect(finding!.text).toMatch(
    /^No size of light steel stove does: .* Insulate before you buy a bigger one\./,
  );
  expect(finding!.text).not.toMatch(/A bigger one does not|too big/);
});

test('where the smallest made is never lit, no stove is asked for, and what would light it is told', async () => {
  const design = heatedBy(MODEST, USUAL_STOVE);
  const neverLit = runnerOf((job) => {
    const { outcome, ...result } = madeResult(job, plausible);
    const isCold = job.at.doubt === 'cold-year';
    const fuel = { ...outcome.fuel!, kg: isCold ? 20 : 0, daysWithFire: isCold ? 5 : 0 };
    return { ...result, outcome: { ...outcome, heating: { ...outcome.heating, shortHours: 0 }, fuel } };
  });
  const { finding } = await ask(howBigAStove, madeBasis(design), neverLit);
  expect(finding!.text).toMatch(
    /^No stove is needed in a year like this one: a light steel stove of 3\.0 kW/,
  );
  expect(finding!.text).toMatch(/It is lit in a year 1\.5 °C colder, on 5 days\.$/);
  expect(finding!.text).not.toMatch(/smallest that does|too big/);
  expect(finding!.figures.turnedTrials).toBe(1);
});

test('a stove is too big from where it makes plainly more hours too hot than the smallest that does', async () => {
  const runner = madeRunner(({ heating }) => ({ overheatedHours: heating.capacityKW < 6 ? 30 : 130 }));
  const { finding } = await ask(howBigAStove, madeBasis(heatedBy(MODEST, USUAL_STOVE)), runner);
  expect(finding!.figures).toMatchObject({ tooBigKW: 7.5, tooBigHotHours: 130 });
  expect(finding!.text).toMatch(/One of 7\.5 kW is too big: it makes 130 hours too hot rather than 30\./);
});

test('that a house can do without is told with the trials in which it cannot', async () => {
  const runner = madeRunner((design, job) => ({
    ...plausible(design, job),
    underheatedHours: design.air.ach50 > MODEST.air.ach50 ? 900 : 3,
  }));
  const { finding } = await ask(doWithout, madeBasis(MODEST), runner);
  const { trials } = finding!.figures;
  expect(finding!.text).toContain(`but not in 1 of ${trials} trials: keep a small heater.`);
  expect(finding!.figures.turnedTrials).toBe(1);
});

test('a house that is never too cold is told of nothing to build, and a room cold at once is told so', async () => {
  const runner = runnerOf((job) => {
    const result = madeResult(job, (design, of) => ({ ...plausible(design, of), underheatedHours: 0 }));
    const { coldSpell } = result;
    return coldSpell === undefined
      ? result
      : { ...result, coldSpell: { ...coldSpell, noHeat: { ...coldSpell.noHeat, warmHours: 0 } } };
  });
  const { finding } = await ask(doWithout, madeBasis(MODEST), runner);
  expect(finding!.text).toContain('It can do without back-up heat');
  expect(finding!.text).not.toMatch(/Insulated more|all three/);
  expect(finding!.text).toMatch(
    /coldest days, it is below 16 °C in some room within the hour, and it is 12\.6 °C next morning\. In a power cut all stay above it all along\./,
  );
});

test('what doing without takes is tried on houses without any heat, and the failure is told of the house as drawn', async () => {
  const runner = madeRunner(plausible);
  const { finding, tables } = await ask(doWithout, madeBasis(MODEST), runner);
  const [drawn, ...others] = mainJobs(runner);
  expect([drawn!.design.heating.capacityKW, drawn!.coldSpell]).toEqual([8, true]);
  expect(others.map(({ design }) => design.heating.capacityKW)).toEqual([0, 0, 0, 0, 0]);
  expect(others.at(-1)!.design.air.ach50).toBe(MODEST.air.ach50 / 2);
  expect(finding!.text).toMatch(
    /stay above 16 °C for 6 hours, and it is 12\.6 °C next morning\. In a power cut they stay so all along\./,
  );
  expect(tables.map(({ id }) => id)).toEqual(['without-heat', 'failure']);
  const doubted = runner.ran.filter(({ at }) => at.doubt !== undefined);
  // No heat, and no heat with all three cures, over each of what nobody can know.
  expect(doubted.map(({ at }) => at.doubt)).toEqual(unknownsOf(MODEST, false).flatMap(({ id }) => [id, id]));
  expect(doubted.map(({ design }) => design.heating.capacityKW)).toEqual(doubted.map(() => 0));
  const ofDoubt = (id: string) => doubted.filter(({ at }) => at.doubt === id).map(({ design }) => design);
  expect(ofDoubt('cold-year').map(({ hotter }) => hotter!.winterK)).toEqual([-1.5, -1.5]);
  expect(ofDoubt('leaky').map(({ air }) => air.ach50)).toEqual([MODEST.air.ach50 * 2, MODEST.air.ach50]);
  expect(finding!.text).toMatch(
    / How sure\? Hours too cold with none: .*\. Hours too cold with all three: .*\. The verdict holds in all \d trials\./,
  );
  expect(finding!.figures).toMatchObject({ noneLeastHours: 3, noneMostHours: 3, trials: doubted.length / 2 });
});

test('a verdict that turns is told with what turns it', async () => {
  // Too cold in none of the hours but where it is leaky.
  const runner = madeRunner((one, job) => ({
    ...plausible(one, job),
    underheatedHours: one.air.ach50 > MODEST.air.ach50 ? 400 : 3,
  }));
  const { finding } = await ask(doWithout, madeBasis(MODEST), runner);
  expect(finding!.text).toContain('It can do without back-up heat in this year');
  expect(finding!.text).toContain('Hours too cold with none: 400 if it is built twice as leaky. ');
  expect(finding!.text).toContain(
    ' If it is built twice as leaky, it could do without only when better built.',
  );
  expect(finding!.figures).toMatchObject({ noneMostHours: 400, leakyHours: 400, leakyAllHours: 3 });
});
