import type { JobDocument, LogReport } from '@standstill/workshop';
import { useJobSession } from '../../../shared/job/job-context.ts';
import { Trouble } from '../../../shared/ui/trouble.tsx';
import { WarningBox } from '../../../shared/ui/warnings.tsx';
import { Columns } from '../read/columns.tsx';
import type { RunReport } from '../read/use-reports.ts';
import { SensorList } from '../stop/sensor-list.tsx';
import { StopCard } from '../stop/stop-card.tsx';
import { StopTable } from '../stop/stop-table.tsx';
import { removeRun } from './run-edits.ts';
import { RunFacts } from './run-facts.tsx';

export interface RunPanelProps {
  readonly report: RunReport;
  readonly fastest: number;
  readonly dashed: boolean;
}

/** One log of a set: in a sentence what is in it, then how it was read, then its stops. */
export function RunPanel({ report: { run, log, query }, fastest, dashed }: RunPanelProps) {
  const session = useJobSession();
  const name = log?.name ?? run.log;
  const report = query.data?.kind === 'log-report' ? query.data : null;
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
      {report && <p>{report.sentence}</p>}
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
      {report && <ByYourWord report={report} />}
      <RunFacts run={run} />
      {log && query.data && <Columns key={query.data.kind} log={log} report={report} />}
      {report && <ReadLog runId={run.id} report={report} fastest={fastest} dashed={dashed} />}
    </article>
  );
}

/** What a person has to check before a distance is believed. */
function ByYourWord({ report: { channels } }: { readonly report: LogReport }) {
  const assumed = channels.filter(({ unitOrigin }) => unitOrigin === 'assumed');
  const said = channels.filter(
    ({ chosenBy, unitOrigin }) => chosenBy === 'person' && unitOrigin !== 'assumed',
  );
  return (
    <>
      {assumed.length > 0 && (
        <WarningBox severity="caution">
          The file does not say the unit of {assumed.map(({ name }) => name).join(', ')}; it was assumed.
          Check it before you believe a distance.
        </WarningBox>
      )}
      {said.length > 0 && (
        <p className="small">
          By your word, kept in the job:{' '}
          {said.map(({ name, unitAsRead }) => `“${name}” in ${unitAsRead}`).join(', ')}.
        </p>
      )}
    </>
  );
}

interface ReadLogProps {
  readonly runId: string;
  readonly report: LogReport;
  readonly fastest: number;
  readonly dashed: boolean;
}

function ReadLog({ runId, report, fastest, dashed }: ReadLogProps) {
  const issues = report.issues.reduce((sum, { count }) => sum + count, 0);
  return (
    <>
      <SensorList sensors={report.sensors} />
      {report.issues.length > 0 && (
        <details>
          <summary>
            {report.source.rows} rows read, {issues} {issues === 1 ? 'thing' : 'things'} to know
          </summary>
          <ul className="small">
            {report.issues.map(({ code, message, line, count }) => (
              <li key={`${code} ${line ?? ''} ${message}`}>
                {count} × {message}
                {line !== null && ` First in line ${line}.`}
              </li>
            ))}
          </ul>
        </details>
      )}
      <div className="no-print">
        {report.stops.map((stop) => (
          <StopCard key={stop.number} runId={runId} stop={stop} fastest={fastest} dashed={dashed} />
        ))}
      </div>
      <StopTable stops={report.stops} />
    </>
  );
}
