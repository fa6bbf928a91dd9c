import type { Problem, StoredJob } from '@standstill/workshop';
import type { ServerProblemCode } from './problem-codes.ts';

/** What a refusal carries beside its code and sentence. */
export interface RefusalExtras {
  readonly problems?: readonly Problem[];
  readonly current?: StoredJob;
  readonly headers?: Readonly<Record<string, string>>;
}

/** Ends the handling of a request; the error handler makes the problem document of it. */
export class RequestRefusal extends Error {
  override readonly name = 'RequestRefusal';
  readonly code: ServerProblemCode;
  readonly extras: RefusalExtras;

  /**
   * @param code - which problem
   * @param detail - what is wrong this time and what to do
   * @param extras - what else the answer carries
   */
  constructor(code: ServerProblemCode, detail: string, extras: RefusalExtras = {}) {
    super(detail);
    this.code = code;
    this.extras = extras;
  }
}
