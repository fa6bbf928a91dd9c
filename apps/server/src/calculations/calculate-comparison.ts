import { compareRuns, readJobDocument, reportLog } from '@standstill/workshop';
import type { CompareRunsInput, LogReport, Problem, ReportLogOptions, RunSet } from '@standstill/workshop';
import { answerQuestion } from '../questions/answer-question.ts';
import type { ComparedLog, ComparisonAnswer, ComparisonTask } from './calculations.ts';
import { knownFromRuns } from './known-from-runs.ts';
import { requestProblem } from './request-problem.ts';

type Expectation = NonNullable<CompareRunsInput['expectation']>;
type Failed = { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads both sets of logs, holds them against each other and, where the change of set-up is known, against what the
 * model expects of it.
 *
 * @param task - the two sets and their job
 * @returns the comparison, or what stands in its way
 */
export function calculateComparison(task: ComparisonTask): ComparisonAnswer {
  const reading = readJobDocument(task.document);
  if (!reading.ok) return { ...reading, about: 'job' };
  const known = knownFromRuns(reading.job, task);
  const speed = task.nominalSpeed ?? known.nominalSpeed;
  const sets = readSets(
    task,
    speed === null ? { units: task.units } : { nominalSpeed: speed, units: task.units },
  );
  if (!sets.ok) return { ...sets, about: 'logs' };
  const change = task.expectation ?? known.change;
  const expected = change === null ? null : expectationOf(task, change, speed);
  if (expected !== null && !expected.ok) return { ...expected, about: 'job' };
  const comparison = compareRuns({
    before: sets.before,
    after: sets.after,
    seed: task.seed,
    units: task.units,
    confounders: [...known.confounders, ...task.confounders],
    ...(task.definition === undefined ? {} : { definition: task.definition }),
    ...(speed === null ? {} : { nominalSpeed: speed }),
    ...(expected === null ? {} : { expectation: expected.expectation }),
  });
  return { ok: true, comparison };
}

function readSets(
  { before, after }: ComparisonTask,
  options: ReportLogOptions,
): { readonly ok: true; readonly before: RunSet; readonly after: RunSet } | Failed {
  const problems: Problem[] = [];
  const read = (side: string, name: string, logs: readonly ComparedLog[]): RunSet => {
    const reports = logs.flatMap(({ file }, index): LogReport[] => {
      const report = reportLog(file, options);
      if (report.kind === 'log-report') return [report];
      const { code, sentence: message } = report;
      const about = {
        code,
        path: `${side}[${index}]`,
        found: file.name,
        accepted: 'a log with stops',
        message,
      };
      problems.push(requestProblem(about));
      return [];
    });
    return { name, reports };
  };
  const sets = {
    before: read('before', before.name, before.logs),
    after: read('after', after.name, after.logs),
  };
  return problems.length > 0 ? { ok: false, problems } : { ok: true, ...sets };
}

function expectationOf(
  { document, units }: ComparisonTask,
  { setUp, against }: { readonly setUp: string; readonly against: string },
  speed: number | null,
): { readonly ok: true; readonly expectation: Expectation } | Failed {
  const options = { setUps: [against, setUp], units, ...(speed === null ? {} : { speed_m_s: speed }) };
  const answer = answerQuestion({ question: 'predict', document, options });
  if (!answer.ok) return answer;
  const difference = answer.answer.differences.find((each) => each.id === setUp);
  if (difference === undefined) throw new Error(`the prediction has no difference for ${setUp}`);
  return { ok: true, expectation: { setUp, difference: difference.distance_m } };
}
