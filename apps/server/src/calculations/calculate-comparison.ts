import { compareRuns, reportLog } from '@standstill/workshop';
import type {
  CompareRunsInput,
  LogFile,
  LogReport,
  Problem,
  ReportLogOptions,
  RunSet,
} from '@standstill/workshop';
import { calculatePrediction } from './calculate-prediction.ts';
import type { ComparisonAnswer, ComparisonTask } from './calculations.ts';

type Expectation = NonNullable<CompareRunsInput['expectation']>;

/**
 * Reads both sets of logs, holds them against each other and, where a change of set-up is named, against what the
 * model expects of it.
 *
 * @param task - the two sets
 * @returns the comparison, or what stands in its way
 */
export function calculateComparison(task: ComparisonTask): ComparisonAnswer {
  const options = logOptions(task);
  const before = readSet('before', task.before, options);
  const after = readSet('after', task.after, options);
  const problems = [...before.problems, ...after.problems];
  if (problems.length > 0) return { ok: false, problems, about: 'logs' };
  const expected = task.expectation === null ? null : expectationOf(task.expectation, task);
  if (expected !== null && !expected.ok) return { ok: false, problems: expected.problems, about: 'job' };
  const { definition, nominalSpeed, seed, confounders, units } = task;
  const comparison = compareRuns({
    before: before.set,
    after: after.set,
    seed,
    confounders,
    units,
    ...(definition === undefined ? {} : { definition }),
    ...(nominalSpeed === undefined ? {} : { nominalSpeed }),
    ...(expected === null ? {} : { expectation: expected.expectation }),
  });
  return { ok: true, comparison };
}

function logOptions({ nominalSpeed, units }: ComparisonTask): ReportLogOptions {
  return nominalSpeed === undefined ? { units } : { nominalSpeed, units };
}

function readSet(
  side: 'before' | 'after',
  { name, files }: { readonly name: string; readonly files: readonly LogFile[] },
  options: ReportLogOptions,
): { readonly set: RunSet; readonly problems: readonly Problem[] } {
  const reports: LogReport[] = [];
  const problems: Problem[] = [];
  files.forEach((file, index) => {
    const report = reportLog(file, options);
    if (report.kind === 'log-report') reports.push(report);
    else problems.push(logProblem(`${side}[${index}]`, file.name, report));
  });
  return { set: { name, reports }, problems };
}

function logProblem(
  path: string,
  found: string,
  refusal: { readonly code: string; readonly sentence: string },
): Problem {
  const nowhere = { file: found, line: null, column: null };
  return {
    code: refusal.code,
    ...nowhere,
    path,
    found,
    accepted: 'a log with stops',
    message: refusal.sentence,
  };
}

function expectationOf(
  { document, setUp, against }: NonNullable<ComparisonTask['expectation']>,
  { nominalSpeed, units }: ComparisonTask,
):
  | { readonly ok: true; readonly expectation: Expectation }
  | { readonly ok: false; readonly problems: readonly Problem[] } {
  const speed = nominalSpeed === undefined ? {} : { speed: nominalSpeed };
  const answer = calculatePrediction({ document, options: { setUps: [against, setUp], units, ...speed } });
  if (!answer.ok) return answer;
  const difference = answer.prediction.differences.find((each) => each.id === setUp);
  if (difference === undefined) throw new Error(`the prediction has no difference for ${setUp}`);
  return { ok: true, expectation: { setUp, difference: difference.distance_m } };
}
