import type { ChannelTable } from '../../channels/channel-table.ts';
import type { IssueList } from '../../channels/issue-list.ts';

/** s; a wheel's speed holds for so long beside those of the others, which may come at other moments. */
const holds = 0.1;
/** Wheels differ where it is by more than this share of the fastest and more than this, m/s. */
const apart = { share: 0.1, difference: 1 };
/** Share of the moving time above which it is said; in turns and on ice wheels differ for moments. */
const tolerated = 0.02;

/**
 * Says where the wheels of a log tell different speeds: one stands in the air, spins, locks or is badly scaled.
 *
 * @param table - the log
 * @param issues - where it is said
 */
export function wheelsApart(table: ChannelTable, issues: IssueList): void {
  const wheels = table.channels.filter(({ quantity }) => quantity === 'wheel-speed');
  if (wheels.length < 2) return;
  const last = wheels.map(() => ({ speed: NaN, time: -Infinity }));
  let [moving, differing, worst] = [0, 0, 0];
  let first = NaN;
  for (let row = 0; row < table.time.length; row += 1) {
    const time = table.time[row]!;
    let [slowest, fastest, isNews] = [Infinity, 0, false];
    for (let wheel = 0; wheel < wheels.length; wheel += 1) {
      const speed = wheels[wheel]!.values[row]!;
      if (!Number.isNaN(speed)) {
        last[wheel] = { speed, time };
        isNews = true;
      }
      const known = last[wheel]!;
      if (time - known.time > holds) continue;
      slowest = Math.min(slowest, known.speed);
      fastest = Math.max(fastest, known.speed);
    }
    if (!isNews || !(fastest > apart.difference) || slowest === Infinity) continue;
    moving += 1;
    const difference = fastest - slowest;
    if (difference <= apart.difference || difference <= apart.share * fastest) continue;
    differing += 1;
    worst = Math.max(worst, difference);
    if (Number.isNaN(first)) first = time;
  }
  if (differing <= tolerated * moving) return;
  issues.add(
    'wheels-apart',
    null,
    () =>
      `The wheels tell different speeds in ${((differing / moving) * 100).toFixed(0)} % of the moments in which one turns, first at ${first.toFixed(1)} s, by up to ${(worst * 3.6).toFixed(0)} km/h: one stands in the air, spins, locks or is badly scaled, and the speed made of them need not be the car's.`,
  );
}
