// Source: Kusuda and Achenbach 1965 (from memory, high confidence): six depths, computed independently for a mean of
// 10 °C, an amplitude of 12 K, 0.05 m²/day and the coldest surface on day 35.
import { expect, test } from 'vitest';
import { annualDampingDepth, annualWave, groundTemperature } from '../../src/physics/ground-temperature.ts';
import { check } from './ledger.ts';

const GROUND = { meanC: 10, amplitudeK: 12, coldestDay: 35, diffusivity: 0.05 };
const DAYS = [35, 100, 172, 218, 300];

test('temperature, damping and lag at six depths', () => {
  const rows = [
    [0, 1.0, 0, [-2.0, 4.76, 18.5, 22.0, 11.8]],
    [1, 0.6604, 24.1, [2.75, 3.96, 12.89, 17.28, 14.25]],
    [2, 0.4361, 48.2, [6.47, 4.98, 9.78, 13.57, 14.35]],
    [3, 0.288, 72.3, [8.89, 6.57, 8.47, 11.14, 13.4]],
    [5, 0.1256, 120.5, [10.73, 9.13, 8.55, 9.28, 11.2]],
    [10, 0.0158, 241.0, [10.1, 10.19, 10.04, 9.9, 9.83]],
  ] as const;
  expect(rows).toHaveLength(6);
  const base = { source: 'Kusuda-Achenbach 1965', mark: 'computed' } as const;
  check({
    ...base,
    case: 'clay',
    quantity: 'damping depth',
    reference: 2.41,
    ours: annualDampingDepth(0.05),
    allowed: 0.001,
    unit: 'm',
  });
  for (const [depth, damping, lag, temperatures] of rows) {
    const wave = annualWave(GROUND.diffusivity, depth);
    check({
      ...base,
      case: `${depth} m`,
      quantity: 'damping',
      reference: damping,
      ours: wave.damping,
      allowed: 0.0001,
      unit: '',
    });
    check({
      ...base,
      case: `${depth} m`,
      quantity: 'lag',
      reference: lag,
      ours: wave.lagDays,
      allowed: 0.06,
      unit: 'day',
    });
    expect(temperatures).toHaveLength(DAYS.length);
    for (const [i, reference] of temperatures.entries()) {
      check({
        ...base,
        case: `${depth} m, day ${DAYS[i]}`,
        quantity: 'ground temperature',
        reference,
        ours: groundTemperature(GROUND, depth, DAYS[i]!),
        allowed: 0.01,
        unit: '°C',
      });
    }
  }
});
