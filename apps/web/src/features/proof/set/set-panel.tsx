import type { JobDocument, LogSummary, RunRole } from '@standstill/workshop';
import { useJobSession } from '../../../shared/job/job-context.ts';
import { Trouble } from '../../../shared/ui/trouble.tsx';
import type { RunReport } from '../read/use-reports.ts';
import { DropZone } from './drop-zone.tsx';
import { HardStopCaution } from './hard-stop-caution.tsx';
import { addRun } from './run-edits.ts';
import { RunPanel } from './run-panel.tsx';
import { useKeepLogs } from './use-keep-logs.ts';

export interface SetPanelProps {
  /** 'before', as in 'Add logs of stops before'. */
  readonly side: string;
  readonly setUp: string;
  /** What its logs are to the comparison. */
  readonly place: RunRole;
  readonly reports: readonly RunReport[];
  /** Kept logs that belong to no run yet. */
  readonly spare: readonly LogSummary[];
  /** m/s, the fastest entry on the page. */
  readonly fastest: number;
}

/** One set of measured stops: its log files, what was read in each, every stop. */
export function SetPanel({ side, setUp, place, reports, spare, fastest }: SetPanelProps) {
  const session = useJobSession();
  const keep = useKeepLogs({ setUp, role: place });
  return (
    <div className="stack set-panel">
      {(place === 'before' || place === 'after') && <HardStopCaution />}
      <DropZone
        title={`Add logs of stops ${side}`}
        busy={keep.isPending}
        onFiles={(files) => files.length > 0 && keep.mutate(files)}
      />
      {keep.error && (
        <Trouble
          tried="keep the log"
          reason={keep.error}
          onRetry={() => keep.variables && keep.mutate(keep.variables)}
        />
      )}
      {spare.length > 0 && (
        <div className="actions no-print">
          <span className="small">On the server, in no set:</span>
          {spare.map((log) => (
            <button
              key={log.id}
              type="button"
              onClick={() =>
                session.edit((document) =>
                  addRun(document as JobDocument, { setUp, role: place, log: log.id }),
                )
              }
            >
              {log.name} as {side}
            </button>
          ))}
        </div>
      )}
      {reports.length === 0 && <p className="soft">No log {side} yet.</p>}
      {reports.map((report) => (
        <RunPanel key={report.run.id} report={report} fastest={fastest} dashed={place === 'before'} />
      ))}
    </div>
  );
}
