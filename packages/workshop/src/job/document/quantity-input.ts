import { z } from 'zod';

export const origin = z.enum(['measured', 'specified', 'assumed']);

/** How a value is known: read off a gauge, stated by a data sheet, or filled in. */
export type Origin = z.infer<typeof origin>;

const written = z.union([z.string(), z.number()]);

/** A quantity with what is known about it: `{ value: 14, unit: in, origin: measured, spread: "0.1 in" }`. */
const quantityRecord = z.strictObject({
  value: written,
  unit: z.string().optional(),
  origin: origin.optional(),
  /** One standard deviation: `"0.1 in"` or `"2 %"` of the value. */
  spread: written.optional(),
  note: z.string().optional(),
});

/** A quantity as a person writes it; `"14 in"`, `{ value: 14, unit: in }` and `{ value: "14 in" }` read alike. */
export const quantityInput = z.union([z.string(), z.number(), quantityRecord]);

export type QuantityInput = z.infer<typeof quantityInput>;
export type QuantityRecord = z.infer<typeof quantityRecord>;
