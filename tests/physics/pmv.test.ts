import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type ComfortInput, percentageDissatisfied, predictedMeanVote } from '../../src/physics/pmv.ts';

const input: fc.Arbitrary<ComfortInput> = fc.record({
  airTempC: fc.double({ min: 10, max: 34, noNaN: true }),
  meanRadiantTempC: fc.double({ min: 10, max: 40, noNaN: true }),
  airSpeed: fc.double({ min: 0, max: 1, noNaN: true }),
  relativeHumidity: fc.double({ min: 0.2, max: 0.9, noNaN: true }),
  activityMet: fc.double({ min: 0.8, max: 2.5, noNaN: true }),
  clothingClo: fc.double({ min: 0, max: 2, noNaN: true }),
});
const more = fc.double({ min: 0.1, max: 5, noNaN: true });

test('warmer air, warmer surfaces and damper air never make a room feel cooler', () => {
  fc.assert(
    fc.property(input, more, (room, step) => {
      const vote = predictedMeanVote(room);
      expect(predictedMeanVote({ ...room, airTempC: room.airTempC + step })).toBeGreaterThan(vote);
      expect(predictedMeanVote({ ...room, meanRadiantTempC: room.meanRadiantTempC + step })).toBeGreaterThan(
        vote,
      );
      expect(predictedMeanVote({ ...room, relativeHumidity: room.relativeHumidity + 0.05 })).toBeGreaterThan(
        vote,
      );
    }),
  );
});

test('a draught cools where air and surfaces are alike and cooler than clothes', () => {
  fc.assert(
    fc.property(input, (room) => {
      const temp = Math.min(room.airTempC, 24);
      const mild = { ...room, airTempC: temp, meanRadiantTempC: temp, airSpeed: 0.2 };
      expect(predictedMeanVote({ ...mild, airSpeed: 0.8 })).toBeLessThanOrEqual(
        predictedMeanVote(mild) + 1e-8,
      );
    }),
  );
});

test('nobody’s vote leaves 5 % dissatisfied and both sides count alike', () => {
  expect(percentageDissatisfied(0)).toBeCloseTo(5, 12);
  fc.assert(
    fc.property(fc.double({ min: 0, max: 3, noNaN: true }), (vote) => {
      expect(percentageDissatisfied(-vote)).toBe(percentageDissatisfied(vote));
      expect(percentageDissatisfied(vote + 0.1)).toBeGreaterThan(percentageDissatisfied(vote));
    }),
  );
});

test('the middle of the design windows of ISO 7730 is close to neutral at 1.2 met', () => {
  const voteAt = (temp: number, clo: number) =>
    predictedMeanVote({
      airTempC: temp,
      meanRadiantTempC: temp,
      airSpeed: 0.1,
      relativeHumidity: 0.5,
      activityMet: 1.2,
      clothingClo: clo,
    });
  expect(Math.abs(voteAt(24.5, 0.5))).toBeLessThan(0.15);
  expect(Math.abs(voteAt(22, 1.0))).toBeLessThan(0.15);
  expect(Math.abs(voteAt(26, 0.5))).toBeLessThan(0.65);
});

test('what only a bug can pass in is refused with its value', () => {
  const room = {
    airTempC: 22,
    meanRadiantTempC: 22,
    airSpeed: 0.1,
    relativeHumidity: 0.5,
    activityMet: 1.2,
    clothingClo: 1,
  };
  expect(() => predictedMeanVote({ ...room, relativeHumidity: 50 })).toThrow(/relativeHumidity is 50/);
  expect(() => predictedMeanVote({ ...room, airTempC: Number.NaN })).toThrow(/airTempC is NaN/);
});
