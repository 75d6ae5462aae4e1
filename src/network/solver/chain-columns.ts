// What the stepper keeps of every chain beside the network's own columns: the modes of its interior, by the rows of its
// inner nodes, and what a step needs of its two ends. Nobody outside the solver reads these.

import type { SolverCapacity } from './network-columns.ts';

export type ChainColumns = ReturnType<typeof createChainColumns>;

/** Columns with room for so many nodes and chains. */
export function createChainColumns({ nodes, chains }: SolverCapacity) {
  const perNode = () => new Float64Array(nodes);
  const perChain = () => new Float64Array(chains);
  return {
    byMode: {
      /** how much there is of it, the share a step keeps, what it takes of each end's temperature and gives each end */
      amplitude: perNode(),
      decay: perNode(),
      fromA: perNode(),
      fromB: perNode(),
      /** what it takes of each end's rise from mean to mean */
      riseFromA: perNode(),
      riseFromB: perNode(),
      /** what heat put inside adds to it in a step */
      heatInside: perNode(),
      /** amplitude by temperatures as shapes have them */
      scale: perNode(),
      /** whatever the step: share of storage in its storage and conduction, and how it couples to each end */
      storageShare: perNode(),
      shapeA: perNode(),
      shapeB: perNode(),
    },
    byChain: {
      /** heat capacity of each end over the step as its mean feels it [W/K]; the end's way by its mean's [–] */
      storageA: perChain(),
      storageB: perChain(),
      endByMeanA: perChain(),
      endByMeanB: perChain(),
      /** what couples each end to the interior less what comes back, and to the other end [W/K] */
      interiorA: perChain(),
      interiorB: perChain(),
      across: perChain(),
      /** heat that the interior takes of each end for its own rise from mean to mean, and for that of the other [W/K] */
      delayA: perChain(),
      delayAcross: perChain(),
      delayB: perChain(),
      /** mean of each end in the step before, as seen from a step of this length, and its rise to there [°C], [K] */
      meanA: perChain(),
      meanB: perChain(),
      riseA: perChain(),
      riseB: perChain(),
      /** what each end gets in the next step of what it and the interior hold, and of heat put inside [W] */
      storedA: perChain(),
      storedB: perChain(),
      /** of that, what heat put inside gives within the step [W] */
      heatedA: perChain(),
      heatedB: perChain(),
      /** 1 where heat may be put inside; 1 while it is */
      mayHeatInside: perChain(),
      hasHeatInside: perChain(),
      /** end temperature per watt, coupled to the hubs: at a, at b from a, at b [K/W] */
      responseA: perChain(),
      responseAcross: perChain(),
      responseB: perChain(),
      /** heat into each end from sources and boundary [W] */
      sourceA: perChain(),
      sourceB: perChain(),
      /** end temperatures without the hubs [°C] */
      freeA: perChain(),
      freeB: perChain(),
    },
    /** of each chain: inner node · inner nodes + mode; made anew at each load */
    shapes: [] as Float64Array[],
    /** what storage and links of a chain make of its inner nodes' temperatures, on the way to its modes [W] */
    modeLoad: perNode(),
  };
}
