/**
 * The value of a dense trace at a moment, on the straight line between its samples; the end values beyond the ends.
 *
 * @param time - s, ascending
 * @param values - any unit
 * @param moment - s
 * @returns unit of the values
 */
export function denseValue(time: ArrayLike<number>, values: ArrayLike<number>, moment: number): number {
  let low = 0;
  let high = time.length - 1;
  if (moment <= time[0]!) return values[0]!;
  if (moment >= time[high]!) return values[high]!;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (time[middle]! <= moment) low = middle;
    else high = middle;
  }
  const share = (moment - time[low]!) / (time[high]! - time[low]!);
  return values[low]! + share * (values[high]! - values[low]!);
}
