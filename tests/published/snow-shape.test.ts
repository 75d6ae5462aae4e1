// Source: EN 1991-1-3, shape coefficients of monopitch roofs; from memory, high confidence.
import { test } from 'vitest';
import { snowShapeFactor } from '../../src/physics/snow-load.ts';
import { check } from './ledger.ts';

const EXACT = 1e-9;

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
