import type { LogReport } from '@standstill/workshop';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { channelRange } from './channel-range.ts';
import { roleWords } from './column-roles.ts';

export interface ColumnTableProps {
  readonly channels: LogReport['channels'];
  /** Starts a correction of a column. */
  readonly onCorrect: (name: string) => void;
  /** Takes a person's word on a column back. */
  readonly onForget: (name: string) => void;
  /** False where the format itself says what each column is. */
  readonly correctable: boolean;
}

const origins = {
  header: 'said by the heading',
  format: 'fixed by the format',
  given: 'given by a person',
  assumed: 'assumed',
  none: 'has none',
} as const;

const choosers = { format: 'the format', guess: 'a guess from the heading', person: 'a person' } as const;

/** Every column of a log: its heading, what it was taken for, its unit, and who said so. */
export function ColumnTable({ channels, onCorrect, onForget, correctable }: ColumnTableProps) {
  const { preferences } = useUnits();
  return (
    <div className="table-wrap" tabIndex={0} role="group" aria-label="Columns of the log">
      <table className="columns">
        <thead>
          <tr>
            {['Heading', 'Taken for', 'Unit', 'Who said so', 'Values'].map((title) => (
              <th key={title} scope="col">
                {title}
              </th>
            ))}
            {correctable && (
              <th scope="col" className="no-print">
                <span className="unseen">Correct it</span>
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {channels.map((channel, index) => {
            const { name, quantity, unitAsRead, unitOrigin, chosenBy } = channel;
            return (
              <tr key={index}>
                <th scope="row">{name}</th>
                <td>{roleWords(quantity)}</td>
                <td>
                  {unitAsRead || '–'}
                  {quantity !== 'unknown' && unitOrigin !== 'none' && (
                    <span className={unitOrigin === 'assumed' ? 'small assumed' : 'small soft'}>
                      {' '}
                      {origins[unitOrigin]}
                    </span>
                  )}
                </td>
                <td>{quantity === 'unknown' && chosenBy === 'guess' ? 'nobody' : choosers[chosenBy]}</td>
                <td>{channelRange(channel, preferences)}</td>
                {correctable && (
                  <td className="no-print">
                    <button
                      type="button"
                      className="bare"
                      onClick={() => (chosenBy === 'person' ? onForget(name) : onCorrect(name))}
                    >
                      {chosenBy === 'person' ? 'Guess again' : 'Correct'}
                      <span className="unseen"> {name}</span>
                    </button>
                  </td>
                )}
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
