import type { Channel, ChannelTable } from '../../channels/channel-table.ts';
import type { IssueList } from '../../channels/issue-list.ts';
import { odometerWay } from './odometer-way.ts';

/** Share by which speed and odometer may differ before it is said; tires alone wear by 2 % of their radius. Common practice. */
const tolerated = 0.03;
/** m; over a shorter way the ends say more than the way. */
const shortest = 100;

/**
 * Says by how much the way by speed and the way by odometer differ, for every speed of a log that records both.
 *
 * Assumes: a distance that only ever grows is an odometer; it may start again from zero.
 *
 * @param table - the log
 * @param issues - where it is said
 */
export function speedAgainstOdometer(table: ChannelTable, issues: IssueList): void {
  const odometers = table.channels.filter(({ quantity }) => quantity === 'distance');
  const speeds = table.channels.filter(({ quantity }) => quantity === 'speed');
  for (const odometer of odometers) for (const speed of speeds) compare(table, speed, odometer, issues);
}

function compare(table: ChannelTable, speed: Channel, odometer: Channel, issues: IssueList): void {
  const way = odometerWay(table, odometer.values, speed.values);
  if (way === null || way.odometer < shortest || way.resolution > way.odometer * 0.005) return;
  const share = way.speed / way.odometer - 1;
  if (Math.abs(share) <= tolerated) return;
  const more = share > 0 ? 'more' : 'less';
  issues.add(
    'speed-against-odometer',
    null,
    () =>
      `The speed '${speed.name}' makes ${(Math.abs(share) * 100).toFixed(1)} % ${more} way than the distance '${odometer.name}' (${way.speed.toFixed(0)} against ${way.odometer.toFixed(0)} m): one of them reads wrong, and stopping distances with it.`,
    `${speed.name}\n${odometer.name}`,
  );
}
