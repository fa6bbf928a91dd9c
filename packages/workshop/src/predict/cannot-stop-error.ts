/** Thrown where a set-up does not come to rest at all, so that there is no distance to answer with. */
export class CannotStopError extends Error {
  readonly code = 'car-does-not-stop';
  override readonly name = 'CannotStopError';

  constructor(
    readonly setUpId: string,
    title: string,
  ) {
    super(
      `"${title}" does not come to rest with this pedal force on this road; ask for more pedal force or less grade`,
    );
  }
}
