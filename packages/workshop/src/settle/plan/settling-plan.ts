import { randomStream } from '@standstill/numerics';
import type { Job } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';
import { settle } from '../settle.ts';
import type { Overrides, Settled } from '../settle.ts';
import { layOut } from './lay-out.ts';
import { Refill } from './refill.ts';
import { sameNumbers } from './same-numbers.ts';

/** Set-ups of a job that are settled again and again, each time with other values. */
export interface SettlingPlan {
  /** In the order of the ids, as last filled. Whoever wants to keep what is in them copies it: the next draw goes there. */
  readonly settled: readonly Settled[];
  /** Settles all of them for one draw: number k of the plan's knowns stands at values[k × stride + place]. */
  readonly fill: (values: Float64Array, stride: number, place: number) => void;
  /** False where the records are made anew for each draw, since writing into them does not give what `settle` gives. */
  readonly isInPlace: boolean;
}

/** Draws on which a plan has to show that it gives what `settle` gives, before it is used. */
const trials = 3;

/**
 * Lays out set-ups so that each draw only writes its numbers into records that are there: what `settle` answers, without
 * making it anew. `settle` is the one that is right: a plan that does not give the same on a few wide draws calls it
 * for every draw, and a law test holds the two to each other, bit by bit.
 *
 * @param job - the job
 * @param setUpIds - ids of the set-ups; parts that they share are one record here
 * @param knowns - the uncertain numbers of these set-ups, in the order of their columns
 * @param overrides - speed, m/s, and pedal force, N, to ask about instead of the job's
 * @returns the plan
 */
export function settlingPlan(
  job: Job,
  setUpIds: readonly string[],
  knowns: readonly Known[],
  overrides: Overrides = {},
): SettlingPlan {
  const anew = settledAnew(job, setUpIds, knowns, overrides);
  const inPlace = settledInPlace(job, setUpIds, knowns, overrides);
  const stream = randomStream(1, 'trials of a settling plan');
  for (let trial = 0; trial < trials; trial += 1) {
    const values = Float64Array.from(knowns, (known) => wideDraw(known, stream.uniform()));
    anew.fill(values, 1, 0);
    inPlace.fill(values, 1, 0);
    if (!sameNumbers(inPlace.settled, anew.settled)) return anew;
  }
  return inPlace;
}

function settledInPlace(
  job: Job,
  setUpIds: readonly string[],
  knowns: readonly Known[],
  overrides: Overrides,
): SettlingPlan {
  const refill = new Refill(knowns);
  const settled = layOut({ job, setUpIds, overrides, refill });
  return {
    settled,
    fill: (values, stride, place) => refill.fill(values, stride, place),
    isInPlace: true,
  };
}

function settledAnew(
  job: Job,
  setUpIds: readonly string[],
  knowns: readonly Known[],
  overrides: Overrides,
): SettlingPlan {
  const columns = new Map(knowns.map(({ path }, column) => [path, column]));
  const settled = setUpIds.map((id) => settle(job, id, undefined, overrides));
  const fill = (values: Float64Array, stride: number, place: number): void => {
    const draw = ({ path, value }: Known): number => {
      const column = columns.get(path);
      return column === undefined ? value : values[column * stride + place]!;
    };
    setUpIds.forEach((id, index) => (settled[index] = settle(job, id, draw, overrides)));
  };
  return { settled, fill, isInPlace: false };
}

/** Anything between half and twice the value that can be true, so that limits between numbers are met too. */
function wideDraw({ value, low, high }: Known, share: number): number {
  const wide = value === 0 ? share : value * (0.5 + 1.5 * share);
  return Math.min(high, Math.max(low, wide));
}
