import type { SpeedRun } from './speed-run.ts';

/**
 * The standard error of a distance that is summed by trapezoids from samples of speed: from the samples' own errors,
 * and from the bend of the speed between samples, which straight lines cut off.
 *
 * Equation: σ² = σv² k Σ wi² + Σ (Δai Δti²/12)²; wi are the trapezoids' weights, Δai the change of slope at a sample
 *
 * @param stop - s and m/s
 * @param noise - σv, m/s, standard deviation of a sample
 * @param correlation - k, by how much neighboring errors hang together; 1 where they don't
 * @returns m
 */
export function distanceError({ time, speed }: SpeedRun, noise: number, correlation: number): number {
  let weights = 0;
  let bends = 0;
  for (let i = 1; i < time.length - 1; i += 1) {
    const before = time[i]! - time[i - 1]!;
    const after = time[i + 1]! - time[i]!;
    weights += ((before + after) / 2) ** 2;
    if (before <= 0 || after <= 0) continue;
    const bend = (speed[i + 1]! - speed[i]!) / after - (speed[i]! - speed[i - 1]!) / before;
    const beyondNoise = Math.max(0, Math.abs(bend) - noise * Math.sqrt(2) * (1 / before + 1 / after));
    bends += ((beyondNoise * Math.max(before, after) ** 2) / 12) ** 2;
  }
  return Math.sqrt(noise * noise * correlation * weights + bends);
}
