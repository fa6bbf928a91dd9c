import { quickStop, stopWorkspace } from '@standstill/braking';
import type { StopMarch } from '@standstill/braking';
import { orNone } from '../draws/or-none.ts';
import type { Job } from '../job/job.ts';
import type { Known } from '../job/known.ts';
import { stopInputOf } from '../predict/evaluate.ts';
import { settlingPlan } from '../settle/plan/settling-plan.ts';
import type { Overrides, Settled } from '../settle/settle.ts';

export interface DistanceModelInput {
  readonly job: Job;
  readonly setUpIds: readonly string[];
  /** The uncertain numbers that values are given for. */
  readonly knowns: readonly Known[];
  readonly overrides?: Overrides;
}

/** What is asked of every draw: distances first, one a set-up, then each other set-up's less the first one's. */
export interface DistanceModel {
  /** How many answers there are. */
  readonly outputs: number;
  /** Fills `into`, m, from one value for each known, SI; NaN where such a car has no answer. */
  readonly answer: (values: Float64Array, into: Float64Array) => void;
}

/**
 * The stopping distances of set-ups, and the differences from the first, as a function of a job's uncertain numbers.
 *
 * @param input - job, set-ups, uncertain numbers, overrides
 * @returns the function; it keeps room to work in, so that a run allocates next to nothing
 */
export function distanceModel({ job, setUpIds, knowns, overrides = {} }: DistanceModelInput): DistanceModel {
  const plan = settlingPlan(job, setUpIds, knowns, overrides);
  const march = stopWorkspace();
  const count = setUpIds.length;
  return {
    outputs: Math.max(1, 2 * count - 1),
    answer: (values, into) => {
      plan.fill(values, 1, 0);
      for (let k = 0; k < count; k += 1) into[k] = distanceOf(plan.settled[k]!, march);
      for (let k = 1; k < count; k += 1) into[count - 1 + k] = into[k]! - into[0]!;
    },
  };
}

/** m; NaN where such a car does not stop or is outside what the formulas hold for. */
function distanceOf(settled: Settled, march: StopMarch): number {
  const distance = orNone(() => {
    const input = stopInputOf(settled);
    const stop = quickStop(input, march);
    return stop.cameToRest && input.foot.force > 0 ? stop.distance : null;
  });
  return distance ?? NaN;
}
