import { basename } from 'node:path';
import { parseQuantity, refusalSentence } from '@standstill/units';
import { conditionsFacts, planTest, runOfLog, testFacts, type Job, type RunSet } from '@standstill/workshop';
import { knownOptions } from '../input/known-options.ts';
import { logFiles } from '../input/log-files.ts';
import { readCountOption } from '../input/read-count-option.ts';
import { readQuantityOption } from '../input/read-quantity-option.ts';
import { readTemperatureWindow } from '../input/read-temperature-window.ts';
import { logReading, namesOf, type LogOptions } from '../input/report-log-file.ts';
import { requireJob } from '../input/require-job.ts';
import { requireReport } from '../input/require-report.ts';
import { jsonText } from '../print/json-text.ts';
import { planText } from '../print/plan-text.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';
import { requireSetUp } from './predict-job.ts';

export interface PlanTestOptions extends LogOptions {
  readonly resolution?: string;
  readonly spread?: string;
  readonly from?: readonly string[];
  readonly power?: string;
  /** Commander's name for `--no-repeat` left out. */
  readonly repeat: boolean;
  readonly job?: string;
  readonly setUp?: readonly string[];
  readonly draws?: string;
  readonly seed?: string;
  readonly json?: boolean;
}

/** Says what to drive so that a difference shows. */
export async function planOfTest(options: PlanTestOptions, terminal: Terminal): Promise<ExitCode> {
  if (options.spread !== undefined && options.from !== undefined)
    throw new CommandError('--spread and --from say the same thing; give one of them.', exitCode.usage);
  const asked = knownOptions({
    resolution: readQuantityOption('--resolution', options.resolution, testFacts.resolution),
    spread: readQuantityOption('--spread', options.spread, 'length'),
    nominalSpeed: readQuantityOption('--speed', options.speed, conditionsFacts.speed),
    startTemperature: readTemperatureWindow(options.startTemperature),
    power: readPower(options.power),
    draws: readCountOption('--draws', options.draws, { low: 5, high: 500 }),
    seed: readCountOption('--seed', options.seed, { low: 0, high: 2 ** 31 - 1 }),
  });
  const job = options.job === undefined ? null : (await requireJob(options.job)).job;
  if (job === null && options.setUp !== undefined)
    throw new CommandError('--set-up needs --job, the file that has it.', exitCode.usage);
  if (job !== null) for (const id of options.setUp ?? []) requireSetUp(job, id);
  const plan = planTest({
    ...asked,
    withRepeat: options.repeat,
    units: options.units,
    measured: await measuredSets(options, job),
    ...knownOptions({ job: job ?? undefined, setUps: options.setUp }),
  });
  if (options.json === true) terminal.out(jsonText(plan));
  else terminal.out(wrapText(planText(plan, options.units, terminal), terminal.width));
  return exitCode.ok;
}

/** One set for each set-up that the job tells; else each log by itself, for nobody knows what was changed in between. */
async function measuredSets(options: PlanTestOptions, job: Job | null): Promise<readonly RunSet[]> {
  const files = logFiles(options.from ?? []);
  const read = await logReading(options, files, job);
  const sets = new Map<string, RunSet>();
  for (const file of files) {
    const report = requireReport(file, read);
    const run = job === null ? null : runOfLog(job.runs, { names: namesOf(file) });
    const key = run === null ? file : `set-up ${run.setUp}`;
    const earlier = sets.get(key)?.reports ?? [];
    sets.set(key, { name: run?.setUp ?? basename(file), reports: [...earlier, report] });
  }
  return [...sets.values()];
}

function readPower(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const reading = parseQuantity(text, 'ratio');
  if (!reading.ok)
    throw new CommandError(`--power: ${refusalSentence(reading).replace(/\.$/u, '')}.`, exitCode.usage);
  if (reading.value >= 0.5 && reading.value <= 0.99) return reading.value;
  throw new CommandError(`--power: "${text}"; accepted is 50 % to 99 %.`, exitCode.usage);
}
