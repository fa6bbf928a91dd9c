/** m/s; what is coarser than two km/h is no step of a record but too few different values to tell. */
const coarsest = 0.6;
const finest = 0.01;
const enough = 20_000;

/**
 * The step in which a channel is recorded: the smallest difference between any two of its values, where all values lie
 * whole multiples of it apart.
 *
 * @param values - m/s, finite
 * @returns m/s; 0 where no common step from 0.01 to 0.6 m/s shows
 */
export function speedResolution(values: Float64Array): number {
  const stride = Math.max(1, Math.ceil(values.length / enough));
  const sorted = values.filter((_, index) => index % stride === 0).sort();
  let step = Infinity;
  for (let i = 1; i < sorted.length; i += 1) {
    const difference = sorted[i]! - sorted[i - 1]!;
    if (difference > finest / 2 && difference < step) step = difference;
    else if (difference > 1e-6 && difference <= finest / 2) return 0;
  }
  if (!(step >= finest * 0.999 && step <= coarsest)) return 0;
  const whole = sorted.filter((value) => {
    const steps = (value - sorted[0]!) / step;
    return Math.abs(steps - Math.round(steps)) < 0.1;
  });
  return whole.length >= 0.95 * sorted.length ? step : 0;
}
