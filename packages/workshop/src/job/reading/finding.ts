import type { DocumentPath } from './position.ts';
import type { JobProblemCode } from './problem-codes.ts';

/** One mistake before it is given its place in the file. */
export interface Finding {
  readonly code: JobProblemCode;
  readonly path: DocumentPath;
  /** Whether the key or the value is at fault. */
  readonly at: 'key' | 'value';
  readonly found: string;
  readonly accepted: string;
  /** The whole thing in one line, without the file position. */
  readonly message: string;
}
