import { useEffect } from 'react';
import { useJobPart, useJobSession } from '../shared/job/job-context.ts';

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
        <span>
          Not saved: {refusal?.detail} What you typed is kept on this device.
          {refusal?.problems.map((problem) => (
            <span key={`${problem.path} ${problem.code}`}>
              {' '}
              {problem.path}: {problem.message}
            </span>
          ))}
        </span>
      </Band>
    );
  }
  if (takenUp && saving !== 'saved') {
    return <Band>Changes from an earlier visit, not sent then, were taken up again.</Band>;
  }
  return null;
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
