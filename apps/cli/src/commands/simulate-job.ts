import type { UnitSystem } from '@standstill/units';
import { simulate } from '@standstill/workshop';
import { knownOptions } from '../input/known-options.ts';
import { readQuantityOption } from '../input/read-quantity-option.ts';
import { readStopOptions, type StopOptions } from '../input/read-stop-options.ts';
import { requireJob } from '../input/require-job.ts';
import { jsonText } from '../print/json-text.ts';
import { simulationText } from '../print/simulation-text.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';
import { requireSetUp } from './predict-job.ts';

export interface SimulateJobOptions extends StopOptions {
  readonly deceleration?: string;
  readonly lockedWheels?: boolean;
  readonly trace?: boolean;
  readonly units: UnitSystem;
  readonly assumed?: boolean;
  readonly json?: boolean;
}

/** Says how the set-ups of a job stop with all four wheels turning. */
export async function simulateJob(
  path: string,
  options: SimulateJobOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  if (options.trace === true && options.json !== true)
    throw new CommandError('--trace goes with --json: a trace is for programs.', exitCode.usage);
  const asked = {
    ...readStopOptions(options),
    ...knownOptions({
      deceleration: readQuantityOption('--deceleration', options.deceleration, 'acceleration'),
      lockedWheels: options.lockedWheels,
      trace: options.trace,
    }),
    units: options.units,
  };
  const { job } = await requireJob(path);
  for (const id of options.setUp ?? []) requireSetUp(job, id);
  const report = simulate(job, asked);
  const look = { units: options.units, assumed: options.assumed === true };
  if (options.json === true) terminal.out(jsonText(report));
  else terminal.out(wrapText(simulationText(report, look, terminal), terminal.width));
  return exitCode.ok;
}
