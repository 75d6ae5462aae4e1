// What the trade expects of the three examples. Common practice, no source: leaning glass with a planted front open
// to the rooms is too hot and too damp; an upright front shut off by a mass wall, and modest direct gain, are not.
import { describe, expect, it } from 'vitest';
import { runExample } from './example-run.ts';

const leaning = runExample('leaning');
const closed = runExample('closed');
const modest = runExample('modest');
const idsOf = ({ findings }: typeof leaning) => findings.map(({ id }) => id);
const houseOf = ({ run }: typeof leaning) => run.outcome.zones.house;

describe('the examples behave as the trade expects', () => {
  it('the leaning one is too hot for hundreds of hours more than the modest one', () => {
    expect(houseOf(leaning).overheatedHours - houseOf(modest).overheatedHours).toBeGreaterThan(300);
  });

  it('the leaning one is the dampest, by humid hours, by water and by mould', () => {
    for (const other of [closed, modest]) {
      expect(houseOf(leaning).humidHours).toBeGreaterThan(2 * houseOf(other).humidHours);
      expect(houseOf(leaning).mouldIndexMax).toBeGreaterThan(houseOf(other).mouldIndexMax);
    }
  });

  it('the closed-off sunspace keeps its heat to itself: it is far hotter than its rooms', () => {
    const { house, sunspace } = closed.run.outcome.zones;
    expect(sunspace!.overheatedHours).toBeGreaterThan(3 * house.overheatedHours);
  });
});

describe('the advice on the examples', () => {
  it('tells the leaning one what is wrong with it and what to fear', () => {
    const ids = idsOf(leaning);
    for (const id of [
      'too-hot',
      'too-damp',
      'damp-from-plants',
      'mould-in-rooms',
      'glass-leans',
      'sunspace-open',
      'mass-in-shade',
      'caution-overhead-glass',
      'caution-leaks',
      'caution-retaining',
      'caution-berm-damp',
      'caution-radon',
    ]) {
      expect(ids).toContain(id);
    }
    for (const id of ['cool-enough', 'dry-enough', 'clean-corners', 'glass-upright'])
      expect(ids).not.toContain(id);
  });

  it('tells the closed-off one what it does well', () => {
    const ids = idsOf(closed);
    for (const id of ['cool-enough', 'glass-upright', 'sunspace-gives', 'clean-corners'])
      expect(ids).toContain(id);
    for (const id of [
      'glass-leans',
      'sunspace-open',
      'caution-overhead-glass',
      'caution-retaining',
      'mould-in-rooms',
    ]) {
      expect(ids).not.toContain(id);
    }
  });

  it('says nothing of a sunspace where there is none', () => {
    for (const { id, text } of modest.findings) {
      expect(id).not.toMatch(/sunspace|plants/);
      expect(text).not.toMatch(/sunspace(?!, or)/i);
    }
  });

  it('keeps to the hemisphere: in southern Chile the high sun is from November to January', () => {
    const south = runExample('leaning', 'southern-chile');
    expect(south.findings.find(({ id }) => id === 'glass-leans')?.text).toContain('from November to January');
    expect(leaning.findings.find(({ id }) => id === 'glass-leans')?.text).toContain('from May to July');
  });
});
