import type { JobDocument, LogSummary, RunDocument } from '@standstill/workshop';

/** An id that no run has yet: 'run-1', 'run-2', … */
function freeRunId(runs: readonly RunDocument[]): string {
  const taken = new Set(runs.map(({ id }) => id));
  let number = runs.length + 1;
  while (taken.has(`run-${number}`)) number++;
  return `run-${number}`;
}

/** Adds a kept log as a measured run of a set-up; a log that is there already is not added twice. */
export function addRun(
  document: JobDocument,
  { setUp, role, log }: Pick<RunDocument, 'setUp' | 'role' | 'log'>,
): JobDocument {
  const runs = document.runs ?? [];
  const own = role === 'before' || role === 'after' ? undefined : role;
  if (runs.some((run) => run.log === log && run.setUp === setUp && run.role === own)) return document;
  const run: RunDocument = { id: freeRunId(runs), setUp, ...(own ? { role: own } : {}), log };
  return { ...document, runs: [...runs, run] };
}

/** Changes one run of the job. */
export function editRun(
  document: JobDocument,
  runId: string,
  change: (run: RunDocument) => RunDocument,
): JobDocument {
  return { ...document, runs: (document.runs ?? []).map((run) => (run.id === runId ? change(run) : run)) };
}

/** Takes a run out of the job; its log stays on the server. */
export function removeRun(document: JobDocument, runId: string): JobDocument {
  return { ...document, runs: (document.runs ?? []).filter(({ id }) => id !== runId) };
}

/** The kept log of a run, named by its id or by the name of its file. */
export function logOf(run: RunDocument, logs: readonly LogSummary[]): LogSummary | undefined {
  return (
    logs.find(({ id }) => id === run.log) ??
    logs.find(({ name }) => name === run.log || run.log.endsWith(`/${name}`))
  );
}
