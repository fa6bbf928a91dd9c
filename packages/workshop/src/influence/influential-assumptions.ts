import { quickStop, stopWorkspace } from '@standstill/braking';
import { OutOfRangeError } from '@standstill/numerics';
import type { UnitSystem } from '@standstill/units';
import { knownsOf } from '../draws/knowns-of.ts';
import type { Job } from '../job/job.ts';
import type { Known } from '../job/known.ts';
import { printFillings } from '../job/print-fillings.ts';
import type { AssumedValue } from '../results/assumed-value.ts';
import { central } from '../settle/draw.ts';
import type { Draw } from '../settle/draw.ts';
import { settle } from '../settle/settle.ts';

/** An assumed value and how much hangs on it. */
export interface Influence extends AssumedValue {
  /** m, what one standard deviation of it either way moves the stop of the set-up that it moves most. */
  readonly change_m: number;
}

/**
 * Answers which assumed values the job's own stop hangs on most: what to measure first.
 *
 * Equation: |d(x + s) − d(x − s)| / 2, one value x at a time with its spread s, the others at their middle
 * Assumes: near enough straight over one spread; values that only matter together are not seen.
 *
 * @param job - the job, with the stop that it asks about
 * @param options - how many to name, 5 where absent; units of their text
 * @returns the values that move the stop most, the first most; none where nothing assumed moves it, or the car can't stop
 */
export function influentialAssumptions(
  job: Job,
  { most = 5, units = 'us' }: { readonly most?: number; readonly units?: UnitSystem } = {},
): readonly Influence[] {
  const ids = job.setUps.map(({ id }) => id);
  const assumed = knownsOf(job, ids).filter(({ origin }) => origin === 'assumed');
  const changes = new Map(assumed.map((known) => [known.path, greatestChange(job, ids, known)]));
  return printFillings(job.fillings, units)
    .map((value) => ({ ...value, change_m: changes.get(value.path) ?? 0 }))
    .filter(({ change_m }) => change_m >= leastWorthNaming)
    .toSorted((a, b) => b.change_m - a.change_m)
    .slice(0, most);
}

/** m; nobody measures a part for the sake of less. */
const leastWorthNaming = 0.05;

function greatestChange(job: Job, ids: readonly string[], known: Known): number {
  const [up, down] = [shifted(known, known.spread), shifted(known, -known.spread)];
  const changes = ids.map((id) => Math.abs(distance(job, id, up) - distance(job, id, down)) / 2);
  return Math.max(0, ...changes.filter((change) => Number.isFinite(change)));
}

/** Every value at its middle, but one moved, and that no further than it can be. */
function shifted({ path, low, high }: Known, by: number): Draw {
  return (known) => {
    const value = central(known);
    return known.path === path ? Math.min(high, Math.max(low, value + by)) : value;
  };
}

const march = stopWorkspace();

/** m; NaN where such a car is outside what the formulas hold for. */
function distance(job: Job, setUpId: string, draw: Draw): number {
  try {
    const { setUp, road, foot, speed, startTemperature } = settle(job, setUpId, draw);
    const rotorTemperatures = { front: startTemperature, rear: startTemperature };
    return quickStop({ setUp, road, foot, speed, rotorTemperatures }, march).distance;
  } catch (error) {
    if (error instanceof OutOfRangeError) return NaN;
    throw error;
  }
}
