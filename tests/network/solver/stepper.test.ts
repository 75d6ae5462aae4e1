import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Chain, LinearNetwork } from '../../../src/network/solver/linear-network.ts';
import { compileStepper } from '../compile-stepper.ts';
import { denseSolver } from './dense-solver.ts';

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

test('the stepper agrees with a dense solver of the same network to round-off', () => {
  fc.assert(
    fc.property(networks, fc.integer({ min: 0, max: 1e6 }), (network, seed) => {
      const stepper = compileStepper(network, 900, 15);
      const dense = denseSolver(network, 900, 15);
      let state = seed;
      const random = (scale: number) => {
        state = (state * 1103515245 + 12345) % 2147483648;
        return (state / 2147483648 - 0.5) * scale;
      };
      for (let n = 0; n < 6; n++) {
        stepper.nodeW.forEach((_, i) => {
          stepper.nodeW[i] = random(2000);
        });
        stepper.hubW.forEach((_, i) => {
          stepper.hubW[i] = random(2000);
          stepper.hubBoundaryC[i] = random(40);
        });
        stepper.endBoundaryC.forEach((_, i) => {
          stepper.endBoundaryC[i] = random(40);
        });
        stepper.refreshSources();
        stepper.step();
        dense.step({
          nodeW: stepper.nodeW,
          hubW: stepper.hubW,
          endC: stepper.endBoundaryC,
          hubC: stepper.hubBoundaryC,
        });
        for (let c = 0; c < network.chains.length; c++) stepper.settleInside(c);
        const ours = [...stepper.nodeC, ...stepper.hubC];
        const scale = Math.max(1, ...dense.temperatures.map(Math.abs));
        ours.forEach((t, i) => {
          expect(Math.abs(t - dense.temperatures[i]!) / scale).toBeLessThan(1e-7);
        });
      }
    }),
    { numRuns: 150 },
  );
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
  const changed = { ...oneRoom, chains: [{ ...oneRoom.chains[0]!, link: [3, 90] }] };
  const dense = denseSolver(changed, 900, 5);
  dense.temperatures = [...stepper.nodeC, ...stepper.hubC];
  stepper.step();
  dense.step({ nodeW: [0, 0, 0], hubW: [0], endC: [30, 30], hubC: [0] });
  stepper.settleInside(0);
  [...stepper.nodeC, ...stepper.hubC].forEach((t, i) => {
    expect(t).toBeCloseTo(dense.temperatures[i]!, 10);
  });
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
