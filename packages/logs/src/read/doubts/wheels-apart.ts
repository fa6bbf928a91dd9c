import type { Channel, ChannelTable } from '../../channels/channel-table.ts';
import type { IssueList } from '../../channels/issue-list.ts';

/** s; a wheel's speed holds for so long beside those of the others, which may come at other moments. */
const holds = 0.1;
/** Wheels differ where it is by more than this share of the fastest and by more than this, m/s. */
const apart = { share: 0.1, difference: 1 };
/** s; shorter than this it may be one damaged value. */
const shortest = 0.05;

/**
 * Says where the wheels of a log tell different speeds: one stands in the air, spins, locks or is badly scaled.
 *
 * @param table - the log
 * @param issues - where it is said
 */
export function wheelsApart(table: ChannelTable, issues: IssueList): void {
  const wheels = table.channels.filter(({ quantity }) => quantity === 'wheel-speed');
  if (wheels.length < 2) return;
  const found = { moving: 0, differing: 0, worst: 0, first: NaN, longest: 0 };
  let since = NaN;
  for (const { time, slowest, fastest } of spreads(table, wheels)) {
    if (!(fastest > apart.difference)) {
      since = NaN;
      continue;
    }
    found.moving += 1;
    const difference = fastest - slowest;
    if (difference <= apart.difference || difference <= apart.share * fastest) {
      since = NaN;
      continue;
    }
    if (Number.isNaN(since)) since = time;
    if (Number.isNaN(found.first)) found.first = time;
    found.differing += 1;
    found.worst = Math.max(found.worst, difference);
    found.longest = Math.max(found.longest, time - since);
  }
  if (found.longest < shortest) return;
  const share = ((found.differing / found.moving) * 100).toFixed(0);
  issues.add(
    'wheels-apart',
    null,
    () =>
      `The wheels tell different speeds in ${share} % of the moments in which one turns, first at ${found.first.toFixed(1)} s, by up to ${(found.worst * 3.6).toFixed(0)} km/h: one stands in the air, spins, locks or is badly scaled, and a speed made of them need not be the car's.`,
  );
}

/** The slowest and the fastest wheel at each moment that brings news of one, m/s. */
function* spreads(
  { time: times }: ChannelTable,
  wheels: readonly Channel[],
): Generator<{ time: number; slowest: number; fastest: number }> {
  const speeds = new Float64Array(wheels.length).fill(NaN);
  const seen = new Float64Array(wheels.length).fill(-Infinity);
  for (let row = 0; row < times.length; row += 1) {
    const time = times[row]!;
    let isNews = false;
    for (let wheel = 0; wheel < wheels.length; wheel += 1) {
      const speed = wheels[wheel]!.values[row]!;
      if (Number.isNaN(speed)) continue;
      speeds[wheel] = speed;
      seen[wheel] = time;
      isNews = true;
    }
    if (!isNews) continue;
    let [slowest, fastest] = [Infinity, -Infinity];
    for (let wheel = 0; wheel < wheels.length; wheel += 1) {
      if (time - seen[wheel]! > holds) continue;
      slowest = Math.min(slowest, speeds[wheel]!);
      fastest = Math.max(fastest, speeds[wheel]!);
    }
    yield { time, slowest, fastest };
  }
}
