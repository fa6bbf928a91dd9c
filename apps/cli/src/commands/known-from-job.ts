import type { UnitSystem } from '@standstill/units';
import {
  conditionsFacts,
  predict,
  setUpMismatch,
  statedConfounders,
  type CompareRunsInput,
  type Job,
  type JobRun,
} from '@standstill/workshop';
import { knownOptions } from '../input/known-options.ts';
import { readQuantityOption } from '../input/read-quantity-option.ts';
import { requireJob } from '../input/require-job.ts';
import { runsOfFiles } from '../input/runs-of-files.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';
import { requireSetUp } from './predict-job.ts';

/** What a job adds to a comparison of logs. */
export type KnownFromJob = Pick<
  CompareRunsInput,
  'expectation' | 'confounders' | 'nominalSpeed' | 'warnings'
>;

interface Wanted {
  /** Id of the set-up that was fitted after; else the one that the runs name. */
  readonly setUp?: string;
  readonly speed?: string;
  readonly units?: UnitSystem;
}

/** What the model expects of the change, what the runs say was different, and the speed that they were meant from. */
export async function knownFromJob(
  path: string,
  files: { readonly before: readonly string[]; readonly after: readonly string[] },
  wanted: Wanted,
): Promise<KnownFromJob> {
  const { job } = await requireJob(path);
  const before = runsOfFiles(job.runs, files.before);
  const after = runsOfFiles(job.runs, files.after);
  const against = onlySetUp(before) ?? job.setUps[0]?.id ?? '';
  const setUp = wanted.setUp ?? onlySetUp(after) ?? onlyOther(job, against);
  requireSetUp(job, setUp);
  if (setUp === against)
    throw new CommandError(
      `--set-up: "${setUp}" is what the car had before; name one that changes it.`,
      exitCode.usage,
    );
  const nominalSpeed =
    readQuantityOption('--speed', wanted.speed, conditionsFacts.speed) ?? meantSpeed([...before, ...after]);
  const options = knownOptions({ speed: nominalSpeed, units: wanted.units });
  const { differences, assumed } = predict(job, { setUps: [against, setUp], ...options });
  const found = differences.find(({ id }) => id === setUp);
  return {
    confounders: statedConfounders(before, after),
    warnings: setUpMismatch(setUp, before, after),
    ...knownOptions({
      nominalSpeed,
      expectation:
        found === undefined ? undefined : { setUp, difference: found.distance_m, assumed: assumed.length },
    }),
  };
}

function onlySetUp(runs: readonly JobRun[]): string | undefined {
  const ids = new Set(runs.map(({ setUp }) => setUp));
  return ids.size === 1 ? runs[0]?.setUp : undefined;
}

function onlyOther(job: Job, against: string): string {
  const others = job.setUps.map(({ id }) => id).filter((id) => id !== against);
  if (others.length === 1 && others[0] !== undefined) return others[0];
  throw new CommandError(`compare --job needs --set-up: one of ${others.join(', ')}.`, exitCode.usage);
}

/** The speed that all these runs were meant from, where they say one and the same. */
function meantSpeed(runs: readonly JobRun[]): number | undefined {
  const speeds = new Set(runs.map(({ nominalSpeed }) => nominalSpeed?.value));
  return speeds.size === 1 ? runs[0]?.nominalSpeed?.value : undefined;
}
