/**
 * In which order to take values so that they ascend; equal ones keep theirs.
 *
 * @param values - the values
 * @returns the indices in that order; null where the values ascend as they stand
 */
export function sortedOrder(values: Float64Array): Uint32Array | null {
  let ascends = true;
  for (let i = 1; i < values.length && ascends; i += 1) ascends = values[i]! >= values[i - 1]!;
  if (ascends) return null;
  return Uint32Array.from(values.keys()).sort((a, b) => values[a]! - values[b]! || a - b);
}
