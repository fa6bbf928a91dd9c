import type { LogReport } from '@standstill/workshop';
import type { RunReport } from '../read/use-reports.ts';

/** One log of a set, as far as it is read. */
export interface LogState {
  readonly name: string;
  /** The server keeps no such file. */
  readonly missing: boolean;
  readonly failed: boolean;
  readonly report: LogReport | null;
  readonly refused: boolean;
}

export interface ProofState {
  readonly sameSetUp: boolean;
  readonly before: readonly LogState[];
  readonly after: readonly LogState[];
}

/** Why there is no comparison yet, in words that stand in place of the verdict; null where both halves are read. */
export function whatIsMissing({ sameSetUp, before, after }: ProofState): string | null {
  if (sameSetUp)
    return 'No comparison: before and after are the same set-up. Choose another for one of them.';
  if (before.length === 0 && after.length === 0)
    return 'Nothing yet: add a log of stops before the work and one after.';
  if (before.length === 0) return 'Half of it: there are stops after the work, but none before.';
  if (after.length === 0) return 'Half of it: there are stops before the work, but none after.';
  if ([...before, ...after].some(beingRead)) return 'Reading the logs …';
  const unread = unusable([...before, ...after]);
  const half = [before, after].find((set) => set.every(({ report }) => report === null));
  if (!half) return null;
  return `No comparison: ${unread.join(', ')} could not be used, see below.`;
}

/** Names of the logs that no comparison can use. */
export function unusable(logs: readonly LogState[]): readonly string[] {
  return logs.filter((log) => log.report === null && !beingRead(log)).map(({ name }) => name);
}

function beingRead({ missing, failed, report, refused }: LogState): boolean {
  return !missing && !failed && !refused && report === null;
}

/** Whether two answers are about the same logs of the same set-ups, by the same definition. */
export function sameSets(one: unknown, other: unknown): boolean {
  return one !== undefined && JSON.stringify(one) === JSON.stringify(other);
}

/** How far the log of a run is read; one that is being read anew counts as not read. */
export function stateOf({ run, log, query }: RunReport): LogState {
  const data = query.isPlaceholderData ? undefined : query.data;
  return {
    name: log?.name ?? run.log,
    missing: log === undefined,
    failed: query.isError,
    refused: data?.kind === 'log-refusal',
    report: data?.kind === 'log-report' ? data : null,
  };
}
