/** What couples the nodes of a chain; per m². */
export interface HeatCoupling {
  readonly nodes: number;
  /** W/(m² K) between node i and i + 1. */
  readonly conductances: Float64Array;
  /** Share of the vent's surface at each node, 1. */
  readonly ventShares: Float64Array;
}

/**
 * One implicit step of heat through a chain of nodes: capacity and losses on the diagonal, conduction beside it. The
 * matrix is symmetric and is used twice in a step, so it is factored once; that is why the general chain solver of
 * numerics is not called here.
 *
 * Equation: (C + w K) x = C (x_0 + s (x_1 − x_0)) + w q, K of conduction and losses, by symmetric elimination; x_1 is the
 * stage before, x_0 where there is none (s = 1).
 *
 * Its numbers come and go by its fields, since a function takes its numbers through memory where it is called, not inlined;
 * allocates nothing after it is made.
 * Source: [thomas-1949]
 */
export class HeatChain {
  /** C, J/(m² K) of each node; set before `factor`. */
  readonly capacities: Float64Array;
  /** x_0 and x, excess over the air at each node, K: at the start of the step, and after the stage just solved. */
  readonly before: Float64Array;
  readonly after: Float64Array;
  /** w, s, the implicit share of the step. */
  weight = NaN;
  /** W/(m² K), loss of the first node to the air. */
  faceConductance = NaN;
  /** W/(m² K), loss of the vent's surface to the air. */
  ventCoefficient = NaN;
  /** s, 1: how far along the slope of the stage before the next one starts. */
  start = NaN;
  /** q, W/m² into the first node in the next stage. */
  source = NaN;
  /** W/m² lost in the vent at the end of the stage just solved. */
  ventLoss = NaN;
  /** One over the pivots, m² K/J, and the conduction to the next node times the weight, J/(m² K). */
  readonly #inversePivots: Float64Array;
  readonly #links: Float64Array;

  /** @param nodes - most nodes that it can hold, 1 */
  constructor(nodes: number) {
    this.capacities = new Float64Array(nodes);
    this.before = new Float64Array(nodes);
    this.after = new Float64Array(nodes);
    this.#inversePivots = new Float64Array(nodes);
    this.#links = new Float64Array(nodes);
  }

  /** Factors the matrix of a step. */
  factor({ nodes, conductances, ventShares }: HeatCoupling): void {
    const { weight, capacities } = this;
    const inversePivots = this.#inversePivots;
    const links = this.#links;
    const ventWeight = weight * this.ventCoefficient;
    let link = 0;
    let linkedAway = 0;
    let loss = weight * this.faceConductance;
    for (let i = 0; i < nodes; i += 1) {
      const nextLink = weight * conductances[i]!;
      loss += ventWeight * ventShares[i]!;
      const inverse = 1 / (capacities[i]! + link + nextLink + loss - linkedAway);
      inversePivots[i] = inverse;
      links[i] = nextLink;
      link = nextLink;
      linkedAway = nextLink * nextLink * inverse;
      loss = 0;
    }
  }

  /** Solves one stage of the factored step: `after` goes from the stage before to this one. */
  solve({ nodes, ventShares }: HeatCoupling): void {
    const { capacities, before, after, start } = this;
    const inversePivots = this.#inversePivots;
    const links = this.#links;
    let handedOn = this.weight * this.source;
    for (let i = 0; i < nodes; i += 1) {
      const first = before[i]!;
      const right = capacities[i]! * (first + start * (after[i]! - first)) + handedOn;
      const solved = right * inversePivots[i]!;
      after[i] = solved;
      handedOn = links[i]! * solved;
    }
    let next = 0;
    let vented = 0;
    for (let i = nodes - 1; i >= 0; i -= 1) {
      next = after[i]! + links[i]! * inversePivots[i]! * next;
      after[i] = next;
      vented += ventShares[i]! * next;
    }
    this.ventLoss = this.ventCoefficient * vented;
  }
}
