/**
 * One implicit step of heat through a row of nodes of which each touches the next and may touch the one after it. The
 * matrix is symmetric and is used twice in a step, so it is factored once. The sums of every row are kept apart from
 * its links (`rows` holds capacity and losses alone), so that no heat is lost to rounding.
 */
export interface HeatWeb {
  /** J/K of each node. */
  readonly capacities: Float64Array;
  /** W/K between node i and i + 1. */
  readonly near: Float64Array;
  /** W/K between node i and i + 2. */
  readonly far: Float64Array;
  /** W/K from each node to the air. */
  readonly losses: Float64Array;
  /** J put into each node in a stage. */
  readonly sources: Float64Array;
  /** One over the pivots, K/J, and what a row takes of the two rows before it, 1. */
  readonly inversePivots: Float64Array;
  readonly fromBefore: Float64Array;
  readonly fromTwoBefore: Float64Array;
}

/**
 * Answers a web of nodes that touch nothing yet.
 *
 * @param nodes - most nodes that it can hold, 1
 * @returns the web; J/K and W/K, all zero
 * Source: [geometry]
 */
export function emptyHeatWeb(nodes: number): HeatWeb {
  const array = (): Float64Array => new Float64Array(nodes);
  return {
    capacities: array(),
    near: array(),
    far: array(),
    losses: array(),
    sources: array(),
    inversePivots: array(),
    fromBefore: array(),
    fromTwoBefore: array(),
  };
}

/**
 * Factors the matrix of an implicit step. Allocates nothing.
 *
 * Equation: C + w K = L D Lᵀ with two bands beside the diagonal.
 *
 * @param web - capacities, links and losses set; pivots are overwritten
 * @param nodes - nodes in use, 1
 * @param weight - w, s, the implicit share of the step
 * Source: [thomas-1949]
 */
export function factorWeb(web: HeatWeb, nodes: number, weight: number): void {
  const { capacities, near, far, losses, inversePivots, fromBefore, fromTwoBefore } = web;
  let [before, twoBefore, oneBeforeFar] = [0, 0, 0];
  let [inverseBefore, inverseTwoBefore, shareBefore] = [0, 0, 0];
  for (let i = 0; i < nodes; i += 1) {
    const after = near[i]!;
    const twoAfter = far[i]!;
    const link = -weight * twoBefore;
    const further = link * inverseTwoBefore;
    const beside = -weight * before - link * shareBefore;
    const share = beside * inverseBefore;
    const touched = losses[i]! + before + twoBefore + after + twoAfter;
    const inverse = 1 / (capacities[i]! + weight * touched - link * further - beside * share);
    fromTwoBefore[i] = further;
    fromBefore[i] = share;
    inversePivots[i] = inverse;
    inverseTwoBefore = inverseBefore;
    inverseBefore = inverse;
    shareBefore = share;
    twoBefore = oneBeforeFar;
    oneBeforeFar = twoAfter;
    before = after;
  }
}

/**
 * Solves one stage of the factored web. Allocates nothing.
 *
 * Equation: (C + w K) x' = C (x_0 + s (x − x_0)) + q: s times along the slope of the stage before, with heat q put in.
 *
 * @param web - as left by `factorWeb`
 * @param nodes - nodes in use, 1
 * @param before - x_0, K, excess over the air at the start of the step
 * @param after - x, K, excess after the stage before; the excess after this one on the way out
 * @param start - s, 1
 * Source: [thomas-1949]
 */
export function solveWeb(
  web: HeatWeb,
  nodes: number,
  before: Float64Array,
  after: Float64Array,
  start: number,
): void {
  const { capacities, sources, inversePivots, fromBefore, fromTwoBefore } = web;
  let [last, lastButOne] = [0, 0];
  for (let i = 0; i < nodes; i += 1) {
    const was = before[i]!;
    const wanted = capacities[i]! * (was + start * (after[i]! - was)) + sources[i]!;
    const value = wanted - fromBefore[i]! * last - fromTwoBefore[i]! * lastButOne;
    after[i] = value;
    lastButOne = last;
    last = value;
  }
  let [next, afterNext] = [0, 0];
  let [toNext, toAfterNext, toAfterThis] = [0, 0, 0];
  for (let i = nodes - 1; i >= 0; i -= 1) {
    const value = after[i]! * inversePivots[i]! - toNext * next - toAfterNext * afterNext;
    after[i] = value;
    afterNext = next;
    next = value;
    toNext = fromBefore[i]!;
    toAfterNext = toAfterThis;
    toAfterThis = fromTwoBefore[i]!;
  }
}
