/** Every way a store can fail that a person can do something about. Listed with advice in docs/errors.md. */
export type StoreErrorCode =
  | 'store-unreachable'
  | 'store-not-a-database'
  | 'store-newer-than-program'
  | 'store-migration-changed'
  | 'store-migration-failed'
  | 'store-busy'
  | 'store-full'
  | 'store-read-only'
  | 'store-text-refused'
  | 'store-hash-mismatch'
  | 'store-log-damaged';

/**
 * Says why a store could not be opened, read or written: a stable code, and one sentence for a person. The engine's
 * own error is the `cause`.
 */
export class StoreError extends Error {
  override readonly name = 'StoreError';
  readonly code: StoreErrorCode;

  /**
   * @param code - stable code, listed in docs/errors.md
   * @param message - one sentence for a person, without secrets
   * @param cause - what the engine said, where it said anything
   */
  constructor(code: StoreErrorCode, message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.code = code;
  }
}
