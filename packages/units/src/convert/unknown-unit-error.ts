import type { Dimension } from '../dimension/dimension.ts';

/** Thrown where the program itself names a unit that the dimension does not have. `code` is stable. */
export class UnknownUnitError extends Error {
  readonly code = 'no-such-unit';
  override readonly name = 'UnknownUnitError';

  constructor(
    readonly unit: string,
    readonly dimension: Dimension,
  ) {
    super(`"${unit}" is no unit of the dimension ${dimension}`);
  }
}
