/** What the values of a channel go from and to, in the unit they are kept in, and how many there are. */
export interface ValueRange {
  readonly low: number;
  readonly high: number;
  readonly samples: number;
}

/**
 * The least and the greatest value of a channel, gaps left out.
 *
 * @param values - one for each row, any unit; NaN where there is none
 * @returns the range in the same unit; null where the channel has no value at all
 * @example
 * valueRange(Float64Array.of(3, NaN, 1)) // => { low: 1, high: 3, samples: 2 }
 */
export function valueRange(values: Float64Array): ValueRange | null {
  let [low, high, samples] = [Infinity, -Infinity, 0];
  for (let row = 0; row < values.length; row += 1) {
    const value = values[row]!;
    if (Number.isNaN(value)) continue;
    samples += 1;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return samples === 0 ? null : { low, high, samples };
}
