// A measured greenhouse (source: measured-greenhouse.ts) against its model, class by class. One free number, the vents' area,
// is fitted to classes 1, 3 and 5; light is let in as it is known to be. What is taken from memory was chosen with all classes
// in sight: with bars that take up 0.1 to 0.13 of the sun every class holds, at 0.07 the rise of classes 1 and 2 is 2.3 K
// short; with a leak of 0.6 changes an hour class 1 is 2.2 K short. Reckoned by hand at half the sun, heat and water of the
// classes as measured close with crop water of 0.7 to 0.8 of the light and 3 to 66 m³/h of air by m² of floor.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/daystone.ts';
import { modelOf } from '../../src/model/from-design.ts';
import type { Opening } from '../../src/model/model.ts';
import { byHour } from '../../src/model/schedule.ts';
import { simulate } from '../../src/network/simulate.ts';
import { canopyEvaporation } from '../reference/whole-formulas.ts';
import { climateOf } from '../scans/scan.ts';
import { check } from './ledger.ts';
import { type GreenhouseDay, liveClass, type Unknown, type VentClass } from './measured-greenhouse.ts';

const SOURCE = 'Autonomous Greenhouse Challenge 2018';
/** All vents wide open, by floor [m²/m²]. */
const FITTED_VENTS = 0.07;
/** Humidity in points, rise in K. */
const ALLOWED = { humidity: 7, rise: 2 };
/** Of the crop on days darker and sunnier than the whole autumn that was measured [L/(m²·d)]. */
const OFF_AUTUMN = 0.5;
/**
 * Light indoors by floor of the whole autumn [MJ/m² a day]: water as measured over latent share as measured, least over least
 * and most over most. The sun outside, by half, gives some 3.6: the rest is of lamps. Sun of a day that lets in as much [W/m²].
 */
const LIGHT_OF_AUTUMN = { leastMJ: 6.1, mostMJ: 7.4, sun: 383 };
const COVER_DEW = 'Greenhouse climate models since 2011';
/** Told of greenhouses' covers; from memory, low confidence [g/(m²·h)]. */
const DEW_TOLD = { least: 5, most: 40 };
/** Films of free convection under roofs differ by a quarter among authors; two glasses in one house by less [share], [–]. */
const DEW_ALLOWED = 0.25;
const DEW_RATIO_ALLOWED = 0.1;
/** Of heated nights, how it was and might have been. */
const UNKNOWN_OF_NIGHTS: readonly (readonly [words: string, unlike: Partial<Unknown>])[] = [
  ['at 18 °C', { nightC: 18 }],
  ['at 16 °C', { nightC: 16 }],
  ['with 20 g/h more water by m² of floor, as of a crop under lamps', { moreWater: 20 }],
  ['with a leaf area of 3', { leafArea: 3 }],
  ['with a leak of 0.1 changes an hour', { leakPerH: 0.1 }],
  ['under a screen', { screen: true }],
  ['with a screen, at 18 °C and with those 20 g/h', { screen: true, nightC: 18, moreWater: 20 }],
];
/** Humidity by night falls short of what was measured by up to so much [points]. */
const TOO_DRY_HEATED = 20;
/** Some 14 air changes an hour of a sunspace [m³/s]; and how much damper its nights then are at least, as measured medians are [–]. */
const AIRED_BY_DAY = 0.2;
const DAMPER_BY_NIGHT = 0.04;

const classes: readonly VentClass[] = JSON.parse(
  readFileSync(join(import.meta.dirname, '../data/greenhouse-vents.json'), 'utf8'),
);
const nameOf = ({ from, to }: VentClass) => `vents ${from} to ${to} % open`;

test('by day a planted house is as damp and as warm as the measured one, vents from shut to open', () => {
  for (const [index, measured] of classes.entries()) {
    const ours = liveClass(measured, FITTED_VENTS);
    const row = {
      source: SOURCE,
      case: `class ${index + 1}, ${nameOf(measured)}, ${index % 2 === 0 ? 'fitted' : 'judged'}`,
      mark: 'document',
    } as const;
    check({
      ...row,
      quantity: 'humidity by day',
      reference: 100 * measured.humidity,
      ours: 100 * ours.humidity,
      allowed: ALLOWED.humidity,
      unit: '%',
    });
    check({
      ...row,
      quantity: 'rise over outdoors by day',
      reference: measured.riseK,
      ours: ours.riseK,
      allowed: ALLOWED.rise,
      unit: 'K',
    });
    check({
      ...row,
      quantity: 'daylight hours above 95 %',
      reference: 0,
      ours: ours.above95 / ours.daylightHours,
      allowed: 0,
      unit: 'share',
    });
    check({
      ...row,
      quantity: 'latent heat of the crop by light, each per m² of what it falls on',
      kind: 'range',
      referenceMin: 0.56,
      referenceMax: 0.88,
      ours: ours.latentShare,
      allowed: 0,
      unit: '–',
    });
    for (const residual of ours.residuals) expect(Math.abs(residual)).toBeLessThan(1e-9);
  }
});

test('the crop takes up the water of a measured autumn on days with its light', () => {
  const ofAutumn = liveClass({ ...classes[1]!, sun: LIGHT_OF_AUTUMN.sun }, FITTED_VENTS);
  expect(ofAutumn.lightMJ).toBeGreaterThan(LIGHT_OF_AUTUMN.leastMJ);
  expect(ofAutumn.lightMJ).toBeLessThan(LIGHT_OF_AUTUMN.mostMJ);
  check({
    source: SOURCE,
    case: `days of ${nameOf(classes[1]!)}; light indoors of 6.1 to 7.4 MJ/m² a day, sun and lamps, as water and latent share of the autumn say`,
    quantity: 'water of the crop',
    kind: 'range',
    referenceMin: 1.7,
    referenceMax: 2.2,
    ours: ofAutumn.cropLitres,
    allowed: 0,
    unit: 'L/(m²·d)',
    mark: 'document',
  });
  for (const [index, sun] of [
    'as of the whole autumn, 7 MJ/m² a day from memory, but no lamps: 3.6 MJ/m² indoors',
    'half as much again',
    'twice as much: 7.8 MJ/m² indoors, more than the autumn had with its lamps',
  ].entries()) {
    const day = liveClass(classes[index]!, FITTED_VENTS);
    check({
      source: SOURCE,
      case: `days of ${nameOf(classes[index]!)}; sun ${sun}`,
      quantity: 'water of the crop',
      kind: 'range',
      referenceMin: 1.7,
      referenceMax: 2.2,
      ours: day.cropLitres,
      allowed: 0,
      ...(index !== 1 && { noteAllowed: OFF_AUTUMN }),
      unit: 'L/(m²·d)',
      mark: 'document',
    });
  }
});

test('shut, dark and unheated it is as damp and as warm as measured, and damper than by day', () => {
  // After days of classes in which it was warm enough outside to leave a house to itself.
  for (const of of classes.slice(1, 4)) {
    for (const [nights, words, rise] of [
      ['shut', 'no screen', [2.6, 3.3]],
      ['shut under a screen', 'under a screen', [3.9, 5.3]],
    ] as const) {
      const ours = liveClass(of, FITTED_VENTS, nights);
      const row = {
        source: SOURCE,
        case: `night after a day of ${nameOf(of)}, ${words}`,
        kind: 'range',
        mark: 'document',
      } as const;
      check({
        ...row,
        quantity: 'humidity by night, shut and unheated',
        referenceMin: 84,
        referenceMax: 90,
        ours: 100 * ours.nightHumidity,
        allowed: 0,
        unit: '%',
      });
      check({
        ...row,
        quantity: 'rise over outdoors by night, shut and unheated',
        referenceMin: rise[0],
        referenceMax: rise[1],
        ours: ours.nightRiseK,
        allowed: 0,
        unit: 'K',
      });
      expect(ours.nightHumidity).toBeGreaterThan(ours.humidity);
    }
  }
});

test('a house held warm by night is drier than the measured one, by what is not known of it', () => {
  const [of] = classes;
  const night = (unlike: Partial<Unknown>) =>
    100 * liveClass(of!, FITTED_VENTS, 'heated', unlike).nightHumidity;
  const taken = night({});
  const moved = UNKNOWN_OF_NIGHTS.map(([words, unlike]) => ({ words, points: night(unlike) - taken }));
  // Each goes the way it must.
  for (const { words, points } of moved) expect(points, words).toBeGreaterThan(0);
  const told = moved.map(({ words, points }) => `${points.toFixed(0)} points more ${words}`).join(', ');
  check({
    source: SOURCE,
    case: `night held at 20 °C, ${nameOf(of!)}, no screen, no lamps; none of these is known: ${told}`,
    quantity: 'humidity by night, all hours',
    kind: 'range',
    referenceMin: 84,
    referenceMax: 88,
    ours: taken,
    allowed: 0,
    noteAllowed: TOO_DRY_HEATED,
    unit: '%',
    mark: 'document',
  });
});

test('a shut house has dew by night as greenhouse models and their growers tell it, less on double glass', () => {
  // Under a clear sky. Films and dew as told are from memory; what is allowed was chosen before the first run.
  for (const of of classes.slice(1, 4)) {
    const [single, double] = ([1, 2] as const).map((sheets) => {
      return liveClass({ ...of, cloud: 0 }, FITTED_VENTS, 'shut', { sheets });
    }) as [GreenhouseDay, GreenhouseDay];
    for (const [glass, { nightDew, nightDewTold }] of [
      ['single', single],
      ['double', double],
    ] as const) {
      check({
        source: COVER_DEW,
        case: `clear night after a day of ${nameOf(of)}, shut, ${glass} glass; at our air, humidity and pane`,
        quantity: 'dew by m² of glass',
        kind: 'rel',
        reference: nightDewTold,
        ours: nightDew,
        allowed: DEW_ALLOWED,
        unit: 'g/(m²h)',
        mark: 'memory',
      });
    }
    check({
      source: COVER_DEW,
      case: `clear night after a day of ${nameOf(of)}, shut, single glass; told of covers by night, low confidence`,
      quantity: 'dew by m² of glass',
      kind: 'range',
      referenceMin: DEW_TOLD.least,
      referenceMax: DEW_TOLD.most,
      ours: single.nightDew,
      allowed: 0,
      unit: 'g/(m²h)',
      mark: 'memory',
    });
    check({
      source: COVER_DEW,
      case: `clear night after a day of ${nameOf(of)}, shut, each at our air, humidity and pane`,
      quantity: 'dew on double glass over that on single',
      reference: double.nightDewTold / single.nightDewTold,
      ours: double.nightDew / single.nightDew,
      allowed: DEW_RATIO_ALLOWED,
      unit: '–',
      mark: 'memory',
    });
    expect(double.nightDew).toBeLessThan(0.8 * single.nightDew);
  }
});

test('a sunspace of ours, aired by day and shut by night as the measured one, is damper by night', () => {
  // The closed example by the sea. As it is drawn it is kept shut for its heat by day, and damper by day for it.
  const { design } = EXAMPLES.find(({ id }) => id === 'closed')!;
  const climate = climateOf('belfast');
  const asDrawn = modelOf(design, climate.year.site, climate.ground);
  const airedByDay = asDrawn.openings.map((opening): Opening => {
    if (opening.zone !== 'sunspace' || opening.kind !== 'vent') return opening;
    const flow = byHour((hour) => (hour >= 9 && hour < 17 ? AIRED_BY_DAY : 0));
    return { kind: 'fixed', id: opening.id, zone: opening.zone, flow, fan: true };
  });
  const { zones } = simulate({ ...asDrawn, openings: airedByDay }, climate);
  const { relativeHumidity } = zones.find(({ id }) => id === 'sunspace')!;
  const meanWhere = (counts: (hour: number) => boolean) => {
    const counted = relativeHumidity.filter((_, hour) => counts(hour));
    return counted.reduce((sum, humidity) => sum + humidity, 0) / counted.length;
  };
  const byDay = meanWhere((hour) => climate.year.globalHorizontal[hour]! > 100);
  const byNight = meanWhere((hour) => climate.cosZenith[hour]! <= 0);
  expect(byNight).toBeGreaterThan(byDay + DAMPER_BY_NIGHT);
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
