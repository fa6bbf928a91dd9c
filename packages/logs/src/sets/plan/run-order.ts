import { requireRange } from '@standstill/numerics';

/** One run of a test. */
export interface PlannedRun {
  /** 1-based over all runs. */
  readonly order: number;
  readonly set: 'before' | 'after' | 'repeat';
  /** `warm-up` runs are driven and not counted. */
  readonly purpose: 'warm-up' | 'counted';
  readonly direction: 'out' | 'back';
}

export interface RunOrderInput {
  /** Counted runs in each set; an odd number is rounded up, so that as many go out as back. */
  readonly runsPerSet: number;
  /** Runs before the counted ones of each set; 2 where absent. */
  readonly warmUps?: number;
  /** Whether the old set-up is driven once more after the new one. */
  readonly withRepeat: boolean;
}

/**
 * In which order to drive: all runs of a set-up in one block, because parts take time to change, each block with warm-ups
 * first, out and back in turn. Each set has the same directions at the same run numbers, so that neither direction nor
 * warming can pass for the change; the repeat of the old set-up shows what moved meanwhile.
 *
 * @param input - counted runs and warm-ups in each set, 1; whether there is a repeat
 * @returns the runs in the order in which they are driven
 * @throws OutOfRangeError where the numbers of runs are outside 1 to 1000 and 0 to 100
 */
export function runOrder({ runsPerSet, warmUps = 2, withRepeat }: RunOrderInput): readonly PlannedRun[] {
  const counted = 2 * Math.ceil(requireRange('runs in each set', runsPerSet, '', 1, 1000) / 2);
  const before = Math.round(requireRange('warm-up runs', warmUps, '', 0, 100));
  const sets = withRepeat ? (['before', 'after', 'repeat'] as const) : (['before', 'after'] as const);
  return sets.flatMap((set, block) =>
    Array.from({ length: before + counted }, (_, place): PlannedRun => {
      const order = block * (before + counted) + place + 1;
      const direction = (place - before) % 2 === 0 ? 'out' : 'back';
      return { order, set, purpose: place < before ? 'warm-up' : 'counted', direction };
    }),
  );
}
