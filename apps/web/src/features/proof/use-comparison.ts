import { keepPreviousData, useQuery, type UseQueryResult } from '@tanstack/react-query';
import type {
  CompareRunsInput,
  Comparison,
  ComparisonRefusal,
  LogReport,
  RunSet,
} from '@standstill/workshop';
import { usePrediction } from '../../shared/job/use-prediction.ts';
import { useUnits } from '../../shared/units/unit-choice.tsx';
import { ask } from '../../shared/worker/ask.ts';

export type Definition = 'application' | 'gate';

export interface ComparisonInput {
  readonly before: RunSet & { readonly setUp: string };
  readonly after: RunSet & { readonly setUp: string };
  readonly definition: Definition;
  readonly confounders: readonly string[];
}

/** The seed of the sampled arrangements: the same runs give the same answer. */
const seed = 1;

/** Compares the two sets, against what the model expects of the change once that is known. */
export function useComparison(input: ComparisonInput): UseQueryResult<Comparison | ComparisonRefusal> {
  const { before, after, definition, confounders } = input;
  const units = useUnits().preferences.system;
  const predicted = usePrediction([before.setUp, after.setUp]);
  const difference = predicted.data?.ok
    ? predicted.data.prediction.differences.find(({ id }) => id === after.setUp)
    : undefined;
  const ready = before.reports.length > 0 && after.reports.length > 0;
  const asked: CompareRunsInput = {
    before: { name: before.name, reports: before.reports },
    after: { name: after.name, reports: after.reports },
    definition,
    seed,
    confounders,
    units,
    ...(difference ? { expectation: { setUp: after.name, difference: difference.distance_m } } : {}),
  };
  return useQuery({
    queryKey: [
      'comparison',
      namesOf(before.reports),
      namesOf(after.reports),
      definition,
      confounders,
      units,
      difference ?? null,
    ],
    queryFn: ({ signal }) => ask('compare', asked, signal),
    enabled: ready && !predicted.isPending,
    placeholderData: keepPreviousData,
    staleTime: Infinity,
    retry: false,
  });
}

/** What tells one set of reports from another without hashing every trace. */
function namesOf(reports: readonly LogReport[]): readonly unknown[] {
  return reports.map(({ source, nominalSpeed_m_s, stops }) => [
    source.name,
    source.bytes,
    nominalSpeed_m_s,
    stops.map((stop) => stop.applicationDistance_m),
  ]);
}
