import { useEffect } from 'react';
import { useJobPart, useJobSession } from '../shared/job/job-context.ts';
import type { JobState } from '../shared/job/job-session.ts';

/** Speaks up where saving does not go by itself; silent otherwise. */
export function SavingBand() {
  const session = useJobSession();
  const saving = useJobPart((state) => state.saving);
  const refusal = useJobPart((state) => state.refusal);
  const takenUp = useJobPart((state) => state.takenUp);
  useSaveOnReturn(session.saveNow);
  if (saving === 'server-down') {
    return (
      <Band>
        <span>
          The server does not answer. What you typed is kept on this device and sent when the server is back.
        </span>
        <button type="button" onClick={() => void session.saveNow()}>
          Try now
        </button>
      </Band>
    );
  }
  if (saving === 'refused') {
    return (
      <Band loud>
        <span>Not saved: {refusalWords(refusal)} What you typed is kept on this device.</span>
      </Band>
    );
  }
  if (takenUp && saving !== 'saved') {
    return <Band>Changes from an earlier visit, not sent then, were taken up again.</Band>;
  }
  return null;
}

/** The survey lists each mistake; here it is enough that there are some. */
function refusalWords(refusal: JobState['refusal']): string {
  const count = refusal?.problems.length ?? 0;
  if (count === 0) return refusal?.detail ?? '';
  return count === 1
    ? 'one value stands in the way, see the survey.'
    : `${count} values stand in the way, see the survey.`;
}

function Band({ loud = false, children }: { readonly loud?: boolean; readonly children: React.ReactNode }) {
  return (
    <div className={loud ? 'band loud' : 'band'} role="status">
      {children}
    </div>
  );
}

/** When the network or the person comes back, what waits is sent at once. */
function useSaveOnReturn(saveNow: () => Promise<void>): void {
  useEffect(() => {
    const send = () => void saveNow();
    window.addEventListener('online', send);
    window.addEventListener('focus', send);
    return () => {
      window.removeEventListener('online', send);
      window.removeEventListener('focus', send);
    };
  }, [saveNow]);
}
