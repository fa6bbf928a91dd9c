import type { RandomStream } from '@standstill/numerics';
import type { IntervalValue } from './stop-set.ts';

/** Counts how often an interval holds the truth. */
export interface Coverage {
  readonly add: (interval: IntervalValue, truth: number) => void;
  /** Share that held, 1. */
  readonly share: () => number;
}

export function coverage(): Coverage {
  let [held, all] = [0, 0];
  return {
    add: ({ low, high }, truth) => {
      all += 1;
      if (low <= truth && truth <= high) held += 1;
    },
    share: () => held / all,
  };
}

/** Distances that scatter by `spread` about what `mean` gives for each run from 1 on. */
export function scattered(
  count: number,
  spread: number,
  mean: (run: number) => number,
  stream: RandomStream,
): readonly number[] {
  return Array.from({ length: count }, (_, index) => mean(index + 1) + spread * stream.normal());
}
