import type { ChannelTable } from '../../channels/channel-table.ts';
import { issueList } from '../../channels/issue-list.ts';
import { speedAgainstOdometer } from './speed-against-odometer.ts';
import { speedAgainstPositions } from './speed-against-positions.ts';
import { speedsDisagree } from './speeds-disagree.ts';
import { wheelsApart } from './wheels-apart.ts';

/**
 * Holds the channels of a log against each other and adds to its issues where they contradict: speed and odometer, speed and
 * positions, the speeds and the wheels among themselves.
 *
 * @param table - the log as read
 * @returns the log with what was found
 */
export function withDoubts(table: ChannelTable): ChannelTable {
  const issues = issueList();
  speedAgainstOdometer(table, issues);
  speedAgainstPositions(table, issues);
  speedsDisagree(table, issues);
  wheelsApart(table, issues);
  const found = issues.list();
  return found.length === 0 ? table : { ...table, issues: [...table.issues, ...found] };
}
