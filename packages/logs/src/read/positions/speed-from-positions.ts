import { greatCircle } from './great-circle.ts';
import type { Places } from './placed-rows.ts';

/** m/s; faster from one position to the next is a jump of the receiver, no car. */
const fastest = 100;
/** s from a moment to the positions before and after it that are looked at, at least: closer ones say more of their rounding than of the speed. */
const halfBase = 0.2;

/**
 * The speed at each position: the straight way from a position before to one after, over the time between. The moment
 * lies in the middle, so that the speed is not late; what happens faster than the time between is smoothed.
 *
 * @param length - number of rows of the log
 * @param places - its positions
 * @param step - s, the usual time from one position to the next
 * @param jump - told of each row at which the position jumps
 * @returns m/s a row; NaN at the ends of a stretch, beside a gap or a jump and where no position is
 */
export function speedFromPositions(
  length: number,
  places: Places,
  step: number,
  jump: (row: number) => void,
): Float64Array {
  const { row, time, segment } = places;
  const values = new Float64Array(length).fill(NaN);
  const whole = stretches(places, 2.5 * step, jump);
  const reach = Math.max(1, Math.round(halfBase / step));
  for (let i = reach; i + reach < row.length; i += 1) {
    const [before, after] = [i - reach, i + reach];
    if (whole[before] !== whole[after] || segment[before] !== segment[after]) continue;
    values[row[i]!] = between(places, before, after) / (time[after]! - time[before]!);
  }
  return values;
}

/** Numbers the stretches of positions between gaps and jumps. */
function stretches(places: Places, gap: number, jump: (row: number) => void): Uint32Array {
  const { row, time, segment } = places;
  const numbers = new Uint32Array(row.length);
  for (let i = 1; i < row.length; i += 1) {
    const duration = time[i]! - time[i - 1]!;
    const isJump = segment[i] === segment[i - 1] && between(places, i - 1, i) > fastest * duration;
    if (isJump) jump(row[i]!);
    numbers[i] = numbers[i - 1]! + (isJump || duration > gap ? 1 : 0);
  }
  return numbers;
}

function between({ latitude, longitude }: Places, a: number, b: number): number {
  return greatCircle(latitude[a]!, longitude[a]!, latitude[b]!, longitude[b]!);
}
