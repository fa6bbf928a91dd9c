import { z } from 'zod';

/** Something the reader must see before acting. `danger` is never a footnote. */
export const warning = z.strictObject({
  code: z.string(),
  severity: z.enum(['danger', 'caution', 'note']),
  /** Id of the set-up or run it is about; absent where it is about the job. */
  about: z.string().optional(),
  message: z.string(),
});

export type Warning = z.infer<typeof warning>;
