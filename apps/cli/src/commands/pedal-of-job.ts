import { existsSync } from 'node:fs';
import type { UnitSystem } from '@standstill/units';
import {
  conditionsFacts,
  PedalPointsError,
  reportPedal,
  readPedalPoints,
  type ReportPedalOptions,
} from '@standstill/workshop';
import { knownOptions } from '../input/known-options.ts';
import { readCountOption } from '../input/read-count-option.ts';
import { readFileBytes } from '../input/read-file-bytes.ts';
import { readQuantityOption } from '../input/read-quantity-option.ts';
import { requireJob } from '../input/require-job.ts';
import { jsonText } from '../print/json-text.ts';
import { pedalReportText } from '../print/pedal-report-text.ts';
import { problemLine } from '../print/problem-line.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';
import { requireSetUp } from './predict-job.ts';

export interface PedalOfJobOptions {
  readonly setUp?: string;
  readonly pedalForce?: string;
  readonly deceleration?: string;
  readonly measured?: string;
  readonly engine?: 'running' | 'off';
  readonly draws?: string;
  readonly seed?: string;
  readonly units: UnitSystem;
  readonly assumed?: boolean;
  readonly json?: boolean;
}

/** Says what the pedal of a set-up does, and what a measured one tells. */
export async function pedalOfJob(
  path: string,
  options: PedalOfJobOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  const known = knownOptions({
    setUp: options.setUp,
    pedalForce: readQuantityOption('--pedal-force', options.pedalForce, conditionsFacts.pedalForce),
    deceleration: readQuantityOption('--deceleration', options.deceleration, 'acceleration'),
    draws: readCountOption('--draws', options.draws, { low: 20, high: 100_000 }),
    seed: readCountOption('--seed', options.seed, { low: 0, high: 2 ** 31 - 1 }),
    measured: await measuredOf(options),
    units: options.units,
  });
  const { job } = await requireJob(path);
  if (options.setUp !== undefined) requireSetUp(job, options.setUp);
  const report = reported(() => reportPedal(job, known));
  const look = { units: options.units, assumed: options.assumed === true };
  if (options.json === true) terminal.out(jsonText(report));
  else terminal.out(wrapText(pedalReportText(report, look, terminal), terminal.width));
  return exitCode.ok;
}

function reported<T>(answer: () => T): T {
  try {
    return answer();
  } catch (error) {
    if (error instanceof PedalPointsError) throw new CommandError(error.message, exitCode.no);
    throw error;
  }
}

/** Typed pushes, or the file that has them. */
async function measuredOf({
  measured,
  engine,
}: PedalOfJobOptions): Promise<ReportPedalOptions['measured'] | undefined> {
  if (measured === undefined) {
    if (engine === undefined) return undefined;
    throw new CommandError('--engine needs --measured, the pushes that were measured.', exitCode.usage);
  }
  if (engine === undefined) {
    const meaning = 'running, or off (off means off and with the vacuum pumped out by pushes)';
    throw new CommandError(`--measured needs --engine: ${meaning}.`, exitCode.usage);
  }
  const isFile = existsSync(measured) || /^[^\s;]+\.(?:csv|txt|tsv)$/i.test(measured.trim());
  const text = isFile ? new TextDecoder().decode(await readFileBytes(measured)) : measured;
  const reading = readPedalPoints(text, isFile ? measured : null);
  if (reading.ok) return { engine, points: reading.points };
  const lines = reading.problems.map((problem) =>
    isFile ? problemLine(measured, problem) : `--measured: ${problem.message}.`,
  );
  throw new CommandError(lines.join('\n'), isFile ? exitCode.unreadable : exitCode.usage);
}
