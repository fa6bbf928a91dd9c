/**
 * The step in which a channel is recorded: the smallest change between neighboring values, where all changes are
 * whole multiples of it.
 *
 * Assumes: that a real quantity changes by one step now and then.
 *
 * @param values - m/s, finite
 * @returns m/s; 0 where the changes have no common step of 0.01 m/s or more
 */
export function speedResolution(values: ArrayLike<number>): number {
  let step = Infinity;
  for (let i = 1; i < values.length; i += 1) {
    const change = Math.abs(values[i]! - values[i - 1]!);
    if (change > 0.005 && change < step) step = change;
  }
  if (!Number.isFinite(step)) return 0;
  let changes = 0;
  let whole = 0;
  for (let i = 1; i < values.length; i += 1) {
    const change = Math.abs(values[i]! - values[i - 1]!);
    if (change < 1e-9) continue;
    changes += 1;
    const steps = change / step;
    if (Math.abs(steps - Math.round(steps)) < 0.05) whole += 1;
  }
  return step >= 0.01 && whole >= 0.95 * changes ? step : 0;
}
