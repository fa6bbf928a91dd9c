import { existsSync } from 'node:fs';
import type { UnitSystem } from '@standstill/units';
import {
  conditionsFacts,
  readLaps,
  reportHeat,
  scheduleOptions,
  type HeatSchedule,
  type HeatScheduleKind,
  type ScheduleOption,
} from '@standstill/workshop';
import { knownOptions } from '../input/known-options.ts';
import { readCountOption } from '../input/read-count-option.ts';
import { readFileBytes } from '../input/read-file-bytes.ts';
import { readQuantityOption } from '../input/read-quantity-option.ts';
import { requireJob } from '../input/require-job.ts';
import { heatReportText } from '../print/heat-report-text.ts';
import { jsonText } from '../print/json-text.ts';
import { problemLine } from '../print/problem-line.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';
import { requireSetUp } from './predict-job.ts';

export interface HeatOfJobOptions {
  readonly schedule?: HeatScheduleKind;
  readonly speed?: string;
  readonly pedalForce?: string;
  readonly count?: string;
  readonly interval?: string;
  readonly drop?: string;
  readonly grade?: string;
  readonly brakeShare?: string;
  readonly points?: string;
  readonly setUp?: readonly string[];
  readonly draws?: string;
  readonly seed?: string;
  readonly units: UnitSystem;
  readonly assumed?: boolean;
  readonly json?: boolean;
}

/** Says what a schedule of stops does to the brakes of a job. */
export async function heatOfJob(
  path: string,
  options: HeatOfJobOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  const known = knownOptions({
    schedule: await scheduleOf(options),
    speed: readQuantityOption('--speed', options.speed, conditionsFacts.speed),
    pedalForce: readQuantityOption('--pedal-force', options.pedalForce, conditionsFacts.pedalForce),
    draws: readCountOption('--draws', options.draws, { low: 20, high: 10_000 }),
    seed: readCountOption('--seed', options.seed, { low: 0, high: 2 ** 31 - 1 }),
    setUps: options.setUp,
  });
  const { job } = await requireJob(path);
  for (const id of options.setUp ?? []) requireSetUp(job, id);
  const report = reportHeat(job, { ...known, units: options.units });
  const look = { units: options.units, assumed: options.assumed === true };
  if (options.json === true) terminal.out(jsonText(report));
  else terminal.out(wrapText(heatReportText(report, look, terminal), terminal.width));
  return exitCode.ok;
}

/** As they are typed. */
const names: Readonly<Record<ScheduleOption, string>> = {
  speed: '--speed',
  pedalForce: '--pedal-force',
  count: '--count',
  interval: '--interval',
  drop: '--drop',
  grade: '--grade',
  brakeShare: '--brake-share',
  points: '--points',
};

async function scheduleOf(options: HeatOfJobOptions): Promise<HeatSchedule> {
  const kind = options.schedule ?? (options.points === undefined ? 'stops' : 'laps');
  for (const own of Object.keys(names) as ScheduleOption[]) {
    if (options[own] === undefined || scheduleOptions[kind].includes(own)) continue;
    throw new CommandError(`${names[own]} means nothing for the schedule ${kind}.`, exitCode.usage);
  }
  if (kind === 'stops') {
    const count = readCountOption('--count', options.count, { low: 1, high: 200 });
    const interval = readQuantityOption('--interval', options.interval, 'time');
    return { kind, ...knownOptions({ count, interval }) };
  }
  if (kind === 'descent') {
    const drop = readQuantityOption('--drop', options.drop, 'length');
    const grade = readQuantityOption('--grade', options.grade, 'ratio');
    const brakeShare = readQuantityOption('--brake-share', options.brakeShare, 'ratio');
    return { kind, ...knownOptions({ drop, grade, brakeShare }) };
  }
  if (kind !== 'laps') return { kind };
  const count = readCountOption('--count', options.count, { low: 1, high: 100 });
  return { kind, points: await pointsOf(options.points), ...knownOptions({ count }) };
}

/** Typed braking points, or the file that has them. */
async function pointsOf(
  points: string | undefined,
): Promise<Extract<HeatSchedule, { kind: 'laps' }>['points']> {
  if (points === undefined)
    throw new CommandError('the schedule laps needs --points, the braking points of a lap.', exitCode.usage);
  const isFile = existsSync(points) || /^[^\s;]+\.(?:csv|txt|tsv|ya?ml)$/i.test(points.trim());
  const text = isFile ? new TextDecoder().decode(await readFileBytes(points)) : points;
  const reading = readLaps(text, isFile ? points : null);
  if (reading.ok) return reading.points;
  const lines = reading.problems.map((problem) =>
    isFile ? problemLine(points, problem) : `--points: ${problem.message}.`,
  );
  throw new CommandError(lines.join('\n'), isFile ? exitCode.unreadable : exitCode.usage);
}
