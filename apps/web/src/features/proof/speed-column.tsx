import type { LogReport } from '@standstill/workshop';
import { use, useId, useState } from 'react';
import { WarningBox } from '../../shared/ui/warnings.tsx';
import { SpeedChoosingContext, speedUnits } from './speed-choice.ts';

export interface SpeedColumnProps {
  readonly sha256: string;
  /** Columns as they were read; none where the log was refused. */
  readonly channels: LogReport['channels'];
}

/** Lets a person overrule which column is the speed and in which unit, and says plainly that it is their word. */
export function SpeedColumn({ sha256, channels }: SpeedColumnProps) {
  const { choices, choose } = use(SpeedChoosingContext);
  const chosen = choices[sha256];
  const guess = channels.find(({ quantity }) => quantity === 'speed');
  return (
    <>
      {chosen && (
        <WarningBox severity="caution">
          Speed is read from the column “{chosen.name}” in {chosen.unit} by your word, kept on this device
          only: elsewhere the file is still read by its headings.{' '}
          <button type="button" className="bare no-print" onClick={() => choose(sha256, null)}>
            Go by the headings again
          </button>
        </WarningBox>
      )}
      <details className="no-print">
        <summary>Speed is another column, or in another unit</summary>
        <SpeedForm
          channels={channels}
          name={chosen?.name ?? guess?.name ?? ''}
          unit={chosen?.unit ?? guess?.unitAsRead ?? 'mph'}
          onChoose={(choice) => choose(sha256, choice)}
        />
      </details>
    </>
  );
}

interface SpeedFormProps {
  readonly channels: LogReport['channels'];
  readonly name: string;
  readonly unit: string;
  readonly onChoose: (choice: { readonly name: string; readonly unit: string }) => void;
}

function SpeedForm({ channels, onChoose, ...first }: SpeedFormProps) {
  const id = useId();
  const [name, setName] = useState(first.name);
  const [unit, setUnit] = useState(speedUnits.includes(first.unit) ? first.unit : 'mph');
  return (
    <form
      className="fields"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() !== '') onChoose({ name: name.trim(), unit });
      }}
    >
      <div className="field">
        <label htmlFor={`${id}n`}>Heading of the speed column</label>
        <input
          id={`${id}n`}
          value={name}
          list={`${id}l`}
          autoComplete="off"
          onChange={(event) => setName(event.target.value)}
        />
        <datalist id={`${id}l`}>
          {channels.map((channel, index) => (
            <option key={index}>{channel.name}</option>
          ))}
        </datalist>
      </div>
      <div className="field">
        <label htmlFor={`${id}u`}>Unit of its numbers</label>
        <select id={`${id}u`} value={unit} onChange={(event) => setUnit(event.target.value)}>
          {speedUnits.map((symbol) => (
            <option key={symbol}>{symbol}</option>
          ))}
        </select>
      </div>
      <div className="actions">
        <button type="submit">Read the log this way</button>
      </div>
    </form>
  );
}
