/**
 * Thrown where an input cannot be: names the quantity, the value, the unit and what would be accepted.
 * `code` is stable and listed in docs/errors.md.
 */
export class OutOfRangeError extends Error {
  readonly code = 'out-of-range';
  override readonly name = 'OutOfRangeError';

  constructor(
    readonly quantity: string,
    readonly value: number,
    readonly unit: string,
    readonly low: number,
    readonly high: number,
  ) {
    super(
      `${quantity} is ${withUnit(String(value), unit)}; accepted is ${withUnit(`${low} to ${high}`, unit)}`,
    );
  }
}

function withUnit(text: string, unit: string): string {
  return unit === '' ? text : `${text} ${unit}`;
}
