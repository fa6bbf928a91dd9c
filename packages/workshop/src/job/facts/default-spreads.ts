import type { Origin } from '../document/quantity-input.ts';
import type { SpreadKind } from './fact.ts';

/** A spread that is not stated: a share of the value, or an amount of its own (SI). */
interface DefaultSpread {
  readonly by: 'share' | 'amount';
  readonly measured: number;
  readonly specified: number;
  readonly assumed: number;
}

/**
 * One standard deviation to take where the job states a value but not its spread. All are common practice, none is
 * measured: a spread that matters is worth stating in the job.
 */
export const defaultSpreads: Readonly<Record<SpreadKind, DefaultSpread>> = {
  /** What the person chooses: the speed, the foot, the weather of the question. */
  chosen: { by: 'share', measured: 0, specified: 0, assumed: 0 },
  /** Machined or taped sizes. */
  size: { by: 'share', measured: 0.002, specified: 0.003, assumed: 0.03 },
  mass: { by: 'share', measured: 0.005, specified: 0.02, assumed: 0.05 },
  /** Load shares, efficiencies: already a share of one. */
  share: { by: 'amount', measured: 0.005, specified: 0.01, assumed: 0.02 },
  /** Heat, air, inertia and tire figures off a sheet. */
  property: { by: 'share', measured: 0.03, specified: 0.05, assumed: 0.15 },
  friction: { by: 'share', measured: 0.03, specified: 0.06, assumed: 0.1 },
  /** How much things stretch. */
  compliance: { by: 'share', measured: 0.08, specified: 0.15, assumed: 0.3 },
  temperature: { by: 'amount', measured: 3, specified: 5, assumed: 10 },
};

/**
 * The spread to take for a value that states none.
 *
 * @param kind - row of the table
 * @param origin - how the value is known
 * @param value - the value, SI
 * @returns one standard deviation, SI
 */
export function defaultSpread(kind: SpreadKind, origin: Origin, value: number): number {
  const row = defaultSpreads[kind];
  return row.by === 'share' ? row[origin] * Math.abs(value) : row[origin];
}
