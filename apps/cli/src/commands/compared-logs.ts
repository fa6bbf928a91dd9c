import {
  conditionsFacts,
  predict,
  setsOfJob,
  type CompareRunsInput,
  type Job,
  type JobSets,
  type LogReport,
  type RunSet,
} from '@standstill/workshop';
import { knownOptions } from '../input/known-options.ts';
import { readQuantityOption } from '../input/read-quantity-option.ts';
import { namesOf, type LogOptions } from '../input/report-log-file.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';
import { requireSetUp } from './predict-job.ts';

/** The logs of a comparison by what the person takes them for. */
export interface LogsByRole {
  readonly before: unknown;
  readonly after: unknown;
  readonly repeat: unknown;
  readonly 'reference-before': unknown;
  readonly 'reference-after': unknown;
}

interface RoleLog {
  readonly role: keyof LogsByRole;
  readonly file: string;
  readonly report: LogReport;
}

interface Known {
  readonly job: Job | null;
  readonly names: { readonly before: string; readonly after: string };
  /** Id of the set-up that was fitted after; else the one that the runs name. */
  readonly setUp?: string;
}

type Compared = Omit<CompareRunsInput, 'seed' | 'units' | 'definition'>;

/** The sets of a comparison, with all that a job says of them and what the model expects of the change. */
export function comparedLogs(logs: readonly RoleLog[], known: Known, options: LogOptions): Compared {
  const speed = readQuantityOption('--speed', options.speed, conditionsFacts.speed);
  const { job, names, setUp } = known;
  if (job === null) return { ...plainSets(logs, names), ...knownOptions({ nominalSpeed: speed }) };
  if (setUp !== undefined) requireSetUp(job, setUp);
  const given = logs.map(({ role, file, report }) => ({ role, report, names: namesOf(file) }));
  const sets = setsOfJob(job, given, { names, setUps: knownOptions({ after: setUp }) });
  if (sets.compared === null) throw new Error('a comparison without one of its sides');
  const change = requireChange(sets, job, setUp);
  const nominalSpeed = speed ?? sets.compared.nominalSpeed;
  return {
    ...sets.compared,
    ...knownOptions({ nominalSpeed }),
    expectation: expected(job, change, knownOptions({ speed: nominalSpeed, units: options.units })),
  };
}

function plainSets(logs: readonly RoleLog[], names: Known['names']): Compared {
  const of = (role: keyof LogsByRole, name: string): RunSet => ({
    name,
    reports: logs.filter((log) => log.role === role).map(({ report }) => report),
  });
  const there = (role: keyof LogsByRole): boolean => logs.some((log) => log.role === role);
  return {
    before: of('before', names.before),
    after: of('after', names.after),
    ...(there('repeat') ? { repeat: of('repeat', 'repeat') } : {}),
    ...(there('reference-before')
      ? {
          reference: {
            before: of('reference-before', 'reference car before'),
            after: of('reference-after', 'reference car after'),
          },
        }
      : {}),
  };
}

function requireChange(
  { change }: JobSets,
  job: Job,
  setUp: string | undefined,
): NonNullable<JobSets['change']> {
  if (change !== null) return change;
  if (setUp !== undefined)
    throw new CommandError(
      `--set-up: "${setUp}" is what the car had before; name one that changes it.`,
      exitCode.usage,
    );
  const others = job.setUps.filter(({ basedOn }) => basedOn !== null).map(({ id }) => id);
  throw new CommandError(`compare --job needs --set-up: one of ${others.join(', ')}.`, exitCode.usage);
}

function expected(
  job: Job,
  { setUp, against }: NonNullable<JobSets['change']>,
  options: { readonly speed?: number; readonly units?: 'us' | 'metric' },
): NonNullable<CompareRunsInput['expectation']> {
  const { differences, assumed } = predict(job, { setUps: [against, setUp], ...options });
  const found = differences.find(({ id }) => id === setUp);
  if (found === undefined) throw new Error(`the prediction has no difference for ${setUp}`);
  return { setUp, difference: found.distance_m, assumed: assumed.length };
}
