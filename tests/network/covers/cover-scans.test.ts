// What covers do to a year, asked as the trade would: finely scanned, nothing jumps; a blind against heat never makes more
// hot hours; resistance drawn at night never costs heat; what is not drawn changes nothing. Allowed: no step by more than
// four times the scan's mean step, or 40 kWh and 20 hours, whichever is larger. Common practice, no source.
import { expect, test } from 'vitest';
import type { Cover, Design, Habit } from '../../../src/design/design.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { modelOf } from '../../../src/model/from-design.ts';
import { simulate } from '../../../src/network/simulate.ts';
import { summarise } from '../../../src/outcomes/summarise.ts';
import { bundledClimate } from '../../weather/bundled-climates.ts';

const climates = new Map(['denver', 'burlington'].map((id) => [id, bundledClimate(id)] as const));
const example = (id: string) => EXAMPLES.find((entry) => entry.id === id)!.design;
const cover = (
  kind: string,
  on: Cover['on'],
  drawnBy: Cover['drawnBy'],
  more: Partial<Cover> = {},
): Cover => ({ kind, on, drawnBy, season: 'year', ...more });

const bareHouses = new Map<string, ReturnType<typeof run>>();

/** The modest house without covers; its hours are the next run's to overwrite. */
function bareModest(place = 'denver') {
  const bare = bareHouses.get(place) ?? run(example('modest'), place);
  bareHouses.set(place, bare);
  return bare;
}

function run(design: Design, place = 'denver') {
  const climate = climates.get(place)!;
  const model = modelOf(design, climate.year.site, climate.ground);
  const year = simulate(model, climate, { lend: true });
  const { zones, heating, books } = summarise(design, model, climate, year);
  return { hot: zones.house.overheatedHours, heat: heating.energyKWh, books, year };
}
const withCovers = (design: Design, ...covers: Cover[]) => run({ ...design, covers });

function expectSmooth(values: readonly number[], least: number): void {
  const steps = values.slice(1).map((value, i) => Math.abs(value - values[i]!));
  const mean = steps.reduce((sum, step) => sum + step, 0) / steps.length;
  expect(Math.max(...steps)).toBeLessThanOrEqual(Math.max(least, 4 * mean));
}

test('sun at which a blind is drawn: no cliff in heat over all its range, nor in hot hours where they rise most', () => {
  const at = (sunW: number) => withCovers(example('modest'), cover('outside-blind', 'all', 'sun', { sunW }));
  const heats = Array.from({ length: 11 }, (_, i) => at(50 + 40 * i).heat);
  expectSmooth(heats, 40);
  expect(heats.toSorted((one, other) => other - one)).toEqual(heats);
  // Light of a clear sky on the shaded side lies here, hour after hour.
  expectSmooth(
    Array.from({ length: 14 }, (_, i) => at(100 + 3 * i).hot),
    20,
  );
});

test('warmth at which a blind is drawn, in steps of half a degree: no cliff in heat or hot hours', () => {
  const runs = Array.from({ length: 9 }, (_, i) =>
    withCovers(example('modest'), cover('outside-blind', 'all', 'heat', { aboveC: 22 + 0.5 * i })),
  );
  expectSmooth(
    runs.map(({ heat }) => heat),
    40,
  );
  expectSmooth(
    runs.map(({ hot }) => hot),
    20,
  );
});

const BLINDS = [
  'outside-blind',
  'outside-screen',
  'shutter',
  'awning',
  'inside-blind',
  'curtain',
  'between-blind',
];

test('a blind against heat never makes more hot hours, a curtain none to speak of; one outside does most', () => {
  const bare = bareModest().hot;
  const hot = BLINDS.map((kind) => withCovers(example('modest'), cover(kind, 'all', 'heat')).hot);
  // What a dark curtain stops is in the room already, and warms its air at once and not its floor: of more openable window,
  // more of it went out again.
  const chance = (kind: string) => (kind === 'curtain' ? 0.02 * bare : 0);
  for (const [i, hours] of hot.entries())
    expect(hours, BLINDS[i]).toBeLessThanOrEqual(bare + chance(BLINDS[i]!));
  expect(hot[0]).toBeLessThan(hot[BLINDS.indexOf('inside-blind')]!);
});

test('blinds on the east and west windows take away a quarter of the modest house’s hot hours or more', () => {
  const bare = bareModest();
  const shaded = withCovers(example('modest'), cover('outside-blind', 'east-and-west', 'heat'));
  expect(shaded.hot).toBeLessThan(0.75 * bare.hot);
  expect(shaded.heat - bare.heat).toBeLessThan(0.02 * bare.heat);
});

test('covers drawn for the night never cost heat, more resistance saves more', () => {
  for (const place of climates.keys()) {
    const bare = bareModest(place).heat;
    const heats = ['curtain', 'inside-blind', 'honeycomb', 'sealed-curtain', 'insulated-shutter'].map(
      (kind) => run({ ...example('modest'), covers: [cover(kind, 'all', 'night')] }, place).heat,
    );
    expect([bare, ...heats]).toEqual([bare, ...heats].toSorted((one, other) => other - one));
  }
});

test('night insulation of the front is one of these: a clear cover of its resistance drawn for the night comes to it', () => {
  const { year, ground } = climates.get('burlington')!;
  const climate = climates.get('burlington')!;
  const design = { ...example('modest'), glass: { ...example('modest').glass, nightResistance: 0.7 } };
  const legacy = modelOf(design, year.site, ground);
  const clear = {
    ...legacy,
    panes: legacy.panes.map((pane) => ({
      ...pane,
      nightResistance: 0,
      covers: [
        {
          hand: pane.id,
          place: 'inside' as const,
          transmittance: 1,
          reflectance: 0,
          scatters: false,
          coverage: 1,
          resistance: pane.nightResistance,
          rule: {
            drawnBy: 'night' as const,
            months: new Array<number>(12).fill(1),
            sunW: 0,
            aboveC: 99,
            mostWind: 99,
          },
          control: 'automatic' as const,
        },
      ],
    })),
  };
  const heatOf = (model: typeof legacy) =>
    simulate(model, climate).zones[0]!.heatingW.reduce((sum, watt) => sum + watt, 0);
  // What is left is nights warmer than the room, and sides in chains of their own.
  expect(Math.abs(heatOf(clear) / heatOf(legacy) - 1)).toBeLessThan(0.005);
});

test('shade cloth cools the closed sunspace, and leaves on the front cost heat', () => {
  const closed = example('closed');
  const sunspaceHot = (design: Design) => {
    const climate = climates.get('denver')!;
    const model = modelOf(design, climate.year.site, climate.ground);
    return summarise(design, model, climate, simulate(model, climate)).zones.sunspace!.overheatedHours;
  };
  const cloth = { ...closed, covers: [cover('shade-cloth', 'sunspace', 'season', { season: 'warm' })] };
  expect(sunspaceHot(cloth)).toBeLessThan(0.8 * sunspaceHot(closed));
  const leaves = withCovers(example('modest'), cover('leaves', 'front', 'season'));
  expect(leaves.heat).toBeGreaterThan(1.05 * bareModest().heat);
});

test('with nobody to draw them covers change nothing but whose glass shares a chain; forgetful people do less than attentive', () => {
  const blind = (habit: Habit) =>
    withCovers(example('modest'), cover('outside-blind', 'all', 'heat', { habit }));
  const bare = bareModest();
  const nobody = blind('never');
  expect(Math.abs(nobody.heat - bare.heat)).toBeLessThan(0.01 * bare.heat);
  expect(Math.abs(nobody.hot - bare.hot)).toBeLessThan(0.03 * bare.hot);
  const [attentive, forgetful] = [blind('attentive').hot, blind('forgetful').hot];
  expect(attentive).toBeLessThan(forgetful);
  expect(forgetful).toBeLessThan(nobody.hot);
});

test('heat and water add up with every kind of cover at once', () => {
  const { books, year } = withCovers(
    example('leaning'),
    cover('outside-blind', 'all', 'heat'),
    cover('insulated-shutter', 'sunspace', 'night'),
    cover('leaves', 'front', 'season'),
    cover('inside-blind', 'all', 'sun'),
  );
  expect(Math.abs(books.heatResidual)).toBeLessThan(1e-9);
  expect(Math.abs(books.waterResidual)).toBeLessThan(1e-9);
  for (const { drawn } of year.covers!) expect(drawn.every((share) => share >= 0 && share <= 1)).toBe(true);
});
