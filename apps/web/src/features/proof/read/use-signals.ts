import { useQuery } from '@tanstack/react-query';
import type { LogSummary, ReportLogOptions } from '@standstill/workshop';
import { logBytes } from '../../../shared/api/logs.ts';

/** Whether a kept file describes the signals of CAN frames, and is no log itself. */
export function isSignalFile({ name }: Pick<LogSummary, 'name'>): boolean {
  return /\.dbc$/i.test(name);
}

/** The newest file of signals that is kept with the job, by which logs of CAN frames are read; undefined without one. */
export function useSignals(jobId: string, kept: readonly LogSummary[]): ReportLogOptions['signals'] {
  const file = kept
    .filter(isSignalFile)
    .toSorted((a, b) => a.addedAt.localeCompare(b.addedAt))
    .at(-1);
  const { data } = useQuery({
    queryKey: ['signals', file?.sha256 ?? null],
    queryFn: async ({ signal }) =>
      new TextDecoder('utf-8').decode(await logBytes(jobId, file?.id ?? '', signal)),
    enabled: file !== undefined,
    staleTime: Infinity,
  });
  return file && data !== undefined ? { name: file.name, text: data } : undefined;
}
