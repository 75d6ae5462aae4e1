// Rules of practice and single formulas with one worked number each: the US guideline series' glass and mass shares,
// clear-day swing, radon balance, snow shape factor, labour in tyres. Marks say which have a source; labour has none.
import { test } from 'vitest';
import { clearDaySwing } from '../../src/physics/clear-day-swing.ts';
import { tyreWork } from '../../src/physics/labour.ts';
import { steadyRadon } from '../../src/physics/radon.ts';
import { glassLimits, glassNeedingMass, massForGlass } from '../../src/physics/sizing-rules.ts';
import { snowShapeFactor } from '../../src/physics/snow-load.ts';
import { check } from './ledger.ts';

const EXACT = 1e-9;

test('a floor of 150 m² carries 10.5, 18 and 30 m² of glass, and 18 m² ask for their mass', () => {
  const row = {
    source: 'US guideline series, 1989–1995',
    case: 'floor 150 m²',
    allowed: EXACT,
    unit: 'm²',
    mark: 'computed',
  } as const;
  const limits = glassLimits(150);
  check({ ...row, quantity: 'sun-tempered glass', reference: 10.5, ours: limits.sunTemperedM2 });
  check({ ...row, quantity: 'direct-gain glass', reference: 18, ours: limits.directGainM2 });
  check({ ...row, quantity: 'all passive glass', reference: 30, ours: limits.allPassiveM2 });
  const extra = glassNeedingMass(18, 150);
  const mass = [
    ['sunlit-floor', 41.25],
    ['unlit-floor', 300],
    ['wall-or-ceiling', 62.25],
  ] as const;
  for (const [location, reference] of mass) {
    check({
      ...row,
      case: 'floor 150 m², 18 m² glass',
      quantity: `mass, ${location}`,
      reference,
      ours: massForGlass(extra, location),
    });
  }
});

test('20 kWh into 2 kWh/K swing a room by 6.1 K', () => {
  check({
    source: 'Diurnal heat capacity method, 1983',
    case: '20 kWh, 2.0 kWh/K',
    quantity: 'swing',
    reference: 6.1,
    ours: clearDaySwing(20000, 2000),
    allowed: EXACT,
    unit: 'K',
    mark: 'computed',
  });
});

test('radon of 20 000 Bq/h in 250 m³', () => {
  for (const [airChange, reference] of [
    [0.3, 260],
    [0.5, 158],
  ] as const) {
    check({
      source: 'Radon mass balance',
      case: `20 000 Bq/h, 250 m³, ${airChange} 1/h`,
      quantity: 'concentration',
      reference,
      ours: steadyRadon(20000, 250, airChange),
      allowed: 1,
      unit: 'Bq/m³',
      mark: 'computed',
    });
  }
});

test('snow on slopes free to slide', () => {
  const rows = [
    [0, 0.8, EXACT],
    [30, 0.8, EXACT],
    [40, 0.533, 0.0005],
    [45, 0.4, EXACT],
    [50, 0.267, 0.0005],
    [60, 0, EXACT],
    [75, 0, EXACT],
  ] as const;
  for (const [tilt, reference, allowed] of rows) {
    check({
      source: 'EN 1991-1-3',
      case: `${tilt}°`,
      quantity: 'snow shape factor',
      reference,
      ours: snowShapeFactor(tilt, true),
      allowed,
      unit: '',
      mark: tilt <= 30 || tilt >= 60 ? 'memory' : 'computed',
    });
  }
});

test('1500 tyres at 8 a day are 188 worker-days and 270 t', () => {
  const work = tyreWork(1500, 8);
  const row = { source: 'Builders’ practice', case: '1500 tyres, 8 a day', mark: 'practice' } as const;
  check({ ...row, quantity: 'work', reference: 188, ours: work.workerDays, allowed: 0.5, unit: 'd' });
  check({ ...row, quantity: 'earth', reference: 270, ours: work.earthKg / 1000, allowed: EXACT, unit: 't' });
});
