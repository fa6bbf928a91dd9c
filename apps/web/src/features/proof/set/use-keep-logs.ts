import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { JobDocument, RunDocument } from '@standstill/workshop';
import { keepLog } from '../../../shared/api/logs.ts';
import { useJobPart, useJobSession } from '../../../shared/job/job-context.ts';
import { isSignalFile } from '../read/use-signals.ts';
import { addRun } from './run-edits.ts';

/** Keeps dropped files with the job and makes each a run of a set-up. Files that were not kept stay at hand for another try. */
export function useKeepLogs(run: Pick<RunDocument, 'setUp' | 'role'>) {
  const jobId = useJobPart((state) => state.id);
  const session = useJobSession();
  const queries = useQueryClient();
  return useMutation({
    mutationFn: async (files: readonly File[]) => {
      for (const file of files) {
        const log = await keepLog(jobId, file.name, file);
        if (isSignalFile(log)) continue;
        session.edit((document) => addRun(document as JobDocument, { ...run, log: log.id }));
      }
    },
    onSettled: () => queries.invalidateQueries({ queryKey: ['logs', jobId] }),
  });
}
