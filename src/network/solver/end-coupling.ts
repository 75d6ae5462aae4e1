// The two ends of every chain, tied to their boundaries, to the inside and through it to each other, and to the hubs they
// touch: conductances in; end temperatures per watt, and what the ends put on the hub system, out. Anew each hour, when
// films have changed. Method: stepper.ts.

/** The stepper's own arrays, read here but for `base`. */
export interface EndArrays {
  /** first node of each chain */
  readonly first: Int32Array;
  /** by end: boundary conductance [W/K] */
  readonly endBoundary: Float64Array;
  /** by end and slot: conductance to its hub [W/K]; hub index, the place after the last hub for none */
  readonly endHubG: Float64Array;
  readonly hubAt: Int32Array;
  /** hubs · hubs, symmetric: what chain ends put on the hubs [W/K]; written here */
  readonly base: Float64Array;
}

/** What holds each end from inside, by chain [W/K]; chain-interior.ts. */
export interface EndInsides {
  readonly storageA: Float64Array;
  readonly storageB: Float64Array;
  readonly insideA: Float64Array;
  readonly insideB: Float64Array;
  readonly across: Float64Array;
}

/** Ties with room for so many chains. */
export function createEndTies(
  capacity: { chains: number },
  { first, endBoundary, endHubG, hubAt, base }: EndArrays,
  insides: EndInsides,
) {
  let hubs = 0;
  const perChain = () => new Float64Array(capacity.chains);
  const byChain = {
    /** end temperature per watt, tied to the hubs: at a, at b from a, at b [K/W] */
    tiedA: perChain(),
    cross: perChain(),
    tiedB: perChain(),
  };

  /** After endBoundary, endHubG or the insides changed. */
  function refresh(chainCount: number, hubCount: number): void {
    const { storageA, storageB, insideA, insideB, across } = insides;
    const { tiedA, cross, tiedB } = byChain;
    const starts = first;
    const g = endHubG;
    const at = hubAt;
    const boundary = endBoundary;
    const sums = base;
    hubs = hubCount;
    for (let i = 0; i < hubCount * hubCount; i++) sums[i] = 0;
    for (let c = 0; c < chainCount; c++) {
      const a = 4 * c;
      const b = a + 2;
      const over = across[c]!;
      const tieA = storageA[c]! + boundary[2 * c]! + insideA[c]! + g[a]! + g[a + 1]!;
      const tieB = storageB[c]! + boundary[2 * c + 1]! + insideB[c]! + g[b]! + g[b + 1]!;
      // A massless end held by nothing leaves nothing to divide by; the floors keep it finite.
      if (starts[c]! + 1 === starts[c + 1]!) {
        const both = 1 / Math.max(1e-12, tieA + tieB);
        tiedA[c] = both;
        cross[c] = both;
        tiedB[c] = both;
      } else {
        const inverseDeterminant = 1 / Math.max(1e-24, tieA * tieB - over * over);
        tiedA[c] = tieB * inverseDeterminant;
        cross[c] = over * inverseDeterminant;
        tiedB[c] = tieA * inverseDeterminant;
      }
      addEnd(b, tiedB[c]!);
      if (at[a]! === hubCount) continue;
      addEnd(a, tiedA[c]!);
      for (let s = a; s < b; s++) for (let t = b; t < b + 2; t++) couple(s, t, cross[c]!);
    }
  }

  /** An end's own couplings on the hub system: +g on the diagonal, −g·k·g among its hubs. */
  function addEnd(slot: number, k: number): void {
    const g = endHubG;
    const at = hubAt;
    const sums = base;
    const hubCount = hubs;
    const g0 = g[slot]!;
    const g1 = g[slot + 1]!;
    const h0 = at[slot]!;
    const h1 = at[slot + 1]!;
    if (h0 < hubCount) sums[h0 * hubCount + h0]! += g0 - g0 * k * g0;
    if (h1 < hubCount) sums[h1 * hubCount + h1]! += g1 - g1 * k * g1;
    couple(slot, slot + 1, k);
  }

  /** −g·k·g between the hubs of two slots, both ways. */
  function couple(slot: number, other: number, k: number): void {
    const from = hubAt[slot]!;
    const to = hubAt[other]!;
    const hubCount = hubs;
    if (from === hubCount || to === hubCount) return;
    const value = endHubG[slot]! * k * endHubG[other]!;
    base[from * hubCount + to]! -= value;
    base[to * hubCount + from]! -= value;
  }

  return { refresh, byChain };
}
