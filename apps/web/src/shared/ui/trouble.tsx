import { ServerDown, ServerRefusal } from '../api/request.ts';

export interface TroubleProps {
  /** What was tried: 'read the job'. */
  readonly tried: string;
  readonly reason: unknown;
  readonly onRetry?: () => void;
}

/** Something could not be done: what, why, and what to do about it. */
export function Trouble({ tried, reason, onRetry }: TroubleProps) {
  return (
    <div className="state" role="alert">
      <p>
        <strong>Could not {tried}.</strong> {explain(reason)}
      </p>
      {onRetry && (
        <button type="button" onClick={onRetry}>
          Try again
        </button>
      )}
    </div>
  );
}

function explain(reason: unknown): string {
  if (reason instanceof ServerDown) {
    return 'The server does not answer: it may be stopped, or the network is gone. Nothing is lost; try again when it is back.';
  }
  if (reason instanceof ServerRefusal) return reason.problem.detail;
  return reason instanceof Error ? reason.message : String(reason);
}
