import type { RunRole } from '../../job/document/run-schema.ts';
import type { LogReport } from '../../results/log-report.ts';

/** A log as a surface has it, before it is known which set it belongs to. */
export interface GivenLog {
  readonly report: LogReport;
  /** Every name by which a run of the job may call this log: its file, the id under which it is kept. */
  readonly names: readonly string[];
  /** What the person takes it for; by the role and the set-up of its run where absent. */
  readonly role?: RunRole;
}
