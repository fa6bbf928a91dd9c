import type { JobDocument, StopResult } from '@standstill/workshop';
import { useEffect, useId, useRef, useState } from 'react';
import { useJobSession } from '../../../shared/job/job-context.ts';
import { addJudgement, momentOf } from './judgement-edits.ts';

export interface JudgeStopProps {
  readonly runId: string;
  readonly stop: StopResult;
}

const reasons = {
  rejected: 'e.g. the driver lifted early; a gust; the car ahead',
  restored: 'e.g. the flag is about the logger, the stop was clean',
} as const;

/** Takes a stop out of its set or puts it back, by hand and with a reason; the other word undoes it. */
export function JudgeStop({ runId, stop }: JudgeStopProps) {
  const session = useJobSession();
  const id = useId();
  const first = useRef<HTMLInputElement>(null);
  const [open, setOpen] = useState(false);
  const [reason, setReason] = useState('');
  const [by, setBy] = useState('');
  const [missing, setMissing] = useState(false);
  const verdict = stop.counted ? 'rejected' : 'restored';
  const title = stop.counted ? 'Leave this stop out' : 'Count this stop';

  useEffect(() => {
    if (open) first.current?.focus();
  }, [open]);

  const judge = () => {
    if (reason.trim() === '') return setMissing(true);
    const date = new Date().toLocaleDateString('en-CA');
    session.edit((document) =>
      addJudgement(document as JobDocument, runId, { at: momentOf(stop), verdict, reason, by, date }),
    );
    setOpen(false);
    setReason('');
    setMissing(false);
  };

  if (!open)
    return (
      <button type="button" className="bare no-print" onClick={() => setOpen(true)}>
        {title} …
      </button>
    );
  return (
    <form
      className="fields judge no-print"
      aria-label={`${title}: stop ${stop.number}`}
      onSubmit={(event) => {
        event.preventDefault();
        judge();
      }}
    >
      <div className="field">
        <label htmlFor={`${id}r`}>Why</label>
        <input
          id={`${id}r`}
          value={reason}
          maxLength={500}
          ref={first}
          autoComplete="off"
          aria-invalid={missing}
          aria-describedby={`${id}h`}
          onChange={(event) => setReason(event.target.value)}
        />
        <p id={`${id}h`} className={missing ? 'error' : 'hint'}>
          {missing ? 'A reason is needed: it is kept with the stop.' : reasons[verdict]}
        </p>
      </div>
      <div className="field">
        <label htmlFor={`${id}b`}>Who says so</label>
        <input
          id={`${id}b`}
          value={by}
          maxLength={200}
          autoComplete="off"
          onChange={(event) => setBy(event.target.value)}
        />
      </div>
      <div className="actions">
        <button type="submit">{title}</button>
        <button type="button" className="bare" onClick={() => setOpen(false)}>
          Never mind
        </button>
      </div>
    </form>
  );
}
