import { logOptionsOf, reportLog, runOfLog } from '@standstill/workshop';
import type { GivenLog, Job, Problem, ReportLogOptions } from '@standstill/workshop';
import { requestProblem } from '../calculations/request-problem.ts';
import type { KeptLog } from './kept-log.ts';

type LogsReading =
  | { readonly ok: true; readonly logs: readonly GivenLog[] }
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly about: 'logs' };

/**
 * Reads kept logs of a job as the job says they are to be read: speed, columns, judgements, window of temperature.
 *
 * @param job - the job; null where there is none
 * @param logs - with their bytes
 * @param options - what the request says instead
 * @returns the reports with the names that runs call them by; or a problem for each log that can't be used
 */
export function readKeptLogs(
  job: Job | null,
  logs: readonly KeptLog[],
  options: ReportLogOptions,
): LogsReading {
  const problems: Problem[] = [];
  const read = logs.flatMap(({ id, file, path, ...role }): GivenLog[] => {
    const names = [id, file.name];
    const report = reportKeptLog(job, { names, file }, options);
    if (report.kind === 'log-report') return [{ report, names, ...role }];
    const { code, sentence: message } = report;
    const accepted = 'a log with stops';
    problems.push(requestProblem({ code, path, found: file.name, accepted, message }));
    return [];
  });
  return problems.length > 0 ? { ok: false, problems, about: 'logs' } : { ok: true, logs: read };
}

/**
 * Reads one kept log of a job.
 *
 * @param job - the job; null where there is none
 * @param log - its names and its bytes
 * @param options - what the request says instead of the job
 * @returns the report, or in one sentence why there is none
 */
export function reportKeptLog(
  job: Job | null,
  { names, file }: Pick<KeptLog, 'file'> & { readonly names: readonly string[] },
  options: ReportLogOptions,
): ReturnType<typeof reportLog> {
  const ofJob = job === null ? {} : logOptionsOf(job, runOfLog(job.runs, { names }));
  return reportLog(file, { ...ofJob, ...options });
}
