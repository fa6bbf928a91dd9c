import { useQuery } from '@tanstack/react-query';
import { logOptionsOf, type Job, type LogReport, type LogSummary } from '@standstill/workshop';
import { useSearchParams } from 'wouter';
import { listLogs } from '../../shared/api/logs.ts';
import { useJobDocument, useJobPart } from '../../shared/job/job-context.ts';
import { useJobReading } from '../../shared/job/use-job-reading.ts';
import { stateOf } from './compare/proof-state.ts';
import { pairOf } from './pair/proof-choices.tsx';
import { useReports, type RunReport } from './read/use-reports.ts';
import { isSignalFile, useSignals } from './read/use-signals.ts';
import { logOf } from './set/run-edits.ts';
import { placeOf, type Place } from './set/run-roles.ts';

const noLogs: readonly LogSummary[] = [];

/** What the page knows before anything is compared: the job, its logs, what was read of each, and where each belongs. */
export function useProof() {
  const jobId = useJobPart((state) => state.id);
  const document = useJobDocument();
  const [search] = useSearchParams();
  const pair = pairOf(document, search);
  const logs = useQuery({
    queryKey: ['logs', jobId],
    queryFn: ({ signal }) => listLogs(jobId, signal),
    staleTime: 10_000,
  });
  const kept = logs.data ?? noLogs;
  const reading = useJobReading().data;
  const job: Job | null = reading?.ok ? reading.job : null;
  const runs = document.runs ?? [];
  const signals = useSignals(jobId, kept);
  const reports = useReports({
    jobId,
    runs: job ? runs.filter((run) => placeOf(run, pair) !== null) : [],
    logs: kept,
    optionsOf: (run) => ({
      ...(job ? logOptionsOf(job, job.runs.find(({ id }) => id === run.id) ?? null) : {}),
      ...(signals ? { signals } : {}),
    }),
  });
  const at = (...places: readonly Place[]) =>
    reports.filter(({ run }) => places.includes(placeOf(run, pair)));
  return {
    document,
    pair,
    logs,
    reading,
    job,
    reports,
    at,
    titleOf: (setUp: string) => document.setUps[setUp]?.title ?? setUp,
    spare: kept.filter((log) => !isSignalFile(log) && !runs.some((run) => logOf(run, kept)?.id === log.id)),
  };
}

/** What was read of these runs, as far as it is. */
export function readReports(reports: readonly RunReport[]): readonly LogReport[] {
  return reports.flatMap((report) => stateOf(report).report ?? []);
}
