import type { JobDocument } from '@standstill/workshop';
import { useId } from 'react';
import { Link, useSearchParams } from 'wouter';
import { useJobDocument, useJobPart } from '../../shared/job/job-context.ts';
import { usePrediction } from '../../shared/job/use-prediction.ts';
import { Basis } from '../../shared/ui/basis.tsx';
import { PageHead } from '../../shared/ui/page-head.tsx';
import { PredictionPage } from '../../shared/ui/prediction-page.tsx';
import { PrintAssumed } from '../../shared/ui/print-assumed.tsx';
import { Section } from '../../shared/ui/section.tsx';
import { Trouble } from '../../shared/ui/trouble.tsx';
import { Warnings } from '../../shared/ui/warnings.tsx';
import { Comparison } from './comparison.tsx';
import { SetUpsTable } from './set-ups-table.tsx';

const question = 'What would other parts change?';

/** All set-ups of the job in a table, dangers first; then two of them side by side, and where their difference comes from. */
export default function OptionsPage() {
  const document = useJobDocument();
  const ids = Object.keys(document.setUps);
  return ids.length < 2 ? <OnlyOne /> : <AllSetUps document={document} ids={ids} />;
}

function OnlyOne() {
  const id = useJobPart((state) => state.id);
  return (
    <>
      <PageHead title="Options" question={question}>
        <p>Nothing to compare yet: this job has only the car as found.</p>
      </PageHead>
      <p>Add a set-up in the survey and say which parts change.</p>
      <Link href={`/jobs/${id}/survey`} className="button">
        To the survey
      </Link>
    </>
  );
}

/** The pair stands in the address, so that a reload or a link keeps it. */
function AllSetUps({ document, ids }: { readonly document: JobDocument; readonly ids: readonly string[] }) {
  return (
    <PredictionPage
      title="Options"
      question={question}
      query={usePrediction()}
      answer={({ sentence }) => sentence}
    >
      {(prediction) => (
        <>
          <Warnings warnings={prediction.warnings} />
          <Section
            title="All set-ups"
            intro="What each would change against the car as found; dangers first."
          >
            <SetUpsTable prediction={prediction} />
          </Section>
          <TwoSetUps document={document} ids={ids} />
          <Basis prediction={prediction} />
          <PrintAssumed assumed={prediction.assumed} />
        </>
      )}
    </PredictionPage>
  );
}

function TwoSetUps({ document, ids }: { readonly document: JobDocument; readonly ids: readonly string[] }) {
  const [search, setSearch] = useSearchParams();
  const known = (id: string | null, otherwise: string | undefined): string =>
    id !== null && ids.includes(id) ? id : (otherwise ?? '');
  const against = known(search.get('against'), ids[0]);
  const chosen = known(
    search.get('with'),
    ids.find((id) => id !== against),
  );
  const same = against === chosen;
  // The first set-up is what all others are set against anyway; only another pair needs a computation of its own.
  const query = usePrediction(same || against === ids[0] ? undefined : [against, chosen]);
  const prediction = query.data?.ok ? query.data.prediction : null;
  const verdict = prediction?.differences.find(
    (difference) => difference.id === chosen && difference.against === against,
  )?.verdict;
  const choose = (pair: { against: string; with: string }) => setSearch(pair, { replace: true });
  return (
    <>
      <Section title="Two set-ups in detail">
        <div className="fields">
          <SetUpSelect
            title="Against"
            value={against}
            document={document}
            onChoose={(id) => choose({ against: id, with: chosen })}
          />
          <SetUpSelect
            title="With"
            value={chosen}
            document={document}
            onChoose={(id) => choose({ against, with: id })}
          />
        </div>
        {query.error && (
          <Trouble tried="compute this" reason={query.error} onRetry={() => void query.refetch()} />
        )}
        <p className="verdict" role="status">
          {same
            ? `Both are “${document.setUps[chosen]?.title ?? chosen}”: choose another for one of them.`
            : (verdict ?? 'Computing …')}
        </p>
      </Section>
      {!same && prediction && verdict && (
        <Comparison prediction={prediction} against={against} chosen={chosen} />
      )}
    </>
  );
}

interface SetUpSelectProps {
  readonly title: string;
  readonly value: string;
  readonly document: JobDocument;
  readonly onChoose: (id: string) => void;
}

function SetUpSelect({ title, value, document, onChoose }: SetUpSelectProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{title}</label>
      <select id={id} value={value} onChange={(event) => onChoose(event.target.value)}>
        {Object.entries(document.setUps).map(([setUpId, setUp]) => (
          <option key={setUpId} value={setUpId}>
            {setUp.title}
          </option>
        ))}
      </select>
    </div>
  );
}
