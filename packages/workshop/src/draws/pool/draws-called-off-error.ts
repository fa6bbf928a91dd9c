/** Thrown where draws were called off before they were done. */
export class DrawsCalledOffError extends Error {
  readonly code = 'draws-called-off';
  override readonly name = 'DrawsCalledOffError';

  constructor() {
    super('the draws were called off');
  }
}
