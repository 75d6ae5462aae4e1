// A measured greenhouse (source: measured-greenhouse.ts) against its model, class by class. Two free numbers, light let in and
// vent area, were fitted to classes 1, 3 and 5 before 2, 4 and 6 were looked at. What misses 7 points or 2 K stands as a note.
// The fit wants all the light that clear glass lets in, where half is known: the house is warmer than its sun alone can make
// it, by stored heat or by its neighbours, of which nothing is known. Water is judged with the light that is known.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { canopyEvaporation } from '../reference/whole-formulas.ts';
import { check } from './ledger.ts';
import { liveClass, type VentClass } from './measured-greenhouse.ts';

const SOURCE = 'Autonomous Greenhouse Challenge 2018';
const FITTED = { light: 1, ventShare: 0.1 };
/** Light as the house is known to let in: half of what falls on it. */
const KNOWN = { light: 0.66, ventShare: 0.1 };
/** Humidity in points, rise in K. */
const ALLOWED = { humidity: 7, rise: 2 };
/** What misses that by vents nearly shut, and by how much in all: the crop's water leaves by a leak that nobody measured. */
const MISSED: readonly { readonly humidity?: number; readonly rise?: number }[] = [
  { humidity: 8 },
  { humidity: 8, rise: 2.5 },
  { humidity: 13 },
];
const WHY_MISSED = 'vents nearly shut, leak and stored heat not known';
/** The crop's water is this much beyond what was measured [L/(m²·d)]. */
const MISSED_LITRES = 0.05;

const classes: readonly VentClass[] = JSON.parse(
  readFileSync(join(import.meta.dirname, '../data/greenhouse-vents.json'), 'utf8'),
);

test('by day a planted house is as damp and as warm as the measured one, vents from shut to open', () => {
  for (const [index, measured] of classes.entries()) {
    const ours = liveClass(measured, FITTED);
    const missed = MISSED[index] ?? {};
    const rowOf = (why: boolean) =>
      ({
        source: SOURCE,
        case: `class ${index + 1}, vents ${measured.from} to ${measured.to} % open, ${index % 2 === 0 ? 'fitted' : 'judged'}${why ? `; ${WHY_MISSED}` : ''}`,
        mark: 'document',
      }) as const;
    check({
      ...rowOf(missed.humidity !== undefined),
      quantity: 'humidity by day',
      reference: 100 * measured.humidity,
      ours: 100 * ours.humidity,
      allowed: ALLOWED.humidity,
      ...(missed.humidity !== undefined && { noteAllowed: missed.humidity }),
      unit: '%',
    });
    check({
      ...rowOf(missed.rise !== undefined),
      quantity: 'rise over outdoors by day',
      reference: measured.riseK,
      ours: ours.riseK,
      allowed: ALLOWED.rise,
      ...(missed.rise !== undefined && { noteAllowed: missed.rise }),
      unit: 'K',
    });
  }
});

test('no air above 95 % by day, water and its share of the light as measured, books closed', () => {
  const days = [0, 2].map((index) => liveClass(classes[index]!, KNOWN));
  for (const [i, day] of days.entries()) {
    check({
      source: SOURCE,
      case: `vents ${classes[2 * i]!.from} to ${classes[2 * i]!.to} % open, light as known and not as fitted`,
      quantity: 'daylight hours above 95 %',
      reference: 0,
      ours: day.above95 / day.daylightHours,
      allowed: 0,
      unit: 'share',
      mark: 'document',
    });
    check({
      source: SOURCE,
      case: `vents ${classes[2 * i]!.from} to ${classes[2 * i]!.to} % open, light as known and not as fitted`,
      quantity: 'latent heat of the crop by light, each per m² of what it falls on',
      kind: 'range',
      referenceMin: 0.56,
      referenceMax: 0.88,
      ours: day.latentShare,
      allowed: 0,
      unit: '–',
      mark: 'document',
    });
    for (const residual of day.residuals) expect(Math.abs(residual)).toBeLessThan(1e-9);
  }
  check({
    source: SOURCE,
    case: 'autumn days of vents 5 to 15 % open, light as known (half) and not as fitted (all); sunnier than the whole autumn that was measured',
    quantity: 'water of the crop',
    kind: 'range',
    referenceMin: 1.7,
    referenceMax: 2.2,
    ours: days[1]!.cropLitres,
    allowed: 0,
    noteAllowed: MISSED_LITRES,
    unit: 'L/(m²·d)',
    mark: 'document',
  });
});

test('leaves answer drier air as measured crops do', () => {
  const at = (deficitPa: number) => canopyEvaporation(22, deficitPa, 150, 2.25, 275);
  check({
    source: SOURCE,
    case: 'leaf area 2.25, 150 W/m² taken up, 0.4 to 1 kPa',
    quantity: 'more latent heat by the kilopascal of deficit',
    reference: 20,
    ours: (at(1000) - at(400)) / 0.6,
    allowed: 13,
    unit: 'W/(m²·kPa)',
    mark: 'memory',
  });
});
