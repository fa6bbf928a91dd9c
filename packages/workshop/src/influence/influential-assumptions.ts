import type { UnitSystem } from '@standstill/units';
import { knownsOf } from '../draws/knowns-of.ts';
import type { Job } from '../job/job.ts';
import { printFillings } from '../job/print-fillings.ts';
import type { AssumedValue } from '../results/assumed-value.ts';
import { distanceModel } from './distance-model.ts';
import { screenKnowns } from './screen-knowns.ts';

/** An assumed value and how much hangs on it. */
export interface Influence extends AssumedValue {
  /** m, the most that one standard deviation either way moves the stop of the set-up that it moves most. */
  readonly change_m: number;
}

/**
 * Answers at a glance which assumed values the job's own stop hangs on most; `limits` says it in full.
 *
 * Equation: as `screenKnowns`
 * Assumes: values that only matter together are not seen.
 *
 * @param job - the job, with the stop that it asks about
 * @param options - how many to name, 5 where absent; units of their text
 * @returns the values that move the stop most, the first most; none where nothing assumed moves it, or the car can't stop
 */
export function influentialAssumptions(
  job: Job,
  { most = 5, units = 'us' }: { readonly most?: number; readonly units?: UnitSystem } = {},
): readonly Influence[] {
  const setUpIds = job.setUps.map(({ id }) => id);
  const knowns = knownsOf(job, setUpIds);
  const swings = screenKnowns(distanceModel({ job, setUpIds, knowns }), knowns);
  const changes = new Map(
    knowns.map(({ path }, index) => [path, Math.max(...swings[index]!.subarray(0, setUpIds.length))]),
  );
  return printFillings(job.fillings, units)
    .map((value) => ({ ...value, change_m: changes.get(value.path) ?? 0 }))
    .filter(({ change_m }) => change_m >= leastWorthNaming)
    .toSorted((a, b) => b.change_m - a.change_m)
    .slice(0, most);
}

/** m; nobody measures a part for the sake of less. */
const leastWorthNaming = 0.05;
