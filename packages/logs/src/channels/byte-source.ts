/** The bytes of a log, read piece by piece, so that a large file need not be in memory. */
export interface ByteSource {
  /** Number of bytes. */
  readonly size: number;
  /**
   * Gives bytes from an offset on; as many as asked for, fewer only at the end. What it gave before may be overwritten.
   */
  readonly read: (offset: number, length: number) => Uint8Array;
}
