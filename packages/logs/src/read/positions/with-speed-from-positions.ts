import type { ChannelTable } from '../../channels/channel-table.ts';
import type { IssueList } from '../../channels/issue-list.ts';
import { refuseLog } from '../log-refusal.ts';
import type { ReadOutcome } from '../read-log.ts';
import { placedRows } from './placed-rows.ts';
import { speedFromPositionsName } from './speed-from-positions-name.ts';
import { speedFromPositions } from './speed-from-positions.ts';
import { sparsestPositions, usualStep } from './usual-step.ts';

/**
 * Gives a log that has positions and no speed a speed that is computed from them, and says so.
 *
 * @param table - the log
 * @param issues - the log's issues so far; what is said here is added
 * @returns the log with the speed; a refusal where positions are too far apart; null where there are none
 */
export function withSpeedFromPositions(table: ChannelTable, issues: IssueList): ReadOutcome | null {
  const places = placedRows(table);
  if (places === null || places.row.length < 2) return null;
  const step = usualStep(places);
  if (!(step <= sparsestPositions))
    return refuseLog(
      'log-too-sparse',
      table.source.name,
      `holds positions but no speed, and a position only every ${step.toFixed(1)} s; no stopping distance can be told from that: log at ten a second, with speed.`,
    );
  const values = speedFromPositions(table.time.length, places, step, (row) =>
    issues.add(
      'position-jump',
      null,
      () => `The position jumps, first at ${table.time[row]!.toFixed(1)} s; no speed is computed there.`,
    ),
  );
  if (values.every(Number.isNaN))
    return refuseLog(
      'log-too-sparse',
      table.source.name,
      `holds positions but no speed, and only ${places.row.length} positions, no three of them close together without a jump; log at ten a second, with speed.`,
    );
  issues.add(
    'speed-from-positions',
    null,
    () =>
      `The log holds no speed; one was computed from positions ${step.toFixed(2)} s apart, which is rougher than a receiver's own.`,
  );
  const channel = {
    name: speedFromPositionsName,
    quantity: 'speed',
    unitAsRead: 'm/s',
    unitOrigin: 'format',
    chosenBy: 'format',
    values,
  } as const;
  return {
    ok: true,
    table: { ...table, channels: [channel, ...table.channels], issues: issues.list() },
  };
}
