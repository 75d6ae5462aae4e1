import { expect, test } from 'vitest';
import { measuredInWords } from '../../src/report/trust.ts';

test('a measured house is told with what was measured and what ours says, a miss as a miss', () => {
  const sources = [
    {
      source: 'Houses as measured',
      lines: [
        ['tyres: a place, no heater', 'coldest air of the rooms', '14 to 16 °C', '14.2 °C', 'pass', 1],
        [
          'tyres: a place, no heater',
          'warmest air of the rooms',
          '27 ± 2 °C',
          '-0.5266 to 27.164 °C',
          'pass',
          1,
        ],
        ['earth: a place', 'humidity', '0.7 to 1', '0.5', 'note', 1],
      ] as const,
    },
    { source: 'a handbook', lines: [['row', 'U', '1', '1', 'pass', 1]] as const },
  ];
  const [houses, ...others] = measuredInWords({ sources });
  expect(others).toEqual([]);
  expect(houses!.says).toContain('rammed tyres');
  expect(houses!.told).toEqual([
    'Tyres: a place, no heater. Coldest air of the rooms: measured 14 to 16\u00a0°C; ours says 14.2\u00a0°C. Warmest air of the rooms: measured 27 ± 2\u00a0°C; ours says −0.527 to 27.2\u00a0°C.',
    'Earth: a place. Humidity: measured 0.7 to 1; ours says 0.5. That is a miss.',
  ]);
  expect(measuredInWords({ sources: [] })).toEqual([]);
});
