import { parseQuantity, refusalSentence, type UnitSystem } from '@standstill/units';
import {
  conditionsFacts,
  reportLog,
  type LogRefusal,
  type LogReport,
  type ReportLogOptions,
} from '@standstill/workshop';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';
import { knownOptions } from './known-options.ts';
import { readFileBytes } from './read-file-bytes.ts';
import { readQuantityOption } from './read-quantity-option.ts';

/** What a person can say about logs; every command with logs takes it. */
export interface LogOptions {
  readonly speed?: string;
  readonly grade?: string;
  readonly timeColumn?: string;
  readonly speedColumn?: string;
  readonly speedUnit?: string;
  readonly speedScale?: string;
  readonly scaleAssumed?: boolean;
  readonly units: UnitSystem;
}

/** Turns the options into what the workshop takes; refuses in one line what does not fit. */
export function reportOptions(options: LogOptions): ReportLogOptions {
  return knownOptions({
    nominalSpeed: readQuantityOption('--speed', options.speed, conditionsFacts.speed),
    grade: readGrade(options.grade),
    columns: readColumns(options),
    units: options.units,
  });
}

/** Reads a log file and finds its stops. */
export async function reportLogFile(
  file: string,
  options: ReportLogOptions,
): Promise<LogReport | LogRefusal> {
  return reportLog({ name: file, content: await readFileBytes(file) }, options);
}

function readColumns(options: LogOptions): ReportLogOptions['columns'] {
  const { timeColumn, speedColumn, speedUnit, speedScale, scaleAssumed } = options;
  if (speedColumn === undefined && (speedUnit ?? speedScale) !== undefined)
    throw new CommandError(
      '--speed-unit and --speed-scale need --speed-column, the name of the column.',
      exitCode.usage,
    );
  const time = timeColumn === undefined ? undefined : { name: timeColumn };
  const speed =
    speedColumn === undefined
      ? undefined
      : {
          name: speedColumn,
          ...knownOptions({ unit: speedUnit, scale: readScale(speedScale), assumed: scaleAssumed }),
        };
  return time === undefined && speed === undefined ? undefined : knownOptions({ time, speed });
}

function readScale(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const scale = Number(text);
  if (text.trim() !== '' && scale > 0 && Number.isFinite(scale)) return scale;
  throw new CommandError(`--speed-scale: "${text}" is not a number above 0.`, exitCode.usage);
}

/** Uphill positive; a road of 0 is fine here, unlike a speed. */
function readGrade(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const reading = parseQuantity(text, 'ratio');
  if (!reading.ok) throw new CommandError(`--grade: ${refusalSentence(reading)}.`, exitCode.usage);
  if (Math.abs(reading.value) <= 0.3) return reading.value;
  throw new CommandError(`--grade: "${text}" is steeper than any road; 30 % is the most.`, exitCode.usage);
}
