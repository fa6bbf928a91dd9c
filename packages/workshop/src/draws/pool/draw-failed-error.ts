/** Thrown where a thread or worker that draws broke, or failed at its draws. */
export class DrawFailedError extends Error {
  readonly code = 'draw-failed';
  override readonly name = 'DrawFailedError';

  /** @param reason - what is known of it */
  constructor(readonly reason: string) {
    super(`a worker failed at its draws: ${reason}`);
  }
}
