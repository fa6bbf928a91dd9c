import type { Estimate } from '../../results/estimate.ts';

/** What the model expects of stops as they were driven. */
export interface ExpectedFade {
  readonly setUp: string;
  /** m, last over first by the line through the distances of the stops that counted. */
  readonly growth: Estimate;
  /** °C of the hottest rotor at the start of each stop. */
  readonly temperatures: readonly number[];
  /** What the model can't have known of the drive, or could not drive. */
  readonly warnings: readonly string[];
}
