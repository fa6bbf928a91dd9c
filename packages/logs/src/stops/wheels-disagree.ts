import type { ChannelTable } from '../channels/channel-table.ts';
import { rowsBetween } from './rows-between.ts';

/** s before the start in which the wheels must agree: nothing brakes them yet. */
const lookBack = 0.5;

/**
 * Whether the wheels told different speeds before the brakes bit: then at least one spins, stands in the air or is
 * badly scaled, and no speed made of them is the car's. Under braking they may differ; that is slip.
 *
 * @param table - the log
 * @param start - s, start of the stop
 * @param end - s, its end, to bound the look where the log begins with the stop
 * @returns m/s, the greatest difference where it is over a tenth of the fastest wheel and over 1 m/s; null else
 */
export function wheelsDisagree(table: ChannelTable, start: number, end: number): number | null {
  const wheels = table.channels.filter(({ quantity }) => quantity === 'wheel-speed');
  if (wheels.length < 2) return null;
  const { first, end: last } = rowsBetween(table, start - lookBack, Math.min(end, start + 0.05));
  let worst: number | null = null;
  for (let row = first; row < last; row += 1) {
    let [slowest, fastest] = [Infinity, -Infinity];
    for (const { values } of wheels) {
      slowest = Math.min(slowest, values[row]!);
      fastest = Math.max(fastest, values[row]!);
    }
    const difference = fastest - slowest;
    if (difference > 1 && difference > fastest / 10) worst = Math.max(worst ?? 0, difference);
  }
  return worst;
}
