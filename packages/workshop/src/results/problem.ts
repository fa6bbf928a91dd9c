import { z } from 'zod';

/** Why a document was refused: where, what was found, what is accepted. */
export const problem = z.strictObject({
  /** Stable code, listed in docs/errors.md. */
  code: z.string(),
  file: z.string().nullable(),
  /** 1-based; null where the source has no lines (an API body). */
  line: z.number().int().nullable(),
  column: z.number().int().nullable(),
  /** Path in the document, e.g. `car.wheelbase`. */
  path: z.string(),
  found: z.string(),
  accepted: z.string(),
  /** The whole thing in one line for a person, without the file position. */
  message: z.string(),
});

export type Problem = z.infer<typeof problem>;
