/**
 * How much a record scatters from sample to sample, whatever the thing itself does: from second differences, of which
 * the middle half counts, so that steps and outliers don't.
 *
 * Equation: σ = median |x1 - 2 x2 + x3| / (0.6745 √6)
 * Assumes: errors that are new with every sample; such as hang together show less than they are.
 *
 * @param values - evenly spaced or nearly so, finite
 * @param counts - which places are looked at, by the value there, unit of the values; all where absent
 * @returns one standard deviation, unit of the values; 0 where fewer than 6 places count
 */
export function roughness(
  values: ArrayLike<number>,
  counts: (value: number) => boolean = () => true,
): number {
  const last = values.length - 2;
  const stride = Math.max(1, Math.ceil(last / enough));
  const bends = new Float64Array(Math.max(0, Math.ceil(last / stride)));
  let count = 0;
  for (let i = 0; i < last; i += stride) {
    if (!counts(values[i]!)) continue;
    bends[count] = Math.abs(values[i]! - 2 * values[i + 1]! + values[i + 2]!);
    count += 1;
  }
  if (count < 6) return 0;
  return bends.subarray(0, count).sort()[count >> 1]! / (0.6745 * Math.sqrt(6));
}

/** Places of a record that are looked at; more do not sharpen a median. */
const enough = 20_000;
