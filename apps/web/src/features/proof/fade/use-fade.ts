import { useQuery, type UseQueryResult } from '@tanstack/react-query';
import type { FadeRefusal, FadeReport, Job, RunSet } from '@standstill/workshop';
import { identity } from '../../../shared/job/identity.ts';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { ask } from '../../../shared/worker/ask.ts';
import { setKey } from '../compare/use-comparison.ts';
import type { Definition } from '../pair/proof-choices.tsx';
import type { FadeSource } from './fade-sources.ts';

/** Two sets of one set-up are told apart by what they were driven for. */
function named({ set, title }: FadeSource, other: FadeSource | null): RunSet {
  return set.name === other?.set.name ? { ...set, name: title } : set;
}

export interface FadeQuestion {
  readonly job: Job | null;
  readonly set: FadeSource | null;
  readonly against: FadeSource | null;
  readonly definition: Definition;
}

/** How the stops go one after the other, with what the model expects of them; asked only while it is looked at. */
export function useFade(
  { job, set, against, definition }: FadeQuestion,
  open: boolean,
): UseQueryResult<FadeReport | FadeRefusal> {
  const units = useUnits().preferences.system;
  const key = [set, against].map((source) => source && [source.title, source.setUp, setKey(source.set)]);
  return useQuery({
    queryKey: ['fade', job && identity(job), key, definition, units],
    queryFn: ({ signal }) => {
      if (!set) throw new Error('There are no stops to look at.');
      const question = {
        job: set.setUp === null ? null : job,
        setUp: set.setUp ?? '',
        set: named(set, against),
        ...(against ? { against: named(against, set) } : {}),
        definition,
        units,
      };
      return ask('fade', question, signal);
    },
    enabled: open && set !== null,
    staleTime: Infinity,
    retry: false,
  });
}
