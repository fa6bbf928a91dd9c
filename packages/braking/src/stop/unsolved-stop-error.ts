/**
 * Thrown where no deceleration was found that goes with a speed and a line pressure: a fault of this program, which is
 * said instead of answering with a number that is not one. `code` is stable and listed in docs/errors.md.
 */
export class UnsolvedStopError extends Error {
  readonly code = 'unsolved-stop';
  override readonly name = 'UnsolvedStopError';

  constructor(
    /** m/s. */
    readonly speed: number,
    /** Pa, front line pressure. */
    readonly pressure: number,
  ) {
    super(`no deceleration was found at ${speed.toFixed(2)} m/s and ${(pressure / 1e6).toFixed(3)} MPa`);
  }
}
