import { keepPreviousData, useQuery, type UseQueryResult } from '@tanstack/react-query';
import type { Predicted } from '../../worker/protocol.ts';
import { useUnits } from '../units/unit-choice.tsx';
import { showDrawProgress } from '../worker/draw-progress.ts';
import { predictOnWorkers } from '../worker/predict-on-workers.ts';
import { identity } from './identity.ts';
import { useJobPart } from './job-context.ts';

/**
 * What the model says of the set-ups of the job as it stands, all of them or the ones named; the others are set against
 * the first. A newer edit takes the older question back.
 */
export function usePrediction(setUps?: readonly string[]): UseQueryResult<Predicted> {
  const document = useJobPart((state) => state.document) as object;
  const units = useUnits().preferences.system;
  return useQuery({
    queryKey: ['prediction', identity(document), units, setUps ?? 'all'],
    queryFn: ({ signal }) =>
      predictOnWorkers(setUps ? { document, units, setUps } : { document, units }, signal, (done, of) =>
        showDrawProgress({ done, of }),
      ).finally(() => showDrawProgress(null)),
    placeholderData: keepPreviousData,
    staleTime: Infinity,
    retry: false,
  });
}
