/** Thrown where a set-up does not come to rest at all, so that there is no distance to answer with. */
export class CannotStopError extends Error {
  readonly code = 'car-does-not-stop';
  override readonly name = 'CannotStopError';

  constructor(
    readonly setUpId: string,
    title: string,
    why: 'no-rest' | 'floor' = 'no-rest',
  ) {
    super(`"${title}" ${reasons[why]}`);
  }
}

const reasons = {
  'no-rest':
    'does not come to rest with this pedal force on this road; ask for more pedal force or less grade, or leave this set-up out',
  floor:
    'has its pedal on the floor before any pressure is there: it does not brake; mend trapped air, clearances, bore or stroke, or leave this set-up out',
} as const;
