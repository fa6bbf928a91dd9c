import type { OutOfRangeError } from '@standstill/numerics';

/** Thrown where a value of one set-up is outside what the formulas are valid for: names the set-up and what to do. */
export class SetUpRangeError extends Error {
  readonly code = 'out-of-range';
  override readonly name = 'SetUpRangeError';

  constructor(
    readonly setUpId: string,
    title: string,
    cause: OutOfRangeError,
  ) {
    super(
      `with "${title}" the ${cause.message}; check what the job states for it, or leave this set-up out`,
      {
        cause,
      },
    );
  }
}
