import { useId } from 'react';
import { useJobPart, useJobSession } from '../../shared/job/job-context.ts';
import { valueAt } from '../../shared/job/set-at.ts';

/** A yes or no of the job; what is not stated is left out. */
export function YesNoField({
  path,
  title,
  open,
}: {
  readonly path: string;
  readonly title: string;
  readonly open: string;
}) {
  const session = useJobSession();
  const kept = useJobPart((state) => valueAt(state.document, path));
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{title}</label>
      <select
        id={id}
        value={typeof kept === 'boolean' ? String(kept) : ''}
        onChange={({ target: { value } }) => session.set(path, value === '' ? undefined : value === 'true')}
      >
        <option value="">{open}</option>
        <option value="true">yes</option>
        <option value="false">no</option>
      </select>
    </div>
  );
}
