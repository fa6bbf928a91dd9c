/**
 * How much a record scatters from sample to sample, whatever the thing itself does: from second differences, of which
 * the middle half counts, so that steps and outliers don't.
 *
 * Equation: σ = median |x1 - 2 x2 + x3| / (0.6745 √6)
 * Assumes: errors that are new with every sample; such as hang together show less than they are.
 *
 * @param values - evenly spaced or nearly so, finite
 * @returns one standard deviation, unit of the values; 0 where there are fewer than 8
 */
export function roughness(values: ArrayLike<number>): number {
  const count = values.length - 2;
  if (count < 6) return 0;
  const stride = Math.max(1, Math.ceil(count / 20_000));
  const bends = new Float64Array(Math.floor((count - 1) / stride) + 1);
  for (let i = 0; i < bends.length; i += 1) {
    const at = i * stride;
    bends[i] = Math.abs(values[at]! - 2 * values[at + 1]! + values[at + 2]!);
  }
  bends.sort();
  return bends[bends.length >> 1]! / (0.6745 * Math.sqrt(6));
}
