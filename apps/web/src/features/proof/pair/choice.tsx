import { useId } from 'react';

export interface ChoiceProps {
  readonly title: string;
  readonly value: string;
  readonly options: readonly { readonly id: string; readonly title: string }[];
  readonly onChoose: (id: string) => void;
}

/** One of several, by name. */
export function Choice({ title, value, options, onChoose }: ChoiceProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{title}</label>
      <select id={id} value={value} onChange={(event) => onChoose(event.target.value)}>
        {options.map((option) => (
          <option key={option.id} value={option.id}>
            {option.title}
          </option>
        ))}
      </select>
    </div>
  );
}
