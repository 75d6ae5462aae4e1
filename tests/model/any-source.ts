// Random sources of heat, every number over its limits and every choice over its options; apart from any-design.ts, so that
// designs drawn there by a seed stay what they were.
import fc from 'fast-check';
import {
  FUELS,
  type HeatSource,
  SOURCE_LIMITS,
  STOVE_KINDS,
  STOVE_TIMES,
  WOOD_IDS,
} from '../../src/design/heat-source.ts';

const within = ({ min, max }: { min: number; max: number }) => fc.double({ min, max, noNaN: true });

const stove = fc.record(
  {
    kind: fc.constant('stove' as const),
    stove: fc.constantFrom(...STOVE_KINDS),
    lit: fc.constantFrom(...STOVE_TIMES),
    litBy: fc.constantFrom('need' as const, 'habit' as const),
    wood: fc.constantFrom(...WOOD_IDS),
    moisture: within(SOURCE_LIMITS.moisture),
    air: fc.constantFrom('room' as const, 'own' as const),
    floorShare: within(SOURCE_LIMITS.floorShare),
    storeL: within(SOURCE_LIMITS.storeL),
    efficiency: within(SOURCE_LIMITS.efficiency),
  },
  { requiredKeys: ['kind', 'stove', 'lit', 'litBy', 'wood', 'moisture', 'air'] },
);
const heater = fc.record({
  kind: fc.constantFrom('heater' as const, 'floor' as const, 'wall' as const),
  fuel: fc.constantFrom(...FUELS),
});

/** Stoves more often than heaters. */
export const anySource: fc.Arbitrary<HeatSource> = fc.oneof({ weight: 3, arbitrary: stove }, heater);
