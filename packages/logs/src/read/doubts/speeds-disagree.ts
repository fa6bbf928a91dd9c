import { quantile } from '@standstill/numerics';
import type { Channel, ChannelTable } from '../../channels/channel-table.ts';
import type { IssueList } from '../../channels/issue-list.ts';

/** s; a speed holds for so long beside one that comes at other moments. */
const holds = 0.5;
/** m/s; slower, a ratio of two speeds says little. */
const slowest = 3;
/** Moments that must speak. */
const fewest = 10;
/** Share by which two speeds of one car may differ; speedometers read up to a tenth high by design. Common practice. */
const tolerated = 0.1;

/**
 * Says where a log has several speeds that contradict each other: one is in another unit than stated or is not the car's.
 *
 * @param table - the log
 * @param issues - where it is said
 */
export function speedsDisagree(table: ChannelTable, issues: IssueList): void {
  const speeds = table.channels.filter(({ quantity }) => quantity === 'speed');
  const counts = speeds.map(({ values }) =>
    values.reduce((sum, value) => sum + (value > slowest ? 1 : 0), 0),
  );
  const reference = speeds[counts.indexOf(Math.max(...counts))];
  if (reference === undefined) return;
  for (const speed of speeds) {
    if (speed === reference) continue;
    const ratio = usualRatio(table, speed, reference);
    if (ratio === null || Math.abs(ratio - 1) <= tolerated) continue;
    issues.add(
      'speeds-disagree',
      null,
      () =>
        `The speed '${speed.name}' is usually ${ratio.toFixed(2)} times '${reference.name}': one of them is in another unit than stated or is not the car's; say which one to use.`,
      speed.name,
    );
  }
}

function usualRatio(table: ChannelTable, speed: Channel, reference: Channel): number | null {
  const ratios: number[] = [];
  let known = NaN;
  let since = -Infinity;
  for (let row = 0; row < table.time.length; row += 1) {
    const time = table.time[row]!;
    if (!Number.isNaN(reference.values[row]!)) {
      known = reference.values[row]!;
      since = time;
    }
    const value = speed.values[row]!;
    if (Number.isNaN(value) || time - since > holds || !(known > slowest)) continue;
    ratios.push(value / known);
  }
  return ratios.length < fewest ? null : quantile(ratios, 0.5);
}
