// A match kept as a design: it passes the schema, its numbers are the found ones within their limits, what has no number
// acts from the block, and a design without the block means what it meant.
import { expect, test } from 'vitest';
import { EXAMPLES, runYear } from '../../src/daystone.ts';
import { parseDesign } from '../../src/design/schema.ts';
import { wordingOf } from '../../src/findings/wording.ts';
import { keptDesign } from '../../src/matching/kept-design.ts';
import type { FoundUnknown, Match } from '../../src/matching/match.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { inputsOf } from '../../src/report/inputs.ts';
import { NORTH, WAVE } from '../model/sites.ts';
import { bundledYear } from '../weather/bundled-climates.ts';

const { design } = EXAMPLES.find(({ id }) => id === 'modest')!;
const found = (id: FoundUnknown['id'], value: number, learnt = true): FoundUnknown => ({
  id,
  value,
  low: value * 0.8,
  high: value * 1.3,
  learnt,
});
const unknowns = [
  found('airtightness', 2),
  found('sun', 0.7),
  found('stove', 1),
  found('insulation', 0.5, false),
];
const match = {
  misfitK: 0.3,
  unseenMisfitK: 0.4,
  habit: null,
  unknowns,
  values: { airtightness: 2, sun: 0.7, stove: 1, insulation: 0.5 },
} as unknown as Match;
const days = { from: '2026-01-12 00:00', until: '2026-01-26 00:00' };
const kept = keptDesign(design, match, days);

test('it is a design, and opens as it was written', () => {
  const read = parseDesign(JSON.parse(JSON.stringify(kept)));
  expect(read.ok ? read.design.asFound : read.faults).toEqual(kept.asFound);
  expect(kept.asFound!.unknowns.map(({ id }) => id)).toEqual(['airtightness', 'sun', 'stove', 'insulation']);
});

test('numbers that it has are the found ones; what has none acts from the block', () => {
  expect(kept.air.ach50).toBe(2 * design.air.ach50);
  expect(kept.heating.dayC).toBe(design.heating.dayC + 1);
  expect(kept.envelope.wallResistance).toBe(0.5 * design.envelope.wallResistance);
  const light = (of: typeof design) => modelOf(of, NORTH, WAVE).panes.map(({ dirt }) => dirt);
  light(kept).forEach((dirt, i) => {
    expect(dirt).toBeCloseTo(0.7 * light(design)[i]!, 12);
  });
});

test('found twice, it is built upon', () => {
  const again = keptDesign(kept, match, days);
  expect(again.asFound!.unknowns.find(({ id }) => id === 'sun')!.value).toBeCloseTo(0.49, 12);
});

test('a value that no house has is refused by name', () => {
  const strange = { ...kept, asFound: { ...kept.asFound!, unknowns: [found('sun', -1)] } };
  const { learnt: _, ...plain } = strange.asFound.unknowns[0]!;
  const read = parseDesign({ ...strange, asFound: { ...strange.asFound, unknowns: [plain] } });
  expect(read.ok).toBe(false);
});

test('the report lists what was found, and a year runs on it: less sun, fewer hours too hot', () => {
  expect(JSON.stringify(inputsOf(kept, wordingOf('metric')))).toContain('Sun let in');
  const hot = (of: typeof design) => runYear(of, bundledYear('denver')).figures.zones.house.overheatedHours;
  const sunny = { ...match, unknowns: [found('sun', 0.7)], values: { sun: 0.7 } };
  expect(hot(keptDesign(design, sunny, days))).toBeLessThan(hot(design));
});
