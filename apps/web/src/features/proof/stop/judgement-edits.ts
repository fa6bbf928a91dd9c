import type { JobDocument, JudgementDocument, StopResult } from '@standstill/workshop';

/** What a person says of a stop, before it is dated. */
export interface JudgementWords {
  readonly verdict: JudgementDocument['verdict'];
  readonly reason: string;
  readonly by: string;
}

/** A moment well inside of a stop, by which a judgement finds it again even where the ends are found a little otherwise. */
export function momentOf({ start_s, end_s }: Pick<StopResult, 'start_s' | 'end_s'>): string {
  return `${Number(((start_s + end_s) / 2).toFixed(2))} s`;
}

/** Adds a word on a stop to its run. Nothing is taken away: what is said later holds, what was said before stays. */
export function addJudgement(
  document: JobDocument,
  runId: string,
  judged: JudgementWords & { readonly at: string; readonly date: string },
): JobDocument {
  const { at, verdict, reason, by, date } = judged;
  const judgement = { at, verdict, reason: reason.trim(), ...(by.trim() ? { by: by.trim() } : {}), date };
  const runs = (document.runs ?? []).map((run) =>
    run.id === runId ? { ...run, judgements: [...(run.judgements ?? []), judgement] } : run,
  );
  return { ...document, runs };
}
