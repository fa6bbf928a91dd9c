/**
 * One implicit step of heat through a chain of nodes: capacity and losses on the diagonal, conduction beside it. The
 * matrix is symmetric and is used twice in a step, so it is factored once; that is why the general chain solver of
 * numerics is not called here.
 */
export interface HeatChain {
  /** J/(m² K) of each node. */
  readonly capacities: Float64Array;
  /** One over the pivots, m² K/J. */
  readonly inversePivots: Float64Array;
  /** J/(m² K), conduction to the next node times the weight of the step. */
  readonly links: Float64Array;
}

/** What couples the nodes; per m². */
export interface HeatCoupling {
  readonly nodes: number;
  /** W/(m² K) between node i and i + 1. */
  readonly conductances: Float64Array;
  /** Share of the vent's surface at each node, 1. */
  readonly ventShares: Float64Array;
}

/**
 * Answers an empty chain.
 *
 * @param nodes - most nodes that it can hold, 1
 * @returns the chain
 * Source: [geometry]
 * @example
 * emptyHeatChain(3).capacities.length // => 3
 */
export function emptyHeatChain(nodes: number): HeatChain {
  const array = (): Float64Array => new Float64Array(nodes);
  return { capacities: array(), inversePivots: array(), links: array() };
}

/**
 * Factors the matrix of an implicit step. Allocates nothing.
 *
 * Equation: (C + w K) with K of conduction and losses, by symmetric elimination.
 *
 * @param chain - capacities already set, J/(m² K); pivots and links are overwritten
 * @param coupling - conductances, W/(m² K), and vent shares, 1
 * @param weight - w, s, the implicit share of the step
 * @param faceConductance - loss of the first node to the air, W/(m² K)
 * @param ventCoefficient - loss of the vent's surface to the air, W/(m² K)
 * Source: [thomas-1949]
 */
export function factorChain(
  chain: HeatChain,
  coupling: HeatCoupling,
  weight: number,
  faceConductance: number,
  ventCoefficient: number,
): void {
  const { capacities, inversePivots, links } = chain;
  const { nodes, conductances, ventShares } = coupling;
  let link = 0;
  let linkedAway = 0;
  let loss = weight * faceConductance;
  for (let i = 0; i < nodes; i += 1) {
    const nextLink = weight * conductances[i]!;
    loss += weight * ventCoefficient * ventShares[i]!;
    const inverse = 1 / (capacities[i]! + link + nextLink + loss - linkedAway);
    inversePivots[i] = inverse;
    links[i] = nextLink;
    link = nextLink;
    linkedAway = nextLink * nextLink * inverse;
    loss = 0;
  }
}

/**
 * Solves the factored chain in place. Allocates nothing.
 *
 * @param chain - as left by `factorChain`
 * @param nodes - nodes in use, 1
 * @param right - right-hand side, J/m², on the way in; excess over the air, K, on the way out
 * Source: [thomas-1949]
 */
export function solveChain(chain: HeatChain, nodes: number, right: Float64Array): void {
  const { inversePivots, links } = chain;
  for (let i = 1; i < nodes; i += 1) {
    right[i] = right[i]! + links[i - 1]! * inversePivots[i - 1]! * right[i - 1]!;
  }
  let next = 0;
  for (let i = nodes - 1; i >= 0; i -= 1) {
    next = (right[i]! + links[i]! * next) * inversePivots[i]!;
    right[i] = next;
  }
}
