import { keepPreviousData, useQuery, type UseQueryResult } from '@tanstack/react-query';
import type { JobRead } from '../../worker/protocol.ts';
import { useUnits } from '../units/unit-choice.tsx';
import { ask } from '../worker/ask.ts';
import { identity } from './identity.ts';
import { useJobPart } from './job-context.ts';

/** The job as it stands, read: what was filled in and why, or every mistake. Runs in the worker after each change. */
export function useJobReading(): UseQueryResult<JobRead> {
  const document = useJobPart((state) => state.document) as object;
  const units = useUnits().preferences.system;
  return useQuery({
    queryKey: ['reading', identity(document), units],
    queryFn: ({ signal }) => ask('read-job', { document, units }, signal),
    placeholderData: keepPreviousData,
    staleTime: Infinity,
    retry: false,
  });
}
