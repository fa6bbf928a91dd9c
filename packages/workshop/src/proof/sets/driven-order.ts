import { isoSeconds } from '@standstill/logs';
import type { LogReport } from '../../results/log-report.ts';

/**
 * Logs in the order in which they were driven, where every one of them tells its date and time; else as they came.
 *
 * @param logs - of one set
 * @returns the same logs
 */
export function drivenOrder<Log extends { readonly report: LogReport }>(
  logs: readonly Log[],
): readonly Log[] {
  const times = new Map(logs.map((log) => [log, isoSeconds(log.report.epoch ?? '')]));
  if ([...times.values()].includes(null)) return logs;
  return logs.toSorted((one, other) => (times.get(one) ?? 0) - (times.get(other) ?? 0));
}
