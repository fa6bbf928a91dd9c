import type { Job, Problem } from '@standstill/workshop';
import type { z } from 'zod';
import { ofJob } from '../calculations/of-job.ts';
import type { OfJob } from '../calculations/of-job.ts';

/** A question about a job that is answered by one report, and keeps nothing. */
export interface JobQuestion<Options, Report> {
  /** Where it is asked. */
  readonly path: `/api/${string}`;
  /** What it answers, for the API's description. */
  readonly summary: string;
  /** What may be asked; what is left out is as the job says. */
  readonly options: z.ZodType<Options>;
  readonly report: z.ZodType<Report>;
  /** Answers it of a document as it was sent or kept. */
  answer(document: unknown, options: Options): OfJob<Report>;
}

/** Options that the workshop takes, or every mistake in those that were sent. */
export type OptionsReading<Asked> =
  | { readonly ok: true; readonly asked: Asked }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What a question is made of. */
export interface QuestionParts<Options, Asked, Report> extends Omit<JobQuestion<Options, Report>, 'answer'> {
  /** From what was sent to what the workshop takes. */
  readonly read: (options: Options) => OptionsReading<Asked>;
  /** The workshop's use case. */
  readonly compute: (job: Job, asked: Asked) => Report;
}

/** Set-ups that options may name. */
interface NamesSetUps {
  readonly setUp?: string;
  readonly setUps?: readonly string[];
}

/**
 * Makes a question of a use case.
 *
 * @param parts - address, words, schemas, and how to read and compute
 * @returns the question
 */
export function jobQuestion<Options extends NamesSetUps, Asked, Report>({
  read,
  compute,
  ...told
}: QuestionParts<Options, Asked, Report>): JobQuestion<Options, Report> {
  return {
    ...told,
    answer: (document, options) => {
      const reading = read(options);
      if (!reading.ok) return reading;
      return ofJob(document, setUpsAsked(options), (job) => compute(job, reading.asked));
    },
  };
}

function setUpsAsked({ setUp, setUps = [] }: NamesSetUps): Parameters<typeof ofJob>[1] {
  return setUp === undefined
    ? { path: 'options.setUps', ids: setUps }
    : { path: 'options.setUp', ids: [setUp] };
}
