import { useId } from 'react';
import { useJobPart, useJobSession } from './job-context.ts';
import { valueAt } from './set-at.ts';

export interface TextFieldProps {
  readonly path: string;
  readonly title: string;
  /** Several lines. */
  readonly long?: boolean;
  /** As wide as text is read. */
  readonly wide?: boolean;
  readonly required?: boolean;
  readonly hint?: string;
}

/** Words of the job. Where some are needed, an emptied field keeps the old ones in the document until it has new ones. */
export function TextField({
  path,
  title,
  long = false,
  wide = long,
  required = false,
  hint,
}: TextFieldProps) {
  const session = useJobSession();
  const kept = useJobPart((state) => valueAt(state.document, path));
  const unread = useJobPart((state) => state.texts[path]);
  const id = useId();
  const text = unread ?? (typeof kept === 'string' ? kept : '');
  const missing = required && unread !== undefined;

  const change = (next: string) => {
    if (required && next.trim() === '') return session.setText(path, next);
    session.setText(path, null);
    session.set(path, next === '' ? undefined : next);
  };

  const common = {
    id,
    value: text,
    'aria-invalid': missing,
    'aria-describedby': `${id}h`,
    onChange: (event: { target: { value: string } }) => change(event.target.value),
  };
  return (
    <div className={wide ? 'field wide' : 'field'}>
      <label htmlFor={id}>{title}</label>
      {long ? <textarea {...common} /> : <input {...common} autoComplete="off" />}
      <div id={`${id}h`}>
        {missing && <p className="error">Needed. The last one is kept until there is a new one.</p>}
        {!missing && hint && <p className="hint">{hint}</p>}
      </div>
    </div>
  );
}
