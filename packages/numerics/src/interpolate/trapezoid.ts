import { OutOfRangeError } from '../refuse/out-of-range-error.ts';

/**
 * The area under samples joined by straight lines, for example distance from speed over time.
 *
 * Equation: I = Σ (t_(i+1) - t_i) (y_i + y_(i+1)) / 2
 * Assumes: times ascending (equal times add nothing).
 * Valid: exact for straight-line pieces; the error falls with the square of the step on smooth curves.
 *
 * @param times - t_i, ascending, in any unit
 * @param values - y_i, as many as times, in any unit; NaN (a gap) is refused, never skipped
 * @returns the integral, unit of values times unit of times; 0 for fewer than two samples
 * @throws OutOfRangeError on NaN, on a time that goes back, or on unequal lengths
 * @example
 * trapezoid([0, 1, 3], [10, 8, 0]) // => 17
 */
export function trapezoid(times: ArrayLike<number>, values: ArrayLike<number>): number {
  const count = times.length;
  if (values.length !== count) {
    throw new OutOfRangeError('number of values', values.length, '', count, count);
  }
  let sum = 0;
  for (let i = 0; i < count; i += 1) {
    if (!Number.isFinite(values[i]!))
      throw new OutOfRangeError('value to integrate', values[i]!, '', -Infinity, Infinity);
    const previous = i === 0 ? times[0]! : times[i - 1]!;
    if (!(times[i]! >= previous)) throw new OutOfRangeError('time', times[i]!, '', previous, Infinity);
    if (i > 0) sum += (times[i]! - previous) * (values[i]! + values[i - 1]!) * 0.5;
  }
  return sum;
}
