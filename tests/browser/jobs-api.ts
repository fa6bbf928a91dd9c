/** A kept job as the server gives it. */
export interface KeptJob {
  readonly id: string;
  readonly version: number;
  readonly document: Record<string, unknown>;
}

/** The server's own view of a job, beside the app. */
export async function readJob(address: string, id: string): Promise<KeptJob> {
  return (await (await fetch(`${address}/api/jobs/${id}`)).json()) as KeptJob;
}

/** A copy of the demo job under an id of its own, so that tests do not meet in one job. */
export async function copyOfDemo(address: string, title: string): Promise<KeptJob> {
  const { document } = await readJob(address, 'demo');
  const answer = await fetch(`${address}/api/jobs`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ ...document, title, runs: [] }),
  });
  if (!answer.ok) throw new Error(await answer.text());
  return (await answer.json()) as KeptJob;
}

/** A value of a job's document, or undefined. */
export function valueIn(job: KeptJob, ...steps: readonly string[]): unknown {
  return steps.reduce<unknown>(
    (here, step) => (here as Record<string, unknown> | undefined)?.[step],
    job.document,
  );
}
