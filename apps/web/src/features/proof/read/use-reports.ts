import { useQueries, type UseQueryResult } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import type { LogRefusal, LogReport, LogSummary, ReportLogOptions, RunDocument } from '@standstill/workshop';
import { logBytes } from '../../../shared/api/logs.ts';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { ask } from '../../../shared/worker/ask.ts';
import { logOf } from '../set/run-edits.ts';

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
  /** What the job says of a run, as its log is read with it. */
  readonly optionsOf: (run: RunDocument) => ReportLogOptions;
}

/** Reads the log of each run in the worker: the bytes as they were kept, the same reader as everywhere. */
export function useReports(input: ReportsInput): readonly RunReport[] {
  const { jobId, runs, logs, optionsOf } = input;
  const units = useUnits().preferences.system;
  const found = runs.map((run) => ({ run, log: logOf(run, logs), options: { ...optionsOf(run), units } }));
  const last = useRef(new Map<string, LogReport | LogRefusal>());
  const queries = useQueries({
    queries: found.map(({ log, options }) => ({
      queryKey: ['report', log?.sha256 ?? null, log?.name ?? null, options],
      queryFn: async ({ signal }: { signal: AbortSignal }) => {
        if (!log) throw new Error('The server has no such log.');
        const content = await logBytes(jobId, log.id, signal);
        return ask('report-log', { name: log.name, content, options }, signal);
      },
      enabled: log !== undefined,
      // Read again after a word on a stop or a column, the stops stay in sight; they are not compared meanwhile.
      placeholderData: () => last.current.get(log?.sha256 ?? ''),
      staleTime: Infinity,
      retry: false,
    })),
  });
  useEffect(() => {
    found.forEach(({ log }, index) => {
      const query = queries[index];
      if (log && query?.data && !query.isPlaceholderData) last.current.set(log.sha256, query.data);
    });
  });
  return found.flatMap(({ run, log }, index) => {
    const query = queries[index];
    return query ? [{ run, log, query }] : [];
  });
}
