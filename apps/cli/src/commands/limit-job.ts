import type { UnitSystem } from '@standstill/units';
import { limitsFrom } from '@standstill/workshop';
import { predictInThreads } from '../draws/predict-in-threads.ts';
import { readStopOptions, type StopOptions } from '../input/read-stop-options.ts';
import { requireJob } from '../input/require-job.ts';
import { jsonText } from '../print/json-text.ts';
import { limitsText } from '../print/limits-text.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';
import { requireSetUp } from './predict-job.ts';

export interface LimitJobOptions extends StopOptions {
  readonly units: UnitSystem;
  readonly assumed?: boolean;
  readonly json?: boolean;
}

/** Says what holds the set-ups of a job back, where the feet go, and what to measure next. */
export async function limitJob(
  path: string,
  options: LimitJobOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  const asked = { ...readStopOptions(options), units: options.units };
  const { job } = await requireJob(path);
  for (const id of options.setUp ?? []) requireSetUp(job, id);
  const report = limitsFrom(job, asked, await predictInThreads(job, asked, terminal));
  const look = { units: options.units, assumed: options.assumed === true };
  if (options.json === true) terminal.out(jsonText(report));
  else terminal.out(wrapText(limitsText(report, look, terminal), terminal.width));
  return exitCode.ok;
}
