import { useQuery, type UseQueryResult } from '@tanstack/react-query';
import type {
  CompareRunsInput,
  ComparedSets,
  Comparison,
  ComparisonRefusal,
  RunSet,
} from '@standstill/workshop';
import { usePrediction } from '../../../shared/job/use-prediction.ts';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { ask } from '../../../shared/worker/ask.ts';
import type { Definition, ProofPair } from '../pair/proof-choices.tsx';
import { sameSets } from './proof-state.ts';

export interface ComparisonInput {
  readonly pair: ProofPair;
  /** Null while a half is missing or still being read. */
  readonly sets: ComparedSets | null;
  readonly confounders: readonly string[];
}

/** The seed of the sampled arrangements: the same runs give the same answer. */
const seed = 1;

/**
 * Compares the two sets, against what the model expects of the change once that is known. An answer belongs to its sets:
 * where a log, a set-up or the definition changes, the old one is gone at once. Only words about the same sets may change
 * under it.
 */
export function useComparison(input: ComparisonInput): UseQueryResult<Comparison | ComparisonRefusal> {
  const { pair, sets, confounders } = input;
  const units = useUnits().preferences.system;
  const predicted = usePrediction([pair.before, pair.after]);
  const current = predicted.data?.ok && !predicted.isPlaceholderData ? predicted.data.prediction : null;
  const difference = current?.differences.find(
    ({ id, against }) => id === pair.after && against === pair.before,
  );
  const expectation = difference &&
    current && {
      setUp: sets?.after.name ?? '',
      difference: difference.distance_m,
      assumed: current.assumed.length,
    };
  const key = sets && keyOf(sets, pair.definition);
  return useQuery({
    queryKey: ['comparison', key, sets && wordsOf(sets), confounders, units, expectation ?? null],
    queryFn: ({ signal }) => {
      if (!sets) throw new Error('There is nothing to compare.');
      const asked: CompareRunsInput = {
        ...sets,
        definition: pair.definition,
        seed,
        confounders,
        units,
        ...(expectation ? { expectation } : {}),
      };
      return ask('compare', asked, signal);
    },
    enabled: sets !== null && !predicted.isPending && !predicted.isPlaceholderData,
    placeholderData: (last: Comparison | ComparisonRefusal | undefined, query) =>
      sets && sameSets(query?.queryKey[1], key) ? last : undefined,
    staleTime: Infinity,
    retry: false,
  });
}

function keyOf({ before, after, repeat, reference }: ComparedSets, definition: Definition): unknown {
  return [definition, ...[before, after, repeat, reference?.before, reference?.after].map(setKey)];
}

/** What tells one set of reports from another without hashing every trace. */
export function setKey(set: RunSet | undefined): unknown {
  return set?.reports.map(({ source, nominalSpeed_m_s, stops }) => [
    source.name,
    source.bytes,
    nominalSpeed_m_s,
    stops.map((stop) => [stop.applicationDistance_m, stop.counted, stop.judgement]),
  ]);
}

/** What is said of the sets, and may change under an answer. */
function wordsOf({ before, after, repeat, reference, warnings }: ComparedSets): unknown {
  const sets = [before, after, repeat, reference?.before, reference?.after];
  return [warnings, sets.map((set) => [set?.name, set?.runs])];
}
