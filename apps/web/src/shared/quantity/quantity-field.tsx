import type { Fact, Origin, QuantityInput } from '@standstill/workshop';
import { memo, useId, useState } from 'react';
import { useJobPart, useJobSession } from '../job/job-context.ts';
import { valueAt } from '../job/set-at.ts';
import { useUnits } from '../units/unit-choice.tsx';
import { fieldText, inOwnUnit, originOf, readFieldText, withOrigin } from './field-text.ts';

export interface Filled {
  /** What was used where the person left the value out: '0.50 m ± 0.04 m'. */
  readonly text: string;
  readonly reason: string;
}

export interface QuantityFieldProps {
  /** Where the value stands in the job document. */
  readonly path: string;
  readonly fact: Fact;
  /** In place of the fact's own title. */
  readonly title?: string;
  /** What is assumed while the field is empty. */
  readonly filled?: Filled | undefined;
}

const origins: readonly Origin[] = ['measured', 'specified', 'assumed'];

/** One value with its unit, its spread and how it is known. What can't be read stays in the field and is said. */
export const QuantityField = memo(function QuantityField({
  path,
  fact,
  title = fact.title,
  filled,
}: QuantityFieldProps) {
  const session = useJobSession();
  const kept = useJobPart((state) => valueAt(state.document, path)) as QuantityInput | undefined;
  const unread = useJobPart((state) => state.texts[path]);
  const [typing, setTyping] = useState(false);
  const id = useId();
  const text = unread ?? fieldText(kept);
  const reading = typing || unread === undefined ? null : readFieldText(text, fact, kept);
  const message = reading && !reading.ok ? reading.message : null;

  /** Takes what was typed into the document where it can be read; gives the value that stands then. */
  const take = (): QuantityInput | undefined => {
    if (unread === undefined) return kept;
    const read = readFieldText(unread, fact, kept);
    if (!read.ok) return kept;
    if (fieldText(read.input) !== fieldText(kept)) session.set(path, read.input);
    session.setText(path, null);
    return read.input;
  };
  const leave = () => {
    setTyping(false);
    take();
  };
  const known = (origin: Origin) => {
    const value = take();
    if (value !== undefined) session.set(path, withOrigin(value, origin));
  };

  return (
    <div className="field">
      <label htmlFor={id}>{title}</label>
      <div className="quantity">
        <input
          id={id}
          value={text}
          className={kept !== undefined && originOf(kept) === 'assumed' ? 'is-assumed' : undefined}
          placeholder={fact.required ? `e.g. ${fact.example}` : undefined}
          autoComplete="off"
          spellCheck={false}
          aria-invalid={message !== null}
          aria-describedby={`${id}h`}
          onFocus={() => setTyping(true)}
          onChange={(event) => session.setText(path, event.target.value)}
          onBlur={leave}
          onKeyDown={(event) => event.key === 'Enter' && take()}
        />
        {kept !== undefined && (
          <select
            aria-label={`How ${title.toLowerCase()} is known`}
            value={originOf(kept)}
            onChange={(event) => known(event.target.value as Origin)}
          >
            {origins.map((origin) => (
              <option key={origin}>{origin}</option>
            ))}
          </select>
        )}
      </div>
      <div id={`${id}h`}>
        <FieldHint message={message} kept={kept} fact={fact} filled={filled} />
      </div>
    </div>
  );
});

interface FieldHintProps {
  readonly message: string | null;
  readonly kept: QuantityInput | undefined;
  readonly fact: Fact;
  readonly filled: Filled | undefined;
}

function FieldHint({ message, kept, fact, filled }: FieldHintProps) {
  const { preferences } = useUnits();
  if (message !== null) return <p className="error">{message}</p>;
  if (kept === undefined) {
    if (!filled) return <p className="hint">{fact.required ? 'needed' : `left out; e.g. ${fact.example}`}</p>;
    return (
      <p className="hint">
        <span className="assumed">assumed {filled.text}</span>, {inShort(filled.reason)}
      </p>
    );
  }
  const converted = inOwnUnit(kept, fact, preferences);
  const note = typeof kept === 'object' ? kept.note : undefined;
  if (!converted && !note) return null;
  return <p className="hint">{[converted, note].filter(Boolean).join('; ')}</p>;
}

/** The first sentence of a reason; the list of what was assumed has all of it. */
function inShort(reason: string): string {
  return reason.replace(/\. .*$/s, '');
}
