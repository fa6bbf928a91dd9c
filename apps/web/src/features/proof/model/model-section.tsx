import { useQuery } from '@tanstack/react-query';
import {
  confoundersOf,
  type ExplainStopsInput,
  type Job,
  type JobSets,
  type Reconciliation,
} from '@standstill/workshop';
import { lazy, Suspense, useEffect, useState } from 'react';
import { FoldedSection } from '../../../shared/ui/folded-section.tsx';
import { Loading } from '../../../shared/ui/loading.tsx';
import { Trouble } from '../../../shared/ui/trouble.tsx';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { ask } from '../../../shared/worker/ask.ts';
import { identity } from '../../../shared/job/identity.ts';
import { setKey } from '../compare/use-comparison.ts';
import type { ProofPair } from '../pair/proof-choices.tsx';

const ModelResult = lazy(() => import('./model-result.tsx'));

export interface ModelSectionProps {
  readonly job: Job | null;
  readonly pair: ProofPair;
  readonly sets: JobSets | null;
  /** Told the farthest distance that the model's picture shows, m: the page's scale has to reach it. */
  readonly onReach: (distance: number) => void;
}

/** What the stops teach about the car, and how much of the change the brakes explain; computed when it is opened. */
export function ModelSection(props: ModelSectionProps) {
  const [open, setOpen] = useState(false);
  const query = useExplanation(props, open);
  const { data, error, isFetching, refetch } = query;
  const result = data?.kind === 'reconciliation' ? data : null;
  const { onReach } = props;
  const reach = open && result ? farthest(result) : 0;
  useEffect(() => onReach(reach), [onReach, reach]);
  const ready = props.job !== null && (props.sets?.before ?? null) !== null;
  return (
    <FoldedSection
      title="The model against the stops"
      answer={answer({ open, ready, sentence: data?.sentence, isFetching })}
      open={open}
      onToggle={setOpen}
    >
      {error && (
        <Trouble tried="hold the model against the stops" reason={error} onRetry={() => void refetch()} />
      )}
      {ready && isFetching && (
        <div className="actions">
          <p className="soft" role="status">
            Learning from the stops, some seconds; the page goes on working meanwhile.
          </p>
          <button type="button" onClick={() => setOpen(false)}>
            Stop it
          </button>
        </div>
      )}
      {result && (
        <Suspense fallback={<Loading what="the picture" />}>
          <ModelResult result={result} />
        </Suspense>
      )}
    </FoldedSection>
  );
}

interface AnswerInput {
  readonly open: boolean;
  readonly ready: boolean;
  readonly sentence: string | undefined;
  readonly isFetching: boolean;
}

function answer({ open, ready, sentence, isFetching }: AnswerInput): string {
  if (!ready)
    return 'Nothing to hold it against yet: it learns from stops before the work, two that count at least.';
  if (isFetching) return 'Held against the stops right now …';
  return (
    (open ? sentence : undefined) ??
    'Open it to see what the stops before teach about grip, pads and foot, and how much of the change the brakes explain.'
  );
}

/** Asked only while the part is open; closing it takes the question back. */
function useExplanation({ job, pair, sets }: ModelSectionProps, open: boolean) {
  const units = useUnits().preferences.system;
  const before = sets?.before ?? null;
  const after = sets?.after ?? null;
  return useQuery({
    queryKey: ['explanation', job && identity(job), pair.before, pair.after, keys(sets), units],
    queryFn: ({ signal }) => {
      if (!job || !before) throw new Error('There are no stops before.');
      const input: ExplainStopsInput = {
        job,
        before: { setUp: pair.before, reports: before.reports },
        after: pair.after === pair.before ? null : { setUp: pair.after, reports: after?.reports ?? [] },
        nominalSpeed: sets?.nominalSpeed ?? undefined,
        confounders: after ? confoundersOf({ before, after, units }) : [],
        units,
      };
      return ask('explain', input, signal);
    },
    enabled: open && job !== null && before !== null,
    staleTime: Infinity,
    retry: false,
  });
}

function farthest({ observations }: Reconciliation): number {
  const distances = observations.filter(({ quantity }) => quantity === 'stopping-distance');
  return Math.max(
    ...distances.flatMap(({ measured, byJob, learned }) => [measured.high, byJob.high, learned.high]),
    0,
  );
}

function keys(sets: JobSets | null): unknown {
  return [sets?.before ?? undefined, sets?.after ?? undefined].map(setKey);
}
