import type { Job, JobSets } from '@standstill/workshop';
import { lazy, Suspense, useState } from 'react';
import { FoldedSection } from '../../../shared/ui/folded-section.tsx';
import { Loading } from '../../../shared/ui/loading.tsx';
import { Trouble } from '../../../shared/ui/trouble.tsx';
import { Choice } from '../pair/choice.tsx';
import type { ProofPair } from '../pair/proof-choices.tsx';
import { fadeSources, shownSources } from './fade-sources.ts';
import { useFade } from './use-fade.ts';

const FadeResult = lazy(() => import('./fade-result.tsx'));

export interface FadeSectionProps {
  readonly job: Job | null;
  readonly pair: ProofPair;
  readonly sets: JobSets | null;
  readonly titleOf: (setUp: string) => string;
}

/** Whether the stops get longer as they follow each other; open from the start where a run was driven to see that. */
export function FadeSection({ job, pair, sets, titleOf }: FadeSectionProps) {
  const [toggled, setToggled] = useState<boolean | null>(null);
  const [chosen, choose] = useState<{ set: string | null; against: string | null }>({
    set: null,
    against: null,
  });
  const open = toggled ?? (sets?.fades.length ?? 0) > 0;
  const sources = fadeSources(sets, pair, titleOf);
  const { set, against } = shownSources(sources, chosen);
  const { data, error, isFetching, refetch } = useFade(
    { job, set, against, definition: pair.definition },
    open,
  );
  const options = sources.map(({ id, title }) => ({ id, title }));
  return (
    <FoldedSection
      title="Stops in a row"
      answer={
        set === null
          ? 'No stops to look at for fade yet.'
          : open
            ? (data?.sentence ?? (error ? 'No answer.' : 'Looking at the stops …'))
            : 'Open it to see whether the stops get longer as the brakes get hotter.'
      }
      open={open}
      onToggle={setToggled}
    >
      {set && (
        <div className="fields choices no-print">
          <Choice
            title="Stops"
            value={set.id}
            options={options}
            onChoose={(id) => choose({ ...chosen, set: id })}
          />
          {sources.length > 1 && (
            <Choice
              title="Against"
              value={against?.id ?? ''}
              options={[{ id: '', title: 'nothing' }, ...options.filter(({ id }) => id !== set.id)]}
              onChoose={(id) => choose({ ...chosen, against: id })}
            />
          )}
        </div>
      )}
      {error && <Trouble tried="look at the stops" reason={error} onRetry={() => void refetch()} />}
      {isFetching && <p className="soft">Looking at the stops …</p>}
      {data?.kind === 'fade-report' && (
        <Suspense fallback={<Loading what="the picture" />}>
          <FadeResult report={data} />
        </Suspense>
      )}
    </FoldedSection>
  );
}
