import { useQuery, type UseQueryResult } from '@tanstack/react-query';
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
import { sameSets } from './proof-state.ts';

export type Definition = 'application' | 'gate';

export interface ComparisonInput {
  readonly before: RunSet & { readonly setUp: string };
  readonly after: RunSet & { readonly setUp: string };
  readonly definition: Definition;
  readonly confounders: readonly string[];
  /** False while a half is missing or still being read. */
  readonly ready: boolean;
}

/** The seed of the sampled arrangements: the same runs give the same answer. */
const seed = 1;

/**
 * Compares the two sets, against what the model expects of the change once that is known. An answer belongs to its sets:
 * where a log, a set-up or the definition changes, the old one is gone at once. Only words about the same sets may change
 * under it.
 */
export function useComparison(input: ComparisonInput): UseQueryResult<Comparison | ComparisonRefusal> {
  const { before, after, definition, confounders, ready } = input;
  const units = useUnits().preferences.system;
  const predicted = usePrediction([before.setUp, after.setUp]);
  const current = predicted.data?.ok && !predicted.isPlaceholderData ? predicted.data.prediction : null;
  const difference = current?.differences.find(
    ({ id, against }) => id === after.setUp && against === before.setUp,
  );
  const asked: CompareRunsInput = {
    before: { name: before.name, reports: before.reports },
    after: { name: after.name, reports: after.reports },
    definition,
    seed,
    confounders,
    units,
    ...(difference ? { expectation: { setUp: after.name, difference: difference.distance_m } } : {}),
  };
  const sets = setsOf(input);
  return useQuery({
    queryKey: ['comparison', sets, confounders, units, difference ?? null],
    queryFn: ({ signal }) => ask('compare', asked, signal),
    enabled: ready && !predicted.isPending && !predicted.isPlaceholderData,
    placeholderData: (last: Comparison | ComparisonRefusal | undefined, query) =>
      ready && sameSets(query?.queryKey[1], sets) ? last : undefined,
    staleTime: Infinity,
    retry: false,
  });
}

function setsOf({ before, after, definition }: ComparisonInput): readonly unknown[] {
  return [before, after]
    .flatMap(({ setUp, name, reports }) => [setUp, name, namesOf(reports)])
    .concat(definition);
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
