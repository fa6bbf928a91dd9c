import { z } from 'zod';

/** A result with its 95 % interval. The key that holds it ends in the unit, e.g. `distance_m`. */
export const estimate = z.strictObject({
  value: z.number(),
  low: z.number(),
  high: z.number(),
});

export type Estimate = z.infer<typeof estimate>;
