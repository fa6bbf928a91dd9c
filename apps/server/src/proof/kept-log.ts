import type { GivenLog, LogFile } from '@standstill/workshop';

/** A kept log of a job with its bytes; a run of the job calls it by its id or its file name. */
export interface KeptLog extends Pick<GivenLog, 'role'> {
  readonly id: string;
  readonly file: LogFile;
  /** Where the request names it, for problems. */
  readonly path: string;
}
