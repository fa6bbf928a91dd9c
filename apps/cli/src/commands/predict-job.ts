import type { UnitSystem } from '@standstill/units';
import type { Job } from '@standstill/workshop';
import { predictInThreads } from '../draws/predict-in-threads.ts';
import { readStopOptions, type StopOptions } from '../input/read-stop-options.ts';
import { requireJob } from '../input/require-job.ts';
import { jsonText } from '../print/json-text.ts';
import { predictionText } from '../print/prediction-text.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';

export interface PredictJobOptions extends StopOptions {
  readonly units: UnitSystem;
  readonly assumed?: boolean;
  readonly json?: boolean;
}

/** Says what the set-ups of a job would do. */
export async function predictJob(
  path: string,
  options: PredictJobOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  const asked = { ...readStopOptions(options), units: options.units };
  const { job } = await requireJob(path);
  for (const id of options.setUp ?? []) requireSetUp(job, id);
  const prediction = await predictInThreads(job, asked, terminal);
  const look = { units: options.units, assumed: options.assumed === true };
  if (options.json === true) terminal.out(jsonText(prediction));
  else terminal.out(wrapText(predictionText(prediction, look, terminal), terminal.width));
  return exitCode.ok;
}

/** Ends the command where the job has no such set-up, and says which there are. */
export function requireSetUp(job: Job, id: string): void {
  const ids = job.setUps.map((setUp) => setUp.id);
  if (ids.includes(id)) return;
  throw new CommandError(
    `--set-up: the job has no set-up "${id}"; it has ${ids.join(', ')}.`,
    exitCode.usage,
  );
}
