/**
 * Thrown where a root was sought between two places at which the function has the same sign (or is no number).
 * `code` is stable and listed in docs/errors.md.
 */
export class NotBracketedError extends Error {
  readonly code = 'not-bracketed';
  override readonly name = 'NotBracketedError';

  constructor(
    readonly low: number,
    readonly high: number,
    readonly valueAtLow: number,
    readonly valueAtHigh: number,
  ) {
    super(`no sign change between ${low} (value ${valueAtLow}) and ${high} (value ${valueAtHigh})`);
  }
}
