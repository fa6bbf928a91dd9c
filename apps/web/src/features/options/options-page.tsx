import type { JobDocument, Prediction } from '@standstill/workshop';
import { useId } from 'react';
import { Link, useSearchParams } from 'wouter';
import { useJobDocument, useJobPart } from '../../shared/job/job-context.ts';
import { usePrediction } from '../../shared/job/use-prediction.ts';
import { PageHead } from '../../shared/ui/page-head.tsx';
import { PredictionPage } from '../../shared/ui/prediction-page.tsx';
import { Warnings } from '../../shared/ui/warnings.tsx';
import { Comparison } from './comparison.tsx';

const question = 'What would other parts change?';

/** Two set-ups of the job side by side: the verdict first, then where it comes from. */
export default function OptionsPage() {
  const document = useJobDocument();
  const ids = Object.keys(document.setUps);
  return ids.length < 2 ? <OnlyOne /> : <TwoSetUps document={document} ids={ids} />;
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
function TwoSetUps({ document, ids }: { readonly document: JobDocument; readonly ids: readonly string[] }) {
  const [search, setSearch] = useSearchParams();
  const known = (id: string | null, otherwise: string | undefined): string =>
    id !== null && ids.includes(id) ? id : (otherwise ?? '');
  const against = known(search.get('against'), ids[0]);
  const chosen = known(
    search.get('with'),
    ids.find((id) => id !== against),
  );
  // The first set-up is what all others are set against anyway; only another pair needs a computation of its own.
  const query = usePrediction(against === ids[0] ? undefined : [against, chosen]);
  const choose = (pair: { against: string; with: string }) => setSearch(pair, { replace: true });
  return (
    <PredictionPage
      title="Options"
      question={question}
      query={query}
      answer={({ differences }) =>
        differences.find((difference) => difference.id === chosen && difference.against === against)
          ?.verdict ?? 'Choose two different set-ups.'
      }
    >
      {(prediction) => (
        <>
          <PairWarnings prediction={prediction} pair={[against, chosen]} />
          <div className="fields">
            <SetUpSelect
              title="Against"
              value={against}
              document={document}
              onChoose={(id) => choose({ against: id, with: id === chosen ? against : chosen })}
            />
            <SetUpSelect
              title="With"
              value={chosen}
              document={document}
              onChoose={(id) => choose({ against: id === against ? chosen : against, with: id })}
            />
          </div>
          <Comparison prediction={prediction} against={against} chosen={chosen} />
        </>
      )}
    </PredictionPage>
  );
}

/** Dangers stand between the verdict and everything else. */
function PairWarnings({
  prediction,
  pair,
}: {
  readonly prediction: Prediction;
  readonly pair: readonly string[];
}) {
  const warnings = prediction.warnings.filter(({ about }) => about === undefined || pair.includes(about));
  return <Warnings warnings={warnings} />;
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
