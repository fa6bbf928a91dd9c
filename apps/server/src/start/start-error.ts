/** Why a server could not start, in one sentence for a person. */
export class StartError extends Error {
  override readonly name = 'StartError';
  readonly code: 'port-taken' | 'address-refused';

  /**
   * @param code - stable code, listed in docs/errors.md
   * @param message - one sentence for a person
   * @param cause - what the system said
   */
  constructor(code: StartError['code'], message: string, cause: unknown) {
    super(message, { cause });
    this.code = code;
  }
}
