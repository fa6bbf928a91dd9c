import { z } from 'zod';

/** A value the person left out (or marked assumed), what was used instead, and where that comes from. */
export const assumedValue = z.strictObject({
  /** Path in the job document, e.g. `car.centerOfGravityHeight` or `parts.kit-pad.friction`. */
  path: z.string(),
  title: z.string(),
  /** As a person reads it, e.g. `0.50 m ± 0.04 m`. */
  text: z.string(),
  /** `class default: two-seat coupe, common practice`. */
  reason: z.string(),
});

export type AssumedValue = z.infer<typeof assumedValue>;
