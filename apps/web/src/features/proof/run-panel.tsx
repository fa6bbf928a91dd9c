import type { JobDocument, LogReport } from '@standstill/workshop';
import { useJobSession } from '../../shared/job/job-context.ts';
import { Trouble } from '../../shared/ui/trouble.tsx';
import { WarningBox } from '../../shared/ui/warnings.tsx';
import { removeRun } from './run-edits.ts';
import { RunFacts } from './run-facts.tsx';
import { StopCard } from './stop-card.tsx';
import { SpeedColumn } from './speed-column.tsx';
import { StopTable } from './stop-table.tsx';
import type { RunReport } from './use-reports.ts';

export interface RunPanelProps {
  readonly report: RunReport;
  readonly fastest: number;
  readonly dashed: boolean;
}

/** One log of a set: in a sentence what is in it, then how it was read, then its stops. */
export function RunPanel({ report: { run, log, query }, fastest, dashed }: RunPanelProps) {
  const session = useJobSession();
  const name = log?.name ?? run.log;
  return (
    <article className="run stack" aria-label={name}>
      <div className="run-head">
        <h3>{name}</h3>
        <button
          type="button"
          className="bare"
          onClick={() => session.edit((document) => removeRun(document as JobDocument, run.id))}
        >
          Take out of the set
        </button>
      </div>
      <RunFacts run={run} />
      {!log && (
        <WarningBox severity="caution">
          The job names the log “{run.log}”, but the server keeps no such file. Drop it here again.
        </WarningBox>
      )}
      {log && query.isPending && <p className="soft">Reading {name} …</p>}
      {query.error && (
        <Trouble tried={`read ${name}`} reason={query.error} onRetry={() => void query.refetch()} />
      )}
      {query.data?.kind === 'log-refusal' && (
        <WarningBox severity="caution">{query.data.sentence}</WarningBox>
      )}
      {log && query.data && (
        <SpeedColumn
          key={query.data.kind}
          sha256={log.sha256}
          channels={query.data.kind === 'log-report' ? query.data.channels : []}
        />
      )}
      {query.data?.kind === 'log-report' && <ReadLog report={query.data} fastest={fastest} dashed={dashed} />}
    </article>
  );
}

function ReadLog({
  report,
  fastest,
  dashed,
}: {
  readonly report: LogReport;
  readonly fastest: number;
  readonly dashed: boolean;
}) {
  const assumed = report.channels.filter(({ unitOrigin }) => unitOrigin === 'assumed');
  const issues = report.issues.reduce((sum, { count }) => sum + count, 0);
  return (
    <>
      <p>{report.sentence}</p>
      {assumed.length > 0 && (
        <WarningBox severity="caution">
          The file does not say the unit of {assumed.map(({ name }) => name).join(', ')}; it was assumed.
          Check it before you believe a distance.
        </WarningBox>
      )}
      <details>
        <summary>
          How it was read: {report.source.rows} rows, {report.channels.length} columns,{' '}
          {issues === 0 ? 'no issues' : `${issues} ${issues === 1 ? 'issue' : 'issues'}`}
        </summary>
        <HowRead report={report} />
      </details>
      <div className="no-print">
        {report.stops.map((stop) => (
          <StopCard key={stop.number} stop={stop} fastest={fastest} dashed={dashed} />
        ))}
      </div>
      <StopTable stops={report.stops} />
    </>
  );
}

const origins = {
  header: 'said by the header',
  format: 'fixed by the format',
  given: 'given by you',
  assumed: 'assumed',
  none: 'has none',
} as const;

function HowRead({ report }: { readonly report: LogReport }) {
  return (
    <div className="stack">
      <div className="table-wrap" tabIndex={0} role="group" aria-label="Columns of the log">
        <table>
          <thead>
            <tr>
              <th scope="col">Column</th>
              <th scope="col">Taken as</th>
              <th scope="col">Unit</th>
              <th scope="col">Unit known</th>
            </tr>
          </thead>
          <tbody>
            {report.channels.map(({ name, quantity, unitAsRead, unitOrigin }, index) => (
              <tr key={index}>
                <th scope="row">{name}</th>
                <td>{quantity === 'unknown' ? 'not used' : quantity.replaceAll('-', ' ')}</td>
                <td>{unitAsRead || '–'}</td>
                <td className={unitOrigin === 'assumed' ? 'assumed' : undefined}>{origins[unitOrigin]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {report.issues.length > 0 && (
        <ul className="small">
          {report.issues.map(({ code, message, line, count }) => (
            <li key={`${code} ${line ?? ''}`}>
              {count} × {message}
              {line !== null && ` First in line ${line}.`}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
