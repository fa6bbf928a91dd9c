import type { LogReport } from '@standstill/workshop';
import { useId, useRef, useState, useEffect } from 'react';
import { columnRoleIds, columnRoles, isColumnRole, roleUnits, type ColumnRole } from './column-roles.ts';
import type { ColumnWord } from './remembered-columns.ts';

export interface ColumnFormProps {
  readonly channels: LogReport['channels'];
  /** Every heading, that of the time too; none where the log was refused. */
  readonly headings: readonly string[];
  /** The column to begin with; '' leaves it open. */
  readonly name: string;
  readonly busy: boolean;
  readonly onSay: (word: ColumnWord) => void;
}

/** A person's word on one column: which, what it is, in which unit, and whether they are sure. */
export function ColumnForm({ channels, headings, name: first, busy, onSay }: ColumnFormProps) {
  const id = useId();
  const begin = useRef<HTMLSelectElement>(null);
  const known = channels.find((channel) => channel.name === first);
  const [name, setName] = useState(first);
  const [role, setRole] = useState<ColumnRole>(
    known && isColumnRole(known.quantity) ? known.quantity : 'speed',
  );
  const units = roleUnits(role);
  const [unit, setUnit] = useState(known?.unitAsRead ?? '');
  const [scale, setScale] = useState('');
  const [unsure, setUnsure] = useState(false);
  const scaling = Number(scale.replace(',', '.'));
  const badScale = scale.trim() !== '' && !(Number.isFinite(scaling) && scaling !== 0);
  useEffect(() => {
    if (first !== '') begin.current?.focus();
  }, [first]);

  const say = () => {
    if (name.trim() === '' || badScale) return;
    onSay({
      role,
      name: name.trim(),
      ...(units.length > 0 ? { unit: units.includes(unit) ? unit : (units[0] ?? '') } : {}),
      ...(scale.trim() === '' || scaling === 1 ? {} : { scale: scaling }),
      ...(unsure ? { assumed: true } : {}),
    });
  };

  return (
    <form
      className="fields column-form"
      onSubmit={(event) => {
        event.preventDefault();
        say();
      }}
    >
      <div className="field">
        <label htmlFor={`${id}n`}>Heading of the column</label>
        <input
          id={`${id}n`}
          value={name}
          list={`${id}l`}
          autoComplete="off"
          onChange={(event) => setName(event.target.value)}
        />
        <datalist id={`${id}l`}>
          {headings.map((heading, index) => (
            <option key={index}>{heading}</option>
          ))}
        </datalist>
      </div>
      <div className="field">
        <label htmlFor={`${id}r`}>What it is</label>
        <select
          id={`${id}r`}
          ref={begin}
          value={role}
          onChange={(event) => isColumnRole(event.target.value) && setRole(event.target.value)}
        >
          {columnRoleIds.map((key) => (
            <option key={key} value={key}>
              {columnRoles[key].title}
            </option>
          ))}
        </select>
      </div>
      {units.length > 0 && (
        <div className="field">
          <label htmlFor={`${id}u`}>Unit of its numbers</label>
          <select
            id={`${id}u`}
            value={units.includes(unit) ? unit : units[0]}
            onChange={(event) => setUnit(event.target.value)}
          >
            {units.map((symbol) => (
              <option key={symbol}>{symbol}</option>
            ))}
          </select>
        </div>
      )}
      {units.length > 0 && (
        <div className="field">
          <label htmlFor={`${id}s`}>Scale</label>
          <input
            id={`${id}s`}
            value={scale}
            inputMode="decimal"
            autoComplete="off"
            aria-invalid={badScale}
            aria-describedby={`${id}sh`}
            onChange={(event) => setScale(event.target.value)}
          />
          <p id={`${id}sh`} className={badScale ? 'error' : 'hint'}>
            {badScale
              ? 'A number other than 0 is needed, such as 0.01.'
              : 'multiplies its numbers; 1 where left out'}
          </p>
        </div>
      )}
      <label className="choice">
        <input type="checkbox" checked={unsure} onChange={(event) => setUnsure(event.target.checked)} />
        Not sure: mark every result as resting on it
      </label>
      <div className="actions">
        <button type="submit" disabled={busy}>
          {busy ? 'Reading …' : 'Read the log this way'}
        </button>
      </div>
    </form>
  );
}
