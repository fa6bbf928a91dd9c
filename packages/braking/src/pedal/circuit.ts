import type { SetUp } from '../set-up/set-up.ts';

/** One of the two circuits, by the brakes that it feeds. */
export type Circuit = 'front' | 'rear' | 'first-diagonal' | 'second-diagonal';

/** Which part of each axle a circuit feeds: 0, a half or all of it, 1. */
export interface CircuitShare {
  readonly front: number;
  readonly rear: number;
}

/**
 * Answers which two circuits a set-up has.
 *
 * Assumes: two cylinders with a balance bar feed an axle each, whatever split is stated.
 *
 * @param setUp - the set-up
 * @returns names of the two circuits
 * @example
 * circuitsOf(exampleSetUp) // => ['front', 'rear']
 */
export function circuitsOf(setUp: SetUp): readonly [Circuit, Circuit] {
  const byAxle = setUp.masterCylinder.kind === 'balance-bar' || setUp.circuitSplit === 'front-rear';
  return byAxle ? ['front', 'rear'] : ['first-diagonal', 'second-diagonal'];
}

/**
 * Answers which part of each axle a circuit feeds.
 *
 * @param circuit - name of the circuit
 * @returns share of the front and of the rear brakes, 1
 * @example
 * circuitShare('first-diagonal').front // => 0.5
 */
export function circuitShare(circuit: Circuit): CircuitShare {
  if (circuit === 'front') return { front: 1, rear: 0 };
  if (circuit === 'rear') return { front: 0, rear: 1 };
  return { front: 0.5, rear: 0.5 };
}
