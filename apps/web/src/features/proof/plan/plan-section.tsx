import { useQuery } from '@tanstack/react-query';
import { testFacts, type Job, type JobSets, type PlanTestInput } from '@standstill/workshop';
import { lazy, Suspense, useState } from 'react';
import { identity } from '../../../shared/job/identity.ts';
import { QuantityField } from '../../../shared/quantity/quantity-field.tsx';
import { FoldedSection } from '../../../shared/ui/folded-section.tsx';
import { Loading } from '../../../shared/ui/loading.tsx';
import { Trouble } from '../../../shared/ui/trouble.tsx';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { ask } from '../../../shared/worker/ask.ts';
import { setKey } from '../compare/use-comparison.ts';
import type { ProofPair } from '../pair/proof-choices.tsx';
import { printPart } from './print-part.ts';

const PlanSheet = lazy(() => import('./plan-sheet.tsx'));

export interface PlanSectionProps {
  readonly job: Job | null;
  readonly pair: ProofPair;
  readonly sets: JobSets | null;
  /** Whether anything was measured yet; until then the plan is what the page is for. */
  readonly isMeasured: boolean;
}

/** What to drive so that the change shows: how many stops, in which order, what must be safe first. */
export function PlanSection({ job, pair, sets, isMeasured }: PlanSectionProps) {
  const [toggled, setToggled] = useState<boolean | null>(null);
  const [withRepeat, setWithRepeat] = useState(true);
  const open = toggled ?? !isMeasured;
  const { data, error, isFetching, refetch } = usePlan({ job, pair, sets, withRepeat }, open);
  return (
    <FoldedSection
      className="plan"
      title="Before you drive"
      answer={answer(open, data?.sentence, job !== null, error !== null)}
      open={open}
      onToggle={setToggled}
    >
      <div className="fields no-print">
        <QuantityField
          path="test.resolution"
          fact={testFacts.resolution}
          filled={{ text: '3 ft', reason: 'common practice' }}
        />
        <label className="choice">
          <input
            type="checkbox"
            checked={withRepeat}
            onChange={(event) => setWithRepeat(event.target.checked)}
          />
          Drive the old set-up once more at the end
        </label>
      </div>
      {error && <Trouble tried="plan the test" reason={error} onRetry={() => void refetch()} />}
      {isFetching && !data && <p className="soft">Planning …</p>}
      {data && (
        <Suspense fallback={<Loading what="the plan" />}>
          <div className="actions no-print">
            <button type="button" onClick={() => printPart('plan')}>
              Print this plan
            </button>
          </div>
          <PlanSheet plan={data} />
        </Suspense>
      )}
    </FoldedSection>
  );
}

function answer(open: boolean, sentence: string | undefined, hasJob: boolean, failed: boolean): string {
  if (!open) return 'Open it for how many stops to drive, in which order, and what must be safe first.';
  if (!hasJob) return 'No plan until the job can be read.';
  return sentence ?? (failed ? 'No plan.' : 'Planning …');
}

interface PlanQuestion {
  readonly job: Job | null;
  readonly pair: ProofPair;
  readonly sets: JobSets | null;
  readonly withRepeat: boolean;
}

/** Planned from the stops before where there are any, else from what is assumed; asked only while it is open. */
function usePlan({ job, pair, sets, withRepeat }: PlanQuestion, open: boolean) {
  const units = useUnits().preferences.system;
  const measured = [sets?.before, sets?.after].flatMap((set) => set ?? []);
  return useQuery({
    queryKey: [
      'plan',
      job && identity(job),
      pair.before,
      pair.after,
      withRepeat,
      units,
      measured.map(setKey),
    ],
    queryFn: ({ signal }) => {
      if (!job) throw new Error('The job can not be read.');
      const input: PlanTestInput = {
        job,
        setUps: pair.before === pair.after ? [pair.before] : [pair.before, pair.after],
        measured,
        withRepeat,
        units,
      };
      return ask('plan', input, signal);
    },
    enabled: open && job !== null,
    staleTime: Infinity,
    retry: false,
  });
}
