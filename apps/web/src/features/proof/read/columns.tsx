import type { LogReport, LogSummary } from '@standstill/workshop';
import { useState } from 'react';
import { Trouble } from '../../../shared/ui/trouble.tsx';
import { ColumnForm } from './column-form.tsx';
import { ColumnTable } from './column-table.tsx';
import { useColumnWords } from './use-column-words.ts';

export interface ColumnsProps {
  readonly log: LogSummary;
  /** Null where the log was refused: a person may still know its columns. */
  readonly report: LogReport | null;
}

/** What each column of a log was taken for, and the place to say otherwise. */
export function Columns({ log, report }: ColumnsProps) {
  const { say, forget } = useColumnWords(log, report);
  const [correcting, setCorrecting] = useState('');
  const channels = report?.channels ?? [];
  const correctable = report === null || channels.some(({ chosenBy }) => chosenBy !== 'format');
  return (
    <details className="columns-of-log">
      <summary>{summaryOf(report)}</summary>
      <div className="stack">
        {report && (
          <ColumnTable
            channels={channels}
            correctable={correctable}
            onCorrect={setCorrecting}
            onForget={forget}
          />
        )}
        {correctable && (
          <div className="no-print stack">
            <p className="small soft">
              A word of yours overrules the guess. The job keeps it for every log with the same headings, on
              every device. Columns that are not used are kept in the file all the same.
            </p>
            <ColumnForm
              key={`${report?.kind ?? 'refused'} ${correcting}`}
              channels={channels}
              headings={report?.headings?.split(' | ') ?? channels.map(({ name }) => name)}
              name={correcting}
              busy={say.isPending}
              onSay={(word) => say.mutate(word, { onSuccess: () => setCorrecting('') })}
            />
            {say.error && <Trouble tried="read the log this way" reason={say.error} />}
          </div>
        )}
        {!correctable && <p className="small soft">The format of this file says what each column is.</p>}
      </div>
    </details>
  );
}

function summaryOf(report: LogReport | null): string {
  if (report === null) return 'Say what its columns are';
  const used = report.channels.filter(({ quantity }) => quantity !== 'unknown').length;
  const said = report.channels.filter(({ chosenBy }) => chosenBy === 'person').length;
  const bySaid = said === 0 ? '' : `, ${said} by your word`;
  return `Columns: ${used} of ${report.channels.length} used${bySaid}`;
}
