import type { Prediction, Problem } from '@standstill/workshop';
import type { ReactNode } from 'react';
import type { UseQueryResult } from '@tanstack/react-query';
import { Link } from 'wouter';
import type { Predicted } from '../../worker/protocol.ts';
import { useJobPart } from '../job/job-context.ts';
import { useDrawProgress } from '../worker/draw-progress.ts';
import { Lead } from './lead.tsx';
import { PageHead } from './page-head.tsx';
import { PrintCaveat } from './print-caveat.tsx';
import { Trouble } from './trouble.tsx';

export interface PredictionPageProps {
  readonly title: string;
  readonly question: string;
  readonly query: UseQueryResult<Predicted>;
  /** The answer to the page's question. */
  readonly answer: (prediction: Prediction) => string;
  readonly children: (prediction: Prediction) => ReactNode;
}

/** A page that shows what the model says: its answer first, or why there is none. */
export function PredictionPage({ title, question, query, answer, children }: PredictionPageProps) {
  const { data, error, isPlaceholderData, refetch } = query;
  const prediction = data?.ok ? data.prediction : null;
  return (
    <>
      <PageHead title={title} question={question}>
        {prediction ? (
          <Lead text={answer(prediction)} />
        ) : (
          <p className="waiting">
            <FirstWords query={query} />
          </p>
        )}
        {isPlaceholderData && (
          <p className="small soft" role="status">
            Computing again after your change …
          </p>
        )}
      </PageHead>
      {prediction && <PrintCaveat />}
      {error && <Trouble tried="compute this" reason={error} onRetry={() => void refetch()} />}
      {data && !data.ok && <InTheWay problems={data.problems} />}
      {prediction && children(prediction)}
    </>
  );
}

function FirstWords({ query: { error, data } }: { readonly query: UseQueryResult<Predicted> }) {
  const progress = useDrawProgress();
  if (error) return 'No answer.';
  if (data) return 'No answer yet: the job has mistakes.';
  return progress === null ? 'Computing …' : `Computing … ${progress.done} of ${progress.of} draws`;
}

function InTheWay({ problems }: { readonly problems: readonly Problem[] }) {
  const id = useJobPart((state) => state.id);
  return (
    <div className="state" role="alert">
      <p>
        <strong>These values stand in the way.</strong>
      </p>
      <ul>
        {problems.map(({ path, message }) => (
          <li key={`${path} ${message}`}>{message}</li>
        ))}
      </ul>
      <Link href={`/jobs/${id}/survey`} className="button">
        To the survey
      </Link>
    </div>
  );
}
