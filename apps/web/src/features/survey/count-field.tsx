import { useId } from 'react';
import { useJobPart, useJobSession } from '../../shared/job/job-context.ts';
import { valueAt } from '../../shared/job/set-at.ts';

export interface CountFieldProps {
  readonly path: string;
  readonly title: string;
  readonly from: number;
  readonly to: number;
}

/** A whole number of the job; empty takes it out. */
export function CountField({ path, title, from, to }: CountFieldProps) {
  const session = useJobSession();
  const kept = useJobPart((state) => valueAt(state.document, path));
  const unread = useJobPart((state) => state.texts[path]);
  const id = useId();

  const change = (text: string) => {
    const count = Number(text);
    const good = text.trim() === '' || (Number.isInteger(count) && count >= from && count <= to);
    session.setText(path, good ? null : text);
    if (good) session.set(path, text.trim() === '' ? undefined : count);
  };

  return (
    <div className="field">
      <label htmlFor={id}>{title}</label>
      <input
        id={id}
        inputMode="numeric"
        autoComplete="off"
        value={unread ?? (typeof kept === 'number' ? String(kept) : '')}
        aria-invalid={unread !== undefined}
        aria-describedby={`${id}h`}
        onChange={(event) => change(event.target.value)}
      />
      <div id={`${id}h`}>
        {unread === undefined ? (
          <p className="hint">{kept === undefined ? 'left out' : ''}</p>
        ) : (
          <p className="error">
            “{unread}” is no whole number from {from} to {to}.
          </p>
        )}
      </div>
    </div>
  );
}
