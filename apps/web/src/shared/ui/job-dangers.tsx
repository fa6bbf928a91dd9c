import { usePrediction } from '../job/use-prediction.ts';
import { Trouble } from './trouble.tsx';
import { WarningBox } from './warnings.tsx';

/** The dangers of every set-up of the job, repeated where a hand is about to build or hand over one of them. */
export function JobDangers() {
  const { data, error, refetch, isPlaceholderData } = usePrediction();
  if (error) return <Trouble tried="look for dangers" reason={error} onRetry={() => void refetch()} />;
  if (!data || isPlaceholderData) return <p className="soft">Looking for dangers of the set-ups …</p>;
  if (!data.ok)
    return (
      <WarningBox severity="caution">
        The job has mistakes, so that its dangers are not known; the survey lists them.
      </WarningBox>
    );
  const dangers = data.prediction.warnings.filter(({ severity }) => severity === 'danger');
  if (dangers.length === 0)
    return <p className="soft">The model finds no danger in the set-ups of this job. That is no approval.</p>;
  return (
    <div className="warnings">
      {dangers.map(({ code, about, message }) => (
        <WarningBox key={`${code} ${about ?? ''} ${message}`} severity="danger">
          {message}
        </WarningBox>
      ))}
    </div>
  );
}
