import { useQueries, type UseQueryResult } from '@tanstack/react-query';
import type { JobRun, LogRefusal, LogReport, LogSummary, RunDocument } from '@standstill/workshop';
import { logBytes } from '../../shared/api/logs.ts';
import { useUnits } from '../../shared/units/unit-choice.tsx';
import { ask } from '../../shared/worker/ask.ts';
import { logOf } from './run-edits.ts';
import type { SpeedChoices } from './speed-choice.ts';

export interface RunReport {
  readonly run: RunDocument;
  /** Undefined where the server has no such log. */
  readonly log: LogSummary | undefined;
  readonly query: UseQueryResult<LogReport | LogRefusal>;
}

export interface ReportsInput {
  readonly jobId: string;
  readonly runs: readonly RunDocument[];
  readonly logs: readonly LogSummary[];
  /** m/s that a run's distances are corrected to. */
  readonly nominalSpeed: (run: RunDocument) => number | null;
  /** A person's word on the speed column, by checksum of the log. */
  readonly speedColumns: SpeedChoices;
}

/** Reads the log of each run in the worker: the bytes as they were kept, the same reader as everywhere. */
export function useReports({
  jobId,
  runs,
  logs,
  nominalSpeed,
  speedColumns,
}: ReportsInput): readonly RunReport[] {
  const units = useUnits().preferences.system;
  const found = runs.map((run) => {
    const log = logOf(run, logs);
    const column = log && speedColumns[log.sha256];
    return { run, log, speed: nominalSpeed(run), column };
  });
  const queries = useQueries({
    queries: found.map(({ log, speed, column }) => ({
      queryKey: ['report', log?.sha256 ?? null, log?.name ?? null, speed, units, column ?? null],
      queryFn: async ({ signal }: { signal: AbortSignal }) => {
        if (!log) throw new Error('The server has no such log.');
        const content = await logBytes(jobId, log.id, signal);
        const options = {
          units,
          ...(speed === null ? {} : { nominalSpeed: speed }),
          ...(column ? { columns: { speed: column } } : {}),
        };
        return ask('report-log', { name: log.name, content, options }, signal);
      },
      enabled: log !== undefined,
      staleTime: Infinity,
      retry: false,
    })),
  });
  return found.flatMap(({ run, log }, index) => {
    const query = queries[index];
    return query ? [{ run, log, query }] : [];
  });
}

/** The nominal speed of a run, as the job was read: its own, else that of the job's stop. */
export function nominalSpeedOf(
  runs: readonly JobRun[],
  usual: number | null,
): (run: RunDocument) => number | null {
  return (run) => runs.find(({ id }) => id === run.id)?.nominalSpeed?.value ?? usual;
}
