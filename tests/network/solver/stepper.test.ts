import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Chain, LinearNetwork } from '../../../src/network/solver/linear-network.ts';
import type { Stepper } from '../../../src/network/solver/stepper-interface.ts';
import { compileStepper } from '../compile-stepper.ts';
import { exactTemperatures } from './exact-solver.ts';

const conductance = fc.double({ min: 0.1, max: 500, noNaN: true });
const capacity = fc.double({ min: 0, max: 5e6, noNaN: true });

/** Any network of up to five hubs and six chains, some through chains, some with massless nodes. */
const networks: fc.Arbitrary<LinearNetwork> = fc.integer({ min: 1, max: 5 }).chain((hubCount) => {
  const hub = fc.integer({ min: 0, max: hubCount - 1 });
  const hubEnd = fc
    .uniqueArray(fc.tuple(hub, conductance), { minLength: 1, maxLength: 2, selector: ([h]) => h })
    .map((pairs) => pairs.map(([h, g]) => ({ hub: h, conductance: g })));
  const chain: fc.Arbitrary<Chain> = fc.integer({ min: 1, max: 6 }).chain((n) =>
    fc.record({
      id: fc.constant('chain'),
      capacity: fc
        .tuple(
          fc.array(capacity, { minLength: n - 1, maxLength: n - 1 }),
          fc.double({ min: 1e3, max: 5e6, noNaN: true }),
        )
        .map(([some, one]) => [...some, one]),
      link: fc.array(conductance, { minLength: n - 1, maxLength: n - 1 }),
      a: fc.oneof(
        fc.record({ boundary: conductance, hubs: fc.constant([]) }),
        fc.record({ boundary: fc.constant(0), hubs: hubEnd }),
      ),
      b: fc.record({ boundary: fc.oneof(fc.constant(0), conductance), hubs: hubEnd }),
    }),
  );
  return fc.record({
    chains: fc.array(chain, { minLength: 1, maxLength: 6 }),
    hubs: fc.array(
      fc.record({
        id: fc.constant('hub'),
        capacity: fc.double({ min: 1e3, max: 1e6, noNaN: true }),
        boundary: conductance,
      }),
      {
        minLength: hubCount,
        maxLength: hubCount,
      },
    ),
    hubLinks: fc
      .array(fc.record({ from: hub, to: hub, conductance }), { maxLength: 4 })
      .map((links) => links.filter((link) => link.from !== link.to)),
  });
});

const HOUR_S = 3600;
const temperaturesOf = (stepper: Stepper) => {
  for (let c = 0; c < stepper.chains; c++) stepper.settleInside(c);
  return [...stepper.nodeC.subarray(0, stepper.nodes), ...stepper.hubC.subarray(0, stepper.hubs)];
};

/** A stepper of any network with any inputs, and the same as arrays. */
function startedAt(network: LinearNetwork, stepS: number, seed: number) {
  const stepper = compileStepper(network, stepS, 15);
  let state = seed;
  const random = (scale: number) => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return (state / 2147483648 - 0.5) * scale;
  };
  for (const [column, scale] of [
    [stepper.nodeW, 2000],
    [stepper.hubW, 2000],
    [stepper.hubBoundaryC, 40],
    [stepper.endBoundaryC, 40],
  ] as const)
    for (let i = 0; i < column.length; i++) column[i] = random(scale);
  stepper.refreshSources();
  return stepper;
}

test('an hour of any network nears the exact solution as steps grow short', () => {
  // The largest error of an hour of steps this long, by the largest change in the network. First order in stepS near ends
  // that jump, second order elsewhere.
  const ALLOWED = { 60: 0.02, 15: 0.006, 5: 0.002 } as const;
  fc.assert(
    fc.property(networks, fc.integer({ min: 0, max: 1e6 }), (network, seed) => {
      for (const stepS of [60, 15, 5] as const) {
        const stepper = startedAt(network, stepS, seed);
        const { nodeW, hubW, endBoundaryC: endC, hubBoundaryC: hubC } = stepper;
        const start = temperaturesOf(stepper);
        const exact = exactTemperatures(network, start, { nodeW, hubW, endC, hubC }, HOUR_S);
        for (let n = 0; n < HOUR_S / stepS; n++) stepper.step();
        const change = Math.max(1, ...exact.map((tempC, i) => Math.abs(tempC - start[i]!)));
        temperaturesOf(stepper).forEach((tempC, i) => {
          expect(Math.abs(tempC - exact[i]!) / change).toBeLessThan(ALLOWED[stepS]);
        });
      }
    }),
    { numRuns: 100, seed: 20_261 },
  );
});

test('what any network takes up in a step of any length is what came in, to round-off', () => {
  fc.assert(
    fc.property(networks, fc.integer({ min: 0, max: 1e6 }), (network, seed) => {
      const stepper = startedAt(network, 900, seed);
      for (const stepS of [900, 1800, 432_000, 3600, 900, 900]) {
        if (stepS !== stepper.stepS) {
          stepper.setStep(stepS);
          stepper.refreshEnds();
          stepper.refreshSources();
        }
        const before = temperaturesOf(stepper);
        stepper.endSum.fill(0);
        stepper.step();
        const after = temperaturesOf(stepper);
        const capacities = [
          ...stepper.nodeJ.subarray(0, stepper.nodes),
          ...stepper.hubJ.subarray(0, stepper.hubs),
        ];
        const terms = capacities.map((joule, i) => (joule * (after[i]! - before[i]!)) / stepS);
        network.hubs.forEach(({ boundary }, h) => {
          terms.push(boundary * (stepper.hubMeanC[h]! - stepper.hubBoundaryC[h]!), -stepper.hubW[h]!);
        });
        network.chains.forEach((chain, c) => {
          terms.push(chain.a.boundary * (stepper.endSum[2 * c]! - stepper.endBoundaryC[2 * c]!));
          if (chain.b.boundary > 0) {
            const meanC = new Float64Array(1);
            stepper.readInnerMeans(Int32Array.of(c), 1, meanC);
            terms.push(chain.b.boundary * (meanC[0]! - stepper.endBoundaryC[2 * c + 1]!));
          }
        });
        for (let i = 0; i < stepper.nodes; i++) terms.push(-stepper.nodeW[i]!);
        const size = terms.reduce((sum, watt) => sum + Math.abs(watt), 1);
        expect(Math.abs(terms.reduce((sum, watt) => sum + watt, 0)) / size).toBeLessThan(1e-9);
      }
    }),
    { numRuns: 150, seed: 20_262 },
  );
});

test('a step of twice the length and back leaves the temperatures as they are', () => {
  const stepper = compileStepper(oneRoom, 900, 5);
  stepper.hubBoundaryC.fill(0);
  stepper.endBoundaryC.fill(30);
  stepper.refreshSources();
  for (let n = 0; n < 5; n++) stepper.step();
  const before = temperaturesOf(stepper);
  for (const stepS of [1800, 900, 3600, 900]) {
    stepper.setStep(stepS);
    stepper.refreshEnds();
    temperaturesOf(stepper).forEach((tempC, i) => {
      expect(tempC).toBeCloseTo(before[i]!, 11);
    });
  }
});

test('a period that ends as it began leaves slow modes where every further period would', () => {
  const slow: LinearNetwork = {
    ...oneRoom,
    chains: [{ ...oneRoom.chains[0]!, capacity: [0, 4e7, 0], link: [2, 2] }],
  };
  const stepper = compileStepper(slow, 3600, 5);
  const day = () => {
    for (let hour = 0; hour < 24; hour++) {
      stepper.endBoundaryC[0] = 10 + 8 * Math.sin((hour * Math.PI) / 12);
      stepper.hubBoundaryC[0] = 20;
      stepper.refreshSources();
      stepper.step();
    }
  };
  // The mass has a time constant of 16 weeks; left to itself it would take years to come to rest.
  for (let n = 0; n < 12; n++) {
    stepper.beginPeriod();
    day();
    stepper.endPeriod(86_400);
  }
  const before = temperaturesOf(stepper);
  for (let n = 0; n < 365; n++) day();
  temperaturesOf(stepper).forEach((tempC, i) => {
    expect(Math.abs(tempC - before[i]!)).toBeLessThan(0.01);
  });
});

const oneRoom: LinearNetwork = {
  chains: [
    {
      id: 'wall',
      capacity: [1e5, 2e5, 1e5],
      link: [20, 20],
      a: { boundary: 50, hubs: [] },
      b: { boundary: 0, hubs: [{ hub: 0, conductance: 60 }] },
    },
  ],
  hubs: [{ id: 'room', capacity: 1e5, boundary: 10 }],
  hubLinks: [],
};

test('links that change on the way leave the temperatures as they are', () => {
  const stepper = compileStepper(oneRoom, 900, 5);
  stepper.endBoundaryC.fill(30);
  stepper.hubBoundaryC.fill(0);
  stepper.refreshSources();
  for (let n = 0; n < 5; n++) stepper.step();
  stepper.settleInside(0);
  const before = stepper.nodeC[1]!;
  stepper.link.set([3, 90]);
  stepper.refreshChain(0);
  stepper.refreshEnds();
  stepper.settleInside(0);
  expect(stepper.nodeC[1]).toBeCloseTo(before, 12);
});

test('holding keeps a hub exactly at its set-point within its power, and at its power beyond it', () => {
  const stepper = compileStepper(oneRoom, 900, 5);
  stepper.endBoundaryC.fill(0);
  stepper.hubBoundaryC.fill(0);
  stepper.holdLowC[0] = 20;
  stepper.refreshSources();
  for (let n = 0; n < 400; n++) stepper.step();
  expect(stepper.hubC[0]).toBeCloseTo(20, 9);
  const steady = 20 * (10 + 1 / (1 / 50 + 1 / 20 + 1 / 20 + 1 / 60));
  expect(stepper.heldW[0]).toBeCloseTo(steady, 3);

  stepper.holdMaxW[0] = steady / 2;
  for (let n = 0; n < 400; n++) stepper.step();
  expect(stepper.heldW[0]).toBeCloseTo(steady / 2, 9);
  expect(stepper.hubC[0]).toBeCloseTo(10, 3);
});

test('two held hubs that share heat both keep their set-points', () => {
  const network: LinearNetwork = {
    chains: oneRoom.chains,
    hubs: [oneRoom.hubs[0]!, { id: 'next', capacity: 2e5, boundary: 30 }],
    hubLinks: [{ from: 0, to: 1, conductance: 80 }],
  };
  const stepper = compileStepper(network, 900, 10);
  stepper.endBoundaryC.fill(-5);
  stepper.hubBoundaryC.fill(-5);
  stepper.holdLowC.set([21, 18]);
  stepper.refreshSources();
  for (let n = 0; n < 400; n++) stepper.step();
  expect(stepper.hubC[0]).toBeCloseTo(21, 8);
  expect(stepper.hubC[1]).toBeGreaterThanOrEqual(18 - 1e-8);
});

test('two rooms joined by next to no resistance stand at one temperature and lose no heat to round-off', () => {
  const network: LinearNetwork = {
    chains: [],
    hubs: [
      { id: 'room', capacity: 1e5, boundary: 10 },
      { id: 'next', capacity: 2e5, boundary: 30 },
    ],
    hubLinks: [{ from: 0, to: 1, conductance: 1e9 }],
  };
  const stepper = compileStepper(network, 900, 0);
  stepper.hubBoundaryC.fill(0);
  stepper.hubW[0] = 800;
  for (let n = 0; n < 400; n++) stepper.step();
  // Steady: 800 W over 10 + 30 W/K.
  expect(stepper.hubC[0]).toBeCloseTo(20, 5);
  expect(stepper.hubC[1]).toBeCloseTo(20, 5);
  expect(10 * stepper.hubC[0]! + 30 * stepper.hubC[1]!).toBeCloseTo(800, 9);
});

test('a network that cannot be stepped is refused by name', () => {
  const bad = (chain: Partial<Chain>): LinearNetwork => ({
    ...oneRoom,
    chains: [{ ...oneRoom.chains[0]!, ...chain }],
  });
  expect(() => compileStepper(bad({ link: [20] }), 900, 20)).toThrow(/wall has 1 links/);
  expect(() => compileStepper(bad({ link: [20, 0] }), 900, 20)).toThrow(/link of wall is 0/);
  expect(() => compileStepper(bad({ capacity: [1, Number.NaN, 1] }), 900, 20)).toThrow(
    /capacity of wall is NaN/,
  );
  expect(() => compileStepper(oneRoom, 0, 20)).toThrow(/stepS is 0/);
});
