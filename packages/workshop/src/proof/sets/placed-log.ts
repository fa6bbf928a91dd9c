import type { RunRole } from '../../job/document/run-schema.ts';
import type { GivenLog } from './given-log.ts';
import type { RunLog } from './job-sets.ts';

/** A log with its run and what it is taken for. */
export interface PlacedLog extends RunLog {
  /** The name that sentences call it by. */
  readonly name: string;
  /** As a person says, else as its run says; undefined where neither does. */
  readonly role: RunRole | undefined;
  /** Whether a person said so. */
  readonly isGiven: boolean;
}

/** A given log, its run found. */
export function placedLog({ report, role }: GivenLog, run: RunLog['run']): PlacedLog {
  return { report, run, name: report.source.name, role: role ?? run?.role, isGiven: role !== undefined };
}
