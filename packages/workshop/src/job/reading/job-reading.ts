import type { AssumedValue } from '../../results/assumed-value.ts';
import type { Problem } from '../../results/problem.ts';
import type { JobDocument } from '../document/job-document.ts';
import type { Job } from '../job.ts';

/** What came of reading a job: the job, or every mistake in it, one problem each. */
export type JobReading =
  | {
      readonly ok: true;
      readonly job: Job;
      /** The document in the newest version, as the person wrote it. */
      readonly document: JobDocument;
      /** What the person left out, what was used instead and why. */
      readonly assumed: readonly AssumedValue[];
      /** Version that it was written in where that is older than ours. */
      readonly migratedFrom: number | null;
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };
