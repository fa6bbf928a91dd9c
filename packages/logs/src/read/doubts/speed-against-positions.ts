import type { Channel, ChannelTable } from '../../channels/channel-table.ts';
import type { IssueList } from '../../channels/issue-list.ts';
import { speedOverPositions } from '../positions/speed-over-positions.ts';

/**
 * Share by which a speed and the way between positions may differ; speedometers read up to a tenth high by design, and
 * positions scatter. Units that are taken for each other differ more, knots and mph by 15 %. Common practice.
 */
const tolerated = 0.12;

/**
 * Says where a speed and the positions of a log contradict each other, as where mph stand under a heading of km/h.
 *
 * @param table - the log
 * @param issues - where it is said
 */
export function speedAgainstPositions(table: ChannelTable, issues: IssueList): void {
  for (const speed of table.channels) if (isSpeed(speed)) compare(table, speed, issues);
}

function isSpeed({ quantity }: Channel): boolean {
  return quantity === 'speed' || quantity === 'wheel-speed';
}

function compare(table: ChannelTable, speed: Channel, issues: IssueList): void {
  const ratio = speedOverPositions(table, speed.values);
  if (ratio === null || Math.abs(ratio - 1) <= tolerated) return;
  issues.add(
    'speed-against-positions',
    null,
    () =>
      `The speed '${speed.name}' is usually ${ratio.toFixed(2)} times that of the positions: it is in another unit than stated or is not the car's, and stopping distances are wrong with it; say which unit it is.`,
    speed.name,
  );
}
