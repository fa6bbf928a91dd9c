import { useId } from 'react';
import { useJobPart, useJobSession } from '../../shared/job/job-context.ts';
import { valueAt } from '../../shared/job/set-at.ts';

export interface ChoiceFieldProps {
  readonly path: string;
  readonly title: string;
  readonly options: readonly { readonly id: string; readonly title: string }[];
  /** How the choice reads where the document makes none; absent where it must. */
  readonly open?: string;
  /** In place of setting the word alone. */
  readonly onChoose?: (id: string) => void;
}

/** One of a few words of the job. */
export function ChoiceField({ path, title, options, open, onChoose }: ChoiceFieldProps) {
  const session = useJobSession();
  const kept = useJobPart((state) => valueAt(state.document, path));
  const id = useId();
  const choose = onChoose ?? ((next: string) => session.set(path, next === '' ? undefined : next));
  return (
    <div className="field">
      <label htmlFor={id}>{title}</label>
      <select
        id={id}
        value={typeof kept === 'string' ? kept : ''}
        onChange={(event) => choose(event.target.value)}
      >
        {open !== undefined && <option value="">{open}</option>}
        {options.map((option) => (
          <option key={option.id} value={option.id}>
            {option.title}
          </option>
        ))}
      </select>
    </div>
  );
}
